import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { tell } from "../store/notices";
import { Task } from "../view/task";
import type { CallOutcome, WatchedWorker } from "../view/watchedWorker";
import { puckWorker } from "../view/workers";
import { measurePuck } from "./measurePuck";
import { ownTolerances } from "./ownTolerances";
import type { JudgedPuck, SolvedPucks } from "./puckAnswers";
import { puckBench, updatePuckPin } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import { judgeParts, playParts, sameParts, solveParts } from "./puckChanges";
import type { PuckInputs, PuckMake } from "./puckInputs";

const program = "The puck solver";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;
const crashWords = () => "The solver stopped again and again on this puck; change it to go on.";

let running = false;

/**
 * Keeps the puck view up to date: figures at once, the judgement in one worker, drag and motions in another, newest
 * first. Begins with the first call and goes on for as long as the page is open.
 */
export function startPuckSolving(): void {
  if (running) return;
  running = true;
  const judging = judgingTask();
  const solving = solvingTask();
  let last: PuckInputs | null = null;
  let lastPins = puckBench.value.pins;
  const follow = () => {
    const { present } = puckBench;
    const { pins } = puckBench.value;
    const pinsChanged = pins.some((pin) => pin.result === null && !lastPins.includes(pin));
    lastPins = pins;
    if (present === last && !pinsChanged) return;
    const before = present === last ? null : last;
    const isNew = present !== last;
    last = present;
    if (isNew) {
      const measured = measurePuck(present);
      puckBench.patch(
        measured.ok ? { measured: measured.value, problem: null } : { problem: measured.problem, solving: false },
      );
      if (!measured.ok) return;
      if (before === null || !sameParts(before, present, judgeParts)) void judging.run(present);
    }
    if (before === null || pinsChanged || !sameParts(before, present, solveParts)) void solving.run(present);
  };
  puckBench.subscribe(follow);
  follow();
}

function judgingTask(): Task<PuckInputs, JudgedPuck | null> {
  const worker = puckWorker(program);
  const task = new Task<PuckInputs, JudgedPuck | null>({ ask: (inputs) => judge(worker, inputs), crashWords });
  task.subscribe(({ status, last, problems }) => {
    // A judge that stops is started again, and judges the next change.
    const [judgeProblem = null] = problems.filter(({ code }) => code !== "crash");
    if (status !== "pending") puckBench.patch({ judged: last?.result ?? null, judgeProblem });
  });
  return task;
}

async function judge(
  worker: WatchedWorker<PuckApi>,
  inputs: PuckInputs,
): Promise<CallOutcome<Result<JudgedPuck | null>>> {
  const { rules, candidate } = inputs;
  const { measured } = puckBench.value;
  if (rules === null || measured === null) return { kind: "done", value: success(null) };
  const design = { spec: candidate.spec, setting: measured.setting };
  const tolerances = ownTolerances(candidate.spec, inputs.tolerances);
  const outcome = await worker.call((remote) => remote.judge(design, rules, tolerances, null));
  if (outcome.kind !== "done") return outcome;
  const { value } = outcome;
  return { kind: "done", value: value.ok ? success({ inputs, judgement: value.value }) : value };
}

function solvingTask(): Task<PuckInputs, SolvedPucks> {
  const worker = puckWorker(program);
  const task = new Task<PuckInputs, SolvedPucks>({
    ask: async (inputs) => {
      const outcome = await solvePair(worker, inputs, inputs.candidate);
      if (outcome.kind !== "done" || !outcome.value.ok) return outcome as CallOutcome<never>;
      const [baseline, candidate] = outcome.value.value;
      return { kind: "done", value: success({ inputs, baseline, candidate }) };
    },
    after: (inputs, isNewest) => solvePins(worker, inputs, isNewest),
    crashWords,
  });
  task.subscribe(({ status, last, problems }) => {
    const [solveProblem = null] = problems;
    const solved = last?.result ?? null;
    // Once the pair is complete its pins are solved, and only then nothing is on its way.
    if (status === "pending") puckBench.patch({ solving: true, solved });
    else puckBench.patch({ solved, solveProblem, ...(status === "error" ? { solving: false } : {}) });
  });
  return task;
}

async function solvePins(worker: WatchedWorker<PuckApi>, inputs: PuckInputs, isNewest: () => boolean): Promise<void> {
  const isPresent = () => isNewest() && sameParts(puckBench.present, inputs, solveParts);
  if (puckBench.value.solveProblem !== null) return;
  for (const pin of puckBench.value.pins) {
    if (pin.result !== null && pin.solvedFor !== null && sameParts(pin.solvedFor, inputs, playParts)) continue;
    if (!isPresent()) return;
    const outcome = await solvePair(worker, inputs, pin.make);
    if (outcome.kind === "cancelled") return;
    const fault = outcome.kind === "crashed" ? crashWords() : outcome.value.ok ? null : outcome.value.problem.message;
    if (outcome.kind === "done" && outcome.value.ok) updatePuckPin(pin.id, outcome.value.value[1], inputs);
    else tell("warning", `The pinned puck ${pin.make.spec.name} could not be solved: ${fault}`);
  }
  if (isPresent()) puckBench.patch({ solving: false });
}

/** Results of the baseline and of one puck beside it. */
async function solvePair(
  worker: WatchedWorker<PuckApi>,
  inputs: PuckInputs,
  make: PuckMake,
): Promise<CallOutcome<Result<readonly [PuckResult, PuckResult]>>> {
  const made = puckCaseOf({ ...inputs, candidate: make, rules: null }, []);
  if (!made.ok) return { kind: "done", value: made };
  const outcome = await worker.insist((remote) => remote.solvePucks(made.value), mostRepeats);
  if (outcome.kind !== "done") return outcome;
  const [baseline, candidate] = outcome.value;
  const isDragged = candidate.drag.length > 0 && baseline.drag.length > 0;
  return {
    kind: "done",
    value: isDragged
      ? success([baseline, candidate])
      : problem("no-drag", candidate.problem ?? baseline.problem ?? "no drag was found"),
  };
}
