import { problem, type Result, success } from "../../../result";

/** One figure over its inputs, or why it cannot be had there. */
export type FigureOfInputs = (inputs: readonly number[]) => Result<number>;

export interface ToleranceStack {
  readonly nominal: number;
  /** Lowest and highest value at the corners of the tolerance box: exact where the figure is monotone in each input. */
  readonly lowest: number;
  readonly highest: number;
  /** Those corners: -1 or 1 for each input, towards its smaller or larger end. */
  readonly lowestCorner: readonly number[];
  readonly highestCorner: readonly number[];
  /** Sum of |slope| x tolerance about the nominal, slopes by central differences: linear worst case. */
  readonly linearPlusMinus: number;
  /** Slope of the figure by each input, per unit of the input. */
  readonly slopes: readonly number[];
  /** False when along some edge through the nominal the figure is not monotone, so that corners may miss its extremes. */
  readonly isMonotone: boolean;
}

/** Corners double with every input; more than this many inputs would take too long. */
export const mostInputs = 12;

/**
 * Worst case of a figure over a box of making tolerances.
 * @param nominal   inputs as drawn, shape [n]
 * @param plusMinus tolerance of each, 0 or more, shape [n]
 */
export function stackTolerances(
  nominal: readonly number[],
  plusMinus: readonly number[],
  figure: FigureOfInputs,
): Result<ToleranceStack> {
  if (nominal.length !== plusMinus.length) {
    throw new RangeError(
      `there are ${nominal.length} inputs and ${plusMinus.length} tolerances; both need the same number.`,
    );
  }
  if (nominal.length > mostInputs) {
    return problem(
      "tolerances",
      `${nominal.length} dimensions have tolerances; at most ${mostInputs} can be stacked exactly`,
    );
  }
  const bad = plusMinus.findIndex((tolerance) => !(tolerance >= 0));
  if (bad >= 0) return problem("tolerances", `tolerance ${plusMinus[bad]} must be 0 or more`);
  const centre = figure(nominal);
  if (!centre.ok) return centre;
  let lowest = centre.value;
  let highest = centre.value;
  let lowestCorner: readonly number[] = nominal.map(() => -1);
  let highestCorner = lowestCorner;
  for (let corner = 0; corner < 2 ** nominal.length; corner++) {
    const signs = nominal.map((_, i) => (((corner >> i) & 1) === 1 ? 1 : -1));
    const value = figure(nominal.map((x, i) => x + signs[i] * plusMinus[i]));
    if (!value.ok) return value;
    if (value.value < lowest) [lowest, lowestCorner] = [value.value, signs];
    if (value.value > highest) [highest, highestCorner] = [value.value, signs];
  }
  const slopes: number[] = [];
  let isMonotone = true;
  for (let i = 0; i < nominal.length; i++) {
    const at = (share: number) => figure(nominal.map((x, j) => (j === i ? x + share * plusMinus[i] : x)));
    const values = [-1, -0.5, 0.5, 1].map(at);
    const numbers: number[] = [];
    for (const value of values) {
      if (!value.ok) return value;
      numbers.push(value.value);
    }
    const [a, b, c, d] = numbers;
    slopes.push(plusMinus[i] > 0 ? (d - a) / (2 * plusMinus[i]) : 0);
    const steps = [b - a, centre.value - b, c - centre.value, d - c];
    const noise = 1e-12 * Math.max(Math.abs(a), Math.abs(d));
    isMonotone &&= steps.every((step) => step >= -noise) || steps.every((step) => step <= noise);
  }
  const linearPlusMinus = slopes.reduce((sum, slope, i) => sum + Math.abs(slope) * plusMinus[i], 0);
  return success({
    nominal: centre.value,
    lowest,
    highest,
    lowestCorner,
    highestCorner,
    linearPlusMinus,
    slopes,
    isMonotone,
  });
}
