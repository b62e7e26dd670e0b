import { describe, expect, it } from "vitest";
import type { Regime } from "../../shared/engine/solution";
import { compareDraws, rankDraws } from "../../shared/engine/trust/compareDraws";
import { crisisPlace, crisisReynolds } from "../../shared/engine/trust/crisisSpeed";
import { dragDistribution, judgeDrag } from "../../shared/engine/trust/dragDistribution";
import { type DragKnots, dragAt } from "../../shared/engine/trust/dragKnots";
import { knowledgeOf } from "../../shared/engine/trust/errorKnowledge";
import { errorPoint, type SectionPoint } from "../../shared/engine/trust/errorPoint";
import { conditionLevel } from "../../shared/engine/trust/levelProcess";
import { type StudyBody, studyDraws } from "../../shared/engine/trust/studyDraws";
import { normalDistribution } from "../../shared/statistics/normal";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { mean, quantileOfSorted, standardDeviation } from "../../shared/statistics/sample";
import { drawnLevels, roundParameters } from "./syntheticModel";

const condition = { reynolds: 1e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.001 };
const rectangleOf = (lengthToHeight: number): SectionPoint => ({
  shape: "rectangle",
  logLengthToHeight: Math.log(lengthToHeight),
  cornerRadiusToHeight: 0.1,
});

/** Drag that does not change with Re. */
function level(drag: number, regime: Regime = "subcritical"): DragKnots {
  return { logReynolds: Float64Array.of(Math.log(1e5)), logDrag: Float64Array.of(Math.log(drag)), regimes: [regime] };
}

/** A drop of the drag at a Reynolds number. */
function drop(reynolds: number, before: number, after: number): DragKnots {
  return {
    logReynolds: Float64Array.from([1e4, reynolds / 1.001, reynolds * 1.001, 1e7], Math.log),
    logDrag: Float64Array.from([before, before, after, after], Math.log),
    regimes: ["subcritical", "subcritical", "supercritical", "supercritical"],
  };
}

const prior = knowledgeOf(conditionLevel([], roundParameters));
const body = (section: SectionPoint, knots: DragKnots): StudyBody => ({ streams: [{ section, condition, knots }] });

describe("dragAt(knots, logReynolds)", () => {
  it("runs straight between knots of one regime and steps half way between two", () => {
    const knots: DragKnots = {
      logReynolds: Float64Array.of(0, 1, 2),
      logDrag: Float64Array.of(0, 0.4, -1),
      regimes: ["subcritical", "subcritical", "supercritical"],
    };
    expect(dragAt(knots, 0.25).logDrag).toBeCloseTo(0.1, 12);
    expect(dragAt(knots, 1.4)).toEqual({ logDrag: 0.4, regime: "subcritical" });
    expect(dragAt(knots, 1.6)).toEqual({ logDrag: -1, regime: "supercritical" });
    expect(dragAt(knots, -5).logDrag).toBe(0);
    expect(dragAt(knots, 9).logDrag).toBe(-1);
  });
});

describe("dragDistribution and judgeDrag", () => {
  it("far from a crisis give a lognormal: expected exp(m + v / 2), 5 and 95 % at exp(m -+ 1.645 s)", () => {
    const judged = judgeDrag(dragDistribution(prior, rectangleOf(2), condition, level(1.5)), prior, 0.03);
    const deviation = Math.hypot(0.2, 0.02);
    expect(judged.expected).toBeCloseTo(1.5 * Math.exp(deviation ** 2 / 2), 10);
    expect(judged.low).toBeCloseTo(1.5 * Math.exp(-1.64485 * deviation), 4);
    expect(judged.high).toBeCloseTo(1.5 * Math.exp(1.64485 * deviation), 4);
    const measured = Math.hypot(deviation, 0.05, 0.03);
    expect(judged.measurementHigh).toBeCloseTo(1.5 * Math.exp(1.64485 * measured), 4);
    expect(judged.pastCrisisShare).toBe(0);
  });

  it("near a crisis count how often it is past: the normal probability of the shift, within the step of its parts", () => {
    for (const ratio of [0.7, 1, 1.2]) {
      const knots = drop(1e5 * ratio, 1.2, 0.3);
      const { pastCrisisShare } = judgeDrag(dragDistribution(prior, rectangleOf(2), condition, knots), prior, 0.03);
      expect(Math.abs(pastCrisisShare - normalDistribution(-Math.log(ratio) / 0.4))).toBeLessThan(1 / 20);
    }
  });
});

