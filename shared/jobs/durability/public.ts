/** The face of the durability job: other jobs and the case take nothing else from it. */

export type { SolvedCurves } from "./contactLaw";
export { durabilityBlock } from "./durabilityBlock";
export type { DurabilityJob } from "./durabilityJob";
export { type DragAttitude, dragAreaAt, dragAreaBands } from "./puckDrag";
export { impactDraws } from "./puckImpacts";
export { wearDraws } from "./puckWear";
