import { proxy } from "comlink";
import type { CauseSuggestion } from "../../../shared/jobs/evidence/causeSteps";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import { tell } from "../store/notices";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";
import { evidenceWorker } from "../view/workers";
import { carriedOffset } from "./carriedOffset";
import { compareBench, updateAnswer } from "./compareBench";
import type { MeasuredSetInputs } from "./compareInputs";
import { compareView } from "./compareView";
import { answerOf } from "./setAnswer";

const program = "The comparing program";

let begun: Promise<void> | null = null;
let worker: WatchedWorker<EvidenceApi> | null = null;
let searchWorker: WatchedWorker<EvidenceApi> | null = null;

/**
 * Keeps the view up to date: every set that has no answer yet is compared, one after the other, in a worker. Begins with
 * the first call and goes on for as long as the page is open.
 */
export function startComparing(): Promise<void> {
  begun ??= compareView.startKeeping().then(() => {
    worker = evidenceWorker(program);
    compareBench.subscribe(follow);
    follow();
  });
  return begun;
}

/** Sets that were handed to the worker; each once. */
const asked = new WeakSet<MeasuredSetInputs>();
let isComparing = false;

function follow(): void {
  publishOffset();
  if (!isComparing && worker !== null) void compareAll(worker);
}

async function compareAll(owner: WatchedWorker<EvidenceApi>): Promise<void> {
  isComparing = true;
  for (;;) {
    const next = compareBench.present.sets.find((set) => !asked.has(set));
    if (next === undefined) break;
    asked.add(next);
    const outcome = await owner.call((remote) => remote.compareSet(next));
    if (outcome.kind !== "done") {
      const message = "The comparing program stopped on this set; change it to try again.";
      updateAnswer(next, { problems: [{ code: "crash", message }] });
    } else if (outcome.value.ok) updateAnswer(next, { answer: outcome.value.value, problems: [] });
    else updateAnswer(next, { problems: outcome.value.problems });
  }
  isComparing = false;
}

/** The offset of the carried set as soon as it is known; none while it is not. */
function publishOffset(): void {
  const { carriedSet, sets } = compareBench.present;
  const set = sets.find(({ name }) => name === carriedSet) ?? null;
  carriedOffset.value = answerOf(compareBench.value.answers, set).answer?.correction ?? null;
}

/** The search for settings that would explain a set's disagreement, in a worker of its own, which a cancel ends. */
const search = new Task<MeasuredSetInputs, readonly CauseSuggestion[]>({
  ask: (set, onStep) => {
    searchWorker ??= evidenceWorker(program);
    return searchWorker.call((remote) => remote.findCauses(set, proxy(onStep)));
  },
  end: () => searchWorker?.cancel(),
  crashWords: (reason) => `The search stopped: ${reason}.`,
  cancelWords: "The search was cancelled.",
});
search.subscribe((state) => {
  if (state.inputs !== null) updateAnswer(state.inputs, { search: state });
});

export function searchCauses(set: MeasuredSetInputs): void {
  void search.run(set);
}

export function cancelSearch(): void {
  search.cancel();
}

/** Lays the prediction under a cause's value over the plots; null takes it away again. */
export async function showCause(set: MeasuredSetInputs, cause: CauseSuggestion | null): Promise<void> {
  if (cause === null || worker === null) {
    updateAnswer(set, { shown: null });
    return;
  }
  const outcome = await worker.call((remote) => remote.compareUnder(set, cause.settings));
  if (outcome.kind === "done" && outcome.value.ok) {
    updateAnswer(set, { shown: { cause, rows: outcome.value.value } });
  } else {
    tell("warning", `The prediction with ${cause.name} changed could not be solved.`);
  }
}
