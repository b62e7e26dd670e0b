import type { CommonDraws } from "../../statistics/commonDraws";
import type { UncertainRange } from "../../statistics/uncertainRange";

/**
 * Weights that add up to 1, shape [criteria][draws]. A weight is the swing of its criterion from worst to best over the
 * sum of all swings (Belton & Stewart 2002, Multiple Criteria Decision Analysis, section 5.4).
 * @param swings ranges of every criterion, drawn evenly; null where nothing is said of them: then every set of weights
 *   is as likely, evenly over the simplex (exponential draws over their sum; Rubinstein 1982, Comput. Oper. Res. 9, 47)
 */
export function weightDraws(
  swings: readonly (UncertainRange | null)[],
  draws: number,
  common: CommonDraws,
): Float64Array[] {
  const columns = swings.map((swing, j) =>
    Float64Array.from({ length: draws }, (_, k) =>
      swing === null ? -Math.log1p(-common.value(`weight ${j}`, wholeShare, k)) : common.value(`swing ${j}`, swing, k),
    ),
  );
  for (let k = 0; k < draws; k++) {
    const sum = columns.reduce((total, column) => total + column[k], 0);
    for (const column of columns) column[k] /= sum;
  }
  return columns;
}

const wholeShare: UncertainRange = { from: 0, to: 1, spacing: "linear" };
