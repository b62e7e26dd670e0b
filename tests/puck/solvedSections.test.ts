import { describe, expect, it } from "vitest";
import { freshWater } from "../../shared/fluid/freshWater";
import { type EdgeOnPlace, edgeOnDrag } from "../../shared/puck/edgeOnDrag";
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

  it("on the floor only the profile changes, gap by gap; far above it the profile is that of open water", () => {
    const puck = { ...examplePuck, edge: { kind: "radius", radiusMetres: 0.009 } } as const;
    const at = (gap: number | null) =>
      unwrap(
        solveEdgeOnSections(puck, { ...solving, chordRatios: [1] }, gap === null ? undefined : { kind: "floor", gap }),
      );
    const Re = (1 * 0.03) / water.kinematicViscosity;
    const open = at(null);
    const [lying, near, far] = [0, 0.003, 30].map(at);
    for (const sections of [lying, near, far]) expect(sections.plan(1e5)).toEqual(open.plan(1e5));
    const best = open.profile[0].drag(Re).best;
    expect(Math.abs(far.profile[0].drag(Re).best / best - 1)).toBeLessThan(2e-3);
    // The wake of the doubled body is wider behind the same length: its base pressure is less relieved.
    expect(near.profile[0].drag(Re).best).toBeGreaterThan(1.02 * best);
    expect(lying.profile[0].drag(Re).best).toBeGreaterThan(near.profile[0].drag(Re).best);

    const figures = unwrap(puckFigures(puck, { fluidDensity: water.density }));
    const shape = { diameter: 0.08, thickness: 0.03, frontalArea: figures.frontalAreaEdgeOnSquareMetres };
    const drag = unwrap(edgeOnDrag(shape, lying, 1, water.kinematicViscosity, { kind: "floor", gap: 0 }));
    expect(drag.notes.join(" ")).toContain("outside, do not rely on it");
    const inOpen = unwrap(edgeOnDrag(shape, open, 1, water.kinematicViscosity));
    expect(inOpen.notes.join(" ")).not.toContain("floor");
    expect(drag.profileEstimate.best).toBeGreaterThan(inOpen.profileEstimate.best);
  });

  it("bands by the errors against published values are wider above a floor, where nothing was compared: sharp edges", () => {
    const puck = { ...examplePuck, edge: { kind: "radius", radiusMetres: 0.0004 } } as const;
    const judged = { ...solving, chordRatios: [1], relativeError: null };
    const width = (place?: EdgeOnPlace) => {
      const { low, best, high } = unwrap(solveEdgeOnSections(puck, judged, place)).profile[0].drag(4e4);
      return (high - low) / best;
    };
    expect(width({ kind: "floor", gap: 30 })).toBeGreaterThan(width());
  });

  it("a gap that boundary layers would fill is refused", () => {
    const puck = { ...examplePuck, edge: { kind: "radius", radiusMetres: 0.009 } } as const;
    const refused = solveEdgeOnSections(puck, { ...solving, chordRatios: [1] }, { kind: "floor", gap: 1e-4 });
    expect(refused.ok ? "" : refused.problem.message).toMatch(/gap to the floor is 0.00333.* of D; it must be 0/);
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
