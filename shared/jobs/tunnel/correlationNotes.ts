import { statedUncertainty } from "../../statistics/uncertaintyStatement";
import type { CorrelationRemark, StatedCorrelation } from "./correlationFaults";
import { type StatedKey, type StatedUncertainties, statedName } from "./statedUncertainties";

/**
 * Correlated parts that are not stated as normal, in the order of the statements: no joint distribution is drawn for
 * those. A coefficient of 0 is no correlation.
 */
export function undrawableParts(
  correlations: readonly StatedCorrelation[],
  stated: StatedUncertainties,
): readonly StatedKey[] {
  const keys = new Set(correlations.flatMap(({ between, coefficient }) => (coefficient === 0 ? [] : between)));
  return (Object.keys(stated) as StatedKey[]).filter((key) => {
    const statement = stated[key];
    return keys.has(key) && statement !== undefined && statedUncertainty(statement).distribution !== "normal";
  });
}

/**
 * What correlations do not do although nothing is wrong with them: those of a part that is exact or no input count for
 * nothing, and some leave out the Monte Carlo.
 * @param samples Monte Carlo samples of each point
 * @param inputKeys inputs of the points' budgets; null when they are not known yet
 */
export function correlationNotes(
  correlations: readonly StatedCorrelation[],
  stated: StatedUncertainties,
  samples: number,
  inputKeys: ReadonlySet<string> | null,
): CorrelationRemark[] {
  const notes: CorrelationRemark[] = [];
  for (const [index, { between, coefficient }] of correlations.entries()) {
    if (coefficient === 0) continue;
    const strange = between.find((key) => inputKeys?.has(key) === false);
    const exact = between.find((key) => !(Number(stated[key]?.plusMinus) > 0));
    const key = strange ?? exact;
    if (key === undefined) continue;
    const reason = strange === undefined ? "is taken as exact" : "is no part of the budget of these runs";
    notes.push({ index, message: `"${statedName(key)}" ${reason}, so that this correlation counts for nothing` });
  }
  const undrawable = undrawableParts(correlations, stated);
  if (samples > 0 && undrawable.length > 0) {
    const names = undrawable.map((key) => `"${statedName(key)}"`).join(", ");
    const message = `no Monte Carlo for ${names}: correlated parts are drawn together as normal ones only, stated as 95 % or as standard, without degrees of freedom; the first-order uncertainty holds for any`;
    notes.push({ index: null, message });
  }
  return notes;
}
