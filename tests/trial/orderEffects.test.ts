import { describe, expect, it } from "vitest";
import { orderEffects, type SessionScore } from "../../shared/jobs/trial/orderEffects";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { milkYields } from "./publishedData";

function sessions(rows: typeof milkYields): SessionScore[] {
  return rows.flatMap(({ feeds, yields }, block) =>
    yields.map((score, position) => ({
      block,
      treatment: "ABC".indexOf(feeds[position]),
      position,
      before: position === 0 ? null : "ABC".indexOf(feeds[position - 1]),
      score,
    })),
  );
}

describe("order effects of a cross-over trial", () => {
  it("Cochran & Cox 1957, milk yields: carry-over F 8.877, p 0.0161, periods F 91.30; R anova of lm", () => {
    const { carryOver, position } = orderEffects(sessions(milkYields), 3, 199, randomDraws(5));
    expect(carryOver?.fStatistic).toBeCloseTo(8.87675, 5);
    expect(carryOver?.degreesOfFreedom).toBe(2);
    expect(carryOver?.residualDegreesOfFreedom).toBe(6);
    expect(carryOver?.fP).toBeCloseTo(0.016117, 6);
    expect(position?.fStatistic).toBeCloseTo(91.29652, 4);
    // Carry-over of C is aliased with the periods in R, so differences between feeds are compared.
    const [a, b, c] = carryOver?.effects ?? [];
    expect(a - c).toBeCloseTo(-20.25, 6);
    expect(b - c).toBeCloseTo(-16.375, 6);
  });

  it("a session's order without any effect gives p above 0.05 about 95 times in 100", () => {
    const draws = randomDraws(11);
    let shown = 0;
    const trials = 200;
    for (let trial = 0; trial < trials; trial++) {
      const rows = milkYields.map(({ feeds }) => ({ feeds, yields: [0, 1, 2].map(() => draws.normal()) }));
      const { carryOver } = orderEffects(sessions(rows), 3, 99, draws);
      if ((carryOver?.permuted.pValue ?? 1) <= 0.05) shown++;
    }
    // Binomial, 4 standard deviations.
    expect(Math.abs(shown / trials - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / trials));
  });

  it("one order for all cannot tell position from puck: no test", () => {
    const rows = [1, 2, 3, 4].map((level) => ({ feeds: "ABC", yields: [level, level + 1, level + 3] }));
    const found = orderEffects(sessions(rows), 3, 9, randomDraws(1));
    expect(found.position).toBeNull();
    expect(found.carryOver).toBeNull();
  });
});
