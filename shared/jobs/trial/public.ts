/** The face of the trial job: other jobs and the case take nothing else from it. */

export { trialBlock } from "./trialBlock";
