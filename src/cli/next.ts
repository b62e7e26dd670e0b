import { resolve } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { oneJobSteps } from "../../shared/case/caseSteps";
import { type CaseReading, readCaseDocument } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { nextBlock } from "../../shared/jobs/next/nextBlock";
import type { NextResult } from "../../shared/jobs/next/nextResult";
import { endOnSignals, exitDone, exitIncomplete, refuse } from "./command";
import type { NextInput } from "./commandInputs";
import { type OpenedCase, openNamedCase } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";
import { joinedCsv, joinedTables, jsonText, type NamedResults } from "./severalCases";
import { shownInputName, standardInputName } from "./standardInput";

/** Says what to test next in cases, one after the other; one without the block gets the standard list. */
export async function runNext({ files, format, out }: NextInput): Promise<number> {
  const cases: { readonly file: string; readonly theCase: Case }[] = [];
  for (const name of files) {
    const opened = await openNamedCase(name);
    if (!opened.ok) return refuse(opened.problem.message);
    const file = shownInputName(name);
    const reading = withNext(opened.value, file);
    if (!reading.ok) return refuse(reading.problem.message);
    cases.push({ file, theCase: reading.value });
  }

  let output: OutputFile | null = null;
  const progress = new ProgressLine(process.stderr);
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
  try {
    const done: NamedResults<{ readonly title: string; readonly next: NextResult }>[] = [];
    for (const { file, theCase } of cases) {
      const next = await runSteps(theCase, progress, cases.length > 1 ? `${file}: ` : "");
      done.push({ file, results: { title: theCase.title, next } });
    }
    progress.end();
    const text = rendered(done, format);
    const written = output?.commit(text);
    if (written?.ok === false) return refuse(written.problem.message);
    if (output === null) process.stdout.write(text);
    return done.every(({ results }) => nextBlock.isComplete(results.next)) ? exitDone : exitIncomplete;
  } catch (error) {
    output?.discard();
    throw error;
  } finally {
    progress.end();
  }
}

function rendered(done: readonly NamedResults<{ readonly next: NextResult }>[], format: NextInput["format"]): string {
  if (format === "json") return jsonText(done);
  const texts = done.map(({ file, results: { next } }) => ({
    file,
    text: format === "csv" ? nextBlock.csv.write(next) : `${nextBlock.table(next)}\n`,
  }));
  return format === "csv" ? joinedCsv(texts) : joinedTables(texts);
}

function withNext({ theCase, document }: OpenedCase, shownName: string): CaseReading {
  if (theCase.next !== null) return { ok: true, value: theCase };
  return readCaseDocument({ ...Object(document), next: {} }, shownName);
}

/** Runs the job one step per turn of the event loop, so that signals get through. */
async function runSteps(theCase: Case, progress: ProgressLine, prefix: string): Promise<NextResult> {
  const steps = oneJobSteps(theCase, nextBlock);
  for (;;) {
    await nextTurn();
    const step = steps.next();
    if (step.done === true) return step.value;
    progress.update(step.value.done, step.value.total, `${prefix}${step.value.label}`);
  }
}
