import { rootMeanSquare } from "simple-statistics";
import type { Group } from "../published/publishedValue";
import type { AccuracyRow } from "./accuracyRow";
import { groupBy } from "./groupBy";

/** How well the drag errors of the other sources foretell those of a source that was left out. */
export interface LeftOutBand {
  readonly group: Group;
  readonly regime: NonNullable<AccuracyRow["regime"]>;
  readonly sources: number;
  readonly count: number;
  /** RMS of the relative drag errors of all sources. */
  readonly rmsError: number;
  /** Largest RMS of the others when one source is left out. */
  readonly largestRmsWithoutOne: number;
  /** Share of the points inside 1.645 times the RMS of the other sources: 0.9 when errors are normal. */
  readonly coverage: number;
}

/** Half-width of a 90 % band of a normal distribution over its standard deviation. */
export const ninetyPercent = 1.645;

/** Bands for every group and regime that at least two sources with drag coefficients cover. */
export function leaveOneSourceOut(rows: readonly AccuracyRow[]): LeftOutBand[] {
  const drag = rows.filter(
    ({ quantity, error, regime, shownOnly }) =>
      shownOnly === null &&
      error !== null &&
      regime !== null &&
      ["dragCoefficient", "meanDragCoefficient"].includes(quantity),
  );
  return [...groupBy(drag, ({ group, regime }) => `${group}|${regime}`).values()].flatMap((members) => {
    const bySource = [...groupBy(members, ({ experiment }) => experiment).values()];
    if (bySource.length < 2) return [];
    const without = bySource.map((left) => rootMeanSquare(errorsOf(members.filter((row) => !left.includes(row)))));
    const covered = bySource.map(
      (left, i) => errorsOf(left).filter((error) => Math.abs(error) <= ninetyPercent * without[i]).length,
    );
    return [
      {
        group: members[0].group,
        regime: members[0].regime!,
        sources: bySource.length,
        count: members.length,
        rmsError: rootMeanSquare(errorsOf(members)),
        largestRmsWithoutOne: Math.max(...without),
        coverage: covered.reduce((a, b) => a + b) / members.length,
      },
    ];
  });
}

function errorsOf(rows: readonly AccuracyRow[]): number[] {
  return rows.map(({ error }) => error!);
}
