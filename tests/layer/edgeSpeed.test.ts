import { describe, expect, it } from "vitest";
import { EdgeSpeed } from "../../shared/engine/layer/edgeSpeed";
import { sideStations } from "../../shared/engine/layer/sideStations";
import { nodesOf } from "../flow/sections";
import { edgeStations } from "./edgeStations";

describe("EdgeSpeed along a side", () => {
  it("reads speed and gradient between the stations as straight lines, at places that move downstream", () => {
    const stations = edgeStations(
      (s) => 3 * s,
      () => 3,
      1,
      2,
      11,
    );
    const edge = new EdgeSpeed(stations);
    for (const s of [0, 0.04, 0.35, 0.7, 0.95, 1]) {
      expect(edge.at(s)).toBeCloseTo(3 * s, 12);
      expect(edge.gradient()).toBeCloseTo(3, 12);
      expect(edge.bend()).toBeCloseTo(2, 12);
    }
  });

  it("sees the bend of the corner behind the last station from the last cell alone", () => {
    const nodes = nodesOf({ family: "roundedRectangle", length: 4, height: 1, edgeRadius: 0.02 }, 240);
    // The last station stands on the straight side, one node ahead of the rear corner: curvature 1 / 0.02 behind it.
    let corner = nodes.count / 2;
    while (!(Math.abs(nodes.y[corner] + 0.5) < 1e-9 && nodes.curvature[corner] < 1)) corner--;
    const stations = sideStations(nodes, new Float64Array(240).fill(1), "lower", 0, corner, 1, 1);
    const edge = new EdgeSpeed(stations);
    const { arc, count } = stations;
    edge.at((arc[count - 4] + arc[count - 3]) / 2);
    expect(edge.bendAhead()).toBeLessThan(1);
    edge.at((arc[count - 2] + arc[count - 1]) / 2);
    expect(edge.bendAhead()).toBeCloseTo(50, 6);
  });
});
