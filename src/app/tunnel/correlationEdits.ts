import type { StatedCorrelation } from "../../../shared/jobs/tunnel/correlationFaults";
import { type StatedKey, statedKeys } from "../../../shared/jobs/tunnel/statedUncertainties";
import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import { statedUncertainty } from "../../../shared/statistics/uncertaintyStatement";
import { enterField, enterValue, type FieldEntry } from "./tunnelFields";

/** The stated correlations of a block, in their order. */
export function correlationsOf({ uncertainty }: TunnelBlockDocument): readonly StatedCorrelation[] {
  return uncertainty?.correlations ?? [];
}

/** The block with one more correlation, of coefficient 0 until it is typed; refused when there are as many as can be. */
export function addCorrelation(block: TunnelBlockDocument): FieldEntry {
  const before = correlationsOf(block);
  return enterList(block, [...before, { between: freePair(block, before), coefficient: 0 }]);
}

/** The block without a correlation; the list goes with the last one. */
export function removeCorrelation(block: TunnelBlockDocument, index: number): FieldEntry {
  return enterList(
    block,
    correlationsOf(block).filter((_, i) => i !== index),
  );
}

/** The block with another part in a correlation. @param place 0: the first part, 1: the second */
export function enterPart(block: TunnelBlockDocument, index: number, place: 0 | 1, key: string): FieldEntry {
  return enterValue(block, [...pathOf(index), "between", String(place)], key, `Correlation ${index + 1}`);
}

/** The block with what was typed as a coefficient, or its allowed range. */
export function enterCoefficient(block: TunnelBlockDocument, index: number, typed: string): FieldEntry {
  const label = `Coefficient of correlation ${index + 1}`;
  return enterField(block, { path: [...pathOf(index), "coefficient"], label, unit: "" }, typed);
}

function pathOf(index: number): string[] {
  return ["uncertainty", "correlations", String(index)];
}

function enterList(block: TunnelBlockDocument, list: readonly StatedCorrelation[]): FieldEntry {
  return enterValue(block, ["uncertainty", "correlations"], list.length === 0 ? undefined : list, "Correlations");
}

/** The first pair without a correlation, of parts that correlations act on most fully: stated as normal, then stated. */
function freePair({ uncertainty }: TunnelBlockDocument, taken: readonly StatedCorrelation[]): [StatedKey, StatedKey] {
  const rank = (key: StatedKey) => {
    const statement = uncertainty?.stated?.[key];
    if (statement === undefined) return 2;
    return statedUncertainty(statement).distribution === "normal" ? 0 : 1;
  };
  const keys = [...statedKeys].sort((a, b) => rank(a) - rank(b));
  for (const [j, other] of keys.entries()) {
    for (const one of keys.slice(0, j)) {
      if (!taken.some(({ between }) => between.includes(one) && between.includes(other))) return [one, other];
    }
  }
  return [keys[0], keys[1]];
}
