import ndarray, { type NdArray } from "ndarray";
import type { SectionNodes } from "../geometry/sectionNodes";

/**
 * Matrix of the surface-vorticity equation, "the tangential velocity just inside the contour is zero":
 *
 *     -g(m)/2 + sum_n K(m,n) g(n) ds_n + (1/P) sum_n g(n) ds_n = right side
 *
 * K is the tangential velocity of a unit vortex; on the diagonal it has the smooth limit kappa/(4 pi). The last term
 * fills the null direction of the operator (a circulation inside) and so prescribes the circulation.
 * Sources: Martensen (1959), Arch. Rat. Mech. Anal. 3; Lewis (1991), Vortex Element Methods, ch. 1-2.
 * @returns shape [count, count]; row m is the node where the velocity is taken, column n the vortex
 */
export function vorticityMatrix(nodes: SectionNodes): NdArray<Float64Array> {
  const { count, x, y, tangentX, tangentY, ds, curvature, perimeter } = nodes;
  const matrix = new Float64Array(count * count);
  for (let m = 0; m < count; m++) {
    const row = m * count;
    for (let n = 0; n < count; n++) {
      if (n === m) continue;
      const dx = x[m] - x[n];
      const dy = y[m] - y[n];
      const kernel = (dx * tangentY[m] - dy * tangentX[m]) / (2 * Math.PI * (dx * dx + dy * dy));
      matrix[row + n] = (kernel + 1 / perimeter) * ds[n];
    }
    matrix[row + m] = -0.5 + (curvature[m] / (4 * Math.PI) + 1 / perimeter) * ds[m];
  }
  return ndarray(matrix, [count, count]);
}

/**
 * Tangential velocity at the nodes of sources on the contour: entry [m, n] times the strength of node n (outflow speed
 * times ds, m^2/s) is the velocity at m along the counter-clockwise tangent, m/s. The integral is a Cauchy principal
 * value; the alternating trapezoidal rule takes it from the nodes of opposite parity with doubled weight.
 * Source: Sidi & Israeli (1988), J. Sci. Comput. 3, 201-231.
 * @returns shape [count, count], zero where m and n have the same parity
 */
export function sourceMatrix(nodes: SectionNodes): NdArray<Float64Array> {
  const { count, x, y, tangentX, tangentY } = nodes;
  const matrix = new Float64Array(count * count);
  for (let m = 0; m < count; m++) {
    for (let n = 1 - (m % 2); n < count; n += 2) {
      const dx = x[m] - x[n];
      const dy = y[m] - y[n];
      matrix[m * count + n] = (dx * tangentX[m] + dy * tangentY[m]) / (Math.PI * (dx * dx + dy * dy));
    }
  }
  return ndarray(matrix, [count, count]);
}
