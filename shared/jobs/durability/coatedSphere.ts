import { gaussRule } from "../../numerics/gaussRule";
import { factorInPlace, solveFactored } from "../../numerics/lu";
import { type CoatedPair, stiffeningIntegrals } from "./coatKernel";
import { type ContactCurve, contactSizes } from "./contactCurve";

const half = 16;
const rule = gaussRule(2 * half);
/** Positive half of an even rule. */
const nodes = rule.abscissae.slice(half);
const weights = rule.weights.slice(half);

/**
 * A sphere on a bonded coat: the frictionless contact of a paraboloid, exact for a layer of any thickness on a hard base.
 * Half-spaces are its limit for small contacts (Hertz), the elastic foundation for large ones (Johnson 1985, section 5.8).
 * The pressure is written as p(r) = -integral of phi'(t) / sqrt(t^2 - r^2), which turns it into a Fredholm equation for
 * phi. Source: Lebedev & Ufliand (1958), J. Appl. Math. Mech. 22, 442-450 (the equation; from memory).
 *
 * Scales: contact radius over thickness b, force over E* b^3 / R, approach over b^2 / R, pressure over E* b / R, with E* of
 * coat and surface.
 */
export function coatedSphereCurve(pair: CoatedPair): ContactCurve {
  const force = new Float64Array(contactSizes.length);
  const approach = new Float64Array(contactSizes.length);
  const peakPressure = new Float64Array(contactSizes.length);
  const { cosine } = stiffeningIntegrals(pair);
  contactSizes.forEach((size, i) => {
    const solved = solveAt(size, cosine);
    force[i] = solved.force;
    approach[i] = solved.approach;
    peakPressure[i] = solved.peakPressure;
  });
  return { contactSize: contactSizes, force, approach, peakPressure };
}

function solveAt(a: number, cosine: (u: number) => number) {
  const kernel = (x: number, t: number) => (a / Math.PI) * (cosine(a * (x + t)) + cosine(a * Math.abs(x - t)));
  const matrix = new Float64Array(half * half);
  for (let i = 0; i < half; i++) {
    for (let j = 0; j <= i; j++) {
      const value = kernel(nodes[i], nodes[j]);
      matrix[i * half + j] = -value * weights[j];
      matrix[j * half + i] = -value * weights[i];
    }
    matrix[i * half + i] += 1;
  }
  const factors = factorInPlace(matrix, half);
  const level = solveFactored(factors, new Float64Array(half).fill(1));
  const bowl = solveFactored(
    factors,
    nodes.map((t) => -a * a * t * t),
  );
  const rim = nodes.map((t, j) => kernel(1, t) * weights[j]);
  const atRim = (phi: Float64Array) => phi.reduce((sum, value, j) => sum + value * rim[j], 0);
  // Where the contact ends phi is 0: nothing holds the surfaces together there.
  const approach = (a * a - atRim(bowl)) / (1 + atRim(level));
  const phi = level.map((value, j) => (approach * value + bowl[j]) / Math.PI);
  const force = 2 * Math.PI * a * phi.reduce((sum, value, j) => sum + value * weights[j], 0);
  return { approach, force, peakPressure: middlePressure(phi) / a };
}

/** -integral from 0 to 1 of phi'(t) / t, phi as its series of even Legendre polynomials. */
function middlePressure(phi: Float64Array): number {
  const coefficients = new Float64Array(half);
  const slopes = new Float64Array(half);
  for (let j = 0; j < half; j++) {
    const x = nodes[j];
    let [before, value] = [1, x];
    let [slopeBefore, slope] = [0, 1];
    coefficients[0] += weights[j] * phi[j];
    for (let n = 2; n < 2 * half; n++) {
      const next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
      const nextSlope = slopeBefore + (2 * n - 1) * value;
      [before, value, slopeBefore, slope] = [value, next, slope, nextSlope];
      if (n % 2 === 1) continue;
      coefficients[n / 2] += (2 * n + 1) * weights[j] * phi[j] * value;
      slopes[n / 2] += (weights[j] * slope) / x;
    }
  }
  return -coefficients.reduce((sum, coefficient, k) => sum + coefficient * slopes[k], 0);
}
