import type { Applicability } from "./applicability";

/** How far a drag coefficient can be trusted. */
export interface JudgedDragBand {
  /** 90 % band: of published values at such conditions, nine in ten lie inside; low is never below 0. */
  readonly low: number;
  /** Upper end of the band. */
  readonly high: number;
  /** True when a drag crisis is so near that the band holds the states on both sides of it. */
  readonly spansCrisis: boolean;
  /** Where the section and its condition stand among those of published values. */
  readonly applicability: Applicability;
  /** One sentence on what was not checked; null inside the checked range. */
  readonly reason: string | null;
}