describe("studyDraws(level, bodies, count, seed)", () => {
  it("have in every column the distribution that the body has alone", () => {
    const knots = drop(1.1e5, 1.2, 0.3);
    const { logDrag, pastCrisisShare } = studyDraws(
      prior,
      [body(rectangleOf(2), knots), body(rectangleOf(1), level(2))],
      6000,
      1,
    );
    const alone = judgeDrag(dragDistribution(prior, rectangleOf(2), condition, knots), prior, 0.03);
    const drag = logDrag[0].map(Math.exp).sort();
    expect(mean(drag) / alone.expected).toBeCloseTo(1, 1);
    expect(quantileOfSorted(drag, 0.95) / alone.high).toBeCloseTo(1, 1);
    expect(Math.abs(pastCrisisShare[0] - alone.pastCrisisShare)).toBeLessThan(0.05);
    expect(standardDeviation(logDrag[1])).toBeCloseTo(Math.hypot(0.2, 0.02), 2);
  });

  it("are the same for equal seeds and others for others", () => {
    const bodies = [body(rectangleOf(2), level(1)), body(rectangleOf(1), level(2))];
    expect(studyDraws(prior, bodies, 50, 7)).toEqual(studyDraws(prior, bodies, 50, 7));
    expect(studyDraws(prior, bodies, 50, 8).logDrag[0]).not.toEqual(studyDraws(prior, bodies, 50, 7).logDrag[0]);
  });

  it("give bodies that are alike the same error, so that their difference is known far better than either", () => {
    const bodies = [body(rectangleOf(2), level(1)), body(rectangleOf(2.02), level(0.95))];
    const { logDrag } = studyDraws(prior, bodies, 3000, 2);
    const difference = logDrag[0].map((value, k) => value - logDrag[1][k]);
    expect(standardDeviation(difference)).toBeLessThan(0.2 * standardDeviation(logDrag[0]));
  });

  it("draw the stream that is not known once for all bodies", () => {
    const streamsOf = (section: SectionPoint) => [1, 2].map((drag) => ({ section, condition, knots: level(drag) }));
    const quiet = { ...roundParameters, levelDeviation: { subcritical: 1e-6, other: 1e-6 }, singleDeviation: 0 };
    const { logDrag } = studyDraws(
      knowledgeOf(conditionLevel([], quiet)),
      [{ streams: streamsOf(rectangleOf(1)) }, { streams: streamsOf(rectangleOf(3)) }],
      400,
      3,
    );
    logDrag[0].forEach((value, k) => {
      expect(Math.abs(value - logDrag[1][k])).toBeLessThan(1e-4);
    });
    const second = logDrag[0].filter((value) => value > 0.3).length / 400;
    expect(Math.abs(second - 0.5)).toBeLessThan(3 * Math.sqrt(0.25 / 400));
  });

  it("refuse bodies with different numbers of streams", () => {
    const two = { streams: [1, 2].map((drag) => ({ section: rectangleOf(1), condition, knots: level(drag) })) };
    expect(() => studyDraws(prior, [body(rectangleOf(1), level(1)), two], 10, 1)).toThrow("all need the same number");
  });
});

