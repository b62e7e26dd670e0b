import { describe, expect, it } from "vitest";
import { compareSet } from "../../shared/jobs/evidence/compareSet";
import { fitCause } from "../../shared/jobs/evidence/fitCause";
import { bareMeasuredPoint } from "../../shared/jobs/evidence/measurement";
import { achenbach1971 } from "../published/achenbach-1971";
import { codeCylinderDrag } from "../published/en-1991-1-4";
import { causesOf, prepared, quietConditions, quietSettings, setOf, syntheticSet } from "./measuredSets";

const circle = prepared({ family: "circle", diameter: 0.1 }, 80);
const puckProfile = prepared({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }, 120);
const reynoldsNumbers = [3e4, 7e4, 1e5, 1.5e5, 2e5, 2.5e5, 3e5, 4e5, 5e5, 7e5, 1e6, 2e6];

describe("causeSteps: a measurement made by the engine under another setting than it states", () => {
  it.each([
    ["roughness", { sandGrainRoughnessRatio: 1e-3 }, 1e-3, 0.15],
    ["roughness", { sandGrainRoughnessRatio: 4e-3 }, 4e-3, 0.15],
    ["turbulence", { turbulenceIntensity: 0.02 }, 0.02, 0.15],
    ["blockage", { blockageRatio: 0.12 }, 0.12, 0.05],
    ["ends", { lengthToWidth: 5 }, 5, 0.15],
  ] as const)("on a circle points to the %s first and finds its value", (key, setting, value, tolerance) => {
    const set = syntheticSet(circle, { ...quietSettings, ...setting }, reynoldsNumbers);
    const comparison = compareSet(circle, set);
    expect(comparison.exceedingCount).toBeGreaterThan(0);
    const [first, second] = causesOf(circle, set, comparison);
    expect(first.key).toBe(key);
    expect(Math.abs(first.value / value - 1)).toBeLessThan(tolerance);
    expect(first.low).toBeLessThanOrEqual(value * (1 + 1e-3));
    expect(first.high).toBeGreaterThanOrEqual(value * (1 - 1e-3));
    expect(first.explainedShare).toBeGreaterThan(0.95);
    expect(first).toMatchObject({ exceedingAfter: 0, plausible: true });
    expect(second.explainedShare).toBeLessThan(0.7);
  });

  it("on a puck's profile finds roughness, whose crisis comes early", () => {
    const set = syntheticSet(puckProfile, { ...quietSettings, sandGrainRoughnessRatio: 1e-3 }, reynoldsNumbers);
    const [first] = causesOf(puckProfile, set);
    expect(first).toMatchObject({ key: "roughness", exceedingAfter: 0 });
    expect(first.low).toBeLessThan(1e-3);
    expect(first.high).toBeGreaterThan(1e-3);
  });

  it("says how implausible the best value is: ks/D 2e-2 on 100 mm is coarser than planed wood", () => {
    const set = syntheticSet(circle, { ...quietSettings, sandGrainRoughnessRatio: 1.8e-2 }, reynoldsNumbers);
    const [first] = causesOf(circle, set);
    expect(first).toMatchObject({ key: "roughness", plausible: false });
    expect(first.plausibleTo).toBeCloseTo(5e-3, 12);
  });
});

describe("causeSteps: a published curve held against the wrong roughness points to roughness", () => {
  it("EN 1991-1-4 (2005), figure 7.28, k/b 1e-3, as if it were polished: ks/D within a factor of 2.5", () => {
    const points = [5e5, 7e5, 1e6, 1.5e6, 2e6, 3e6, 5e6, 1e7].map((reynolds) =>
      bareMeasuredPoint(reynolds, codeCylinderDrag(reynolds, 1e-3), 0.02),
    );
    const [first] = causesOf(circle, setOf(points));
    expect(first.key).toBe("roughness");
    expect(first.value).toBeGreaterThan(1e-3 / 2.5);
    expect(first.value).toBeLessThan(2.5e-3);
    expect(first.explainedShare).toBeGreaterThan(0.8);
  });

  it("Achenbach (1971), emery paper ks/D 4.5e-3 (from memory, low confidence): roughness, within a factor of 3", () => {
    const of = achenbach1971.values.filter(
      ({ quantity }) => "sandGrainRoughnessRatio" in quantity && quantity.sandGrainRoughnessRatio === 4.5e-3,
    );
    const value = (kind: string) => of.find(({ quantity }) => quantity.kind === kind)!.value;
    const points = [
      bareMeasuredPoint(value("reynoldsAtLowestDrag"), value("lowestDragCoefficient"), 0.08),
      ...[1e6, 1.7e6, 3e6].map((reynolds) => bareMeasuredPoint(reynolds, value("meanDragCoefficient"), 0.06)),
    ];
    const [first] = causesOf(circle, setOf(points, { ...quietConditions, turbulenceIntensity: 0.007 }));
    expect(first.key).toBe("roughness");
    expect(first.value).toBeGreaterThan(4.5e-3 / 3);
    expect(first.value).toBeLessThan(3 * 4.5e-3);
  });
});

describe("fitCause(cause, misfitAt, before, pointCount)", () => {
  const range = { from: 1, to: 100, stated: 100, logarithmic: true };
  const run = (misfitAt: (value: number) => number, before: number) => {
    const steps = fitCause(range, misfitAt, before, 10);
    for (;;) {
      const step = steps.next();
      if (step.done === true) return step.value;
    }
  };

  it("finds the bottom of a parabola and the values where it has risen by 4", () => {
    // Misfit 1 + ((ln x - ln 20) / 0.1)^2 rises by 4 at a factor of exp(0.2).
    const fit = run((x) => 1 + (Math.log(x / 20) / 0.1) ** 2, 1e4);
    expect(fit.value).toBeCloseTo(20, 0);
    expect(fit.high / 20).toBeCloseTo(Math.exp(0.2), 1);
    expect(20 / fit.low).toBeCloseTo(Math.exp(0.2), 1);
  });

  it("takes the middle of a flat bottom and gives the range from edge to edge", () => {
    const fit = run((x) => (x > 10 && x < 40 ? 0 : 1e3), 1e3);
    expect(fit.value).toBeGreaterThan(15);
    expect(fit.value).toBeLessThan(27);
    expect(fit.low).toBeCloseTo(10, 0);
    expect(fit.high / 40).toBeCloseTo(1, 1);
  });

  it("stops after the layout where nothing is gained", () => {
    expect(run(() => 50, 50).trials.length).toBe(18);
  });
});
