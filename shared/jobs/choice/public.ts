/** The face of the choice job: other jobs and the case take nothing else from it. */

export { choiceBlock } from "./choiceBlock";
