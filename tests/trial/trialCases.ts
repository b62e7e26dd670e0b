import { resolveTrial } from "../../shared/jobs/trial/resolveTrial";
import type { TrialBlockDocument } from "../../shared/jobs/trial/trialBlockDocument";
import type { TrialCase } from "../../shared/jobs/trial/trialCase";
import type { TrialResult } from "../../shared/jobs/trial/trialResult";
import { trialSteps } from "../../shared/jobs/trial/trialSteps";
import { readCsvTable } from "../../shared/tables/csvTable";
import type { DataCell } from "../../shared/tables/dataTable";

export const smallBlock: TrialBlockDocument = {
  pucks: [
    { name: "Round", code: "384", drag: 2.1 },
    { name: "Sharp", code: "592", drag: 3.2 },
    { name: "Rough", code: "746", drag: 3.9 },
  ],
  players: ["Ann", "Bo", "Cy", "Di", "Ed", "Flo"],
  activities: [{ name: "Passing" }, { name: "Flicking", weight: 2 }],
  scale: { lowest: 1, highest: 7, question: "How did it play?", lowestMeans: "badly", highestMeans: "well" },
  seed: 5,
};

export function tableOf(csv: string): { columns: string[]; rows: DataCell[][] } {
  const table = readCsvTable(csv);
  if (!table.ok) throw new Error(table.problem.message);
  const { columns, rows, ...rest } = table.value;
  return { ...rest, columns: [...columns], rows: rows.map((row) => [...row]) };
}

export function resolved(block: TrialBlockDocument): TrialCase {
  const reading = resolveTrial(block);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join("; "));
  return reading.value;
}

export function analysed(block: TrialBlockDocument): TrialResult {
  const steps = trialSteps(resolved(block));
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** A wide table: a line per player and activity, scores in the order of the pucks. */
export function withScores(
  block: TrialBlockDocument,
  scoreOf: (player: number, activity: number, puck: number) => number | null,
): TrialBlockDocument {
  const rows = block.players.flatMap((player, i) =>
    block.activities.map(({ name }, a) => [player, name, ...block.pucks.map((_, p) => scoreOf(i, a, p))]),
  );
  const columns = ["player", "activity", ...block.pucks.map(({ code }) => code ?? "")];
  return { ...block, scores: { data: { columns, rows } } };
}
