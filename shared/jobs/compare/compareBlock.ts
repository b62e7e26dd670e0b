import { jobBlock } from "../jobBlock";
import { compareBlockDocument } from "./compareBlockDocument";
import { compareSteps } from "./compareSteps";
import { comparisonCsv } from "./comparisonCsv";
import { comparisonTable } from "./comparisonTable";
import { designCount, impliedComparison, resolveCompare } from "./resolveCompare";

/** Which of the case's sections or pucks has the least drag, and how sure that is. */
export const compareBlock = jobBlock({
  key: "compare",
  resultKey: "comparisons",
  what: "a comparison",
  schema: compareBlockDocument,
  resolve: resolveCompare,
  implied: impliedComparison,
  stepCount: (job) => designCount(job) + 1,
  steps: compareSteps,
  table: comparisonTable,
  csv: { option: "comparisons", write: comparisonCsv },
  problems: (comparisons) => [...new Set(comparisons.flatMap(({ problem }) => (problem === null ? [] : [problem])))],
  isComplete: (comparisons) => comparisons.every(({ problem }) => problem === null),
});
