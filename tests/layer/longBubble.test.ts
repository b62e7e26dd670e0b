import { describe, expect, it } from "vitest";
import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { cornerSharpness, laggedThickness, layerThickness } from "../../shared/engine/layer/cornerSharpness";
import { longBubble, reattachedShare } from "../../shared/engine/layer/longBubble";
import type { SideOutline } from "../../shared/engine/layer/sideOutline";
import { sideStations } from "../../shared/engine/layer/sideStations";
import { surfaceVelocity, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import { nodesOf, unwrap } from "../flow/sections";

/** A flat-fronted plate ten thicknesses long whose wake is as wide as itself, and the station at its front corner. */
function bluntPlate() {
  const nodes = nodesOf({ family: "roundedRectangle", length: 10, height: 1, edgeRadius: 0.01 }, 240);
  const flow = unwrap(sectionFlow(nodes, 0));
  let corner = nodes.count / 2;
  while (!(Math.abs(nodes.y[corner] + 0.5) < 1e-9)) corner--;
  const wake = unwrap(wakeFlow(flow, corner, nodes.count - corner));
  const speedRatio = (1 - wake.wakeWidth[0]) / wake.wakeWidth[1];
  const stations = sideStations(nodes, surfaceVelocity(wake, speedRatio), "lower", 0, corner, speedRatio, 1);
  // The layer leaves where the corner's bend begins to end.
  const separation = stations.position.findIndex((p) => nodes.y[Math.round(p)] < -0.4999);
  return { stations, separation, outline: stations.outline as SideOutline };
}

describe("longBubble on a blunt plate", () => {
  const { stations, separation, outline } = bluntPlate();
  const bubble = longBubble(stations, outline, separation, 0.3, 0.001);

  it("is 4 to 6 thicknesses long (Ota & Itasaka 1976; Cherry, Hillier & Latour 1984: 4.9; from memory)", () => {
    expect(bubble.length).toBeGreaterThan(4);
    expect(bubble.length).toBeLessThan(6);
  });

  it("has all of the plate's side to come back on: its ten thicknesses less the rounding of both corners", () => {
    expect(bubble.side).toBeGreaterThan(10 - 3 * 0.01);
    expect(bubble.side).toBeLessThan(10);
  });

  it("has a pressure coefficient of -0.5 to -0.9 (Cherry, Hillier & Latour 1984: about -0.75 under its front half, from memory)", () => {
    const pressure = 1 - bubble.speed ** 2;
    expect(pressure).toBeGreaterThan(-0.9);
    expect(pressure).toBeLessThan(-0.5);
  });

  it("momentum theorem of cavities, Cd = (q_b^2 - 1) 2 h / D, of both sides", () => {
    expect(2 * bubble.drag).toBeCloseTo((bubble.speed ** 2 - 1) * 2 * bubble.height, 12);
  });

  it("comes back against 0.35 of its dynamic pressure: q^2 where it ends is 0.65 of q_b^2, to a station", () => {
    const end = stations.arc[separation] + bubble.length;
    const around = [0, 1].map((more) => {
      const i = stations.arc.findIndex((arc) => arc > end) - more;
      return stations.speed[i] ** 2 / bubble.speed ** 2;
    });
    expect(Math.min(...around)).toBeLessThan(0.66);
    expect(Math.max(...around)).toBeGreaterThan(0.64);
  });

  it("shrinks in a turbulent stream as 4.9 to 2.7 thicknesses at 6.5 % (Hillier & Cherry 1981, from memory), within 15 %", () => {
    const shorter = longBubble(stations, outline, separation, 0, 0.065).length;
    const quiet = longBubble(stations, outline, separation, 0, 0).length;
    expect(Math.abs(shorter / quiet / (2.7 / 4.9) - 1)).toBeLessThan(0.15);
  });
});

describe("reattachedShare", () => {
  it("is half where a long side ends with the mean bubble, none on a short side, one on a long one, and rises between", () => {
    expect(reattachedShare(20, 20)).toBeCloseTo(0.5, 4);
    expect(reattachedShare(5, 20)).toBe(0);
    expect(reattachedShare(40, 20)).toBe(1);
    const shares = Array.from({ length: 50 }, (_, i) => reattachedShare(i, 20));
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeGreaterThanOrEqual(shares[i - 1]);
  });

  it("a side shorter than the vortices need to form, 0.9 D (Bloor 1964), holds no bubble however short", () => {
    expect(reattachedShare(0.3, 0)).toBe(0);
    expect(reattachedShare(0.9, 0)).toBeCloseTo(0.5, 4);
  });
});

describe("corners and layers", () => {
  it("a 1/7-power layer is 72/7 momentum thicknesses thick, by the integral of u (1 - u)", () => {
    const n = 2e5;
    let theta = 0;
    for (let i = 0; i < n; i++) {
      const u = ((i + 0.5) / n) ** (1 / 7);
      theta += (u * (1 - u)) / n;
    }
    expect(layerThickness(theta)).toBeCloseTo(1, 4);
  });

  it("a wall as sharp as the layer is thick counts 1; a circle under a layer of a tenth of its radius 1e-4; a concave wall nothing", () => {
    expect(cornerSharpness(5, 0.2)).toBeCloseTo(1, 12);
    expect(cornerSharpness(2, 0.05)).toBeCloseTo(1e-4, 12);
    expect(cornerSharpness(-5, 0.2)).toBe(0);
  });

  it("thins no faster than exp(-s / delta), in one step or in many alike to its own change, and thickens at once", () => {
    expect(laggedThickness(1, 0, 1)).toBeCloseTo(Math.exp(-1), 12);
    expect(laggedThickness(0.1, 0.3, 0.01)).toBe(0.3);
    let thickness = 1;
    for (let i = 0; i < 1000; i++) thickness = laggedThickness(thickness, 0, 1e-4);
    // d delta / ds = -1: nothing changes it but its own length.
    expect(thickness).toBeCloseTo(0.9, 3);
  });
});
