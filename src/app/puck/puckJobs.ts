import type { Remote } from "comlink";
import type { HandoffFile, HandoffRequest } from "../../../shared/jobs/handoff/handoffFile";
import type { SizedPuck } from "../../../shared/jobs/puck/body/coreSizing";
import type { PuckCase } from "../../../shared/jobs/puck/puckCase";
import type { MadeShare } from "../../../shared/jobs/puck/rules/madeShare";
import type { TradeoffMember } from "../../../shared/jobs/tradeoff/tradeoffMember";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { Task } from "../view/task";
import { cancelledCode } from "../view/taskState";
import type { CallOutcome, WatchedWorker } from "../view/watchedWorker";
import { puckWorker } from "../view/workers";
import { fittingTarget } from "./fittingTarget";
import { ownTolerances } from "./ownTolerances";
import type { MemberRequest } from "./puckAnswers";
import { changeCandidate, puckBench } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import { judgeParts, sameParts } from "./puckChanges";
import type { PuckInputs } from "./puckInputs";

// Work that a person asks for by a button, all in one worker: a newer request ends what it is at.

let worker: WatchedWorker<PuckApi> | null = null;

async function call<T>(use: (remote: Remote<PuckApi>) => Promise<Result<T>>): Promise<CallOutcome<Result<T>>> {
  worker ??= puckWorker(null);
  if (worker.isBusy) worker.cancel();
  return worker.call(use);
}

const refusal = (code: string, message: string): CallOutcome<Result<never>> => ({
  kind: "done",
  value: problem(code, message),
});

const crashWords = (reason: string) => `The solver stopped: ${reason}.`;

/** The candidate with its core sized for the wanted mass; it becomes the candidate unless that was changed meanwhile. */
const sizing = new Task<PuckInputs, SizedPuck>({
  ask: async ({ candidate, massTarget }) => {
    const { measured } = puckBench.value;
    if (measured === null) return refusal("no-puck", "The puck cannot be made yet.");
    const target = fittingTarget(candidate.spec, massTarget);
    if (target === null) return refusal("no-core", "A puck without a core cannot be sized for a mass.");
    const outcome = await call((remote) =>
      remote.sizeCore({ spec: candidate.spec, setting: measured.setting }, target),
    );
    return puckBench.present.candidate === candidate ? outcome : { kind: "cancelled" };
  },
  crashWords,
});
sizing.subscribe((state) => {
  puckBench.patch({ sizing: state });
  if (state.status === "complete" && state.last !== null) changeCandidate({ spec: state.last.result.spec });
});

/** Share of made candidates inside the rules, by random making. */
const counting = new Task<PuckInputs, MadeShare>({
  ask: async ({ candidate, rules, tolerances, sampling }) => {
    const { measured } = puckBench.value;
    if (measured === null) return refusal("no-puck", "The puck cannot be made yet.");
    if (rules === null) return refusal("no-rules", "There are no rules to count by.");
    const design = { spec: candidate.spec, setting: measured.setting };
    const outcome = await call((remote) =>
      remote.judge(design, rules, ownTolerances(candidate.spec, tolerances), sampling),
    );
    if (outcome.kind !== "done" || !outcome.value.ok) return outcome as CallOutcome<Result<never>>;
    const { made } = outcome.value.value;
    return made === null ? refusal("no-count", "No pucks were counted.") : { kind: "done", value: success(made) };
  },
  crashWords,
});
counting.subscribe((state) => puckBench.patch({ counting: state }));

/** A member of a trade-off's front in full. */
const member = new Task<MemberRequest, TradeoffMember>({
  ask: ({ search, member: { variables, goals }, name }) =>
    // Random making is counted for the candidate alone: it would hold up the report.
    call((remote) => remote.reportMember({ ...search, sampling: null }, { name, variables, goals })),
  crashWords,
});
member.subscribe((state) => puckBench.patch({ member: state }));

export function sizeCore(): void {
  void sizing.run(puckBench.present);
}

export function countMadePucks(): void {
  void counting.run(puckBench.present);
}

export function reportMember(request: MemberRequest): void {
  void member.run(request);
}

/** What the files of a hand-off are made of. */
interface HandoffWanted {
  readonly inputs: PuckInputs;
  readonly settings: PuckCase["handoff"];
  readonly request: HandoffRequest;
}

const handoff = new Task<HandoffWanted, readonly HandoffFile[]>({
  ask: async ({ inputs, settings, request }) => {
    const theCase = puckCaseOf(inputs, []);
    if (!theCase.ok) return { kind: "done", value: theCase };
    const { judged } = puckBench.value;
    const judgement = judged !== null && sameParts(judged.inputs, inputs, judgeParts) ? judged.judgement : null;
    return call((remote) => remote.handoff({ ...theCase.value, handoff: settings }, request, judgement));
  },
  crashWords,
});
let making: { readonly key: string; readonly inputs: PuckInputs; readonly made: Promise<void> } | null = null;

/**
 * The hand-off files of the candidate as it is now, made once for it, however many of them are asked for meanwhile.
 * @returns null when a newer request came
 */
export async function handoffFiles(
  settings: PuckCase["handoff"],
  request: HandoffRequest,
): Promise<Result<readonly HandoffFile[]> | null> {
  const inputs = puckBench.present;
  const key = JSON.stringify([settings, request]);
  if (making?.inputs !== inputs || making.key !== key) {
    making = { key, inputs, made: handoff.run({ inputs, settings, request }) };
  }
  const own = making;
  await own.made;
  if (making !== own) return null;
  const { last, problems, status } = handoff.value;
  if (status === "complete" && last !== null) return success(last.result);
  making = null;
  return problems[0].code === cancelledCode ? null : { ok: false, problem: problems[0] };
}
