import { logGamma } from "./logGamma";
import { chiSquareTail, fTail } from "./tailProbability";

/** coverageFactor(0.95, Infinity): a 95 % interval of the normal distribution is so many standard deviations to each side. */
export const normalFactor95 = 1.959963984540054;

/** Degrees of freedom from which the expansion about the normal distribution gives as many digits as the tail itself. */
const manyDegrees = 2000;

/**
 * Coverage factor t_p(nu) of a two-sided interval. Source: JCGM 100:2008, G.3.2 and table G.2.
 * @param coverage         probability, above 0 and below 1, for instance 0.95
 * @param degreesOfFreedom above 0; Infinity for the normal distribution
 * @throws RangeError outside these ranges
 */
export function coverageFactor(coverage: number, degreesOfFreedom: number): number {
  if (!(coverage > 0 && coverage < 1)) throw new RangeError(`coverage is ${coverage}; it must be above 0 and below 1.`);
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`degrees of freedom are ${degreesOfFreedom}; they must be above 0.`);
  if (degreesOfFreedom >= manyDegrees) return nearlyNormal(normalCoverageFactor(coverage), degreesOfFreedom);
  const half = (degreesOfFreedom + 1) / 2;
  const highest = Math.exp(logGamma(half) - logGamma(degreesOfFreedom / 2)) / Math.sqrt(degreesOfFreedom * Math.PI);
  // Source: Abramowitz & Stegun (1964), 26.7.1: t squared is F of 1 and nu degrees of freedom.
  return factorAtTail(
    1 - coverage,
    (t) => fTail(t * t, 1, degreesOfFreedom),
    (t) => highest * (1 + (t * t) / degreesOfFreedom) ** -half,
  );
}

/** The square of a normal deviate is chi-square of one degree of freedom. */
function normalCoverageFactor(coverage: number): number {
  return factorAtTail(
    1 - coverage,
    (x) => chiSquareTail(x * x, 1),
    (x) => Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI),
  );
}

/**
 * Where the two tails together hold a probability. Newton's method from 0 rises to the root and never passes it, since the
 * density falls from its middle outwards.
 */
function factorAtTail(probability: number, tail: (t: number) => number, density: (t: number) => number): number {
  let t = 0;
  for (;;) {
    const next = t + (tail(t) - probability) / (2 * density(t));
    if (!(next > t * (1 + 1e-15))) return t;
    t = next;
  }
}

/** Student's t from the normal deviate of the same probability. Source: Abramowitz & Stegun (1964), 26.7.5. */
function nearlyNormal(x: number, degreesOfFreedom: number): number {
  const g1 = (x ** 3 + x) / 4;
  const g2 = (5 * x ** 5 + 16 * x ** 3 + 3 * x) / 96;
  const g3 = (3 * x ** 7 + 19 * x ** 5 + 17 * x ** 3 - 15 * x) / 384;
  const g4 = (79 * x ** 9 + 776 * x ** 7 + 1482 * x ** 5 - 1920 * x ** 3 - 945 * x) / 92160;
  const n = degreesOfFreedom;
  return x + g1 / n + g2 / n ** 2 + g3 / n ** 3 + g4 / n ** 4;
}
