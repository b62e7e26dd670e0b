import { proxy } from "comlink";
import type { TrialStep } from "../../../shared/jobs/trial/trialSteps";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import { spawnEvidenceSolver } from "../engine/spawnEvidenceSolver";
import { WatchedWorker } from "../engine/watchedWorker";
import { tell } from "../store/notices";
import { presentTrial, trialBench } from "./trialBench";
import { powerBlock, trialBlock } from "./trialBlock";
import type { TrialInputs } from "./trialInputs";
import { startTrialKeeping } from "./trialKeeping";

const calmMilliseconds = 250;

let begun: Promise<void> | null = null;
let worker: WatchedWorker<EvidenceApi> | null = null;
let powerWorker: WatchedWorker<EvidenceApi> | null = null;

/** Keeps the ranking up to date in a worker, shortly after every change. Begins with the first call. */
export function startTrialing(): Promise<void> {
  begun ??= startTrialKeeping().then(() => {
    worker = newWorker();
    let timer: ReturnType<typeof setTimeout> | null = null;
    trialBench.subscribe(({ history }) => {
      if (history.present === asked) return;
      if (timer !== null) clearTimeout(timer);
      timer = setTimeout(() => void analyse(), calmMilliseconds);
    });
    void analyse();
  });
  return begun;
}

function newWorker(): WatchedWorker<EvidenceApi> {
  return new WatchedWorker<EvidenceApi>(spawnEvidenceSolver, (reason) =>
    tell("warning", `The program of the trial stopped (${reason}) and was started again. Nothing was lost.`),
  );
}

let asked: TrialInputs | null = null;
let askedText = "";
let isRunning = false;

async function analyse(): Promise<void> {
  const inputs = presentTrial();
  if (worker === null || inputs === asked) return;
  asked = inputs;
  const { power: _power, ...block } = trialBlock(inputs, true);
  const text = JSON.stringify(block);
  if (text === askedText && !isRunning) {
    // Nothing that the ranking depends on was changed, so that the last answer holds.
    const { answer } = trialBench.value;
    if (answer !== null) trialBench.patch({ answer: { ...answer, inputs } });
    return;
  }
  askedText = text;
  if (isRunning) worker.cancel();
  isRunning = true;
  trialBench.patch({ isWorking: true });
  const outcome = await worker.call((remote) =>
    remote.analyseTrial(
      block,
      [],
      proxy(async () => {}),
    ),
  );
  if (asked !== inputs || outcome.kind === "cancelled") return;
  isRunning = false;
  if (outcome.kind === "crashed") {
    const message = `The ranking stopped: ${outcome.reason}. Change anything to try again.`;
    trialBench.patch({ isWorking: false, problems: [{ code: "crash", message }] });
  } else if (outcome.value.ok) {
    trialBench.patch({ isWorking: false, problems: [], answer: { inputs, result: outcome.value.value } });
  } else {
    trialBench.patch({ isWorking: false, problems: outcome.value.problems });
  }
}

/** Simulates the power over numbers of players, in a worker of its own, which a cancel ends. */
export async function simulatePower(): Promise<void> {
  powerWorker ??= newWorker();
  if (trialBench.value.power?.status === "running") powerWorker.cancel();
  const inputs = presentTrial();
  const block = { ...trialBlock(inputs, true), power: powerBlock(inputs) };
  trialBench.patch({ power: { status: "running", done: 0, total: inputs.power.playerCounts.length, label: "" } });
  const isCurrent = () => trialBench.value.power?.status === "running";
  const onStep = async (step: TrialStep) => {
    if (isCurrent()) trialBench.patch({ power: { status: "running", ...step } });
  };
  const outcome = await powerWorker.call((remote) => remote.simulatePower(block, proxy(onStep)));
  if (!isCurrent() || outcome.kind === "cancelled") return;
  if (outcome.kind === "crashed") {
    trialBench.patch({ power: { status: "failed", message: `The simulation stopped: ${outcome.reason}.` } });
  } else if (outcome.value.ok) {
    trialBench.patch({ power: { status: "done", inputs, result: outcome.value.value } });
  } else {
    trialBench.patch({ power: { status: "failed", message: outcome.value.problem.message } });
  }
}

export function cancelPower(): void {
  if (trialBench.value.power?.status !== "running") return;
  trialBench.patch({ power: { status: "cancelled", message: "The simulation was cancelled." } });
  powerWorker?.cancel();
}
