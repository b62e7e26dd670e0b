import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { problem, type Result, success } from "../../../result";

/** How made sizes lie inside their tolerance: evenly, or normally with the tolerance at three standard deviations, cut there. */
export type MadeSizes = "uniform" | "normal";

export interface MadeShare {
  readonly samples: number;
  readonly inside: number;
  readonly share: number;
  /** 95 % interval of the share. Source: Wilson (1927), J. Am. Stat. Assoc. 22, 209-212. */
  readonly shareLow: number;
  readonly shareHigh: number;
}

/**
 * Share of made pucks that a test accepts, sizes drawn independently inside their tolerances. Equal seeds give equal
 * results on every machine (generator xoroshiro128+ of the library pure-rand).
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
  const generator = xoroshiro128plus(seed);
  const draw = sizes === "uniform" ? () => 2 * uniformFloat64(generator) - 1 : () => cutNormal(generator);
  let inside = 0;
  for (let i = 0; i < samples; i++) {
    if (accepts(nominal.map((x, j) => x + plusMinus[j] * draw()))) inside++;
  }
  return success({ samples, inside, share: inside / samples, ...wilson(inside, samples) });
}

/** Normal deviate of standard deviation 1/3, drawn again outside -1 to 1. Source: Box & Muller (1958). */
function cutNormal(generator: Parameters<typeof uniformFloat64>[0]): number {
  for (;;) {
    const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(generator)));
    const value = (radius * Math.cos(2 * Math.PI * uniformFloat64(generator))) / 3;
    if (Math.abs(value) <= 1) return value;
  }
}

function wilson(inside: number, samples: number): { readonly shareLow: number; readonly shareHigh: number } {
  const zScore = 1.959963984540054;
  const z2 = (zScore * zScore) / samples;
  const share = inside / samples;
  const middle = (share + z2 / 2) / (1 + z2);
  const half = (zScore * Math.sqrt((share * (1 - share)) / samples + z2 / (4 * samples))) / (1 + z2);
  return { shareLow: Math.max(0, middle - half), shareHigh: Math.min(1, middle + half) };
}
