import type { HandoffFile, HandoffRequest } from "../../../shared/jobs/handoff/handoffFile";
import type { SizedPuck } from "../../../shared/jobs/puck/coreSizing";
import type { PuckCase } from "../../../shared/jobs/puck/puckcase/puckCase";
import type { MadeShare } from "../../../shared/jobs/puck/rules/madeShare";
import type { Evaluation } from "../../../shared/jobs/tradeoff/designSpace";
import type { TradeoffMember } from "../../../shared/jobs/tradeoff/tradeoffMember";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { type CallOutcome, WatchedWorker } from "../engine/watchedWorker";
import { fittingTarget } from "./fittingTarget";
import { ownTolerances } from "./ownTolerances";
import { puckBench } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import { judgeParts, sameParts } from "./puckChanges";
import { spawnPuckSolver } from "./spawnPuckSolver";

/** Work that a person asks for by a button, each in the same worker; a newer request does not wait for an older one. */

let worker: WatchedWorker<PuckApi> | null = null;
let busy = false;

function jobWorker(): WatchedWorker<PuckApi> {
  worker ??= new WatchedWorker<PuckApi>(spawnPuckSolver, () => {});
  if (busy) worker.cancel();
  return worker;
}

async function run<T>(call: () => Promise<CallOutcome<Result<T>>>): Promise<Result<T> | null> {
  busy = true;
  const outcome = await call();
  if (outcome.kind === "cancelled") return null;
  busy = false;
  return outcome.kind === "done" ? outcome.value : problem("crash", `The solver stopped: ${outcome.reason}.`);
}

/** The candidate with its core sized for the wanted mass; null when a newer request came. */
export async function sizeCandidateCore(): Promise<Result<SizedPuck> | null> {
  const { measured, history } = puckBench.value;
  if (measured === null) return problem("no-puck", "The puck cannot be made yet.");
  const { candidate } = history.present;
  const massTarget = fittingTarget(candidate.spec, history.present.massTarget);
  if (massTarget === null) return problem("no-core", "A puck without a core cannot be sized for a mass.");
  const design = { spec: candidate.spec, setting: measured.setting };
  const owner = jobWorker();
  return run(() => owner.call((remote) => remote.sizeCore(design, massTarget)));
}

/** Share of made candidates inside the rules, by random making; null when a newer request came. */
export async function countMadePucks(): Promise<Result<MadeShare> | null> {
  const { measured, history } = puckBench.value;
  const { candidate, rules, tolerances, sampling } = history.present;
  if (measured === null) return problem("no-puck", "The puck cannot be made yet.");
  if (rules === null) return problem("no-rules", "There are no rules to count by.");
  const design = { spec: candidate.spec, setting: measured.setting };
  const owner = jobWorker();
  const judged = await run(() =>
    owner.call((remote) => remote.judge(design, rules, ownTolerances(candidate.spec, tolerances), sampling)),
  );
  if (judged === null || !judged.ok) return judged;
  const { made } = judged.value;
  return made === null ? problem("no-count", "No pucks were counted.") : success(made);
}

/** A member of a trade-off's front in full; null when a newer request came. */
export async function reportMember(
  theCase: PuckCase,
  member: Evaluation,
  name: string,
): Promise<Result<TradeoffMember> | null> {
  const owner = jobWorker();
  const point = { name, variables: member.variables, goals: member.goals };
  // Random making is counted for the candidate alone: it would hold up the report.
  return run(() => owner.call((remote) => remote.reportMember({ ...theCase, sampling: null }, point)));
}

/** The hand-off files of the candidate as it is now; null when a newer request came. */
export async function makeHandoff(
  settings: PuckCase["handoff"],
  request: HandoffRequest,
): Promise<Result<readonly HandoffFile[]> | null> {
  const { history, judged } = puckBench.value;
  const inputs = history.present;
  const theCase = puckCaseOf(inputs, []);
  if (!theCase.ok) return theCase;
  const judgement = judged !== null && sameParts(judged.inputs, inputs, judgeParts) ? judged.judgement : null;
  const owner = jobWorker();
  return run(() => owner.call((remote) => remote.handoff({ ...theCase.value, handoff: settings }, request, judgement)));
}
