import { cellNumber, type DecimalMark, decimalMarkOf } from "../../tables/cellNumber";
import { columnIndex } from "../../tables/columnMapping";
import { type DataTable, isMissing, rowNumber, type TableProblem } from "../../tables/dataTable";
import { placeScores } from "./placeScores";
import type { TrialPlan } from "./trialPlan";
import type { ScoreScale, TrialScore, TrialSetup } from "./trialSetup";

export interface ScoreReading {
  /** What could be read; rows with a fault are left out here and named in the problems. */
  readonly scores: readonly TrialScore[];
  readonly problems: readonly TableProblem[];
}

/**
 * Scores from a table, in the long form (a row per score: player, activity, code, score, and if wanted repeat, position
 * and comment) or the wide one (a row per session: player, activity, if wanted repeat, and a column for every code).
 * Pucks go by code or by name. A position that is not given is the planned one.
 * @param decimalMark null to tell it from the cells
 */
export function readScores(
  table: DataTable,
  setup: TrialSetup,
  plan: TrialPlan,
  decimalMark: DecimalMark | null = null,
): ScoreReading {
  const { placed, problems: misplaced } = placeScores(table, setup, plan);
  const numeric = [...new Set(placed.map(({ column }) => columnIndex(table, column)))];
  const mark = decimalMark ?? decimalMarkOf(table, numeric) ?? "point";
  const problems = [...misplaced];
  const scores = placed.flatMap(({ typed, row, column, ...place }): TrialScore[] => {
    const score = typedScore(typed, setup.scale, mark);
    if (score.ok) return [{ ...place, score: score.value }];
    problems.push({ row: rowNumber(table, row), column, message: score.reason });
    return [];
  });
  return { scores, problems: problems.sort((a, b) => (a.row ?? 0) - (b.row ?? 0)) };
}

/** A typed score, null when missing, or why it is none. */
export function typedScore(
  typed: string | number | null,
  { lowest, highest, step }: ScoreScale,
  mark: DecimalMark,
): { readonly ok: true; readonly value: number | null } | { readonly ok: false; readonly reason: string } {
  if (isMissing(typed) || typed === null) return { ok: true, value: null };
  const number = cellNumber(typed, mark);
  const rule = `a score must be ${lowest} to ${highest}${step === 1 ? "" : ` in steps of ${step}`}`;
  if (!number.ok) return { ok: false, reason: `${number.reason}; ${rule}, empty when missing` };
  const steps = (number.value - lowest) / step;
  if (number.value < lowest || number.value > highest || Math.abs(steps - Math.round(steps)) > 1e-9) {
    return { ok: false, reason: `${number.value} is not on the scale; ${rule}, empty when missing` };
  }
  return { ok: true, value: number.value };
}
