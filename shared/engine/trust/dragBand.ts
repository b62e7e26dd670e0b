import type { FlowCondition } from "../condition";
import { judgeApplicability } from "./applicability";
import { type BandTable, smallDragCoefficient } from "./bandTable";
import { CHECKED_BANDS } from "./checkedBands";
import { crisisKind } from "./crisisKind";
import type { JudgedDragBand } from "./judgedDragBand";
import type { DragState } from "./nearbyStates";
import type { SectionDescription } from "./sectionDescription";
import { shapeFamily } from "./shapeFamily";

/** A band of half-widths alone. */
export type HalfWidthBand = Pick<JudgedDragBand, "low" | "high" | "spansCrisis" | "applicability" | "reason">;

/**
 * The 90 % band of a drag coefficient and where it stands among the published values that the engine was compared with.
 * Half-widths are those of the section's family and regime. Near a predicted drag crisis the band runs from the lowest
 * to the highest of the states nearby, each with its own half-width.
 * @param state     the state whose drag coefficient is reported
 * @param nearby    states at the condition and within crisisFactor of its Reynolds number, see nearbyStates.ts
 * @param table     half-widths and ranges, the engine's own by default
 */
export function dragBand(
  section: SectionDescription,
  state: DragState,
  condition: FlowCondition,
  nearby: readonly DragState[],
  table: BandTable = CHECKED_BANDS,
): HalfWidthBand {
  const { applicability, reason, roughnessUnchecked } = judgeApplicability(section, condition, table);
  const family = applicability === "outside: do not rely on it" ? "other" : shapeFamily(section, condition);
  const halfWidth = ({ regime, dragCoefficient }: DragState) => {
    const own = table.halfWidths[family][regime];
    const relative = roughnessUnchecked ? Math.max(own, table.halfWidths["rough circle"][regime]) : own;
    return relative * Math.max(dragCoefficient, smallDragCoefficient);
  };
  const others = nearby.filter(({ regime }) => regime !== state.regime);
  const held = [state, ...others];
  return {
    low: Math.max(0, Math.min(...held.map((each) => each.dragCoefficient - halfWidth(each)))),
    high: Math.max(...held.map((each) => each.dragCoefficient + halfWidth(each))),
    spansCrisis: others.length > 0,
    applicability,
    reason,
  };
}

/** How far away, as a ratio of Reynolds numbers, a state of another regime still counts for the band of a state. */
export function crisisFactor(
  section: SectionDescription,
  condition: FlowCondition,
  table: Pick<BandTable, "crisisReynoldsFactor"> = CHECKED_BANDS,
): number {
  return table.crisisReynoldsFactor[crisisKind(section.shape, condition.turbulenceIntensity)];
}
