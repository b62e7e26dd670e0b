import { describe, expect, it } from "vitest";
import { crisisPlace } from "../../shared/engine/trust/crisisSpeed";
import { dragDistribution, judgeDrag } from "../../shared/engine/trust/dragDistribution";
import type { DragKnots } from "../../shared/engine/trust/dragKnots";
import { knowledgeOf } from "../../shared/engine/trust/errorKnowledge";
import type { SectionPoint } from "../../shared/engine/trust/errorPoint";
import { learnErrors, type MeasuredCurve } from "../../shared/engine/trust/learnErrors";
import { conditionLevel } from "../../shared/engine/trust/levelProcess";
import { roundParameters } from "./syntheticModel";

const condition = { reynolds: 1e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.001 };
const sectionOf = (lengthToHeight: number): SectionPoint => ({
  shape: "rectangle",
  logLengthToHeight: Math.log(lengthToHeight),
  cornerRadiusToHeight: 0.1,
});
const even: DragKnots = {
  logReynolds: Float64Array.of(Math.log(1e4), Math.log(1e7)),
  logDrag: Float64Array.of(0, 0),
  regimes: ["subcritical", "subcritical"],
};
const drop: DragKnots = {
  logReynolds: Float64Array.from([1e4, 3e5, 3.01e5, 1e7], Math.log),
  logDrag: Float64Array.from([1.2, 1.2, 0.3, 0.3], Math.log),
  regimes: ["subcritical", "subcritical", "supercritical", "supercritical"],
};
// No bias and nothing that an answer has to itself: what is measured is the drag itself.
const exact = {
  ...roundParameters,
  singleDeviation: 0,
  sourceDeviation: { subcritical: 0, supercritical: 0, transcritical: 0 },
};
const prior = (parameters = roundParameters) => knowledgeOf(conditionLevel([], parameters));
const curve = (section: SectionPoint, knots: DragKnots, values: [number, number][], scatter = 0.02): MeasuredCurve => ({
  section,
  condition,
  knots,
  source: "own tunnel",
  points: values.map(([reynolds, drag]) => ({ logReynolds: Math.log(reynolds), logDrag: Math.log(drag), scatter })),
});
const judged = (knowledge: ReturnType<typeof prior>, section: SectionPoint, reynolds = 1e5, knots = even) =>
  judgeDrag(dragDistribution(knowledge, section, { ...condition, reynolds }, knots), knowledge, 0.02);

describe("learnErrors(knowledge, curves)", () => {
  it("of one point without noise or bias returns it, with no width", () => {
    const learned = learnErrors(prior(exact), [curve(sectionOf(2), even, [[1e5, 1.3]], 1e-6)]);
    const { expected, low, high } = judged(learned, sectionOf(2));
    expect(expected).toBeCloseTo(1.3, 6);
    expect(high - low).toBeLessThan(1e-4);
  });

  it("of one point with scatter and bias is the normal conjugate mean: Rasmussen & Williams (2006), eq. 2.25", () => {
    const learned = learnErrors(prior(), [curve(sectionOf(2), even, [[1e5, 1.3]], 0.03)]);
    const [{ level }] = learned;
    // Level 0.2, bias 0.05, single 0.02, scatter 0.03.
    const share = 0.2 ** 2 / (0.2 ** 2 + 0.05 ** 2 + 0.02 ** 2 + 0.03 ** 2);
    const variance = 0.2 ** 2 * (1 - share) + 0.02 ** 2;
    expect(level.data).toHaveLength(1);
    expect(Math.log(judged(learned, sectionOf(2)).expected)).toBeCloseTo(share * Math.log(1.3) + variance / 2, 10);
  });

  it("moves and narrows near designs, far ones hardly", () => {
    const values: [number, number][] = [5e4, 8e4, 1.2e5].map((reynolds) => [reynolds, 1.3]);
    const learned = learnErrors(prior(), [curve(sectionOf(2), even, values)]);
    const width = (section: SectionPoint, knowledge = learned) => {
      const { low, high } = judged(knowledge, section);
      return Math.log(high / low);
    };
    expect(Math.log(judged(learned, sectionOf(2.1)).expected)).toBeGreaterThan(0.2);
    expect(width(sectionOf(2.1))).toBeLessThan(0.5 * width(sectionOf(2.1), prior()));
    expect(
      Math.abs(Math.log(judged(learned, sectionOf(20)).expected / judged(prior(), sectionOf(20)).expected)),
    ).toBeLessThan(0.01);
    expect(width(sectionOf(20))).toBeGreaterThan(0.98 * width(sectionOf(20), prior()));
  });

  it("takes points about a crisis as news of its place, not of the level", () => {
    // The crisis lies at 2e5, a third lower than the engine has it; the levels are right.
    const values = [1e5, 1.4e5, 1.8e5, 2.2e5, 2.8e5, 4e5].map((reynolds): [number, number] => [
      reynolds,
      reynolds < 2e5 ? 1.2 : 0.3,
    ]);
    const learned = learnErrors(prior(), [curve(sectionOf(2), drop, values)]);
    const { low, mid, high } = crisisPlace(3e5, learned, sectionOf(2), condition);
    expect(low).toBeGreaterThan(1.75e5);
    expect(high).toBeLessThan(2.3e5);
    expect(Math.abs(mid / 2e5 - 1)).toBeLessThan(0.1);
    expect(judged(learned, sectionOf(2), 2.6e5, drop).pastCrisisShare).toBeGreaterThan(0.95);
    expect(judged(learned, sectionOf(2), 2.6e5, drop).expected).toBeLessThan(0.4);
    const level = judged(learned, sectionOf(2), 1e5, drop).expected;
    expect(Math.abs(level / 1.2 - 1)).toBeLessThan(0.06);
    // Of a body that is quite another the place stays as unknown as it was.
    const far = crisisPlace(3e5, learned, sectionOf(20), condition);
    expect(Math.log(far.high / far.low)).toBeGreaterThan(0.95 * 2 * 1.645 * 0.4);
  });

  it("says nothing of a crisis that no point can have met", () => {
    const learned = learnErrors(prior(), [curve(sectionOf(2), drop, [[1.5e4, 1.25]])]);
    expect(learned).toHaveLength(1);
    expect(learned[0].shifts).toEqual([]);
  });

  it("keeps probabilities that add up to 1 over several bodies", () => {
    const about = (section: SectionPoint) =>
      curve(
        section,
        drop,
        [
          [2.5e5, 0.9],
          [3e5, 0.4],
        ],
        0.1,
      );
    const learned = learnErrors(prior(), [about(sectionOf(2)), about(sectionOf(2.5)), about(sectionOf(3))]);
    expect(learned.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(learned.length).toBeLessThanOrEqual(40);
  });
});
