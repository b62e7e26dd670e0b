import { commonDraws } from "../../statistics/commonDraws";
import type { CaseSoFar, JobStep } from "../jobBlock";
import { puckBlock } from "../puck/public";
import type { CostJob } from "./costJob";
import type { CostResult, PuckCost } from "./costResult";
import { puckCost } from "./puckCost";

const notes = [
  "Unit cost of an accepted puck: materials with their waste, bought parts, working time, rejects, setting up and whole tools over the batch. After Ashby, Materials Selection in Mechanical Design, 4th ed. (2011), ch. 18. Overhead, profit, tax and transport are in it only as far as the case's rates hold them.",
  "Prices and times that are given as ranges are drawn, the same for all pucks in one draw; bands are 5 % to 95 %.",
];

export const costCautions: readonly string[] = [
  "Lead: the price of a puck leaves out what local codes and licensed practice ask of lead work (enclosure, extraction, health checks, waste). Where they do not allow it, no price does.",
];

/** Cost of every puck of the case, one puck per `next()`. */
export function* costSteps(job: CostJob, before: CaseSoFar): Generator<JobStep, CostResult> {
  const common = commonDraws(job);
  const pucks: PuckCost[] = [];
  const results = before.outcomeOf(puckBlock) ?? [];
  for (const result of results) {
    pucks.push(puckCost(result, job, common));
    yield { done: pucks.length, label: `cost of ${result.name}` };
  }
  const hasLead = results.some(({ puck }) => puck.core.kind !== "none" && /lead/i.test(puck.core.material));
  const { currency, source, draws, seed } = job;
  return { currency, source, pucks, draws, seed, notes, cautions: hasLead ? costCautions : [] };
}
