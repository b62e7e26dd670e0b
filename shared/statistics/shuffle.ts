import type { RandomDraws } from "./randomDraws";

/**
 * Shuffles the values at some places among these places. Source: Fisher & Yates (1938) in the form of Durstenfeld (1964),
 * Commun. ACM 7, 420.
 */
export function shuffleInPlace(values: Float64Array | number[], places: readonly number[], draws: RandomDraws): void {
  for (let i = places.length - 1; i > 0; i--) {
    const j = draws.below(i + 1);
    const kept = values[places[i]];
    values[places[i]] = values[places[j]];
    values[places[j]] = kept;
  }
}

/** A random order of 0 to count - 1. */
export function shuffledOrder(draws: RandomDraws, count: number): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  shuffleInPlace(order, [...order], draws);
  return order;
}
