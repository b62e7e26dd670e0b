import { readCase } from "../shared/case/readCase";
import type { ChoiceResult } from "../shared/jobs/choice/choiceResult";
import { choiceBlock } from "../shared/jobs/choice/public";
import type { CostResult } from "../shared/jobs/cost/costResult";
import { costBlock } from "../shared/jobs/cost/public";
import type { DurabilityResult } from "../shared/jobs/durability/durabilityResult";
import { durabilityBlock } from "../shared/jobs/durability/public";
import type { CaseSoFar, JobBlock } from "../shared/jobs/jobBlock";
import { judgePuck } from "../shared/jobs/puck/public";
import type { PuckCase } from "../shared/jobs/puck/puckCase";
import type { PuckResult } from "../shared/jobs/puck/puckResult";
import { ownTolerances } from "../shared/jobs/puck/puckSteps";
import type { Problem } from "../shared/result";
import { runSteps } from "./runSteps";

/** What a case says of pucks that were solved before; null where it asks for none. */
export interface ChosenPucks {
  readonly durability: DurabilityResult | null;
  readonly cost: CostResult | null;
  readonly choice: ChoiceResult | null;
}

export type ChoiceAnswer =
  | { readonly ok: true; readonly value: ChosenPucks }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface ChoiceStep {
  readonly done: number;
  readonly total: number;
  readonly label: string;
}

/**
 * Durability, cost and choice of a case whose pucks are solved already.
 * @param pucks their results, by the names of the case; those without a judgement are judged by the case's rules
 */
export async function choosePucks(
  text: string,
  fileName: string,
  pucks: readonly PuckResult[],
  onStep: (step: ChoiceStep) => Promise<void>,
): Promise<ChoiceAnswer> {
  const reading = readCase(text, fileName);
  if (!reading.ok) return { ok: false, problems: reading.problems };
  const { puck, durability, cost, choice } = reading.value;
  if (puck === null) return { ok: false, problems: [{ code: "puck", message: "the case has no pucks" }] };
  const total = 1 + stepsOf(durabilityBlock, durability) + stepsOf(costBlock, cost) + stepsOf(choiceBlock, choice);
  let before = 0;
  const outcomes = new Map<string, unknown>([["pucks", pucks.map((result) => judged(result, puck))]]);
  await onStep({ done: ++before, total, label: "judged the pucks" });
  const run = async <Job, Outcome>(
    block: Pick<JobBlock<string, string, string, never, Job, Outcome>, "resultKey" | "stepCount" | "steps">,
    job: Job | null,
  ): Promise<Outcome | null> => {
    if (job === null) return null;
    const start = before;
    const outcome = await runSteps(block.steps(job, soFar(outcomes)), ({ done, label }) =>
      onStep({ done: start + done, total, label }),
    );
    before += block.stepCount(job);
    outcomes.set(block.resultKey, outcome);
    return outcome;
  };
  return {
    ok: true,
    value: {
      durability: await run(durabilityBlock, durability),
      cost: await run(costBlock, cost),
      choice: await run(choiceBlock, choice),
    },
  };
}

function stepsOf<Job>(block: { stepCount(job: Job): number }, job: Job | null): number {
  return job === null ? 0 : block.stepCount(job);
}

function judged(result: PuckResult, theCase: PuckCase): PuckResult {
  if (result.rules !== null || theCase.rules === null) return result;
  const design = { spec: result.puck, setting: theCase.setting };
  const tolerances = ownTolerances({ spec: result.puck }, theCase);
  const judgement = judgePuck(design, theCase.rules, tolerances, theCase.sampling);
  return judgement.ok ? { ...result, rules: judgement.value } : result;
}

function soFar(outcomes: ReadonlyMap<string, unknown>): CaseSoFar {
  return {
    rows: [],
    shapes: [],
    sweeps: () => [],
    drags: new Map(),
    leave: () => {},
    leftOf: () => undefined,
    outcomeOf: <Outcome>({ resultKey }: { readonly resultKey: string }) =>
      outcomes.get(resultKey) as Outcome | undefined,
  };
}
