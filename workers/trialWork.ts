import { powerSteps } from "../shared/jobs/trial/powerSteps";
import { resolveTrial } from "../shared/jobs/trial/resolveTrial";
import type { TrialBlockDocument } from "../shared/jobs/trial/trialBlockDocument";
import type { PowerStudy } from "../shared/jobs/trial/trialCase";
import type { PowerResult, TrialResult } from "../shared/jobs/trial/trialResult";
import { type TrialStep, trialSteps } from "../shared/jobs/trial/trialSteps";
import type { Problem, Result } from "../shared/result";
import { runSteps } from "./runSteps";

export type TrialOutcome =
  | { readonly ok: true; readonly value: TrialResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What the evidence worker does with player trials. */
export interface TrialWork {
  /** @param drags by the name of a puck, for pucks whose drag the trial does not give */
  analyseTrial(
    block: TrialBlockDocument,
    drags: readonly (readonly [string, number])[],
    onStep: (step: TrialStep) => Promise<void>,
  ): Promise<TrialOutcome>;
  /** The power over numbers of players; problems are those of the block. */
  simulatePower(block: TrialBlockDocument, onStep: (step: TrialStep) => Promise<void>): Promise<Result<PowerResult>>;
}

export function trialWork(): TrialWork {
  return {
    async analyseTrial(block, drags, onStep) {
      const resolved = resolveTrial(block);
      if (!resolved.ok) return resolved;
      return { ok: true, value: await runSteps(trialSteps(resolved.value, new Map(drags)), onStep) };
    },
    async simulatePower({ scores: _scores, ...block }, onStep) {
      const resolved = resolveTrial(block);
      if (!resolved.ok) return { ok: false, problem: resolved.problems[0] };
      const study: PowerStudy | null = resolved.value.power;
      if (study === null) throw new RangeError("the block asks for no study of power.");
      const steps = powerSteps(study, block.seed);
      for (let done = 1; ; done++) {
        const step = steps.next();
        if (step.done === true) return { ok: true, value: step.value };
        await onStep({ done, total: study.playerCounts.length, label: step.value });
      }
    },
  };
}
