import { expect, test } from "vitest";
import { equivalentRoughness } from "../../shared/engine/pattern/equivalentRoughness";
import { patternHeights } from "../../shared/engine/pattern/surfacePattern";

/** Heights of a pattern sampled over one pitch (grooves, ridges) or one cell (dimples), in units of its depth. */
function sampled(kind: "grooves" | "ridges" | "dimples", width: number, count: number): number[] {
  const at = Array.from({ length: count }, (_, i) => (i + 0.5) / count - 0.5);
  if (kind !== "dimples") return at.map((x) => (Math.abs(x) < width / 2 ? (kind === "ridges" ? 1 : -1) : 0));
  return at.flatMap((x) =>
    at.map((y) => {
      const share = (x * x + y * y) / (width / 2) ** 2;
      return share < 1 ? share - 1 : 0;
    }),
  );
}

test("patternHeights equals the statistics of sampled heights within 1 %", () => {
  for (const [kind, width, count] of [
    ["grooves", 0.3, 10_000],
    ["ridges", 0.4, 10_000],
    ["dimples", 0.8, 900],
  ] as const) {
    const heights = sampled(kind, width, count);
    const mean = heights.reduce((sum, h) => sum + h, 0) / heights.length;
    const moment = (power: number) => heights.reduce((sum, h) => sum + (h - mean) ** power, 0) / heights.length;
    const { rootMeanSquare, skewness } = patternHeights({ kind, depth: 1e-3, width, pitch: 1 });
    expect(rootMeanSquare / (1e-3 * Math.sqrt(moment(2)))).toBeCloseTo(1, 2);
    expect(skewness / (moment(3) / moment(2) ** 1.5)).toBeCloseTo(1, 2);
  }
});

test("equal land and groove have no skewness: ks is 2.11 of the root mean square, half the depth", () => {
  const estimate = equivalentRoughness({ kind: "grooves", depth: 1e-3, width: 1e-3, pitch: 2e-3 });
  if (!estimate.ok) throw new Error(estimate.problem.message);
  expect(estimate.value.insideMeasured).toBe(true);
  expect(Math.abs(estimate.value.sandGrainRoughness / (2.11 * 0.5e-3) - 1)).toBeLessThan(0.005);
});

test("ridges are rougher than grooves of the same size; far-apart ones lie outside what was measured", () => {
  const of = (kind: "grooves" | "ridges", pitch: number) => {
    const estimate = equivalentRoughness({ kind, depth: 1e-3, width: 1e-3, pitch });
    if (!estimate.ok) throw new Error(estimate.problem.message);
    return estimate.value;
  };
  expect(of("ridges", 2.6e-3).sandGrainRoughness).toBeGreaterThan(of("grooves", 2.6e-3).sandGrainRoughness);
  expect(of("grooves", 2.6e-3).insideMeasured).toBe(true);
  expect(of("grooves", 20e-3).insideMeasured).toBe(false);
});

test("a pitch below the width is refused with both numbers", () => {
  const refused = equivalentRoughness({ kind: "dimples", depth: 1e-3, width: 3e-3, pitch: 2e-3 });
  expect(!refused.ok && refused.problem.message).toBe("pitch is 0.002 m; it must be above the width, 0.003 m.");
});
