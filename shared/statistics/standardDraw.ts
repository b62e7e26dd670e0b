import type { RandomDraws } from "./randomDraws";
import type { InputDistribution } from "./uncertainInput";

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
