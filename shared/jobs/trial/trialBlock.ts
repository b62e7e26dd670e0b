import { jobBlock } from "../jobBlock";
import { resolveTrial } from "./resolveTrial";
import { trialBlockDocument } from "./trialBlockDocument";
import { trialCsv } from "./trialCsv";
import { trialStepCount, trialSteps } from "./trialSteps";
import { trialTable } from "./trialTable";

/** A player trial: plan, rankings and what they show; drags that it does not give are those of the case's pucks. */
export const trialBlock = jobBlock({
  key: "trial",
  resultKey: "trial",
  what: "a player trial",
  schema: trialBlockDocument,
  resolve: resolveTrial,
  stepCount: trialStepCount,
  steps: (theCase, { drags }) => trialSteps(theCase, drags),
  table: trialTable,
  csv: { option: "trial", write: trialCsv },
  problems: () => [],
  isComplete: () => true,
});
