import { gaussRule } from "./gaussRule";

const { abscissae, weights } = gaussRule(16);

/** Abscissae of the rule with 16 points on [-1, 1], increasing, shape [16]. */
export const gaussAbscissae: Readonly<Float64Array> = abscissae;
/** Weights, which add up to 2, shape [16]. */
export const gaussWeights: Readonly<Float64Array> = weights;

/** Integral of a smooth function from a to b by 16 points, exact for polynomials to degree 31. */
export function gaussIntegral(integrand: (t: number) => number, a: number, b: number): number {
  const half = (b - a) / 2;
  const middle = (a + b) / 2;
  let sum = 0;
  for (let i = 0; i < abscissae.length; i++) sum += weights[i] * integrand(middle + half * abscissae[i]);
  return sum * half;
}
