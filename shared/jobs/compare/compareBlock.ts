import { jobBlock } from "../jobBlock";
import { compareBlockDocument } from "./compareBlockDocument";
import { compareSteps } from "./compareSteps";
import { comparisonCsv } from "./comparisonCsv";
import { comparisonTable } from "./comparisonTable";
import { resolveCompare } from "./resolveCompare";

/** Which of the case's sections has the least drag, and how sure that is. */
export const compareBlock = jobBlock({
  key: "compare",
  resultKey: "comparisons",
  what: "a comparison",
  schema: compareBlockDocument,
  resolve: resolveCompare,
  stepCount: ({ sectionCount }) => sectionCount + 1,
  steps: compareSteps,
  table: comparisonTable,
  csv: { option: "comparisons", write: comparisonCsv },
  problems: (comparisons) => [...new Set(comparisons.flatMap(({ problem }) => (problem === null ? [] : [problem])))],
  isComplete: (comparisons) => comparisons.every(({ problem }) => problem === null),
});
