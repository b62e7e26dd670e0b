import { commonDraws } from "../../statistics/commonDraws";
import type { CaseSoFar, JobStep } from "../jobBlock";
import { puckBlock } from "../puck/public";
import type { SolvedCurves } from "./contactLaw";
import { durabilityCautions } from "./durabilityCautions";
import type { DurabilityJob } from "./durabilityJob";
import type { DurabilityResult, PuckDurability } from "./durabilityResult";
import { impactDraws, impactResult } from "./puckImpacts";
import { wearDraws, wearResult } from "./puckWear";

const notes = [
  "Impacts are elastic and without friction: what coat and surface take in would lower force and pressure. A bonded coat on a harder core is followed from a half-space (Hertz) to a thin film (elastic foundation) by linear elasticity; sources: Johnson, Contact Mechanics (1985), ch. 4, 5 and 11.",
  "Wear goes by Archard's law with the wear coefficient that the case states: measure your own, it differs by a factor of ten between coats.",
  "What nobody knows is drawn within the ranges of the case, the same for all pucks in one draw; bands are 5 % to 95 %.",
];

/** Impacts and wear of every puck of the case, one puck per `next()`. */
export function* durabilitySteps(job: DurabilityJob, before: CaseSoFar): Generator<JobStep, DurabilityResult> {
  const common = commonDraws(job);
  const curves: SolvedCurves = new Map();
  const pucks: PuckDurability[] = [];
  for (const result of before.outcomeOf(puckBlock) ?? []) {
    pucks.push({
      name: result.name,
      impacts: job.impacts.map((setup) => impactResult(setup, impactDraws(result, setup, job, common, curves))),
      wear:
        job.wear === null ? null : wearResult(result, job.wear, wearDraws(result, job.wear, job.draws, common), job),
    });
    yield { done: pucks.length, label: `durability of ${result.name}` };
  }
  return { pucks, draws: job.draws, seed: job.seed, notes, cautions: durabilityCautions };
}
