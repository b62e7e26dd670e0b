import type { CaseSoFar, JobStep, Left } from "../jobBlock";
import { puckStudy } from "./puckStudy";
import { type CompareJob, designCount } from "./resolveCompare";
import { sectionStudy } from "./sectionStudy";
import type { Study } from "./study";

/** The study of a case, for jobs after the comparison. */
const studyOfCase: Left<Study> = { what: "study" };

/** The sections or pucks of a case as the designs of a study; one step for each, none where another job has studied them. */
export function* studySteps(job: CompareJob, before: CaseSoFar): Generator<JobStep, Study> {
  const known = before.leftOf(studyOfCase);
  if (known !== undefined) return known;
  const steps = job.pucks === null ? sectionStudy(job, before.sweeps()) : puckStudy(job, job.pucks, before);
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      before.leave(studyOfCase, step.value);
      return step.value;
    }
    yield { ...step.value, done: Math.min(step.value.done, designCount(job)) };
  }
}
