import type { CaseResults } from "./caseResults";
import { type CsvOption, jobBlocks } from "./jobBlocks";
import { resultTable } from "./resultTable";

/** The results of a case as text for people: the sections, then one part for each of its jobs. */
export function caseTable(results: CaseResults): string {
  return [resultTable(results), ...outcomesOf(results).map(({ block, outcome }) => block.table(outcome))].join("\n");
}

/** What one job of a case yielded, as comma-separated values; null where the case has no such job. */
export function jobCsv(results: CaseResults, option: CsvOption): string | null {
  const found = outcomesOf(results).find(({ block }) => block.csv.option === option);
  return found === undefined ? null : found.block.csv.write(found.outcome);
}

/** False where a row did not converge or a job lacks a part. */
export function isComplete(results: CaseResults): boolean {
  const jobs = outcomesOf(results).every(({ block, outcome }) => block.isComplete(outcome));
  return jobs && results.results.every(({ converged }) => converged);
}

function outcomesOf(results: CaseResults) {
  const outcomes: Readonly<Record<string, unknown>> = { ...results };
  return jobBlocks.flatMap((block) => {
    const outcome = outcomes[block.resultKey];
    return outcome === undefined ? [] : [{ block, outcome }];
  });
}
