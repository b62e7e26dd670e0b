import type { PuckResult } from "../../../shared/jobs/puck/puckcase/puckResult";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { NewestOnly } from "../engine/newestOnly";
import { WatchedWorker } from "../engine/watchedWorker";
import { tell } from "../store/notices";
import { measurePuck } from "./measurePuck";
import { ownTolerances } from "./ownTolerances";
import { presentPuck, puckBench, updatePuckPin } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import { judgeParts, playParts, sameParts, solveParts } from "./puckChanges";
import type { PuckInputs, PuckMake } from "./puckInputs";
import { spawnPuckSolver } from "./spawnPuckSolver";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;

let running = false;

/**
 * Keeps the puck view up to date: figures at once, the judgement in one worker, drag and motions in another, newest
 * first. Begins with the first call and goes on for as long as the page is open.
 */
export function startPuckSolving(): void {
  if (running) return;
  running = true;
  const restarted = (reason: string) =>
    tell("warning", `The puck solver stopped (${reason}) and was started again. Nothing was lost.`);
  const judgeWorker = new WatchedWorker<PuckApi>(spawnPuckSolver, restarted);
  const solveWorker = new WatchedWorker<PuckApi>(spawnPuckSolver, restarted);
  const judging = new NewestOnly<PuckInputs>((inputs) => judge(judgeWorker, inputs));
  const solving = new NewestOnly<PuckInputs>((inputs) => solve(solveWorker, inputs));
  let last: PuckInputs | null = null;
  let lastPins = puckBench.value.pins;
  const follow = () => {
    const { history, pins } = puckBench.value;
    const { present } = history;
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
      if (before === null || !sameParts(before, present, judgeParts)) judging.submit(present);
    }
    if (before === null || pinsChanged || !sameParts(before, present, solveParts)) {
      puckBench.patch({ solving: true });
      solving.submit(present);
    }
  };
  puckBench.subscribe(follow);
  follow();
}

async function judge(worker: WatchedWorker<PuckApi>, inputs: PuckInputs): Promise<void> {
  const { rules, candidate } = inputs;
  const measured = puckBench.value.measured;
  if (rules === null || measured === null) {
    puckBench.patch({ judged: null, judgeProblem: null });
    return;
  }
  const design = { spec: candidate.spec, setting: measured.setting };
  const outcome = await worker.call((remote) =>
    remote.judge(design, rules, ownTolerances(candidate.spec, inputs.tolerances), null),
  );
  if (outcome.kind !== "done" || !sameParts(presentPuck(), inputs, judgeParts)) return;
  if (outcome.value.ok) puckBench.patch({ judged: { inputs, judgement: outcome.value.value }, judgeProblem: null });
  else puckBench.patch({ judgeProblem: outcome.value.problem });
}

async function solve(worker: WatchedWorker<PuckApi>, inputs: PuckInputs): Promise<void> {
  const answer = await solvePair(worker, inputs, inputs.candidate);
  const isPresent = () => sameParts(presentPuck(), inputs, solveParts);
  if (answer === null || !isPresent()) return;
  if (!answer.ok) {
    puckBench.patch({ solveProblem: answer.problem, solving: false });
    return;
  }
  const [baseline, candidate] = answer.value;
  puckBench.patch({ solved: { inputs, baseline, candidate }, solveProblem: null });
  for (const pin of puckBench.value.pins) {
    if (pin.result !== null && pin.solvedFor !== null && sameParts(pin.solvedFor, inputs, playParts)) continue;
    if (!isPresent()) return;
    const pinned = await solvePair(worker, inputs, pin.make);
    if (pinned === null) return;
    if (pinned.ok) updatePuckPin(pin.id, pinned.value[1], inputs);
    else tell("warning", `The pinned puck ${pin.make.spec.name} could not be solved: ${pinned.problem.message}`);
  }
  if (isPresent()) puckBench.patch({ solving: false });
}

/** Results of the baseline and of one puck beside it; null when the call was cancelled. */
async function solvePair(
  worker: WatchedWorker<PuckApi>,
  inputs: PuckInputs,
  make: PuckMake,
): Promise<Result<readonly [PuckResult, PuckResult]> | null> {
  const made = puckCaseOf({ ...inputs, candidate: make, rules: null }, []);
  if (!made.ok) return made;
  for (let attempt = 0; attempt <= mostRepeats; attempt++) {
    const outcome = await worker.call((remote) => remote.solvePucks(made.value));
    if (outcome.kind === "cancelled") return null;
    if (outcome.kind === "crashed") continue;
    const [baseline, candidate] = outcome.value;
    if (candidate.drag.length > 0 && baseline.drag.length > 0) return success([baseline, candidate]);
    return problem("no-drag", candidate.problem ?? baseline.problem ?? "no drag was found");
  }
  return problem("crash", "The solver stopped again and again on this puck; change it to go on.");
}
