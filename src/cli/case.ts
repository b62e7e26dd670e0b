import { resolve } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { caseJsonSchema } from "../../shared/case/caseDocument";
import type { CaseResults } from "../../shared/case/caseResults";
import { caseSteps } from "../../shared/case/caseSteps";
import type { Case } from "../../shared/case/resolvedCase";
import { resultCsv } from "../../shared/case/resultCsv";
import { resultTable } from "../../shared/case/resultTable";
import { comparisonCsv } from "../../shared/jobs/evidence/comparisonCsv";
import { comparisonTable } from "../../shared/jobs/evidence/comparisonTable";
import { puckCsv } from "../../shared/jobs/puck/puckcase/puckCsv";
import { puckTable } from "../../shared/jobs/puck/puckcase/puckTable";
import { trialCsv } from "../../shared/jobs/trial/trialCsv";
import { trialTable } from "../../shared/jobs/trial/trialTable";
import { tunnelCsv } from "../../shared/jobs/tunnel/tunnelCsv";
import { tunnelTable } from "../../shared/jobs/tunnel/tunnelTable";
import { endOnSignals, exitDone, exitIncomplete, refuse } from "./command";
import type { CaseRunInput, OutputFormat } from "./commands/case";
import { openNamedCase } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";
import { joinedCsv, joinedTables, jsonText, type NamedResults } from "./severalCases";
import { shownInputName, standardInputName } from "./standardInput";

export function printSchema(): number {
  process.stdout.write(`${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
  return exitDone;
}

/** Runs the cases one after the other and writes what was asked for of all of them at once. */
export async function runCases({ files, format, out }: CaseRunInput): Promise<number> {
  const cases: NamedCase[] = [];
  for (const file of files) {
    const opened = await openNamedCase(file);
    if (!opened.ok) return refuse(opened.problem.message);
    const missing = missingPart(opened.value.theCase, format);
    if (missing !== null) return refuse(`${shownInputName(file)}: ${missing}`);
    cases.push({ file: shownInputName(file), theCase: opened.value.theCase });
  }

  let output: OutputFile | null = null;
  const progress = new ProgressLine(process.stderr);
  // Before the output file is begun, so that no moment is left in which a signal would leave it behind.
  endOnSignals(() => {
    progress.end();
    output?.discard();
  });
  if (out !== null) {
    const inputs = files.filter((file) => file !== standardInputName).map((file) => resolve(file));
    const begun = beginOutputFile(resolve(out), out, inputs);
    if (!begun.ok) return refuse(begun.problem.message);
    output = begun.value;
  }

  const done: NamedResults[] = [];
  try {
    for (const { file, theCase } of cases) {
      done.push({ file, results: await runSteps(theCase, progress, files.length > 1 ? `${file}: ` : "") });
    }
  } catch (error) {
    output?.discard();
    throw error;
  } finally {
    progress.end();
  }
  const rendered = renderAll(done, format);
  if (output === null) {
    process.stdout.write(rendered);
  } else {
    const written = output.commit(rendered);
    if (!written.ok) return refuse(written.problem.message);
  }
  return done.every(({ results }) => isComplete(results)) ? exitDone : exitIncomplete;
}

interface NamedCase {
  readonly file: string;
  readonly theCase: Case;
}

/** What a case lacks for a CSV of one of its parts; null when it has it. */
function missingPart(theCase: Case, format: OutputFormat): string | null {
  if (format === "puckCsv" && theCase.puck === null) {
    return "puck is missing; --pucks needs a case with a puck";
  }
  if (format === "tunnelCsv" && theCase.tunnel === null) {
    return "tunnel is missing; --tunnel needs a case with a tunnel test";
  }
  if (format === "trialCsv" && theCase.trial === null) {
    return "trial is missing; --trial needs a case with a player trial";
  }
  if (format === "comparisonCsv" && theCase.measurements === null) {
    return "measurements is missing; --measurements needs a case with measurements";
  }
  return null;
}

function isComplete(results: CaseResults): boolean {
  return (
    results.results.every((row) => row.converged) &&
    (results.pucks ?? []).every((puck) => puck.problem === null) &&
    (results.comparison?.sets ?? []).every((set) => set.problem === null && set.comparedCount === set.rows.length)
  );
}

/** Runs a case one step per turn of the event loop, so that signals get through. */
async function runSteps(theCase: Case, progress: ProgressLine, prefix: string): Promise<CaseResults> {
  const steps = caseSteps(theCase);
  for (;;) {
    await nextTurn();
    const step = steps.next();
    if (step.done === true) return step.value;
    progress.update(step.value.done, step.value.total, `${prefix}${step.value.label}`);
  }
}

function renderAll(done: readonly NamedResults[], format: OutputFormat): string {
  if (format === "json") return jsonText(done);
  const texts = done.map(({ file, results }) => ({ file, text: render(results, format) }));
  return format === "table" ? joinedTables(texts) : joinedCsv(texts);
}

/** A case as a table or as CSV. */
function render(results: CaseResults, format: OutputFormat): string {
  if (format === "puckCsv") return puckCsv(results.pucks ?? []);
  if (format === "tunnelCsv" && results.tunnel !== undefined) return tunnelCsv(results.tunnel);
  if (format === "trialCsv" && results.trial !== undefined) return trialCsv(results.trial);
  if (format === "comparisonCsv") return comparisonCsv(results.comparison ?? { sets: [], carried: [], cautions: [] });
  if (format === "csv") return resultCsv(results);
  return [
    resultTable(results),
    ...(results.pucks === undefined ? [] : [puckTable(results.pucks)]),
    ...(results.tunnel === undefined ? [] : [tunnelTable(results.tunnel)]),
    ...(results.trial === undefined ? [] : [trialTable(results.trial)]),
    ...(results.comparison === undefined ? [] : [comparisonTable(results.comparison)]),
  ].join("\n");
}
