/** The face of the comparison job: other jobs and the case take nothing else from it. */

export { studySteps } from "./caseStudy";
export { compareBlock } from "./compareBlock";
export { knowledgeFor, knowledgeOfCase } from "./compareStudy";
export type { ComparedCondition, RankedDesign } from "./comparison";
export { conditionText } from "./comparisonTable";
export { type CompareJob, comparedNames, designCount } from "./resolveCompare";
export type { StudiedDrag, Study, StudyCondition } from "./study";
