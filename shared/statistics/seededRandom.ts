import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus, xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** Random numbers whose state is plain data, so that a search goes on after a restart as if it had never stopped. */
export interface SeededRandom {
  /** In [0, 1). */
  next(): number;
  /** Whole number from 0 to count - 1. */
  below(count: number): number;
  /** Plain numbers; give them to resumeRandom. */
  state(): number[];
}

/** @param seed whole number; equal seeds give equal numbers on every machine */
export function startRandom(seed: number): SeededRandom {
  return wrap(xoroshiro128plus(seed));
}

export function resumeRandom(state: readonly number[]): SeededRandom {
  return wrap(xoroshiro128plusFromState(state));
}

function wrap(generator: ReturnType<typeof xoroshiro128plus>): SeededRandom {
  return {
    next: () => uniformFloat64(generator),
    below: (count) => Math.floor(uniformFloat64(generator) * count),
    state: () => [...generator.getState()],
  };
}

/** A random order of 0 to count - 1. Source: Fisher & Yates (1938) in the form of Durstenfeld (1964), CACM 7, 420. */
export function shuffledOrder(random: SeededRandom, count: number): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = random.below(i + 1);
    [order[i], order[j]] = [order[j], order[i]];
  }
  return order;
}
