import { problem, type Result, success } from "../../../result";
import { type RandomDraws, randomDraws } from "../../../statistics/randomDraws";
import { type ShareInterval, wilsonInterval } from "../../../statistics/wilsonInterval";

/** How made sizes lie inside their tolerance: evenly, or normally with the tolerance at three standard deviations, cut there. */
export type MadeSizes = "uniform" | "normal";

/** With the 95 % interval of the share. */
export interface MadeShare extends ShareInterval {
  readonly samples: number;
  readonly inside: number;
  readonly share: number;
}

/**
 * Share of made pucks that a test accepts, sizes drawn independently inside their tolerances. Equal seeds give equal
 * results on every machine.
 * @param accepts called with the drawn inputs, shape [n]
 * @param samples 1 to 1e6
 * @param seed    whole number
 */
export function madeShare(
  nominal: readonly number[],
  plusMinus: readonly number[],
  accepts: (inputs: readonly number[]) => boolean,
  sizes: MadeSizes,
  samples: number,
  seed: number,
): Result<MadeShare> {
  if (nominal.length !== plusMinus.length) {
    throw new RangeError(
      `there are ${nominal.length} inputs and ${plusMinus.length} tolerances; both need the same number.`,
    );
  }
  if (!(Number.isInteger(samples) && samples >= 1 && samples <= 1e6)) {
    return problem("samples", `samples is ${samples}; it must be a whole number from 1 to 1000000`, "samples");
  }
  if (!Number.isInteger(seed)) return problem("seed", `seed is ${seed}; it must be a whole number`, "seed");
  const draws = randomDraws(seed);
  const draw = sizes === "uniform" ? () => 2 * draws.uniform() - 1 : () => cutNormal(draws);
  let inside = 0;
  for (let i = 0; i < samples; i++) {
    if (accepts(nominal.map((x, j) => x + plusMinus[j] * draw()))) inside++;
  }
  return success({ samples, inside, share: inside / samples, ...wilsonInterval(inside, samples) });
}

/** Normal deviate of standard deviation 1/3, drawn again outside -1 to 1. */
function cutNormal(draws: RandomDraws): number {
  for (;;) {
    const value = draws.normal() / 3;
    if (Math.abs(value) <= 1) return value;
  }
}
