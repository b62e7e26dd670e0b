/** The face of the evidence job: other jobs and the case take nothing else from it. */

export { measuredCurves } from "./measuredCurves";
export { measurementBlock } from "./measurementBlock";
