import { describe, expect, it } from "vitest";
import { axialAddedMassRatio, axialFlow } from "../../shared/engine/axial/axialFlow";
import { axialNodes } from "../../shared/engine/axial/axialNodes";
import { ringSourceVelocity, ringVortexVelocity } from "../../shared/engine/axial/ringKernels";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { spheroidAddedMass } from "../../shared/jobs/puck/motion/addedMass";
import { unwrap } from "../flow/sections";

function flowOf(spec: SectionSpec, count: number) {
  return axialFlow(unwrap(axialNodes(unwrap(buildContour(spec)), count)));
}

describe("rings", () => {
  it("on the axis: a vortex has R^2 / 2 (R^2 + x^2)^(3/2), a source R x / 2 (R^2 + x^2)^(3/2) (Lamb 1932), to 1e-13", () => {
    for (const x of [0, 0.3, -1, 4]) {
      const cubed = (0.49 + x * x) ** 1.5;
      expect(Math.abs(ringVortexVelocity(x, 0, 0, 0.7).along - 0.49 / (2 * cubed))).toBeLessThan(1e-13);
      expect(Math.abs(ringSourceVelocity(x, 0, 0, 0.7).along - (0.7 * x) / (2 * cubed))).toBeLessThan(1e-13);
    }
  });

  it("a source far away is a point of 2 pi R, a vortex a doublet: within 1e-4 and 2e-3 at 50 radii", () => {
    const [x, r] = [30, 40];
    const far = ringSourceVelocity(x, r, 0, 0.5);
    expect(Math.abs(far.along / ((2 * Math.PI * 0.5 * x) / (4 * Math.PI * 50 ** 3)) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(far.outward / ((2 * Math.PI * 0.5 * r) / (4 * Math.PI * 50 ** 3)) - 1)).toBeLessThan(1e-4);
    const ring = ringVortexVelocity(x, r, 0, 0.5);
    const doublet = (((Math.PI * 0.25) / (4 * Math.PI)) * (3 * x * x - 50 ** 2)) / 50 ** 5;
    expect(Math.abs(ring.along / doublet - 1)).toBeLessThan(2e-3);
  });

  it("neither has sources of its own: flux through a small cylinder away from it is 0", () => {
    for (const kernel of [ringVortexVelocity, ringSourceVelocity]) {
      const h = 1e-4;
      const [x, r] = [0.4, 0.9];
      const divergence =
        (kernel(x + h, r, 0, 0.7).along - kernel(x - h, r, 0, 0.7).along) / (2 * h) +
        ((r + h) * kernel(x, r + h, 0, 0.7).outward - (r - h) * kernel(x, r - h, 0, 0.7).outward) / (2 * h * r);
      expect(Math.abs(divergence)).toBeLessThan(1e-6);
    }
  });
});

describe("axialFlow(nodes)", () => {
  it("a sphere has the surface speed 1.5 sin(angle) (Lamb 1932, art. 96), within 2e-4 at 120 panels, and better with more", () => {
    const error = (count: number) => {
      const { nodes, streamSpeed } = flowOf({ family: "circle", diameter: 2 }, count);
      return streamSpeed.reduce((most, speed, i) => Math.max(most, Math.abs(speed - 1.5 * nodes.r[i])), 0);
    };
    expect(error(120)).toBeLessThan(2e-4);
    expect(error(120)).toBeLessThan(0.6 * error(60));
  });

  it("a spheroid of axis ratio 1/2 has Lamb's speed over its widest place, 1 + k, within 1e-3", () => {
    const { nodes, streamSpeed } = flowOf({ family: "ellipse", length: 0.5, height: 1 }, 120);
    const widest = streamSpeed.reduce((most, speed, i) => (nodes.r[i] > 0.499 ? Math.max(most, speed) : most), 0);
    expect(Math.abs(widest / (1 + spheroidAddedMass(0.5).along) - 1)).toBeLessThan(1e-3);
  });

  it.each([0.3, 0.5, 1, 2])(
    "a spheroid of axis ratio %d has the added mass of Lamb 1932, art. 114 and 373, within 0.2 %%",
    (ratio) => {
      const flow = flowOf({ family: "ellipse", length: ratio, height: 1 }, 120);
      const volume = (Math.PI / 6) * ratio;
      expect(Math.abs(axialAddedMassRatio(flow, volume) / spheroidAddedMass(ratio).along - 1)).toBeLessThan(2e-3);
    },
  );

  it("a rounded disc has more added mass than the sphere's 8/3 R^3 share of a thin disc, and less than a cylinder's box", () => {
    const flow = flowOf({ family: "roundedRectangle", length: 0.375, height: 1, edgeRadius: 0.075 }, 120);
    const volume = 0.28;
    const added = axialAddedMassRatio(flow, volume) * volume;
    // Thin disc, R = 1/2: 8/3 R^3 (Lamb 1932, art. 108). A thicker one pushes more water, but less than twice as much.
    expect(added).toBeGreaterThan((8 / 3) * 0.5 ** 3);
    expect(added).toBeLessThan((16 / 3) * 0.5 ** 3);
  });

  it("refuses a contour that is not its own mirror image", () => {
    const lopsided = unwrap(
      buildContour({
        family: "freeContour",
        points: Array.from({ length: 12 }, (_, i): [number, number] => {
          const angle = (i * Math.PI) / 6;
          return [Math.cos(angle), 0.5 * Math.sin(angle) + 0.2 * Math.max(0, Math.sin(angle)) ** 2];
        }),
      }),
    );
    expect(axialNodes(lopsided, 60).ok).toBe(false);
  });
});
