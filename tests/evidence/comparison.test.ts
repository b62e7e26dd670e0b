import { describe, expect, it } from "vitest";
import { compareSet } from "../../shared/jobs/evidence/compareSet";
import { bareMeasuredPoint } from "../../shared/jobs/evidence/measurement";
import { exceedsBothBands, normalisedError } from "../../shared/jobs/evidence/normalisedError";
import { regimeBiases } from "../../shared/jobs/evidence/regimeBias";
import { endRelief } from "../../shared/jobs/puck/drag/endRelief";
import { causesOf, prepared, quietConditions, quietSettings, setOf, syntheticSet } from "./measuredSets";

const circle = prepared({ family: "circle", diameter: 0.08 }, 80);
const reynoldsNumbers = [3e4, 1e5, 2e5, 5e5, 1e6, 2e6];

describe("normalisedError(measured, standardUncertainty, predicted), ISO/IEC 17043:2010, B.3.1.3 e (from memory)", () => {
  it("is the difference over the root sum of squares of both expanded uncertainties", () => {
    // U_x = 2 x 0.03 = 0.06; 90 % half-width 1.645 x 0.04 is U_X = 0.08; hypot = 0.1, difference 0.15.
    const half = 1.6448536269514722 * 0.04;
    const predicted = { dragCoefficient: 1, low: 1 - 3 * half, high: 1 + half };
    expect(normalisedError(1.15, 0.03, predicted)).toBeCloseTo(1.5, 12);
    // Below the prediction its other half counts, three times as wide.
    expect(normalisedError(0.85, 0.03, predicted)).toBeCloseTo(-0.15 / Math.hypot(0.06, 0.24), 12);
  });

  it("refuses a negative or missing uncertainty", () => {
    const predicted = { dragCoefficient: 1, low: 0.9, high: 1.1 };
    expect(() => normalisedError(1, -0.1, predicted)).toThrow("it must be 0 or more");
    expect(() => normalisedError(1, Number.NaN, predicted)).toThrow(RangeError);
  });
});

describe("exceedsBothBands(measured, standardUncertainty, band)", () => {
  it("holds only where the bands do not touch", () => {
    const band = { dragCoefficient: 1, low: 0.9, high: 1.1 };
    expect(exceedsBothBands(1.15, 0.02, band)).toBe(true);
    expect(exceedsBothBands(1.15, 0.03, band)).toBe(false);
    expect(exceedsBothBands(0.85, 0.02, band)).toBe(true);
    expect(exceedsBothBands(1, 0, band)).toBe(false);
  });
});

describe("regimeBiases(residuals)", () => {
  it("gives mean, standard deviation and t interval; t 3.182 at 3 degrees of freedom, JCGM 100:2008, table G.2", () => {
    const [bias, all] = regimeBiases(
      [0.1, 0.2, 0.1, 0.2].map((relative) => ({ regime: "subcritical" as const, relative })),
    );
    expect(bias).toMatchObject({ regime: "subcritical", count: 4 });
    expect(bias.bias).toBeCloseTo(0.15, 12);
    expect(bias.scatter).toBeCloseTo(Math.sqrt(0.01 / 3), 12);
    expect(bias.high! - bias.bias).toBeCloseTo((3.18 * Math.sqrt(0.01 / 3)) / 2, 3);
    expect(all).toEqual({ ...bias, regime: "all" });
  });

  it("has no scatter and no interval of one point, and leaves empty regimes out", () => {
    const biases = regimeBiases([{ regime: "critical", relative: -0.2 }]);
    expect(biases.map(({ regime }) => regime)).toEqual(["critical", "all"]);
    expect(biases[0]).toMatchObject({ count: 1, bias: -0.2, scatter: null, low: null, high: null });
  });
});

