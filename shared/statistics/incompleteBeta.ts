import { continuedFraction } from "./continuedFraction";
import { logGamma } from "./logGamma";

/**
 * I_x(a, b), the incomplete beta function as a share of the whole. Sources: Abramowitz & Stegun (1964), 26.5.2 (the two
 * ends mirrored) and 26.5.8 (continued fraction, used on the side where it settles fast; DLMF 8.17.22 says which).
 * @param x 0 to 1
 * @param a above 0
 * @param b above 0
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0)) throw new RangeError(`a and b are ${a} and ${b}; both must be above 0.`);
  if (!(x >= 0 && x <= 1)) throw new RangeError(`x is ${x}; it must be from 0 to 1.`);
  if (x === 0 || x === 1) return x;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front / a) * betaFraction(x, a, b) : 1 - (front / b) * betaFraction(1 - x, b, a);
}

function betaFraction(x: number, a: number, b: number): number {
  return continuedFraction((n) => {
    if (n === 1) return [1, 1];
    const m = Math.floor((n - 1) / 2);
    const step = a + 2 * m;
    return n % 2 === 1
      ? [(m * (b - m) * x) / ((step - 1) * step), 1]
      : [(-(a + m) * (a + b + m) * x) / (step * (step + 1)), 1];
  });
}
