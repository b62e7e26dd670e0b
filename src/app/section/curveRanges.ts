import { expandSweep } from "../../../shared/document/expandSweep";

/** What the live curves are traced over. */
export interface CurveRanges {
  readonly reynoldsNumbers: readonly number[];
  /** ks / D: a smooth wall, then a finely to a coarsely rough one. */
  readonly roughnessRatios: readonly number[];
  readonly withBands: boolean;
}

/** Curves of a design at rest. */
export const fullCurves: CurveRanges = {
  reynoldsNumbers: expandSweep({ from: 1e4, to: 1e7, count: 49, spacing: "log" }),
  roughnessRatios: [0, ...expandSweep({ from: 1e-5, to: 2e-2, count: 14, spacing: "log" })],
  withBands: true,
};

/** Curves while a handle is held: coarser and without bands, so that the cores are left to the drawing. */
export const quickCurves: CurveRanges = {
  reynoldsNumbers: expandSweep({ from: 1e4, to: 1e7, count: 25, spacing: "log" }),
  roughnessRatios: [0, ...expandSweep({ from: 1e-5, to: 2e-2, count: 6, spacing: "log" })],
  withBands: false,
};
