import { jobBlock, type Left } from "../jobBlock";
import type { PuckFlow } from "./drag/puckFlow";
import { puckBlockDocument } from "./puckBlockDocument";
import { puckCsv } from "./puckCsv";
import type { PuckResult } from "./puckResult";
import { puckSections } from "./puckSections";
import { puckSteps } from "./puckSteps";
import { puckTable } from "./puckTable";
import { resolvePuckCase } from "./resolvePuckCase";

/** The solved flows of every puck by its name, for jobs that come after. */
export const solvedPuckFlows: Left<ReadonlyMap<string, readonly PuckFlow[]>> = { what: "puck flows" };

/** Pucks: their drag in every attitude, their figures, rules, comparisons and motions; one result each, baselines first. */
export const puckBlock = jobBlock({
  key: "puck",
  resultKey: "pucks",
  what: "a puck",
  schema: puckBlockDocument,
  // A puck has sizes of its own: its stream goes by speed and its finish in metres.
  solves: { needs: ["speedsMetresPerSecond", "sandGrainRoughnessMetres"], sections: puckSections },
  resolve: (document, { fluid, speeds, turbulenceIntensities, sandGrainRoughnesses: [sandGrainRoughness] }) => {
    if (fluid === null)
      return { ok: false, problems: [{ code: "puck", message: "a puck needs a fluid", field: "fluid" }] };
    return resolvePuckCase(document, { fluid, speeds, turbulenceIntensities, sandGrainRoughness });
  },
  stepCount: ({ pucks }) => pucks.length,
  steps: function* (theCase, before) {
    const results: PuckResult[] = [];
    const flows = new Map<string, readonly PuckFlow[]>();
    before.leave(solvedPuckFlows, flows);
    for (const { result } of puckSteps(theCase, (name, own) => flows.set(name, own))) {
      results.push(result);
      yield { done: results.length, label: `judged ${result.name}` };
    }
    return results;
  },
  table: puckTable,
  csv: { option: "pucks", write: puckCsv },
  problems: (pucks) => pucks.flatMap(({ name, problem }) => (problem === null ? [] : [`${name}: ${problem}`])),
  isComplete: (pucks) => pucks.every(({ problem }) => problem === null),
  cautions: (pucks) => pucks.flatMap(({ cautions }) => cautions),
  drags: firstComparisons,
});

/** Drag of each puck over the first baseline's, weighted by attitude and averaged over the conditions; 1 for itself. */
function firstComparisons(pucks: readonly PuckResult[]): Map<string, number> {
  const drags = new Map<string, number>();
  pucks.forEach(({ name, comparisons, problem }, i) => {
    const drag = comparisons[0]?.overall.index.expected ?? (i === 0 && problem === null ? 1 : null);
    if (drag !== null) drags.set(name, drag);
  });
  return drags;
}
