import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { InputDistribution } from "./uncertainInput";

/** Seeded draws; equal seeds give equal draws on every machine. */
export interface RandomDraws {
  /** In [0, 1). */
  uniform(): number;
  /** Mean 0, standard deviation 1. Source: Box & Muller (1958), Ann. Math. Stat. 29, 610. */
  normal(): number;
  /** Student's t of any degrees of freedom above 0. Source: Bailey (1994), Math. Comp. 62, 779-781. */
  studentT(degreesOfFreedom: number): number;
}

/** @param seed whole number */
export function randomDraws(seed: number): RandomDraws {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    studentT: (degrees) => {
      const radius = degrees * ((1 - uniform()) ** (-2 / degrees) - 1);
      return Math.sqrt(radius) * Math.cos(2 * Math.PI * uniform());
    },
  };
}

/**
 * A draw of mean 0 that is to be multiplied by the standard uncertainty: of standard deviation 1 except for studentT,
 * whose scale is 1. Source: JCGM 101:2008, 6.4.
 */
export function standardDraw(draws: RandomDraws, distribution: InputDistribution, degreesOfFreedom: number): number {
  switch (distribution) {
    case "normal":
      return draws.normal();
    case "rectangular":
      return Math.sqrt(3) * (2 * draws.uniform() - 1);
    case "triangular":
      return Math.sqrt(6) * (draws.uniform() + draws.uniform() - 1);
    case "arcsine":
      return Math.SQRT2 * Math.sin(2 * Math.PI * draws.uniform());
    case "studentT":
      return Number.isFinite(degreesOfFreedom) ? draws.studentT(degreesOfFreedom) : draws.normal();
  }
}
