import { describe, expect, it } from "vitest";
import { nothingFound, rowOf, sampleRow, sampleState } from "./sampleResults";

/** The keys that every result must have. */
const promisedKeys = [
  "section",
  "reynolds",
  "sandGrainRoughnessRatio",
  "turbulencePercent",
  "regime",
  "separationAngleUpperDegrees",
  "separationAngleLowerDegrees",
  "separationArcUpper",
  "separationArcLower",
  "basePressureCoefficient",
  "minimumPressureCoefficient",
  "strouhal",
  "pressureDragCoefficient",
  "frictionDragCoefficient",
  "dragCoefficient",
  "dragCoefficientLow",
  "dragCoefficientHigh",
  "applicability",
  "applicabilityReason",
  "liftCoefficient",
  "converged",
  "referenceWidth",
  "branch",
];

describe("branchRow(section, solved, branch)", () => {
  it("has every promised key, converged or not", () => {
    for (const row of [sampleRow(), rowOf(nothingFound, "falling")]) {
      expect(Object.keys(row)).toEqual(expect.arrayContaining(promisedKeys));
    }
  });

  it("turns angles into degrees and coefficients into hertz and newtons per metre", () => {
    const row = sampleRow();
    expect(row.separationAngleUpperDegrees).toBeCloseTo(80, 10);
    expect(row.separationAngleLowerDegrees).toBeCloseTo(81, 10);
    expect(row.sheddingFrequencyHertz).toBeCloseTo((0.2 * 2) / 0.08, 12);
    expect(row.dragPerSpanNewtonsPerMetre).toBeCloseTo(0.5 * 1000 * 4 * 0.08 * 1.2125, 10);
  });

  it("without a fluid leaves speed, frequency and force null", () => {
    const row = sampleRow({ speed: null });
    expect(row).toMatchObject({
      converged: true,
      speedMetresPerSecond: null,
      sheddingFrequencyHertz: null,
      dragPerSpanNewtonsPerMetre: null,
    });
    expect(row.dragCoefficient).toBe(1.2125);
  });

  it("of nothing found has nulls and the reason, never a number", () => {
    const row = rowOf(nothingFound, "rising");
    expect(row.converged).toBe(false);
    expect(row.problem).toBe("no separation point was found between 60 and 150 degrees");
    for (const key of ["dragCoefficient", "strouhal", "regime", "separationArcUpper", "liftCoefficient"] as const) {
      expect(row[key]).toBe(null);
    }
    expect(row.reynolds).toBe(187000);
  });

  it("takes the band of its branch's state, and null without one", () => {
    const states = [sampleState(), sampleState({ regime: "supercritical", dragCoefficient: 0.25 })];
    const outcome = { states, rising: 0, falling: 1, problem: null };
    const band = {
      spansCrisis: true,
      applicability: "between checked shapes",
      reason: "Not checked.",
      expected: 0.3,
      measurementLow: 0.08,
      measurementHigh: 0.5,
      pastCrisisShare: 0.9,
      crisisReynolds: { low: 9.35e4, mid: 1.87e5, high: 3.74e5 },
    } as const;
    const bands = [
      { ...band, low: 1, high: 1.4 },
      { ...band, low: 0.1, high: 0.4 },
    ];
    expect(rowOf(outcome, "falling", bands)).toMatchObject({
      dragCoefficientExpected: 0.3,
      dragCoefficientLow: 0.1,
      dragCoefficientHigh: 0.4,
      measurementDragCoefficientLow: 0.08,
      measurementDragCoefficientHigh: 0.5,
      pastCrisisShare: 0.9,
      // Half and twice the speed of the row, as the Reynolds numbers are.
      crisisSpeedLowMetresPerSecond: 1,
      crisisSpeedMidMetresPerSecond: 2,
      crisisSpeedHighMetresPerSecond: 4,
      applicability: "between checked shapes",
      applicabilityReason: "Not checked.",
    });
    expect(rowOf(outcome, "rising")).toMatchObject({
      dragCoefficientLow: null,
      dragCoefficientHigh: null,
      applicability: null,
      applicabilityReason: null,
    });
    expect(rowOf(nothingFound, "rising", [])).toMatchObject({ dragCoefficientLow: null });
  });

  it("of a flow that goes to and fro says how often it is back on the sides, where, and the drag of both flows", () => {
    const open = sampleState({ dragCoefficient: 1 });
    const bubble = { separationArc: 0.5, reattachmentArc: 2.25 };
    const reattached = sampleState({
      dragCoefficient: 0.6,
      upper: { ...open.upper, bubble },
      lower: { ...open.lower, bubble },
    });
    const mean = sampleState({ dragCoefficient: 0.9, intermittency: { reattachedShare: 0.25, open, reattached } });
    expect(rowOf({ states: [mean], rising: 0, falling: 0, problem: null }, "rising")).toMatchObject({
      reattachedTimeShare: 0.25,
      openWakeDragCoefficient: 1,
      reattachedDragCoefficient: 0.6,
      reattachmentArcUpper: 2.25,
      reattachmentArcLower: 2.25,
    });
    expect(rowOf({ states: [open], rising: 0, falling: 0, problem: null }, "rising")).toMatchObject({
      reattachedTimeShare: null,
      openWakeDragCoefficient: null,
      reattachmentArcUpper: null,
    });
  });

  it("picks the state of its branch", () => {
    const states = [sampleState(), sampleState({ regime: "supercritical", dragCoefficient: 0.25 })];
    const outcome = { states, rising: 0, falling: 1, problem: null };
    expect(rowOf(outcome, "rising")).toMatchObject({ branch: "rising", dragCoefficient: 1.2125 });
    expect(rowOf(outcome, "falling")).toMatchObject({
      branch: "falling",
      dragCoefficient: 0.25,
      regime: "supercritical",
      stateCount: 2,
    });
  });
});
