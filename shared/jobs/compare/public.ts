/** The face of the comparison job: other jobs and the case take nothing else from it. */

export { compareBlock } from "./compareBlock";