describe("compareSet(section, set)", () => {
  it("finds no disagreement in what the engine predicts itself, and no cause for it", () => {
    const set = syntheticSet(circle, quietSettings, reynoldsNumbers);
    const comparison = compareSet(circle, set);
    expect(comparison).toMatchObject({ comparedCount: 6, exceedingCount: 0, beyondOneCount: 0 });
    for (const { residual } of comparison.points) expect(residual?.absolute).toBeCloseTo(0, 12);
    expect(causesOf(circle, set, comparison)).toEqual([]);
  });

  it("takes the branch of the direction in which the speed was changed, and both where that is unknown", () => {
    // Both states exist here: 1.2 on a rising and 0.2 on a falling speed.
    const at = (direction: "rising" | "falling" | null) =>
      compareSet(circle, setOf([bareMeasuredPoint(3.2e5, 0.6)], quietConditions, direction)).points[0].predicted!;
    expect(at("rising").dragCoefficient).toBeGreaterThan(1);
    expect(at("falling").dragCoefficient).toBeLessThan(0.4);
    expect(at(null)).toMatchObject({ dragCoefficient: at("rising").dragCoefficient });
    expect(at(null).low).toBeLessThanOrEqual(at("falling").low);
  });

  it("keeps the order of the points, whatever their Reynolds numbers", () => {
    const points = [1e6, 3e4, 1e6, 2e5].map((reynolds) => bareMeasuredPoint(reynolds, 0.5));
    const compared = compareSet(circle, setOf(points)).points;
    expect(compared.map(({ measured }) => measured.reynolds)).toEqual([1e6, 3e4, 1e6, 2e5]);
    expect(compared[0].predicted).toEqual(compared[2].predicted);
    expect(compared[1].predicted!.dragCoefficient).toBeGreaterThan(compared[0].predicted!.dragCoefficient);
  });

  it("leaves out what cannot be predicted instead of making it up", () => {
    const comparison = compareSet(circle, setOf([bareMeasuredPoint(5e8, 0.5), bareMeasuredPoint(1e5, 1.2)]));
    expect(comparison.points[0]).toMatchObject({ predicted: null, residual: null });
    expect(comparison.comparedCount).toBe(1);
  });

  it("shows Strouhal number, base pressure and separation angle beside the drag where they were measured", () => {
    const point = { ...bareMeasuredPoint(1e5, 1.2), strouhal: 0.19, basePressureCoefficient: -1.2 };
    const { residual, predicted } = compareSet(circle, setOf([point])).points[0];
    expect(residual!.strouhal).toBeCloseTo(0.19 - predicted!.strouhal!, 12);
    expect(residual!.basePressureCoefficient).toBeCloseTo(-1.2 - predicted!.basePressureCoefficient!, 12);
    expect(residual!.separationAngleDegrees).toBe(null);
  });
});

describe("measuredSection(...).predict(settings, ...)", () => {
  const at = (settings: Partial<typeof quietSettings>) =>
    circle.predict({ ...quietSettings, ...settings }, [{ reynolds: 1e5, direction: "rising" }], true)[0]!;

  it("scales drag of free ends by the end relief of the regime, its band included", () => {
    const relief = endRelief(2, "subcritical");
    const [endless, short] = [at({}), at({ lengthToWidth: 2 })];
    expect(short.dragCoefficient).toBeCloseTo(endless.dragCoefficient * relief.expected, 12);
    expect(short.low).toBeCloseTo(endless.low * relief.low, 12);
    expect(short.high).toBeCloseTo(endless.high * relief.high, 12);
  });

  it("between walls has more drag, a deeper base pressure and a higher Strouhal number", () => {
    const [free, confined] = [at({}), at({ blockageRatio: 0.1 })];
    expect(confined.dragCoefficient).toBeGreaterThan(1.08 * free.dragCoefficient);
    expect(confined.basePressureCoefficient).toBeLessThan(free.basePressureCoefficient);
    expect(confined.strouhal).toBeGreaterThan(free.strouhal);
  });
});
