import { mean, rootMeanSquare } from "simple-statistics";
import type { Group } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import type { AccuracyRow } from "./accuracyRow";
import { groupBy } from "./groupBy";

/** Errors of one kind of quantity in one group and regime, in one half or all together. */
export interface ErrorSummary {
  readonly group: Group;
  readonly quantity: Quantity["kind"];
  /** Regime that the engine found; null where a quantity has none or spans several. */
  readonly regime: AccuracyRow["regime"];
  readonly part: AccuracyRow["part"];
  readonly count: number;
  /** Values that the engine gives no answer to; they are in no other figure. */
  readonly missing: number;
  readonly insideScatter: number;
  readonly errorMeasure: AccuracyRow["errorMeasure"];
  readonly meanError: number | null;
  readonly rmsError: number | null;
  /** Error of largest magnitude, with its sign. */
  readonly worstError: number | null;
}

/** One summary of the counted rows per group, quantity, regime and part, in the order in which they first appear. */
export function summarise(rows: readonly AccuracyRow[]): ErrorSummary[] {
  const parts = groupBy(
    rows.filter(({ shownOnly }) => shownOnly === null),
    (row) => [row.group, row.quantity, row.regime, row.part].join("|"),
  );
  return [...parts.values()].map((members) => {
    const { group, quantity, regime, part, errorMeasure } = members[0];
    const errors = members.flatMap(({ error }) => (error === null ? [] : [error]));
    const any = errors.length > 0;
    return {
      group,
      quantity,
      regime,
      part,
      count: members.length,
      missing: members.length - errors.length,
      insideScatter: members.filter(({ insideScatter }) => insideScatter === true).length,
      errorMeasure,
      meanError: any ? mean(errors) : null,
      rmsError: any ? rootMeanSquare(errors) : null,
      worstError: any ? errors.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a)) : null,
    };
  });
}
