import { proxy } from "comlink";
import type { CaseStep } from "../../../shared/case/caseSteps";
import type { DesignReading } from "../../../shared/case/caseToDesign";
import type { CaseApi } from "../../../workers/caseApi";
import { caseRun } from "../store/caseRun";
import { tell } from "../store/notices";
import { spawnCaseRunner } from "./spawnCaseRunner";
import { WatchedWorker } from "./watchedWorker";

const longestReadMilliseconds = 15_000;

let worker: WatchedWorker<CaseApi> | null = null;
let runNumber = 0;

function caseWorker(): WatchedWorker<CaseApi> {
  worker ??= new WatchedWorker<CaseApi>(spawnCaseRunner, () => {});
  return worker;
}

/** Runs a case file in its own worker and keeps the store up to date with every step. */
export async function runCaseFile(fileName: string, title: string, text: string): Promise<void> {
  if (caseRun.value.status === "running") cancelCase();
  const own = { fileName, title, text };
  const number = ++runNumber;
  caseRun.value = {
    ...own,
    status: "running",
    done: 0,
    total: 0,
    label: "reading the case",
    rows: [],
    results: null,
    problems: [],
  };
  const isCurrent = () => number === runNumber && caseRun.value.status === "running";
  const onStep = async (step: CaseStep) => {
    if (!isCurrent()) return;
    caseRun.patch({
      done: step.done,
      total: step.total,
      label: step.label,
      rows: [...caseRun.value.rows, ...step.rows],
    });
  };
  const outcome = await caseWorker().call((remote) => remote.runCase(text, fileName, proxy(onStep)));
  if (!isCurrent()) return;
  if (outcome.kind === "cancelled") {
    caseRun.patch({ status: "cancelled" });
  } else if (outcome.kind === "crashed") {
    tell("warning", `The solver stopped (${outcome.reason}) while it ran the case; the results so far are kept.`);
    caseRun.patch({
      status: "failed",
      problems: [{ code: "crash", message: `The solver stopped: ${outcome.reason}.` }],
    });
  } else if (outcome.value.ok) {
    caseRun.patch({ status: "done", results: outcome.value.value, rows: outcome.value.value.results });
  } else {
    caseRun.patch({ status: "failed", problems: outcome.value.problems });
  }
}

/**
 * The design to start from when a case file is opened, read in the worker: a hostile file may take its time there
 * without holding up the page, and is given up after a while.
 */
export async function readDesign(fileName: string, text: string): Promise<DesignReading> {
  const started = caseWorker().call((remote) => remote.readDesign(text, fileName));
  const patience = setTimeout(() => worker?.cancel(), longestReadMilliseconds);
  const outcome = await started;
  clearTimeout(patience);
  if (outcome.kind === "done") return outcome.value;
  const message = `${fileName} took more than ${longestReadMilliseconds / 1000} s to read and was given up.`;
  return { ok: false, problems: [{ code: "too-slow", message }] };
}

/** Ends the running case at once; the rows that it had yielded stay. */
export function cancelCase(): void {
  if (caseRun.value.status !== "running") return;
  caseRun.patch({ status: "cancelled" });
  worker?.cancel();
}
