import { mean } from "../../statistics/sample";
import type { ChoiceCriterion } from "./choiceJob";

/** A criterion's values on the scale of its swing. */
export interface PartialValues {
  /** Value 0 and value 1 of the swing, in the criterion's unit (for "near": of the distance from the target). */
  readonly worst: number;
  readonly best: number;
  /** 0 at worst, 1 at best, straight on beyond both, shape [candidates][draws]. */
  readonly values: readonly Float64Array[];
}

/**
 * Straight-line values between the worst and the best; where the case does not state them, those of the candidates'
 * means (a local scale, Belton & Stewart 2002, section 5.2).
 * @param drawn the criterion in its own unit, shape [candidates][draws]
 */
export function partialValues(
  { sense, target, scale, worst, best }: Pick<ChoiceCriterion, "sense" | "target" | "scale" | "worst" | "best">,
  drawn: readonly Float64Array[],
): PartialValues {
  const near = (x: number) => (target === null ? x : Math.abs(x - target));
  const grown = (x: number) => (scale === "log" ? Math.log(Math.max(x, smallest)) : x);
  const measured = drawn.map((column) => column.map(near));
  const means = measured.map((column) => mean(column));
  const ends = [Math.min(...means), Math.max(...means)];
  const most = sense === "most";
  const from = worst === null ? ends[most ? 0 : 1] : near(worst);
  const to = best === null ? ends[most ? 1 : 0] : near(best);
  const range = grown(to) - grown(from);
  return {
    worst: from,
    best: to,
    // Where all candidates are alike, the criterion says nothing.
    values: measured.map((column) => column.map((x) => (range === 0 ? 0 : (grown(x) - grown(from)) / range))),
  };
}

/** Least value that a logarithm is taken of. */
const smallest = 1e-12;
