import { proxy } from "comlink";
import type { CauseStep, CauseSuggestion } from "../../../shared/jobs/evidence/causeSteps";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import { spawnEvidenceSolver } from "../engine/spawnEvidenceSolver";
import { WatchedWorker } from "../engine/watchedWorker";
import { tell } from "../store/notices";
import { carriedOffset } from "./carriedOffset";
import { answerOf, compareBench, updateAnswer } from "./compareBench";
import type { MeasuredSetInputs } from "./compareInputs";
import { startCompareKeeping } from "./compareKeeping";

let begun: Promise<void> | null = null;
let workers: { readonly compare: WatchedWorker<EvidenceApi>; search: WatchedWorker<EvidenceApi> | null } | null = null;

/**
 * Keeps the view up to date: every set that has no answer yet is compared, one after the other, in a worker. Begins with
 * the first call and goes on for as long as the page is open.
 */
export function startComparing(): Promise<void> {
  begun ??= startCompareKeeping().then(() => {
    workers = { compare: newWorker(), search: null };
    compareBench.subscribe(follow);
    follow();
  });
  return begun;
}

function newWorker(): WatchedWorker<EvidenceApi> {
  return new WatchedWorker<EvidenceApi>(spawnEvidenceSolver, (reason) =>
    tell("warning", `The comparing program stopped (${reason}) and was started again. Nothing was lost.`),
  );
}

/** Sets that were handed to the worker; each once. */
const asked = new WeakSet<MeasuredSetInputs>();
let isComparing = false;

function follow(): void {
  publishOffset();
  if (!isComparing) void compareAll();
}

async function compareAll(): Promise<void> {
  isComparing = true;
  for (;;) {
    const next = compareBench.value.history.present.sets.find((set) => !asked.has(set));
    if (next === undefined || workers === null) break;
    asked.add(next);
    const outcome = await workers.compare.call((remote) => remote.compareSet(next));
    if (outcome.kind === "done") {
      if (outcome.value.ok) updateAnswer(next, { answer: outcome.value.value, problems: [] });
      else updateAnswer(next, { problems: outcome.value.problems });
    } else {
      const message = "The comparing program stopped on this set; change it to try again.";
      updateAnswer(next, { problems: [{ code: "crash", message }] });
    }
  }
  isComparing = false;
}

/** The offset of the carried set as soon as it is known; none while it is not. */
function publishOffset(): void {
  const { history } = compareBench.value;
  const { carriedSet, sets } = history.present;
  const set = sets.find(({ name }) => name === carriedSet) ?? null;
  carriedOffset.value = answerOf(compareBench.value, set).answer?.correction ?? null;
}

/** Looks for settings that would explain the set's disagreement, in a worker of its own, which a cancel ends. */
export async function searchCauses(set: MeasuredSetInputs): Promise<void> {
  if (workers === null) return;
  cancelSearch();
  workers.search ??= newWorker();
  updateAnswer(set, { search: { status: "running", done: 0, total: 1, label: "solving the design" } });
  const isCurrent = () => answerOf(compareBench.value, set).search?.status === "running";
  const onStep = async (step: CauseStep) => {
    if (isCurrent()) updateAnswer(set, { search: { status: "running", ...step } });
  };
  const outcome = await workers.search.call((remote) => remote.findCauses(set, proxy(onStep)));
  if (!isCurrent()) return;
  if (outcome.kind === "done") {
    const { value } = outcome;
    updateAnswer(set, {
      search: value.ok ? { status: "done", causes: value.value } : { status: "failed", message: value.problem.message },
    });
  } else if (outcome.kind === "crashed") {
    updateAnswer(set, { search: { status: "failed", message: `The search stopped: ${outcome.reason}.` } });
  }
}

/** Ends a running search at once. */
export function cancelSearch(): void {
  for (const [set, { search }] of compareBench.value.answers) {
    if (search?.status !== "running") continue;
    updateAnswer(set, { search: { status: "cancelled", message: "The search was cancelled." } });
    workers?.search?.cancel();
  }
}

/** Lays the prediction under a cause's value over the plots; null takes it away again. */
export async function showCause(set: MeasuredSetInputs, cause: CauseSuggestion | null): Promise<void> {
  if (cause === null || workers === null) {
    updateAnswer(set, { shown: null });
    return;
  }
  const outcome = await workers.compare.call((remote) => remote.compareUnder(set, cause.settings));
  if (outcome.kind === "done" && outcome.value.ok) {
    updateAnswer(set, { shown: { cause, rows: outcome.value.value } });
  } else {
    tell("warning", `The prediction with ${cause.name} changed could not be solved.`);
  }
}
