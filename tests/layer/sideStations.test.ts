import { describe, expect, it } from "vitest";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import { sideStations, stagnationPosition, stationOfArc, stationValue } from "../../shared/engine/layer/sideStations";
import { largestDifference, nodesOf } from "../flow/sections";
import { mirrorNodes } from "../geometry/nodeTransforms";
import { sineSeparationDegrees } from "../published/terrill-1960";

const count = 200;
const circle = nodesOf({ family: "circle", diameter: 0.08 }, count);

/** Counter-clockwise speed of the attached flow past a circle with the stagnation point turned by `turn`, rad. */
function attachedSpeed(nodes: SectionNodes, turn = 0): Float64Array {
  return nodes.x.map((x, i) => -2 * Math.sin(Math.atan2(nodes.y[i], x) - turn));
}

describe("sideStations on a circle in attached flow", () => {
  const stations = sideStations(
    circle,
    attachedSpeed(circle),
    "lower",
    0,
    72.5,
    2 * Math.sin((72.5 * Math.PI) / 100),
    0.08,
  );

  it("run from the stagnation point to the assumed separation in arc / D, speed and gradient in U and 1/D", () => {
    const { arc, speed, gradient } = stations;
    const last = stations.count - 1;
    expect(arc[0]).toBe(0);
    expect(speed[0]).toBe(0);
    expect(arc[last]).toBeCloseTo((72.5 / 200) * Math.PI, 10);
    for (let i = 0; i <= last; i++) {
      expect(speed[i]).toBeCloseTo(2 * Math.sin(2 * arc[i]), 9);
      expect(Math.abs(gradient[i] - 4 * Math.cos(2 * arc[i]))).toBeLessThan(0.01);
      if (i > 0) expect(arc[i]).toBeGreaterThan(arc[i - 1]);
    }
  });

  it("separate laminar within 1.5 degrees of 104.5 (Terrill 1960), and within 0.3 of it whatever the panels", () => {
    const degreesOf = (panels: number) => {
      const nodes = nodesOf({ family: "circle", diameter: 0.08 }, panels);
      const end = (115 / 360) * panels;
      const side = sideStations(
        nodes,
        attachedSpeed(nodes),
        "lower",
        0,
        end,
        2 * Math.sin((115 * Math.PI) / 180),
        0.08,
      );
      return (stationValue(side.arc, side.laminar.separation) * 360) / Math.PI;
    };
    const fine = degreesOf(800);
    expect(Math.abs(fine - sineSeparationDegrees.exact)).toBeLessThan(1.5);
    for (const panels of [100, 200, 400]) expect(Math.abs(degreesOf(panels) - fine)).toBeLessThan(0.3);
  });

  it("have the stagnation point's gradient 4 U/D wherever it lies between the nodes, to 1e-5 (fourth order)", () => {
    for (const turn of [0.004, 0.0157, 0.029]) {
      const speed = attachedSpeed(circle, turn);
      const stagnation = (turn / (2 * Math.PI)) * count;
      for (const [side, end] of [
        ["lower", 72],
        ["upper", count - 72],
      ] as const) {
        expect(sideStations(circle, speed, side, stagnation, end, 1, 0.08).gradient[0]).toBeCloseTo(4, 5);
      }
    }
  });

  it("keep a speed of a thousandth where the flow runs backward in a fold, and follow the layer beyond it", () => {
    const folded = attachedSpeed(circle).map((v, i) => (i >= 20 && i <= 24 ? -0.3 : v));
    const { speed, laminar } = sideStations(circle, folded, "lower", 0, 60, 1.9, 0.08);
    for (let i = 1; i < speed.length; i++) {
      expect(speed[i]).toBeCloseTo(i >= 20 && i <= 24 ? 1e-3 : i < speed.length - 1 ? folded[i] : 1.9, 12);
    }
    for (const values of [laminar.thickness, laminar.shapeFactor]) expect(values.every(Number.isFinite)).toBe(true);
    // The sudden stop separates the layer ahead of the fold.
    expect(laminar.separation).toBeLessThan(20);
  });

  it("are the same on the upper side of the mirrored flow", () => {
    const upper = sideStations(
      circle,
      attachedSpeed(circle),
      "upper",
      0,
      count - 72.5,
      2 * Math.sin((72.5 * Math.PI) / 100),
      0.08,
    );
    expect(largestDifference(upper.arc, stations.arc)).toBeLessThan(1e-12);
    expect(largestDifference(upper.speed, stations.speed)).toBeLessThan(1e-12);
    expect(largestDifference(upper.laminar.thickness, stations.laminar.thickness)).toBeLessThan(1e-9);
  });

  it("walk up from a stagnation point below the nose, past the nose, and mirror likewise", () => {
    const nodes = nodesOf({ family: "ellipse", length: 2, height: 1 }, 160);
    const speed = attachedSpeed(nodes, 0.2);
    const stagnation = stagnationPosition(speed, 60, 100) ?? Number.NaN;
    expect(stagnation).toBeGreaterThan(0);
    const upper = sideStations(nodes, speed, "upper", stagnation, 100, 1.2, 1);
    for (let i = 1; i < upper.count; i++) expect(upper.arc[i]).toBeGreaterThan(upper.arc[i - 1]);
    const mirroredSpeed = speed.map((_, i) => -speed[i === 0 ? 0 : 160 - i]);
    const mirroredStagnation = stagnationPosition(mirroredSpeed, 60, 100) ?? Number.NaN;
    expect(mirroredStagnation).toBeCloseTo(-stagnation, 12);
    const lower = sideStations(mirrorNodes(nodes), mirroredSpeed, "lower", mirroredStagnation, 60, 1.2, 1);
    expect(largestDifference(lower.arc, upper.arc)).toBeLessThan(1e-12);
    expect(largestDifference(lower.speed, upper.speed)).toBeLessThan(1e-12);
  });
});

describe("stagnationPosition", () => {
  it("finds where the counter-clockwise speed turns positive, exactly for a linear change", () => {
    const speed = attachedSpeed(circle, 0.1);
    // The front stagnation point of a stream turned by 0.1 rad lies 0.1 rad further round.
    expect(stagnationPosition(speed, 60, 140)).toBeCloseTo((0.1 / (2 * Math.PI)) * count, 3);
  });

  it("is null when the speed does not change sign on the wetted side", () => {
    expect(stagnationPosition(new Float64Array(count).fill(1), 60, 140)).toBeNull();
  });
});

describe("stationValue and stationOfArc", () => {
  it("are inverse to each other between stations", () => {
    const plate = sideStations(circle, attachedSpeed(circle), "lower", 0, 60, 1.9, 0.08);
    for (const station of [0, 0.3, 7.8, plate.count - 1.5]) {
      expect(stationOfArc(plate, stationValue(plate.arc, station))).toBeCloseTo(station, 10);
    }
  });
});
