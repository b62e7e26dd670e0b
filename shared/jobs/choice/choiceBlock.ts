import { jobBlock } from "../jobBlock";
import { choiceBlockDocument } from "./choiceBlockDocument";
import { choiceCsv } from "./choiceCsv";
import { choiceSteps } from "./choiceSteps";
import { choiceTable } from "./choiceTable";
import { resolveChoice } from "./resolveChoice";

/** Which puck of a case is the one, under which weights. */
export const choiceBlock = jobBlock({
  key: "choice",
  resultKey: "choice",
  what: "a choice",
  schema: choiceBlockDocument,
  resolve: resolveChoice,
  stepCount: ({ criteria }) => criteria.length + 1,
  steps: choiceSteps,
  table: choiceTable,
  csv: { option: "choice", write: choiceCsv },
  problems: ({ problem }) => (problem === null ? [] : [`choice: ${problem}`]),
  isComplete: ({ problem }) => problem === null,
  cautions: ({ cautions }) => cautions,
});
