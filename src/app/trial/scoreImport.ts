import { readScores } from "../../../shared/jobs/trial/readScores";
import { readCsvTable } from "../../../shared/tables/csvTable";
import { tableProblemText } from "../../../shared/tables/dataTable";
import { planOf, setupOf } from "./trialBlock";
import { cellsOf } from "./trialCaseText";
import type { ScoreCell, TrialInputs } from "./trialInputs";

export interface ImportReading {
  /** Everything that is wrong, by row and column. */
  readonly problems: readonly string[];
  /** Scores that have a place, right or wrong; null when the text is no table. */
  readonly cells: Readonly<Record<string, ScoreCell>> | null;
  /** Of them, those that replace another score. */
  readonly replaced: number;
}

/** What a pasted or opened table would bring. */
export function readImport(text: string, inputs: TrialInputs): ImportReading {
  const table = readCsvTable(text);
  if (!table.ok) return { problems: [table.problem.message], cells: null, replaced: 0 };
  const { problems } = readScores(table.value, setupOf(inputs), planOf(inputs));
  const { cells } = cellsOf(table.value, inputs);
  const replaced = Object.entries(cells).filter(([key, { typed }]) => {
    const old = inputs.cells[key];
    return old !== undefined && old.typed !== "" && old.typed !== typed;
  });
  return { problems: problems.map(tableProblemText), cells, replaced: replaced.length };
}
