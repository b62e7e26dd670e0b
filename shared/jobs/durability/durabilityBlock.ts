import { jobBlock } from "../jobBlock";
import { durabilityBlockDocument } from "./durabilityBlockDocument";
import { durabilityCsv } from "./durabilityCsv";
import { durabilitySteps } from "./durabilitySteps";
import { durabilityTable } from "./durabilityTable";
import { resolveDurability } from "./resolveDurability";

/** How the pucks of a case stand impacts and wear. */
export const durabilityBlock = jobBlock({
  key: "durability",
  resultKey: "durability",
  what: "durability",
  schema: durabilityBlockDocument,
  resolve: resolveDurability,
  stepCount: ({ puckCount }) => puckCount,
  steps: durabilitySteps,
  table: durabilityTable,
  csv: { option: "durability", write: durabilityCsv },
  problems: ({ pucks }) =>
    pucks.flatMap(({ name, impacts }) =>
      impacts.flatMap(({ name: impact, problem }) => (problem === null ? [] : [`${name}, ${impact}: ${problem}`])),
    ),
  isComplete: ({ pucks }) => pucks.every(({ impacts }) => impacts.every(({ problem }) => problem === null)),
  cautions: ({ cautions }) => cautions,
});
