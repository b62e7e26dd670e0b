import { jobBlock } from "../jobBlock";
import { costBlockDocument } from "./costBlockDocument";
import { costCsv } from "./costCsv";
import { costSteps } from "./costSteps";
import { costTable } from "./costTable";
import { resolveCost } from "./resolveCost";

/** What the pucks of a case cost to make, over the size of a batch. */
export const costBlock = jobBlock({
  key: "cost",
  resultKey: "cost",
  what: "a cost",
  schema: costBlockDocument,
  resolve: resolveCost,
  stepCount: ({ puckCount }) => puckCount,
  steps: costSteps,
  table: costTable,
  csv: { option: "cost", write: costCsv },
  problems: ({ pucks }) => pucks.flatMap(({ name, problem }) => (problem === null ? [] : [`${name}: ${problem}`])),
  isComplete: ({ pucks }) => pucks.every(({ problem }) => problem === null),
  cautions: ({ cautions }) => cautions,
});
