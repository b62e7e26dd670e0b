/** Relative change of one more fraction below which the value stands. */
const relativeTolerance = 2 ** -52;
/** Stands for a denominator of 0. */
const tiny = 1e-300;
const mostTerms = 100_000;

/**
 * Value of a1 / (b1 + a2 / (b2 + a3 / (b3 + ...))) from the front. Source: Lentz (1976), Appl. Opt. 15, 668-671, as changed
 * by Thompson & Barnett (1986), J. Comput. Phys. 64, 490-509.
 * @param term numerator a and denominator b of fraction n, n = 1, 2, ...
 * @throws RangeError when it has not settled after 100 000 fractions
 */
export function continuedFraction(term: (n: number) => readonly [a: number, b: number]): number {
  let value = tiny;
  let c = value;
  let d = 0;
  for (let n = 1; n <= mostTerms; n++) {
    const [a, b] = term(n);
    d = b + a * d;
    if (d === 0) d = tiny;
    d = 1 / d;
    c = b + a / c;
    if (c === 0) c = tiny;
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) <= relativeTolerance) return value;
  }
  throw new RangeError(`a continued fraction has not settled after ${mostTerms} fractions.`);
}
