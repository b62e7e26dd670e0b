import { describe, expect, it } from "vitest";
import { freshWater } from "../../shared/engine/fluid/freshWater";
import { puckCautions } from "../../shared/jobs/puck/body/playCautions";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import type { EdgeOnPlace } from "../../shared/jobs/puck/drag/edgeOnDrag";
import { prepareProfile } from "../../shared/jobs/puck/drag/profileStrip";
import { prepareStrip, profileSection, type StripStream, stripDrag } from "../../shared/jobs/puck/drag/solvedSections";
import { examplePuck, unwrap } from "./examplePuck";

const water = unwrap(freshWater(27));
const stream: StripStream = {
  speeds: [1, 2],
  kinematicViscosity: water.kinematicViscosity,
  turbulenceIntensity: 0.001,
  relativeError: 0.1,
};
const roundedPuck = { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0.009 } } as const;

/** Drag of a profile strip at its whole chord, by the Reynolds number on the thickness. */
function profileDrag(spec: typeof examplePuck, place: EdgeOnPlace, changes: Partial<StripStream> = {}) {
  const { shape, heights } = unwrap(prepareProfile(spec, 1, 120, place));
  const drag = unwrap(stripDrag(shape, heights * spec.thicknessMetres, 0, { ...stream, ...changes })).drag;
  return (reynolds: number) => drag(heights * reynolds);
}

describe("stripDrag(shape, width, roughness, stream)", () => {
  it("of a plan below the crisis is a smooth cylinder's, Cd 1.1 to 1.3", () => {
    const plan = unwrap(prepareStrip({ family: "circle", diameter: 1 }, 120));
    const drag = unwrap(stripDrag(plan, 0.08, 0, stream)).drag((1 * 0.08) / water.kinematicViscosity);
    expect(drag.expected).toBeGreaterThan(1.05);
    expect(drag.expected).toBeLessThan(1.35);
    expect(drag.regime).toBe("subcritical");
  });

  it("has wider bands near a floor, where nothing was compared: sharp edges", () => {
    const sharp = { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0.0004 } } as const;
    const width = (place: EdgeOnPlace) => {
      const { low, expected, high } = profileDrag(sharp, place, { relativeError: null })(4e4);
      return (high - low) / expected;
    };
    for (const gap of [0, 30]) expect(width({ kind: "floor", gap })).toBeGreaterThan(width({ kind: "open" }));
  });
});

describe("prepareProfile(spec, chordRatio, panelCount, place)", () => {
  const Re = (1 * 0.03) / water.kinematicViscosity;
  const expected = (place: EdgeOnPlace, spec: PuckSpec = roundedPuck) => profileDrag(spec, place)(Re).expected;

  it("far above the floor is the profile of open water, Cd within 0.2 %", () => {
    expect(Math.abs(expected({ kind: "floor", gap: 30 }) / expected({ kind: "open" }) - 1)).toBeLessThan(2e-3);
  });

  it("with a quiet wake, gap / thickness up to 0.3, has more drag the narrower the gap: the doubled body is blunter", () => {
    const gaps = [0, 0.0015, 0.003, 0.009].map((gap) => expected({ kind: "floor", gap }));
    for (let i = 1; i < gaps.length; i++) expect(gaps[i]).toBeLessThan(gaps[i - 1]);
  });

  it("as the gap opens from 0.3 to 0.5 thicknesses its wake begins to shed and the drag of a sharp edge, whose layers stay off the faces, rises", () => {
    const sharp = { ...roundedPuck, edge: { kind: "radius", edgeRadiusMetres: 0.0004 } } as const;
    const gaps = [0.009, 0.012, 0.015].map((gap) => expected({ kind: "floor", gap }, sharp));
    for (let i = 1; i < gaps.length; i++) expect(gaps[i]).toBeGreaterThan(gaps[i - 1]);
  });

  it("lying on the floor is one body with its mirror image, twice as high", () => {
    const { shape, heights } = unwrap(prepareProfile(roundedPuck, 1, 80, { kind: "floor", gap: 0 }));
    expect(heights).toBe(2);
    expect(shape.referenceWidth).toBeCloseTo(2 * roundedPuck.thicknessMetres, 9);
    expect(shape.section.symmetric).toBe(true);
  });

  it("refuses a gap that boundary layers would fill", () => {
    const refused = prepareProfile(roundedPuck, 1, 80, { kind: "floor", gap: 1e-4 });
    expect(refused.ok ? "" : refused.problem.message).toMatch(/gap to the floor, 0.1 mm, must be 0/);
  });

  it("hands on what the section builder refuses: a chord shorter than twice the edge", () => {
    expect(prepareProfile(roundedPuck, 0.2, 80, { kind: "open" }).ok).toBe(false);
  });
});

describe("profileSection(spec, chord)", () => {
  it("solves a sharp edge at 1 % of the thickness, the least radius of the section families; others as they are", () => {
    const edgeRadius = (edgeRadiusMetres: number) => {
      const section = profileSection({ ...examplePuck, edge: { kind: "radius", edgeRadiusMetres } }, 0.08);
      return section.family === "roundedRectangle" ? section.edgeRadius : Number.NaN;
    };
    expect(edgeRadius(0)).toBeCloseTo(0.01 * examplePuck.thicknessMetres, 12);
    expect(edgeRadius(0.006)).toBe(0.006);
  });

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
