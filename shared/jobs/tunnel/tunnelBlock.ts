import { jobBlock } from "../jobBlock";
import { resolveTunnel } from "./resolveTunnel";
import { tunnelBlockDocument } from "./tunnelBlockDocument";
import { tunnelCsv } from "./tunnelCsv";
import { tunnelStepCount, tunnelSteps } from "./tunnelSteps";
import { tunnelTable } from "./tunnelTable";

/** A tunnel test: similarity, plan, reduced runs and surveys. */
export const tunnelBlock = jobBlock({
  key: "tunnel",
  resultKey: "tunnel",
  what: "a tunnel test",
  schema: tunnelBlockDocument,
  resolve: resolveTunnel,
  stepCount: tunnelStepCount,
  steps: (theCase) => tunnelSteps(theCase),
  table: tunnelTable,
  csv: { option: "tunnel", write: tunnelCsv },
  problems: ({ problems }) => problems.map((problem) => `tunnel: ${problem}`),
  isComplete: () => true,
});
