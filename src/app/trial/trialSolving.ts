import { proxy } from "comlink";
import type { PowerResult, TrialResult } from "../../../shared/jobs/trial/trialResult";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";
import { evidenceWorker } from "../view/workers";
import { trialBench } from "./trialBench";
import { powerBlock, trialBlock } from "./trialBlock";
import type { TrialInputs } from "./trialInputs";
import { trialView } from "./trialView";

const calmMilliseconds = 250;
const program = "The program of the trial";

let begun: Promise<void> | null = null;

/** Keeps the ranking up to date in a worker, shortly after every change. Begins with the first call. */
export function startTrialSolving(): Promise<void> {
  begun ??= trialView.startKeeping().then(() => {
    const task = rankingTask();
    task.subscribe((ranking) => trialBench.patch({ ranking }));
    let asked: TrialInputs | null = null;
    let askedText = "";
    const rank = () => {
      const { present } = trialBench;
      asked = present;
      const text = JSON.stringify(rankedBlock(present));
      // Where nothing that the ranking depends on was changed, the last answer holds.
      if (text === askedText && task.value.status !== "pending") task.keepFor(present);
      else void task.run(present);
      askedText = text;
    };
    let timer: ReturnType<typeof setTimeout> | null = null;
    trialBench.subscribe(({ history }) => {
      if (history.present === asked) return;
      if (timer !== null) clearTimeout(timer);
      timer = setTimeout(() => {
        if (trialBench.present !== asked) rank();
      }, calmMilliseconds);
    });
    rank();
  });
  return begun;
}

/** The block without the study of power, which the ranking does not depend on. */
function rankedBlock(inputs: TrialInputs) {
  const { power: _power, ...block } = trialBlock(inputs, true);
  return block;
}

function rankingTask(): Task<TrialInputs, TrialResult> {
  const worker = evidenceWorker(program);
  const noSteps = proxy(async () => {});
  return new Task({
    ask: (inputs) => worker.call((remote) => remote.analyseTrial(rankedBlock(inputs), [], noSteps)),
    end: () => worker.cancel(),
    crashWords: (reason) => `The ranking stopped: ${reason}. Change anything to try again.`,
  });
}

let worker: WatchedWorker<EvidenceApi> | null = null;

/** The simulation of power, in a worker of its own, which a cancel ends. */
const powerTask = new Task<TrialInputs, PowerResult>({
  ask: (inputs, onStep) => {
    worker ??= evidenceWorker(program);
    const block = { ...trialBlock(inputs, true), power: powerBlock(inputs) };
    return worker.call((remote) => remote.simulatePower(block, proxy(onStep)));
  },
  end: () => worker?.cancel(),
  crashWords: (reason) => `The simulation stopped: ${reason}.`,
  cancelWords: "The simulation was cancelled.",
});
powerTask.subscribe((power) => trialBench.patch({ power }));

/** Simulates the power over numbers of players. */
export function simulatePower(): void {
  void powerTask.run(trialBench.present);
}

export function cancelPower(): void {
  powerTask.cancel();
}
