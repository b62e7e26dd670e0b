import type { PredictedCrisis } from "./predictedDrag";

/** How much denser speeds lie in a crisis than far from it. A choice of this planner, no source. */
const densityInCrisis = 4;

/** Points of the density that is summed up. */
const fine = 2000;

/**
 * Speeds from the slowest to the fastest, at equal ratios far from a drag crisis and closer near it: a computed crisis is
 * good to its factor, so the dense part reaches that far on both sides. Rounded to three digits.
 * @param count         2 or more
 * @param reynoldsPerSpeed Reynolds number / speed, s/m
 */
export function speedsAboutCrises(
  slowest: number,
  fastest: number,
  count: number,
  crises: readonly PredictedCrisis[],
  reynoldsPerSpeed: number,
): number[] {
  if (!(slowest > 0 && fastest > slowest && count >= 2)) {
    throw new RangeError(
      `speeds from ${slowest} to ${fastest} m/s, ${count} of them; they must rise from above 0, 2 or more.`,
    );
  }
  const span = Math.log(fastest / slowest);
  const density = (share: number) => {
    const reynolds = reynoldsPerSpeed * slowest * Math.exp(share * span);
    return 1 + (densityInCrisis - 1) * Math.max(0, ...crises.map((crisis) => nearness(reynolds, crisis)));
  };
  const sums = new Float64Array(fine + 1);
  for (let i = 1; i <= fine; i++) sums[i] = sums[i - 1] + density((i - 0.5) / fine);
  const speeds: number[] = [];
  let i = 0;
  for (let k = 0; k < count; k++) {
    const wanted = (sums[fine] * k) / (count - 1);
    while (i < fine && sums[i + 1] < wanted) i++;
    const share = k === count - 1 ? 1 : (i + (wanted - sums[i]) / (sums[i + 1] - sums[i])) / fine;
    speeds.push(Number((slowest * Math.exp(share * span)).toPrecision(3)));
  }
  return [...new Set(speeds)];
}

/** 1 inside a crisis widened by half its factor, falling to 0 at twice the factor. */
function nearness(reynolds: number, { rising, falling, factor }: PredictedCrisis): number {
  const outside = Math.max(Math.log(falling / reynolds), Math.log(reynolds / rising), 0) / Math.log(factor);
  return Math.max(0, Math.min(1, (2 - outside) / 1.5));
}
