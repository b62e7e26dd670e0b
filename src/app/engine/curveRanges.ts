/** Equal ratios from a first to a last value, both met exactly. */
function logRange(first: number, last: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    if (i === 0) return first;
    return i === count - 1 ? last : first * (last / first) ** (i / (count - 1));
  });
}

/** Reynolds numbers of the live drag curve. */
export const curveReynoldsNumbers: readonly number[] = logRange(1e4, 1e7, 49);

/** ks / D of the live separation curve: a smooth wall, then a finely to a coarsely rough one. */
export const curveRoughnessRatios: readonly number[] = [0, ...logRange(1e-5, 2e-2, 14)];
