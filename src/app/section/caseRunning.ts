import { proxy } from "comlink";
import type { CaseResults } from "../../../shared/case/caseResults";
import type { CaseStep } from "../../../shared/case/caseSteps";
import type { DesignReading } from "../../../shared/case/caseToDesign";
import type { CaseApi } from "../../../workers/caseApi";
import { tell } from "../store/notices";
import { Task } from "../view/task";
import { cancelledCode } from "../view/taskState";
import type { WatchedWorker } from "../view/watchedWorker";
import { caseWorker } from "../view/workers";
import { noCase } from "./caseRun";
import { caseRun } from "./sectionStores";

const longestReadMilliseconds = 15_000;

let worker: WatchedWorker<CaseApi> | null = null;

function ownWorker(): WatchedWorker<CaseApi> {
  worker ??= caseWorker(null);
  return worker;
}

interface CaseFile {
  readonly fileName: string;
  readonly title: string;
  readonly text: string;
}

/** The run of a case file in its own worker; the store follows every step. */
const running = new Task<CaseFile, CaseResults, CaseStep>({
  ask: ({ fileName, text }, onStep) => ownWorker().call((remote) => remote.runCase(text, fileName, proxy(onStep))),
  end: () => worker?.cancel(),
  crashWords: (reason) => `The solver stopped: ${reason}.`,
});

running.subscribe(({ status, inputs, step, last, problems }) => {
  if (status === "pending" && step === null) {
    caseRun.value = { ...noCase, ...inputs, status: "running", label: "reading the case" };
  } else if (status === "pending" && step !== null) {
    const { done, total, label, rows } = step;
    caseRun.patch({ done, total, label, rows: [...caseRun.value.rows, ...rows] });
  } else if (status === "complete" && last !== null) {
    caseRun.patch({ status: "done", results: last.result, rows: last.result.results });
  } else if (problems[0]?.code === cancelledCode) {
    caseRun.patch({ status: "cancelled" });
  } else if (status === "error") {
    if (problems[0]?.code === "crash") {
      tell("warning", `${problems[0].message} It ran the case; the results so far are kept.`);
    }
    caseRun.patch({ status: "failed", problems });
  }
});

export function runCaseFile(fileName: string, title: string, text: string): void {
  void running.run({ fileName, title, text });
}

/** Ends the running case at once; the rows that it had yielded stay. */
export function cancelCase(): void {
  running.cancel();
}

/**
 * The design to start from when a case file is opened, read in the worker: a hostile file may take its time there
 * without holding up the page, and is given up after a while.
 */
export async function readDesign(fileName: string, text: string): Promise<DesignReading> {
  const started = ownWorker().call((remote) => remote.readDesign(text, fileName));
  const patience = setTimeout(() => worker?.cancel(), longestReadMilliseconds);
  const outcome = await started;
  clearTimeout(patience);
  if (outcome.kind === "done") return outcome.value;
  const message = `${fileName} took more than ${longestReadMilliseconds / 1000} s to read and was given up.`;
  return { ok: false, problems: [{ code: "too-slow", message }] };
}
