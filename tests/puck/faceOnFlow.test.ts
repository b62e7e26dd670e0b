import { describe, expect, it } from "vitest";
import { axialFlow } from "../../shared/engine/axial/axialFlow";
import { axialNodes } from "../../shared/engine/axial/axialNodes";
import { laminarAxialWake } from "../../shared/engine/axial/axialSeparation";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { sharpCylinderDrag } from "../../shared/jobs/puck/drag/faceOnDrag";
import { closingReynolds, prepareFaceOn, solvedFaceOnDrag } from "../../shared/jobs/puck/drag/faceOnFlow";
import { examplePuck, unwrap } from "./examplePuck";

const rounded = (edgeRadiusMetres: number): PuckSpec => ({
  ...examplePuck,
  edge: { kind: "radius", edgeRadiusMetres },
});

describe("prepareFaceOn(spec)", () => {
  it("a sharp edge: Cd between the 1.17 of a disc and the 1.15 of a cylinder of length/diameter 0.5 (White, Fluid Mechanics, table 7.3, from memory), within 4 %", () => {
    const { separated } = unwrap(prepareFaceOn(rounded(0)));
    expect(separated.expected).toBeGreaterThan(0.96 * 1.15);
    expect(separated.expected).toBeLessThan(1.04 * 1.17);
  });

  it("the flow itself, not held to any table, gives a sharp edge that drag within the method's 10 %", () => {
    const contour = unwrap(buildContour({ family: "roundedRectangle", length: 0.375, height: 1, edgeRadius: 0.00375 }));
    // Base pressure midway between a disc's -0.42 (Fail, Lawford & Eyre 1957) and a sphere's -0.30 (Achenbach 1972), from memory.
    const wake = laminarAxialWake(axialFlow(unwrap(axialNodes(contour, 120))), Math.sqrt(1.36));
    expect(Math.abs((wake?.pressureDrag ?? 0) / 1.16 - 1)).toBeLessThan(0.1);
  });

  it("separated drag falls as the edge gets rounder and never exceeds a sharp cylinder's", () => {
    const flows = [0, 0.003, 0.006, 0.009, 0.012, 0.015].map((radius) => unwrap(prepareFaceOn(rounded(radius))));
    const sharp = sharpCylinderDrag(0.375);
    for (let i = 1; i < flows.length; i++)
      expect(flows[i].separated.expected).toBeLessThan(flows[i - 1].separated.expected);
    for (const { separated, attached } of flows) {
      for (const { low, expected, high } of [separated, attached]) {
        expect(low).toBeGreaterThan(0);
        expect(low).toBeLessThanOrEqual(expected);
        expect(expected).toBeLessThanOrEqual(high);
      }
      expect(attached.expected).toBeLessThanOrEqual(separated.expected);
      expect(separated.high).toBeLessThanOrEqual(sharp.high);
    }
  });

  it("a bevel and a free profile of the same insets come between the sharp edge and the round one", () => {
    const sharp = unwrap(prepareFaceOn(rounded(0))).separated.expected;
    const round = unwrap(prepareFaceOn(rounded(0.008))).separated.expected;
    const bevel = unwrap(
      prepareFaceOn({ ...examplePuck, edge: { kind: "bevel", radialMetres: 0.008, axialMetres: 0.008 } }),
    ).separated.expected;
    expect(bevel).toBeLessThan(sharp);
    expect(bevel).toBeGreaterThan(0.9 * round);
    const points = Array.from({ length: 13 }, (_, i): [number, number] => {
      const angle = (Math.PI / 2) * (1 - i / 12);
      return [0.008 * (1 - Math.cos(angle)), 0.008 * (1 - Math.sin(angle))];
    });
    const profile = unwrap(prepareFaceOn({ ...examplePuck, edge: { kind: "profile", points } })).separated.expected;
    expect(Math.abs(profile / round - 1)).toBeLessThan(0.06);
  });

  it("is refused, so that tables have to do, for discs too thin for its panels and cylinders whose flow comes back", () => {
    expect(prepareFaceOn({ ...examplePuck, thicknessMetres: 0.012 }).ok).toBe(false);
    expect(prepareFaceOn({ ...examplePuck, thicknessMetres: 0.06 }).ok).toBe(false);
  });
});

describe("closingReynolds(flow, turbulence)", () => {
  it("falls with rounder edges and with turbulence", () => {
    const [tight, round] = [0.004, 0.012].map((radius) => unwrap(prepareFaceOn(rounded(radius))));
    for (const Tu of [0.001, 0.01, 0.05]) expect(closingReynolds(round, Tu)).toBeLessThan(closingReynolds(tight, Tu));
    expect(closingReynolds(round, 0.05)).toBeLessThan(closingReynolds(round, 0.01));
  });

  it("of a sphere, by the same rule and constant: its crisis at 3.7e5 at 0.45 % turbulence within 30 % (Achenbach 1972, from memory)", () => {
    // Separation at 82 degrees with Cpb -0.36; curvature 2 / D.
    const flow = { ...unwrap(prepareFaceOn(rounded(0.012))), separationSpeed: Math.sqrt(1.36), separationCurvature: 2 };
    expect(Math.abs(closingReynolds(flow, 0.0045) / 3.7e5 - 1)).toBeLessThan(0.3);
  });
});

describe("solvedFaceOnDrag(spec, flow, reynolds, turbulence)", () => {
  const spec = rounded(0.012);
  const flow = unwrap(prepareFaceOn(spec));
  const closing = closingReynolds(flow, 0.01);

  it("is the separated state well below the closing Reynolds number and the attached one well above, on the face area", () => {
    const below = solvedFaceOnDrag(spec, flow, closing / 10, 0.01);
    const above = solvedFaceOnDrag(spec, flow, closing * 10, 0.01);
    expect(below.dragCoefficient.expected).toBeCloseTo(flow.separated.expected, 12);
    expect(below.dragCoefficient.low).toBeCloseTo(flow.separated.low, 12);
    expect(above.dragCoefficient.expected).toBeCloseTo(flow.attached.expected, 12);
    expect(below.referenceArea).toBeCloseTo(Math.PI * 0.04 ** 2, 12);
    expect(below.referenceAreaName).toBe("face area");
  });

  it("near it the band holds both states", () => {
    for (const reynolds of [0.99 * closing, 1.01 * closing]) {
      const { low, high } = solvedFaceOnDrag(spec, flow, reynolds, 0.01).dragCoefficient;
      expect(low).toBeLessThanOrEqual(flow.attached.low + 1e-12);
      expect(high).toBeGreaterThanOrEqual(flow.separated.high - 1e-12);
    }
  });
});
