/** Nodes and weights of a quadrature on [-1, 1]. */
export interface QuadratureRule {
  /** Increasing, shape [order]. */
  readonly abscissae: Readonly<Float64Array>;
  /** They add up to 2, shape [order]. */
  readonly weights: Readonly<Float64Array>;
}

/**
 * Gauss-Legendre rule, exact for polynomials to degree 2 order - 1. Abscissae by Newton's method on the Legendre
 * polynomial from cos(pi (i - 1/4) / (n + 1/2)), weights 2 / ((1 - x^2) P'(x)^2).
 * Source: Abramowitz & Stegun (1964), eqs. 25.4.29 and 22.16.6.
 * @param order whole number from 1 to 64
 */
export function gaussRule(order: number): QuadratureRule {
  if (!(Number.isInteger(order) && order >= 1 && order <= 64)) {
    throw new RangeError(`order is ${order}; it must be a whole number from 1 to 64.`);
  }
  const abscissae = new Float64Array(order);
  const weights = new Float64Array(order);
  for (let i = 0; i < order; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (order + 0.5));
    let slope = 1;
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
    abscissae[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { abscissae, weights };
}
