/** A list or a range as it stands in a case file. */
export type Sweep =
  | readonly number[]
  | { readonly from: number; readonly to: number; readonly count: number; readonly spacing?: "linear" | "log" };

/**
 * The numbers of a list or a range. Both ends of a range are met exactly.
 * @param sweep count 2 or more; a log range has both ends above 0
 */
export function expandSweep(sweep: Sweep): number[] {
  if (!("from" in sweep)) return [...sweep];
  const { from, to, count } = sweep;
  if (!(count >= 2)) throw new RangeError(`count is ${count}; a range needs 2 or more values.`);
  const isLog = sweep.spacing === "log";
  if (isLog && !(from > 0 && to > 0)) throw new RangeError(`log range from ${from} to ${to}; both must be above 0.`);
  return Array.from({ length: count }, (_, i) => {
    if (i === 0) return from;
    if (i === count - 1) return to;
    const share = i / (count - 1);
    return isLog ? from * (to / from) ** share : from + (to - from) * share;
  });
}