describe("compareDraws(first, second)", () => {
  it("of two independent lognormals has their closed forms, within Monte Carlo error", () => {
    const draws = randomDraws(9);
    const count = 20000;
    const first = Float64Array.from({ length: count }, () => -0.1 + 0.1 * draws.normal());
    const second = Float64Array.from({ length: count }, () => 0.15 * draws.normal());
    const { changePercent, probabilityLess } = compareDraws(first, second);
    const deviation = Math.hypot(0.1, 0.15);
    expect(probabilityLess).toBeCloseTo(normalDistribution(0.1 / deviation), 1);
    expect(changePercent.expected).toBeCloseTo(100 * Math.expm1(-0.1 + deviation ** 2 / 2), 0);
    expect(changePercent.low).toBeCloseTo(100 * Math.expm1(-0.1 - 1.645 * deviation), 0);
  });

  it("is decided from a probability of 0.9 on, and of equals says nothing", () => {
    const ten = Float64Array.from({ length: 10 }, (_, k) => k);
    const shifted = ten.map((value, k) => (k < 1 ? value - 1 : value + 1));
    expect(compareDraws(ten, shifted)).toMatchObject({ probabilityLess: 0.9, decided: "less" });
    expect(compareDraws(shifted, ten)).toMatchObject({ probabilityLess: 0.1, decided: "more" });
    expect(compareDraws(ten, ten)).toMatchObject({ probabilityLess: 0.5, decided: "not decided" });
  });

  it("gives probabilities that come true: studies of a world that is known, within three binomial standard errors", () => {
    const draws = randomDraws(31);
    const called = { count: 0, expected: 0, right: 0, variance: 0 };
    for (let study = 0; study < 250; study++) {
      const sections = [rectangleOf(1 + 2 * draws.uniform()), rectangleOf(1 + 2 * draws.uniform())];
      const engine = [1, 1 + 0.3 * draws.uniform()];
      const truth = drawnLevels(
        sections.map((section) => errorPoint(section, condition, "subcritical")),
        roundParameters,
        draws,
      );
      const { logDrag } = studyDraws(
        prior,
        sections.map((section, i) => body(section, level(engine[i]))),
        400,
        study,
      );
      const { probabilityLess } = compareDraws(logDrag[0], logDrag[1]);
      called.count++;
      called.expected += probabilityLess;
      called.variance += probabilityLess * (1 - probabilityLess);
      if (Math.log(engine[0]) + truth[0] < Math.log(engine[1]) + truth[1]) called.right++;
    }
    expect(Math.abs(called.right - called.expected)).toBeLessThan(3 * Math.sqrt(called.variance));
  });
});

describe("rankDraws(logDrag)", () => {
  it("counts who is best and what each choice costs", () => {
    const columns = [Float64Array.of(0, 0, 1, 1), Float64Array.of(1, 0, 0, 0)];
    const { probabilityBest, expectedRegretPercent } = rankDraws(columns);
    expect(probabilityBest).toEqual([0.375, 0.625]);
    expect(expectedRegretPercent[0]).toBeCloseTo((100 * 2 * Math.expm1(1)) / 4, 12);
    expect(expectedRegretPercent[1]).toBeCloseTo((100 * Math.expm1(1)) / 4, 12);
  });
});

describe("the place of a crisis", () => {
  it("is where the drag leaves laminar separation, and none where it never does", () => {
    expect(crisisReynolds(drop(3e5, 1.2, 0.3))).toBeCloseTo(3e5, 0);
    expect(crisisReynolds(level(1))).toBeNull();
  });

  it("is a lognormal about the engine's, moved by the mean shift", () => {
    const shifted = {
      ...roundParameters,
      crisisShift: { ...roundParameters.crisisShift, "other section": { mean: 0.1, deviation: 0.4 } },
    };
    const { low, mid, high } = crisisPlace(3e5, knowledgeOf(conditionLevel([], shifted)), rectangleOf(1), condition);
    expect(mid).toBeCloseTo(3e5 * Math.exp(-0.1), 3);
    expect(Math.log(high / mid)).toBeCloseTo(1.64485 * 0.4, 4);
    expect(Math.log(mid / low)).toBeCloseTo(1.64485 * 0.4, 4);
  });
});
