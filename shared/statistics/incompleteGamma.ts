import { continuedFraction } from "./continuedFraction";
import { logGamma } from "./logGamma";

/**
 * Upper part Q(a, x) of the gamma function, as a share of the whole: 1 at x = 0, towards 0 for large x. Sources: Abramowitz
 * & Stegun (1964), 6.5.29 (series, for x below a + 1) and 6.5.31 in its even form (DLMF 8.9.2, continued fraction).
 * @param a above 0
 * @param x 0 or more
 */
export function upperIncompleteGamma(a: number, x: number): number {
  if (!(a > 0)) throw new RangeError(`a is ${a}; it must be above 0.`);
  if (!(x >= 0)) throw new RangeError(`x is ${x}; it must be 0 or more.`);
  if (x === 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; term > sum * 2 ** -53; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return 1 - front * sum;
  }
  const fraction = continuedFraction((n) => [n === 1 ? 1 : (n - 1) * (a - n + 1), x + 2 * n - 1 - a]);
  return front * fraction;
}
