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
import { type CaseArguments, caseArguments, helpText, type OutputFormat } from "./caseArguments";
import { exitDone, exitIncomplete, exitInterrupted, folderOf, refuse, runCommand } from "./command";
import { openCaseFile } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";

const startFolder = folderOf("case");

async function main(): Promise<number> {
  const args = caseArguments(process.argv.slice(2));
  if (!args.ok) return refuse(args.problem.message);
  if (args.value.wants === "help") {
    process.stdout.write(helpText);
    return exitDone;
  }
  if (args.value.wants === "schema") {
    process.stdout.write(`${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
    return exitDone;
  }
  return runFile(args.value);
}

async function runFile(args: Extract<CaseArguments, { wants: "run" }>): Promise<number> {
  const path = resolve(startFolder, args.file);
  const opened = openCaseFile(path, args.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const { theCase } = opened.value;
  if (args.format === "puckCsv" && theCase.puck === null) {
    return refuse(`${args.file}: puck is missing; --pucks needs a case with a puck`);
  }
  if (args.format === "tunnelCsv" && theCase.tunnel === null) {
    return refuse(`${args.file}: tunnel is missing; --tunnel needs a case with a tunnel test`);
  }
  if (args.format === "trialCsv" && theCase.trial === null) {
    return refuse(`${args.file}: trial is missing; --trial needs a case with a player trial`);
  }
  if (args.format === "comparisonCsv" && theCase.measurements === null) {
    return refuse(`${args.file}: measurements is missing; --measurements needs a case with measurements`);
  }

  let output: OutputFile | null = null;
  const progress = new ProgressLine(process.stderr);
  const stop = (status: number) => () => {
    progress.end();
    output?.discard();
    process.exit(status);
  };
  // Before the output file is begun, so that no moment is left in which a signal would leave it behind.
  process.once("SIGINT", stop(exitInterrupted));
  process.once("SIGTERM", stop(143));
  process.once("SIGHUP", stop(129));
  if (args.out !== null) {
    const begun = beginOutputFile(resolve(startFolder, args.out), args.out, [path]);
    if (!begun.ok) return refuse(begun.problem.message);
    output = begun.value;
  }

  let results: CaseResults;
  try {
    results = await runSteps(theCase, progress);
  } catch (error) {
    output?.discard();
    throw error;
  } finally {
    progress.end();
  }
  const rendered = render(results, args.format);
  if (output === null) {
    process.stdout.write(rendered);
  } else {
    const written = output.commit(rendered);
    if (!written.ok) return refuse(written.problem.message);
  }
  const isComplete =
    results.results.every((row) => row.converged) &&
    (results.pucks ?? []).every((puck) => puck.problem === null) &&
    (results.comparison?.sets ?? []).every((set) => set.problem === null && set.comparedCount === set.rows.length);
  return isComplete ? exitDone : exitIncomplete;
}

/** Runs a case one step per turn of the event loop, so that signals get through. */
async function runSteps(theCase: Case, progress: ProgressLine): Promise<CaseResults> {
  const steps = caseSteps(theCase);
  for (;;) {
    await nextTurn();
    const step = steps.next();
    if (step.done === true) return step.value;
    progress.update(step.value.done, step.value.total, step.value.label);
  }
}

function render(results: CaseResults, format: OutputFormat): string {
  if (format === "json") return `${JSON.stringify(results, null, 2)}\n`;
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

await runCommand(main);
