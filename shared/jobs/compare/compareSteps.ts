import type { CaseSoFar, JobStep } from "../jobBlock";
import { studySteps } from "./caseStudy";
import { compareStudy, knowledgeOfCase } from "./compareStudy";
import type { Comparison } from "./comparison";
import { type CompareJob, designCount } from "./resolveCompare";

/** Studies every design, then compares all with the baselines in common draws. */
export function* compareSteps(job: CompareJob, before: CaseSoFar): Generator<JobStep, readonly Comparison[]> {
  const study = yield* studySteps(job, before);
  const comparisons = compareStudy(study, knowledgeOfCase(before), job.seed);
  const names = study.baselines.map((i) => study.designs[i]).join(", ");
  yield { done: designCount(job) + 1, label: `compared with ${names}` };
  return comparisons;
}
