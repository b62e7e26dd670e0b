import { resolve } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { caseJsonSchema } from "../../shared/case/caseDocument";
import { caseTable, isComplete, jobCsv } from "../../shared/case/caseOutput";
import type { CaseResults } from "../../shared/case/caseResults";
import { caseSteps } from "../../shared/case/caseSteps";
import { jobBlocks } from "../../shared/case/jobBlocks";
import type { Case } from "../../shared/case/resolvedCase";
import { resultCsv } from "../../shared/case/resultCsv";
import { endOnSignals, exitDone, exitIncomplete, refuse, unwritten } from "./command";
import type { CaseRunInput, OutputFormat } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";
import { joinedCsv, joinedTables, jsonText, type NamedResults } from "./severalCases";
import { shownInputName, standardInputName } from "./standardInput";
import { print } from "./standardOutput";

export function printSchema(): Promise<number> {
  return print(`${JSON.stringify(caseJsonSchema(), null, 2)}\n`);
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

  const done: NamedResults<CaseResults>[] = [];
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
    const printed = await print(rendered);
    if (printed !== exitDone) return printed;
  } else {
    const written = output.commit(rendered);
    if (!written.ok) return unwritten(written.problem.message);
  }
  return done.every(({ results }) => isComplete(results)) ? exitDone : exitIncomplete;
}

interface NamedCase {
  readonly file: string;
  readonly theCase: Case;
}

/** What a case lacks for a CSV of one of its jobs; null when it has it. */
function missingPart(theCase: Case, format: OutputFormat): string | null {
  const jobs: Readonly<Record<string, unknown>> = { ...theCase };
  const block = jobBlocks.find(({ csv }) => csv.option === format);
  if (block === undefined || jobs[block.key] !== null) return null;
  return `${block.key} is missing; --${block.csv.option} needs a case with ${block.what}`;
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

function renderAll(done: readonly NamedResults<CaseResults>[], format: OutputFormat): string {
  if (format === "json") return jsonText(done);
  const texts = done.map(({ file, results }) => ({ file, text: render(results, format) }));
  return format === "table" ? joinedTables(texts) : joinedCsv(texts);
}

/** A case as a table or as CSV. */
function render(results: CaseResults, format: Exclude<OutputFormat, "json">): string {
  if (format === "table") return caseTable(results);
  return format === "csv" ? resultCsv(results) : (jobCsv(results, format) ?? "");
}
