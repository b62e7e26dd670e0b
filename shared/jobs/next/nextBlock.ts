import { jobBlock } from "../jobBlock";
import { nextBlockDocument } from "./nextBlockDocument";
import { nextCsv } from "./nextCsv";
import { nextStepCount, nextSteps } from "./nextSteps";
import { nextTable } from "./nextTable";
import { resolveNext } from "./resolveNext";

/** Which measurement would help the choice between the designs most. */
export const nextBlock = jobBlock({
  key: "next",
  resultKey: "next",
  what: "a question of what to test next",
  schema: nextBlockDocument,
  after: ["tunnel", "measurements"],
  resolve: resolveNext,
  stepCount: nextStepCount,
  steps: nextSteps,
  table: nextTable,
  csv: { option: "next", write: nextCsv },
  problems: ({ measurements, problem }) => [
    ...(problem === null ? [] : [problem]),
    ...measurements.flatMap((own) => (own.problem === null ? [] : [`${own.name}: ${own.problem}`])),
  ],
  isComplete: ({ measurements, problem }) => problem === null && measurements.every((own) => own.problem === null),
});
