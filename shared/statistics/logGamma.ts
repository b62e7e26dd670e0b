/** Argument from which the terms below give the full number of digits. */
const largeArgument = 12;
/** Bernoulli number 2k over 2k (2k - 1), k = 1 to 7. Source: Abramowitz & Stegun (1964), 6.1.41. */
const stirlingTerms = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156];

/**
 * ln Gamma(x), by Stirling's series after stepping up with Gamma(x + 1) = x Gamma(x). Source: Abramowitz & Stegun (1964),
 * 6.1.15 and 6.1.41.
 * @param x above 0
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`x is ${x}; it must be above 0.`);
  let steps = 1;
  let z = x;
  for (; z < largeArgument; z++) steps *= z;
  let series = 0;
  for (let k = stirlingTerms.length - 1; k >= 0; k--) series = series / (z * z) + stirlingTerms[k];
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series / z - Math.log(steps);
}
