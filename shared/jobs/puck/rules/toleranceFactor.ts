import { findRoot } from "../../../numerics/rootFinder";
import { type FigureOfInputs, stackTolerances, type ToleranceStack } from "./toleranceStack";

/** Allowed range of a figure; null where it has no end. */
export interface AllowedRange {
  readonly from: number | null;
  readonly to: number | null;
}

/** The factor is found to this. */
const tolerance = 1e-9;

/**
 * The largest factor, 0 to 1, on all making tolerances that keeps a figure inside its range; the figure as drawn is inside
 * and the whole tolerances reach outside. Where the figure is monotone in each input its extremes stay at the same two
 * corners of the tolerance box, so that only those are looked at; else all corners are, step by step.
 * @param stack of the whole tolerances
 */
export function toleranceFactor(
  nominal: readonly number[],
  plusMinus: readonly number[],
  figure: FigureOfInputs,
  stack: ToleranceStack,
  { from, to }: AllowedRange,
): number {
  const scaled = (factor: number) => plusMinus.map((each) => factor * each);
  const corner = (factor: number, signs: readonly number[]) => {
    const value = figure(nominal.map((x, i) => x + factor * signs[i] * plusMinus[i]));
    return value.ok ? value.value : Number.NaN;
  };
  const extremes = (factor: number): readonly [number, number] => {
    if (stack.isMonotone) return [corner(factor, stack.lowestCorner), corner(factor, stack.highestCorner)];
    const whole = stackTolerances(nominal, scaled(factor), figure);
    return whole.ok ? [whole.value.lowest, whole.value.highest] : [Number.NaN, Number.NaN];
  };
  /** Distance to the nearer end of the range, below 0 outside; a puck that cannot be made is far outside. */
  const margin = (factor: number): number => {
    const [low, high] = extremes(factor);
    const endless = Number.POSITIVE_INFINITY;
    if (Number.isNaN(low + high)) return -endless;
    return Math.min(from === null ? endless : low - from, to === null ? endless : to - high);
  };
  return findRoot(margin, 0, 1, { tolerance, end: "from" });
}
