/** Equal ratios from a first to a last value, both met exactly. */
function logRange(first: number, last: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    if (i === 0) return first;
    return i === count - 1 ? last : first * (last / first) ** (i / (count - 1));
  });
}

/** What the live curves are traced over. */
export interface CurveRanges {
  readonly reynoldsNumbers: readonly number[];
  /** ks / D: a smooth wall, then a finely to a coarsely rough one. */
  readonly roughnessRatios: readonly number[];
  readonly withBands: boolean;
}

/** Curves of a design at rest. */
export const fullCurves: CurveRanges = {
  reynoldsNumbers: logRange(1e4, 1e7, 49),
  roughnessRatios: [0, ...logRange(1e-5, 2e-2, 14)],
  withBands: true,
};

/** Curves while a handle is held: coarser and without bands, so that the cores are left to the drawing. */
export const quickCurves: CurveRanges = {
  reynoldsNumbers: logRange(1e4, 1e7, 25),
  roughnessRatios: [0, ...logRange(1e-5, 2e-2, 6)],
  withBands: false,
};
