import { factorInPlace, solveFactored } from "../../numerics/lu";
import { type CoatedPair, lineDepthSmooth, stiffeningIntegrals } from "./coatKernel";
import { type ContactCurve, contactSizes } from "./contactCurve";

/** Nodes over the whole contact, odd, so that its middle is one. */
const nodeCount = 31;
const unknowns = (nodeCount + 1) / 2;

/** Depths that the approach is measured from; of half-spaces no absolute one exists. */
export interface LineDepths {
  /** Of the surface that is hit, over the coat's thickness: the length of the line, beyond which it acts as a point. */
  readonly depth: number;
  readonly surfacePoissonRatio: number;
  readonly corePoissonRatio: number;
}

/**
 * A cylinder on a bonded coat, exact for a layer of any thickness on a hard base; half-spaces are its limit for small
 * contacts (Hertz), the elastic foundation for large ones (Johnson 1985, section 5.8). Pressures at Chebyshev nodes by
 * the method of Erdogan & Gupta (1972), Q. Appl. Math. 29, 525-534.
 *
 * Scales: half width over thickness b, force per length over E* b^2 / R, approach over b^2 / R, pressure over E* b / R,
 * with E* of coat and surface.
 */
export function coatedCylinderCurve(pair: CoatedPair, depths: LineDepths): ContactCurve {
  const force = new Float64Array(contactSizes.length);
  const approach = new Float64Array(contactSizes.length);
  const peakPressure = new Float64Array(contactSizes.length);
  const { sine } = stiffeningIntegrals(pair);
  const coatDepth = lineDepthSmooth(pair.poissonRatio);
  contactSizes.forEach((a, i) => {
    const pressures = pressuresAt(a, sine);
    force[i] = a * chebyshevSum(pressures, () => 1);
    peakPressure[i] = pressures[0];
    approach[i] = sunk(a, pressures, coatDepth, pair, depths);
  });
  return { contactSize: contactSizes, force, approach, peakPressure };
}

/** Place of node i from the middle (0) outwards, over the half width. */
function place(i: number): number {
  return Math.sin((Math.PI * i) / (nodeCount + 1));
}

/** Pressure over sqrt(1 - x^2) at the nodes from the middle outwards. */
function pressuresAt(a: number, sine: (u: number) => number): Float64Array {
  const matrix = new Float64Array(unknowns * unknowns);
  const slopes = new Float64Array(unknowns);
  for (let r = 0; r < unknowns; r++) {
    const x = Math.sin((Math.PI * (r + 0.5)) / (nodeCount + 1));
    slopes[r] = (Math.PI / 2) * a * x;
    for (let i = 0; i < unknowns; i++) {
      const t = place(i);
      const weight = (Math.PI * (1 - t * t)) / (nodeCount + 1);
      const right = 1 / (x - t) - a * sine(a * (x - t));
      const left = 1 / (x + t) - a * sine(a * (x + t));
      matrix[r * unknowns + i] = weight * (i === 0 ? right : right + left);
    }
  }
  return solveFactored(factorInPlace(matrix, unknowns), slopes);
}

/** Integral over the contact, -1 to 1, of pressure times an even function. */
function chebyshevSum(pressures: Float64Array, factor: (t: number) => number): number {
  let sum = 0;
  for (let i = 0; i < unknowns; i++) {
    const t = place(i);
    const weight = (Math.PI * (1 - t * t)) / (nodeCount + 1);
    sum += (i === 0 ? 1 : 2) * weight * pressures[i] * factor(t);
  }
  return sum;
}

/** Integral of sqrt(1 - t^2) ln|t| from -1 to 1. */
const logMoment = (-Math.PI / 2) * (Math.log(2) + 0.5);

/** How deep the middle of the contact lies: coat, surface and core added up. */
function sunk(
  a: number,
  pressures: Float64Array,
  coatDepth: (u: number) => number,
  { coatOverSurface, coatOverCore }: CoatedPair,
  { depth, surfacePoissonRatio, corePoissonRatio }: LineDepths,
): number {
  const middle = pressures[0];
  const load = a * chebyshevSum(pressures, () => 1);
  // The middle's own pressure is taken out of the sum, where the logarithm is not finite.
  let rest = 0;
  for (let i = 1; i < unknowns; i++) {
    const t = place(i);
    rest += 2 * ((Math.PI * (1 - t * t)) / (nodeCount + 1)) * (pressures[i] - middle) * Math.log(t);
  }
  const logs = a * (rest + middle * logMoment) + load * Math.log(a);
  const coat = 2 * (a * chebyshevSum(pressures, (t) => coatDepth(a * t)) - logs);
  // Johnson (1985), eq. 2.19 with the depth of no displacement.
  const surface = 2 * (load * Math.log(depth) - logs) - load / (1 - surfacePoissonRatio);
  const below = a * chebyshevSum(pressures, (t) => Math.log(Math.hypot(1, a * t)));
  const core = 2 * (load * Math.log(depth) - below) - load / (1 - corePoissonRatio);
  return (coat + coatOverSurface * surface + coatOverCore * core) / (Math.PI * (1 + coatOverSurface));
}
