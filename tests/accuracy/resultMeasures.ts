import { rootMeanSquare } from "simple-statistics";
import { allSources } from "../published/allSources";
import { accuracyRow } from "./accuracyRow";
import { predictAll } from "./predictAll";
import { judgeTarget } from "./target";
import { allTargets } from "./targets";

/** How well the engine meets the published values, in four figures. */
export interface ResultMeasures {
  /** Root mean square of the relative errors of section drag coefficients, those of the smooth cylinder's crisis left out. */
  readonly dragRms: number;
  /** Section drag coefficients among them that got an answer. */
  readonly answered: number;
  readonly targetsMet: number;
  /** Published values that the engine meets within the source's own scatter. */
  readonly insideScatter: number;
  /** Sum of all answers: the same only where nothing at all has changed. */
  readonly sum: number;
}

/** Between these Reynolds numbers a smooth cylinder's measured Cd falls as gradually as the tunnel makes it. */
export const crisis = [2.3e5, 5.4e5] as const;

const dragKinds: ReadonlySet<string> = new Set(["dragCoefficient", "meanDragCoefficient", "lowestDragCoefficient"]);

/** Runs the engine over all published values and targets. */
export function resultMeasures(): ResultMeasures {
  const entries = allSources.flatMap((source) => source.values.map((value) => ({ source, value })));
  const targets = allTargets();
  const predictions = predictAll([
    ...entries.map(({ value }) => value.quantity),
    ...targets.flatMap(({ quantities }) => quantities),
  ]);
  const rows = entries.map(({ source, value }, i) => accuracyRow(source, value, null, predictions[i]));
  let next = entries.length;
  const met = targets.filter((target) => {
    const own = predictions.slice(next, next + target.quantities.length);
    next += target.quantities.length;
    return judgeTarget(target, own).met === true;
  });
  const errors = rows.flatMap(({ error }, i) => {
    const { quantity, group } = entries[i].value;
    const reynolds = "reynolds" in quantity && typeof quantity.reynolds === "number" ? quantity.reynolds : 0;
    const isInCrisis = group === "smooth cylinder" && reynolds > crisis[0] && reynolds < crisis[1];
    return error === null || isInCrisis || !dragKinds.has(quantity.kind) ? [] : [error];
  });
  return {
    dragRms: rootMeanSquare(errors),
    answered: errors.length,
    targetsMet: met.length,
    insideScatter: rows.filter(({ insideScatter }) => insideScatter === true).length,
    sum: predictions.reduce((sum, { value }) => sum + (value ?? 0), 0),
  };
}
