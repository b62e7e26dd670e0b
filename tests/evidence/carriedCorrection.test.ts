import { describe, expect, it } from "vitest";
import { carryCorrection } from "../../shared/jobs/evidence/carriedCorrection";
import { compareSet } from "../../shared/jobs/evidence/compareSet";
import { measuredCorrection } from "../../shared/jobs/evidence/measuredCorrection";
import { notSameFamily } from "../../shared/jobs/evidence/sameFamily";
import { prepared, quietSettings, setOf, syntheticSet } from "./measuredSets";

// A square keeps to its subcritical regime over these Reynolds numbers: nothing comes back to its short sides.
const spec = (edgeRadius: number, length = 0.03) =>
  ({ family: "roundedRectangle", length, height: 0.03, edgeRadius }) as const;
const measured = prepared(spec(0.006), 120);
const near = prepared(spec(0.008), 120);
const far = prepared(spec(0.012), 120);
const circle = prepared({ family: "circle", diameter: 0.08 }, 80);

/** Drag 7 % below the engine's, with a uncertainty of 1 %. */
const truth = syntheticSet(measured, quietSettings, [5e4, 8e4, 1.2e5, 2e5], 0.01);
const set = setOf(
  truth.points.map((point, i) => ({
    ...point,
    dragCoefficient: point.dragCoefficient * (0.93 + [0.01, -0.01, 0.01, -0.01][i]),
  })),
);
const correction = measuredCorrection(set, compareSet(measured, set), measured.description);
const predicted = { dragCoefficient: 0.9, low: 0.6, high: 1.1, regime: "subcritical" } as const;
const member = ({ description }: typeof measured) => ({ description, settings: quietSettings });

describe("measuredCorrection(set, comparison, description)", () => {
  it("is the mean of measured / predicted by regime with its scatter by Student's t and the test's own uncertainty", () => {
    if (!correction.ok) throw new Error(correction.problem.message);
    const [factor] = correction.value.factors;
    expect(factor).toMatchObject({ regime: "subcritical", count: 4, from: 5e4, to: 2e5 });
    expect(factor.factor).toBeCloseTo(0.93, 9);
    // t 3.182 (JCGM 100:2008, table G.2), s = 0.01 sqrt(4 / 3), four points; own 2 x 1 % of the undiminished drag.
    const expected = Math.hypot((3.182 * 0.01 * Math.sqrt(4 / 3)) / 2, 2 * 0.01);
    expect(factor.expandedUncertainty).toBeCloseTo(expected, 3);
  });

  it("says why a regime has no factor: one point, or too much scatter", () => {
    const one = setOf(truth.points.slice(0, 1));
    expect(measuredCorrection(one, compareSet(measured, one), measured.description)).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("The subcritical regime has one point; a factor needs 2") },
    });
    const wild = setOf(truth.points.map((point, i) => ({ ...point, dragCoefficient: [0.4, 1.6, 0.5, 1.4][i] })));
    expect(measuredCorrection(wild, compareSet(measured, wild), measured.description)).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("too uncertain to carry") },
    });
  });
});

describe("carryCorrection(correction, member, reynolds, predicted)", () => {
  const carried = (to: typeof measured, reynolds = 1e5, state: object = {}) => {
    if (!correction.ok) throw new Error(correction.problem.message);
    return carryCorrection(correction.value, member(to), reynolds, { ...predicted, ...state });
  };

  it("multiplies drag and band, widens the band, and labels the result", () => {
    const result = carried(near);
    if (!result.ok) throw new Error(result.problem.message);
    const { dragCoefficient, low, high, label } = result.value;
    expect(dragCoefficient).toBeCloseTo(0.93 * 0.9, 9);
    expect(dragCoefficient - low).toBeGreaterThan(0.93 * 0.3);
    expect(high - dragCoefficient).toBeGreaterThan(0.93 * 0.2);
    expect(label).toBe('corrected by measurement "a test", factor 0.93 ± 0.03 (k = 2), same family');
  });

  it.each([
    ["another shape", circle, 1e5, {}, "It is a circle; the measured design is a rectangle."],
    ["a rounder edge", far, 1e5, {}, "corner radius/height is 0.4"],
    ["a Reynolds number below the measured ones", near, 3e4, {}, "Re 3.00e4 is outside 5.00e4 to 2.00e5"],
    ["a Reynolds number above them", near, 3e5, {}, "Re 3.00e5 is outside"],
    ["another regime", near, 1e5, { regime: "supercritical" }, "no factor for the supercritical regime"],
  ] as const)("is never applied to %s, and says so", (_, to, reynolds, state, reason) => {
    const result = carried(to, reynolds, state);
    expect(result).toMatchObject({ ok: false, problem: { message: expect.stringContaining(reason) } });
    expect(result).toMatchObject({
      problem: { message: expect.stringContaining('not corrected by measurement "a test"') },
    });
  });
});

describe("notSameFamily(measured, other)", () => {
  const settings = { turbulenceIntensity: 0.02, sandGrainRoughnessRatio: 1e-3 };

  it("keeps to turbulence and roughness within a factor of 2, unless both are too small to matter", () => {
    const { description } = measured;
    const other = (change: Partial<typeof settings>) =>
      notSameFamily({ description, settings }, { description, settings: { ...settings, ...change } });
    expect(other({ turbulenceIntensity: 0.035, sandGrainRoughnessRatio: 6e-4 })).toBe(null);
    expect(other({ turbulenceIntensity: 0.05 })).toContain("Its turbulence is 5 %; it was measured at 2 %.");
    expect(other({ sandGrainRoughnessRatio: 1e-5 })).toContain("Its ks/D is 0.00001");
    const quiet = (turbulenceIntensity: number) => ({
      description,
      settings: { turbulenceIntensity, sandGrainRoughnessRatio: 1e-6 },
    });
    expect(notSameFamily(quiet(0.001), quiet(0.006))).toBe(null);
  });

  it("keeps to length/height within a factor of 1.25", () => {
    const member = (length: number) => ({ description: prepared(spec(0.006, length), 120).description, settings });
    expect(notSameFamily(member(0.08), member(0.09))).toBe(null);
    expect(notSameFamily(member(0.08), member(0.11))).toContain("more than a factor of 1.25 apart");
  });
});
