/**
 * Gauss-Legendre quadrature with 16 points, exact for polynomials to degree 31.
 * Abscissae by Newton's method on the Legendre polynomial, weights 2 / ((1 - x^2) P'(x)^2):
 * Abramowitz & Stegun (1964), eq. 25.4.29; start values cos(pi (i - 1/4) / (n + 1/2)), eq. 22.16.6.
 */
const order = 16;

/** Abscissae on [-1, 1], increasing, shape [16]. */
export const gaussAbscissae: Readonly<Float64Array> = new Float64Array(order);
/** Weights, which add up to 2, shape [16]. */
export const gaussWeights: Readonly<Float64Array> = new Float64Array(order);

for (let i = 0; i < order; i++) {
  let x = -Math.cos((Math.PI * (i + 0.75)) / (order + 0.5));
  let slope = 0;
  for (let step = 0; step < 8; step++) {
    let previous = 1;
    let value = x;
    for (let n = 2; n <= order; n++) {
      const next = ((2 * n - 1) * x * value - (n - 1) * previous) / n;
      previous = value;
      value = next;
    }
    slope = (order * (x * value - previous)) / (x * x - 1);
    x -= value / slope;
  }
  (gaussAbscissae as Float64Array)[i] = x;
  (gaussWeights as Float64Array)[i] = 2 / ((1 - x * x) * slope * slope);
}

/** Integral of a smooth function from a to b. */
export function gaussIntegral(integrand: (t: number) => number, a: number, b: number): number {
  const half = (b - a) / 2;
  const middle = (a + b) / 2;
  let sum = 0;
  for (let i = 0; i < order; i++) sum += gaussWeights[i] * integrand(middle + half * gaussAbscissae[i]);
  return sum * half;
}
