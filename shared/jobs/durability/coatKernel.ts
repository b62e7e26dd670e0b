import { gaussRule } from "../../numerics/gaussRule";

/**
 * A coat between what hits it and its core, with all lengths over the coat's thickness. Moduli are plane-strain ones.
 * The core is taken to be harder than the coat.
 */
export interface CoatedPair {
  /** Of the coat, 0 to below 0.5. */
  readonly poissonRatio: number;
  /** Modulus of the coat / that of the surface that it meets; 0 for a rigid surface. */
  readonly coatOverSurface: number;
  /** Modulus of the coat / that of the core; 0 for a rigid core. */
  readonly coatOverCore: number;
}

/**
 * Compliance of a layer bonded to a rigid base under a pressure wave, over that of a half-space of it: from 0 (waves much
 * longer than it is thick) to 1. Source: Vorovich, Aleksandrov & Babeshko (1974), Nonclassical Mixed Problems of the
 * Theory of Elasticity (from memory; its limits are those of Johnson (1985), section 5.8).
 * @param s wave number times thickness, 0 or more
 */
export function bondedLayerCompliance(s: number, poissonRatio: number): number {
  const kappa = 3 - 4 * poissonRatio;
  // Numerator and denominator over exp(2 s), which would overflow.
  const fade = Math.exp(-2 * s);
  const numerator = kappa * (1 - fade * fade) - 4 * s * fade;
  const denominator = kappa * (1 + fade * fade) + (1 + kappa * kappa + 4 * s * s) * fade;
  return numerator / denominator;
}

/**
 * 1 - compliance of coat, core and surface together over that of two half-spaces of coat and surface. The core sinks by
 * the pressure that reaches it as through a half-space, (1 + s) exp(-s), and that again on the way back: exact for long
 * and for short waves.
 */
function stiffening(s: number, { poissonRatio, coatOverSurface, coatOverCore }: CoatedPair): number {
  const reaching = (1 + s) * Math.exp(-s);
  const coat = 1 - bondedLayerCompliance(s, poissonRatio);
  return (coat - coatOverCore * reaching * reaching) / (1 + coatOverSurface);
}

/** Waves beyond it are those of a half-space to 1e-12. */
const shortestWave = 18;
const panels = 18;
const rule = gaussRule(16);
const waves = Float64Array.from({ length: panels * 16 }, (_, k) => {
  const width = shortestWave / panels;
  return width * (Math.floor(k / 16) + (1 + rule.abscissae[k % 16]) / 2);
});
const weights = waves.map((_, k) => (rule.weights[k % 16] * shortestWave) / panels / 2);

/** Integrals over all waves of stiffening times cos(s u), and times sin(s u). @param u distance over thickness */
export interface StiffeningIntegrals {
  cosine(u: number): number;
  sine(u: number): number;
}

export function stiffeningIntegrals(pair: CoatedPair): StiffeningIntegrals {
  const weighted = waves.map((s, k) => weights[k] * stiffening(s, pair));
  const sum = (wave: (x: number) => number) => (u: number) => {
    let total = 0;
    for (let k = 0; k < waves.length; k++) total += weighted[k] * wave(waves[k] * u);
    return total;
  };
  return { cosine: sum(Math.cos), sine: sum(Math.sin) };
}

/**
 * How deep the surface of a layer on a rigid base lies at a distance u from a line load, over load per length times
 * 2 / (pi modulus): the integral of compliance times cos(s u) / s over all waves. That of 1 - exp(-s) in place of the
 * compliance has the closed form ln(1 + 1 / u^2) / 2.
 * @returns u to that depth plus ln(u), which is smooth
 */
export function lineDepthSmooth(poissonRatio: number): (u: number) => number {
  const weighted = waves.map((s, k) => (weights[k] * (bondedLayerCompliance(s, poissonRatio) - 1 + Math.exp(-s))) / s);
  return (u) => {
    let total = Math.log1p(u * u) / 2;
    for (let k = 0; k < waves.length; k++) total += weighted[k] * Math.cos(waves[k] * u);
    return total;
  };
}
