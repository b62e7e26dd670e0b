import type { MeasuredCurve } from "../../engine/trust/learnErrors";
import { jobBlock } from "../jobBlock";
import { tunnelBlock } from "../tunnel/public";
import { comparisonCsv } from "./comparisonCsv";
import { comparisonStepCount, comparisonSteps } from "./comparisonSteps";
import { comparisonTable } from "./comparisonTable";
import { measuredCurves } from "./measuredCurves";
import { measurementBlockDocument } from "./measurementBlockDocument";
import { resolveMeasurements } from "./resolveMeasurements";

/** Measurements against the prediction, of sections, pucks or the case's own tunnel test. */
export const measurementBlock = jobBlock({
  key: "measurements",
  resultKey: "comparison",
  what: "measurements",
  schema: measurementBlockDocument,
  resolve: (document, { fluid, sections, documentOf }) =>
    resolveMeasurements(document, { fluid, sections, hasTunnelRuns: documentOf(tunnelBlock)?.runs !== undefined }),
  stepCount: comparisonStepCount,
  steps: (theCase, { rows, shapes, outcomeOf, leave }) => {
    const curves: MeasuredCurve[] = [];
    leave(measuredCurves, curves);
    const tunnel = outcomeOf(tunnelBlock)?.reduction ?? null;
    return comparisonSteps(theCase, rows, shapes, tunnel, (curve) => curves.push(curve));
  },
  table: comparisonTable,
  csv: { option: "measurements", write: comparisonCsv },
  problems: ({ sets }) => sets.flatMap(({ name, problem }) => (problem === null ? [] : [`${name}: ${problem}`])),
  isComplete: ({ sets }) =>
    sets.every(({ problem, comparedCount, rows }) => problem === null && comparedCount === rows.length),
});
