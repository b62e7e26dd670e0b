import quantile from "@stdlib/stats-base-dists-t-quantile";

/** Degrees of freedom from which Student's t is the normal distribution to nine digits. */
const manyDegrees = 1e9;

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
  return quantile((1 + coverage) / 2, Math.min(degreesOfFreedom, manyDegrees));
}
