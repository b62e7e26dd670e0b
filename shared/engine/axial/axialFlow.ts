import { factorInPlace, type LuFactors, solveFactored } from "../../numerics/lu";
import { type AxialNodes, cellsPerPanel } from "./axialNodes";
import { type AxialVelocity, ringSourceVelocity, ringVortexVelocity } from "./ringKernels";

/** The potential flow along the axis of a body of revolution, ready for any sources on its surface. */
export interface AxialFlow {
  readonly nodes: AxialNodes;
  readonly factors: LuFactors;
  /** Tangential velocity at panel m of a source of 1 m/s on panel n, row-major, shape [count * count]. */
  readonly sources: Float64Array;
  /** Surface speed downstream / U without a wake, shape [count]. */
  readonly streamSpeed: Float64Array;
}

/** Panels this near to each other see the cells of each other. */
const nearPanels = 3;

/**
 * Solves the flow by surface vorticity: on the inner side of the sheet of ring vortices the velocity along the surface
 * vanishes. Source: Martensen (1959); Lewis (1991), Vortex Element Methods, ch. 4. The integrals over a panel and its
 * neighbours are sums over their cells, those over others midpoint sums: second order in the panel length.
 */
export function axialFlow(nodes: AxialNodes): AxialFlow {
  const { count, tangentX } = nodes;
  const matrix = new Float64Array(count * count);
  const sources = new Float64Array(count * count);
  for (let m = 0; m < count; m++) {
    for (let n = 0; n < count; n++) {
      matrix[m * count + n] = tangentialSum(nodes, m, n, ringVortexVelocity);
      sources[m * count + n] = tangentialSum(nodes, m, n, ringSourceVelocity);
    }
    // A ring's own velocity grows as ln(8 r / distance) / (4 pi r), of the vortex along the axis, of the source outwards.
    // Midpoint sums over the cells on both sides fall short of its integral by ln 2 times the cell: Stirling's formula.
    const missing = (Math.LN2 * nodes.ds[m]) / cellsPerPanel / (4 * Math.PI * nodes.r[m]);
    matrix[m * count + m] += 0.5 + missing * tangentX[m];
    sources[m * count + m] += missing * nodes.tangentR[m];
  }
  const factors = factorInPlace(matrix, count);
  // The sheet's circulation runs against the rings' own sense, so that its strength is the speed downstream.
  return { nodes, factors, sources, streamSpeed: solveFactored(factors, tangentX) };
}

/** Surface speed downstream / U that sources alone cause; strengths are outflow speeds / U, shape [count]. */
export function axialSourceSpeed(
  { nodes, factors, sources }: AxialFlow,
  strengths: Readonly<Float64Array>,
): Float64Array {
  const { count } = nodes;
  const onset = new Float64Array(count);
  for (let m = 0; m < count; m++) {
    let sum = 0;
    for (let n = 0; n < count; n++) sum += sources[m * count + n] * strengths[n];
    onset[m] = sum;
  }
  return solveFactored(factors, onset);
}

/**
 * Added mass over displaced mass for motion along the axis: the impulse of the vortex sheet is that of the displaced and
 * the added mass together (Lamb 1932, Hydrodynamics, art. 152).
 * @param volume of the body, m^3
 */
export function axialAddedMassRatio({ nodes, streamSpeed }: AxialFlow, volume: number): number {
  if (!(volume > 0)) throw new RangeError(`volume is ${volume} m^3; it must be above 0.`);
  let impulse = 0;
  for (let i = 0; i < nodes.count; i++) impulse += Math.PI * streamSpeed[i] * nodes.r[i] ** 2 * nodes.ds[i];
  return impulse / volume - 1;
}

function tangentialSum(
  { x, r, tangentX, tangentR, ds, cellX, cellR, cellDs }: AxialNodes,
  m: number,
  n: number,
  kernel: (x: number, r: number, x0: number, r0: number) => AxialVelocity,
): number {
  const along = (x0: number, r0: number) => {
    const velocity = kernel(x[m], r[m], x0, r0);
    return velocity.along * tangentX[m] + velocity.outward * tangentR[m];
  };
  if (Math.abs(m - n) > nearPanels) return along(x[n], r[n]) * ds[n];
  let sum = 0;
  for (let i = n * cellsPerPanel; i < (n + 1) * cellsPerPanel; i++) sum += along(cellX[i], cellR[i]) * cellDs[i];
  return sum;
}
