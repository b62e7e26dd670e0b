/** The face of the tunnel job: other jobs and the case take nothing else from it. */

export { maskellFactor } from "./blockage";
export type { TunnelReduction } from "./reducedTest";
export { tunnelBlock } from "./tunnelBlock";
