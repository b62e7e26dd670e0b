/** The face of the trial job: other jobs and the case take nothing else from it. */

export { likingDraws } from "./likingDraws";
export { trialBlock } from "./trialBlock";
export type { TrialCase } from "./trialCase";
