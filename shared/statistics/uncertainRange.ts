/** A quantity that is known by its ends alone: every value between them is as likely, or every ratio. */
export interface UncertainRange {
  readonly from: number;
  /** At least `from`; equal where the quantity is known. */
  readonly to: number;
  /** "log": equal ratios are as likely, for what is known by its order of magnitude. Both ends are then above 0. */
  readonly spacing: "linear" | "log";
}

/** The value at a share of the range, 0 (from) to 1 (to): of a uniform draw, a draw from the range. */
export function valueInRange({ from, to, spacing }: UncertainRange, share: number): number {
  if (from === to) return from;
  return spacing === "log" ? from * (to / from) ** share : from + (to - from) * share;
}
