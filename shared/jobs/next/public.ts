/** The face of the job that says what to test next: the case takes nothing else from it. */

export { nextBlock } from "./nextBlock";
