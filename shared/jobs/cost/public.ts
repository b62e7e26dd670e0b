/** The face of the cost job: other jobs and the case take nothing else from it. */

export { costBlock } from "./costBlock";
export type { CostJob } from "./costJob";
export { makingDraws, unitCostDraws } from "./puckCost";
