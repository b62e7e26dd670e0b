import type { QuadratureRule } from "./gaussRule";

/** Polynomials through the nodes of one panel, in barycentric form. Source: Berrut & Trefethen (2004), SIAM Rev. 46, 501. */
export interface PanelPolynomial {
  readonly order: number;
  readonly abscissae: Readonly<Float64Array>;
  readonly barycentricWeights: Readonly<Float64Array>;
  /** d/dx at node i of the polynomial that is 1 at node k and 0 at the others, row-major, shape [order * order]. */
  readonly differentiation: Readonly<Float64Array>;
}

export function panelPolynomial({ abscissae }: QuadratureRule): PanelPolynomial {
  const order = abscissae.length;
  const barycentricWeights = Float64Array.from(abscissae, (x, i) =>
    abscissae.reduce((product, other, k) => (k === i ? product : product / (x - other)), 1),
  );
  const differentiation = new Float64Array(order * order);
  for (let i = 0; i < order; i++) {
    let sum = 0;
    for (let k = 0; k < order; k++) {
      if (k === i) continue;
      const entry = barycentricWeights[k] / barycentricWeights[i] / (abscissae[i] - abscissae[k]);
      differentiation[i * order + k] = entry;
      sum += entry;
    }
    differentiation[i * order + i] = -sum;
  }
  return { order, abscissae, barycentricWeights, differentiation };
}

/** Shares of the nodes in the polynomial's value at x in [-1, 1]; written to `out`, shape [order], which is returned. */
export function interpolationWeights(
  { order, abscissae, barycentricWeights }: PanelPolynomial,
  x: number,
  out: Float64Array,
): Float64Array {
  let total = 0;
  for (let i = 0; i < order; i++) {
    const distance = x - abscissae[i];
    if (Math.abs(distance) < 1e-14) {
      out.fill(0);
      out[i] = 1;
      return out;
    }
    out[i] = barycentricWeights[i] / distance;
    total += out[i];
  }
  for (let i = 0; i < order; i++) out[i] /= total;
  return out;
}
