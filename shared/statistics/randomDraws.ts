import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus, xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** Seeded draws; equal seeds give equal draws on every machine (generator xoroshiro128+ of the library pure-rand). */
export interface RandomDraws {
  /** In [0, 1). */
  uniform(): number;
  /** Whole number from 0 to count - 1. */
  below(count: number): number;
  /** Mean 0, standard deviation 1. Source: Box & Muller (1958), Ann. Math. Stat. 29, 610. */
  normal(): number;
  /** Student's t of any degrees of freedom above 0. Source: Bailey (1994), Math. Comp. 62, 779-781. */
  studentT(degreesOfFreedom: number): number;
  /** Plain numbers; given to resumedDraws they let a search go on after a restart as if it had never stopped. */
  state(): number[];
}

/** @param seed whole number */
export function randomDraws(seed: number): RandomDraws {
  return drawsOf(xoroshiro128plus(seed));
}

/** @param state what `state()` of other draws gave */
export function resumedDraws(state: readonly number[]): RandomDraws {
  return drawsOf(xoroshiro128plusFromState(state));
}

function drawsOf(generator: ReturnType<typeof xoroshiro128plus>): RandomDraws {
  const uniform = () => uniformFloat64(generator);
  return {
    uniform,
    below: (count) => Math.floor(uniform() * count),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    studentT: (degrees) => {
      const radius = degrees * ((1 - uniform()) ** (-2 / degrees) - 1);
      return Math.sqrt(radius) * Math.cos(2 * Math.PI * uniform());
    },
    state: () => [...generator.getState()],
  };
}
