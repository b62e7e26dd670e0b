import { describe, expect, it } from "vitest";
import type { StatedCorrelation } from "../../shared/jobs/tunnel/correlationFaults";
import type { ReducedPoint, ReductionSetting } from "../../shared/jobs/tunnel/reducedTest";
import { prepareReduction } from "../../shared/jobs/tunnel/reduceRuns";
import type { RunReading } from "../../shared/jobs/tunnel/runTable";
import type { StatedKey } from "../../shared/jobs/tunnel/statedUncertainties";
import { modelReference } from "../../shared/jobs/tunnel/tunnelShape";
import { circleModel, roomAir, value } from "./tunnelSamples";

const pair = (one: StatedKey, other: StatedKey, coefficient: number): StatedCorrelation => ({
  between: [one, other],
  coefficient,
});

describe("reduction with correlations", () => {
  const model = circleModel();
  const setting: ReductionSetting = {
    shape: model.shape,
    reference: modelReference(model),
    fluidSpec: roomAir,
    balance: { range: 500, resolution: 0, noise: null },
    blockageRatio: 0,
    correction: "none",
    stated: {
      balanceCalibrationPercent: { plusMinus: 1, kind: "standard" },
      dynamicPressurePercent: { plusMinus: 1, kind: "standard" },
      otherPercent: { plusMinus: 1, kind: "rectangular" },
    },
    correlations: [],
    repeatability: "perPoint",
    coverage: 0.95,
    samples: 4000,
    seed: 1,
  };
  const reading: RunReading = {
    row: 2,
    kind: "model",
    direction: "rising",
    aimSpeed: null,
    time: null,
    speed: null,
    dynamicPressure: 500,
    temperature: 20,
    staticPressure: 101325,
    humidity: null,
    force: 12,
  };
  const reduce = (...correlations: StatedCorrelation[]) => {
    const prepared = value(prepareReduction([reading], { ...setting, correlations }));
    const points = prepared.points.map((point) => value(prepared.reduce(point)));
    return { ...points[0], notes: prepared.finish(points).notes };
  };
  const relative = ({ firstOrder, dragCoefficient }: ReducedPoint) =>
    firstOrder.combinedStandardUncertainty / dragCoefficient;

  it("Cd ~ F / q: two parts of 1 % that go together cancel, those that go against each other add up; closed form", () => {
    const other = 0.01 ** 2 / 3;
    const together = (r: number) => reduce(pair("balanceCalibrationPercent", "dynamicPressurePercent", r));
    expect(relative(together(1))).toBeCloseTo(Math.sqrt(other), 5);
    expect(relative(together(-1))).toBeCloseTo(Math.sqrt(0.02 ** 2 + other), 5);
    expect(relative(together(0.5))).toBeCloseTo(Math.sqrt(0.01 ** 2 + other), 5);
    expect(together(0.5).monteCarlo?.standardUncertainty).toBeCloseTo(
      together(0.5).firstOrder.combinedStandardUncertainty,
      3,
    );
  });

  it("a coefficient of 0 is no correlation, whatever the parts", () => {
    const { notes: _notes, ...zero } = reduce(pair("balanceCalibrationPercent", "otherPercent", 0));
    const { notes: _same, ...none } = reduce();
    expect(zero).toEqual(none);
  });

  it("parts that are not normal keep the first-order uncertainty and are left out of the Monte Carlo, which is said", () => {
    const found = reduce(pair("balanceCalibrationPercent", "otherPercent", 1));
    expect(found.monteCarlo).toBeNull();
    expect(relative(found)).toBeCloseTo(Math.sqrt(0.01 ** 2 + (0.01 + 0.01 / Math.sqrt(3)) ** 2), 5);
    expect(found.notes.join(" ")).toContain('Correlations: no Monte Carlo for "Anything else"');
  });

  it("one with a part that the budget has not changes nothing, which is said", () => {
    const found = reduce(pair("balanceCalibrationPercent", "speedPercent", 1));
    expect(relative(found)).toBe(relative(reduce()));
    expect(found.notes.join(" ")).toContain('Correlation 1: "Speed as read" is no part of the budget of these runs');
  });
});
