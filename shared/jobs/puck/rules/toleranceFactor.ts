import { type FigureOfInputs, stackTolerances, type ToleranceStack } from "./toleranceStack";

/** Allowed range of a figure; null where it has no end. */
export interface AllowedRange {
  readonly from: number | null;
  readonly to: number | null;
}

/** The factor is found to this. */
const tolerance = 1e-9;
const mostSteps = 60;

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
  /** Distance to the nearer end of the range, below 0 outside; a puck that cannot be made is outside. */
  const margin = (factor: number): number => {
    const [low, high] = extremes(factor);
    if (Number.isNaN(low + high)) return Number.NaN;
    const endless = Number.POSITIVE_INFINITY;
    return Math.min(from === null ? endless : low - from, to === null ? endless : to - high);
  };
  let [inside, outside] = [0, 1];
  let insideMargin = margin(0);
  let outsideMargin = margin(1);
  let kept: "inside" | "outside" | null = null;
  // Regula falsi with the Illinois rule; halving wherever a puck cannot be made.
  for (let i = 0; i < mostSteps && outside - inside > tolerance; i++) {
    const secant = insideMargin / (insideMargin - outsideMargin);
    const share = Number.isFinite(secant) ? Math.min(0.999, Math.max(0.001, secant)) : 0.5;
    const middle = inside + share * (outside - inside);
    const found = margin(middle);
    if (found >= 0) {
      [inside, insideMargin] = [middle, found];
      if (kept === "outside") outsideMargin /= 2;
      kept = "outside";
      if (found === 0) break;
    } else {
      [outside, outsideMargin] = [middle, found];
      if (kept === "inside") insideMargin /= 2;
      kept = "inside";
    }
  }
  return inside;
}
