import { findRoot } from "../../numerics/rootFinder";

/**
 * Laminar closure from the similar layers of Falkner & Skan (1931), Phil. Mag. 12, 865: shape factor, shear and
 * dissipation as functions of the energy shape factor H32 = theta3 / theta.
 *
 * Rows: H32, H, lambda = theta^2 U' / nu, S = theta tau_w / (mu U), from a collocation solution of
 * f''' + f f'' + beta (1 - f'^2) = 0 to 1e-7, beta from 2 to -0.19883 (separation at -0.19884, Hartree 1937).
 */
const SIMILAR_LAYERS: readonly (readonly [number, number, number, number])[] = [
  [1.6375, 2.1554, 0.10652, 0.38938],
  [1.6257, 2.2162, 0.08546, 0.36034],
  [1.6214, 2.2405, 0.0778, 0.34935],
  [1.6155, 2.2743, 0.0677, 0.33451],
  [1.6072, 2.3252, 0.05378, 0.31331],
  [1.5946, 2.4108, 0.03333, 0.28034],
  [1.5853, 2.4809, 0.01896, 0.25563],
  [1.5726, 2.5911, 0, 0.22052],
  [1.5641, 2.6758, -0.01203, 0.19634],
  [1.5533, 2.8011, -0.02653, 0.16444],
  [1.542, 2.9633, -0.04061, 0.12911],
  [1.5349, 3.0907, -0.04879, 0.10535],
  [1.5263, 3.2967, -0.05801, 0.07303],
  [1.521, 3.4808, -0.06315, 0.04941],
  [1.5179, 3.6415, -0.06591, 0.03207],
  [1.5158, 3.8337, -0.06764, 0.01467],
  [1.5151, 4.009, -0.06814, 0.00138],
];

/** H32 at a plane stagnation point and where the wall shear vanishes. */
export const STAGNATION_ENERGY_SHAPE = 1.6257;
export const SEPARATION_ENERGY_SHAPE = 1.5151;
/** lambda of the layer at a plane stagnation point. */
export const STAGNATION_LAMBDA = 0.08546;
/** Shape factor of the layer whose wall shear vanishes. */
export const SEPARATION_SHAPE_FACTOR = 4.009;

const SHAPE_ORIGIN = 1.515;
const LARGEST_ENERGY_SHAPE = 1.6375;
const CELLS = 200;
const SCALE = CELLS / Math.sqrt(LARGEST_ENERGY_SHAPE - SHAPE_ORIGIN);

/** H, S and D at equal steps of sqrt(H32 - 1.515), in which they are smooth down to separation; shape [3 (CELLS + 1)]. */
const CLOSURE = tabulate();

/**
 * Closure at an energy shape factor, by linear interpolation in a fine table.
 * @param energyShape H32, held at the ends of [1.515, 1.6375]
 * @param out receives H, S = Re_theta Cf / 2 and D = 2 C_D Re_theta (C_D the dissipation coefficient)
 */
export function similarClosure(energyShape: number, out: Float64Array): void {
  const held = Math.min(energyShape, LARGEST_ENERGY_SHAPE);
  const cell = held > SHAPE_ORIGIN ? Math.sqrt(held - SHAPE_ORIGIN) * SCALE : 0;
  const i = cell < CELLS ? Math.floor(cell) : CELLS - 1;
  const weight = cell - i;
  const j = 3 * i;
  out[0] = CLOSURE[j] + weight * (CLOSURE[j + 3] - CLOSURE[j]);
  out[1] = CLOSURE[j + 1] + weight * (CLOSURE[j + 4] - CLOSURE[j + 1]);
  out[2] = CLOSURE[j + 2] + weight * (CLOSURE[j + 5] - CLOSURE[j + 2]);
}

/**
 * The layer at a stagnation point where the spacing of streamlines grows as s^spread: 0 in plane flow, 1 on the axis of a
 * body of revolution, between them on other bodies. There theta is constant: S = (H + 2 + spread) lambda and
 * D = H32 S - (H - 1) H32 lambda. By Mangler's transformation it is the similar layer of Ue ~ x^(1 / (1 + 2 spread)).
 * @returns lambda = theta^2 (dUe/ds) / nu and H32
 */
export function stagnationLayer(spread: number): { readonly lambda: number; readonly energyShape: number } {
  const closure = new Float64Array(3);
  const lambdaAt = (H32: number): number => {
    similarClosure(H32, closure);
    return closure[1] / (closure[0] + 2 + spread);
  };
  const excess = (H32: number): number => {
    const lambda = lambdaAt(H32);
    return closure[2] - H32 * closure[1] + (closure[0] - 1) * H32 * lambda;
  };
  const energyShape = findRoot(excess, 1.56, LARGEST_ENERGY_SHAPE, { tolerance: 1e-9 });
  return { lambda: lambdaAt(energyShape), energyShape };
}

function tabulate(): Float64Array {
  // Momentum integral of a similar layer: lambda/m = 2 [S - (H + 2) lambda] + lambda; energy integral: D = H32 (lambda/m + 5 lambda) / 2.
  const rows = SIMILAR_LAYERS.map(([H32, H, lambda, S]) => {
    const overExponent = 2 * (S - (H + 2) * lambda) + lambda;
    return [Math.sqrt(H32 - SHAPE_ORIGIN), H, S, (H32 * (overExponent + 5 * lambda)) / 2];
  }).reverse();
  const table = new Float64Array(3 * (CELLS + 1));
  for (let i = 0; i <= CELLS; i++) {
    const w = i / SCALE;
    let k = 0;
    while (k < rows.length - 2 && rows[k + 1][0] < w) k++;
    for (let column = 0; column < 3; column++) table[3 * i + column] = cubicThrough(rows, k, column + 1, w);
  }
  return table;
}

/** Lagrange cubic through the four rows around cell k (fewer choices at the ends), extrapolating below the first row. */
function cubicThrough(rows: readonly number[][], k: number, column: number, w: number): number {
  const first = Math.max(0, Math.min(rows.length - 4, k - 1));
  let value = 0;
  for (let a = first; a < first + 4; a++) {
    let basis = 1;
    for (let b = first; b < first + 4; b++) if (b !== a) basis *= (w - rows[b][0]) / (rows[a][0] - rows[b][0]);
    value += basis * rows[a][column];
  }
  return value;
}
