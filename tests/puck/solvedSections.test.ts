import { describe, expect, it } from "vitest";
import { freshWater } from "../../shared/fluid/freshWater";
import { edgeOnDrag } from "../../shared/puck/edgeOnDrag";
import { puckCautions } from "../../shared/puck/playCautions";
import { puckFigures } from "../../shared/puck/puckFigures";
import { profileSection, solveEdgeOnSections } from "../../shared/puck/solvedSections";
import { examplePuck, unwrap } from "./examplePuck";

const water = unwrap(freshWater(27));
const solving = {
  speeds: [1, 2],
  kinematicViscosity: water.kinematicViscosity,
  turbulenceIntensity: 0.001,
  rimRoughness: 0,
  faceRoughness: 0,
  panelCount: 120,
  chordRatios: [0.7, 1],
  relativeError: 0.1,
};

describe("solveEdgeOnSections(spec, solving)", () => {
  it("solves plan and profile of the example puck; below the crisis the plan is a smooth cylinder, Cd 1.1 to 1.3", () => {
    const puck = { ...examplePuck, edge: { kind: "radius", radiusMetres: 0.009 } } as const;
    const sections = unwrap(solveEdgeOnSections(puck, solving));
    const plan = sections.plan((1 * 0.08) / water.kinematicViscosity);
    expect(plan.best).toBeGreaterThan(1.05);
    expect(plan.best).toBeLessThan(1.35);
    const figures = unwrap(puckFigures(puck, { fluidDensity: water.density }));
    const shape = { diameter: 0.08, thickness: 0.03, frontalArea: figures.frontalAreaEdgeOnSquareMetres };
    const drag = unwrap(edgeOnDrag(shape, sections, 1, water.kinematicViscosity));
    expect(drag.dragCoefficient.low).toBeGreaterThan(0.03);
    expect(drag.dragCoefficient.low).toBeLessThan(drag.dragCoefficient.best);
    expect(drag.dragCoefficient.best).toBeLessThan(drag.dragCoefficient.high);
    expect(drag.dragCoefficient.high).toBeLessThan(2.5);
  });

  it("hands on what the section builder refuses", () => {
    const sharp = { ...examplePuck, edge: { kind: "radius", radiusMetres: 0 } } as const;
    expect(solveEdgeOnSections(sharp, solving).ok).toBe(false);
  });
});

describe("profileSection(spec, chord)", () => {
  it("closes a free profile symmetrically round its middle", () => {
    const free = {
      ...examplePuck,
      edge: {
        kind: "profile",
        points: [
          [0.006, 0],
          [0.002, 0.002],
          [0, 0.006],
        ],
      },
    } as const;
    const section = profileSection(free, 0.08);
    expect(section.family).toBe("freeContour");
    if (section.family === "freeContour") {
      expect(section.points).toHaveLength(12);
      const sum = section.points.reduce(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
      expect(sum[0]).toBeCloseTo(0, 12);
      expect(sum[1]).toBeCloseTo(0, 12);
    }
  });
});

describe("puckCautions(spec, userMaterials)", () => {
  it("warns of the thrown weight always, of lead when there is lead, each once", () => {
    const cautions = puckCautions(examplePuck, []);
    expect(cautions.some((text) => text.includes("Lead is poisonous"))).toBe(true);
    expect(cautions.some((text) => text.includes("injures"))).toBe(true);
    expect(new Set(cautions).size).toBe(cautions.length);
    const plain = puckCautions({ ...examplePuck, core: { kind: "none" }, coatMaterial: "rubber" }, []);
    expect(plain.some((text) => text.includes("Lead"))).toBe(false);
  });
});
