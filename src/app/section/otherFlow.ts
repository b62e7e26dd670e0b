import type { ResultRow } from "../../../shared/engine/section/resultRow";
import { shareWords } from "./sharesInWords";
import { risingState, type Solved } from "./solved";
import type { WorkingPoint } from "./workingPoint";

/** A flow that a person can look at instead of the likeliest. */
export interface OtherFlow {
  /** "own", or the kind of flow. */
  readonly key: "own" | FlowKind;
  readonly label: string;
  /** How likely it is, or where it was computed. */
  readonly words: string;
  /** m/s, where such a flow was computed nearest to the design's speed. */
  readonly speed: number;
}

export type FlowKind = "past" | "oneSided" | "before";

const labels: Readonly<Record<FlowKind, string>> = {
  past: "past the crisis",
  oneSided: "one-sided",
  before: "before it",
};

/** A one-sided flow is offered only where it is computed within this factor of the speed. */
const nearFactor = 2;
/** Flows less likely than this are not offered. */
const leastShare = 0.01;

function kindOf({ regime, oneSided }: { readonly regime: string | null; readonly oneSided: boolean | null }): FlowKind {
  if (oneSided === true) return "oneSided";
  return regime === "subcritical" ? "before" : "past";
}

/** The flows that a design may be in: its own as computed, and those on the other side of a near crisis. */
export function flowsOf(solved: Solved | null, rows: readonly ResultRow[], point: WorkingPoint | null): OtherFlow[] {
  const state = solved === null ? null : risingState(solved.solution);
  if (solved === null || state === null || point === null) return [];
  const { pastCrisisShare: share } = point;
  if (share < leastShare || share > 1 - leastShare) return [];
  const own = kindOf(state);
  const words = (kind: FlowKind, speed: number) =>
    kind === "oneSided"
      ? `computed at ${Number(speed.toPrecision(2))} m/s`
      : shareWords(kind === "past" ? share : 1 - share);
  const { speed } = solved.design;
  const list: OtherFlow[] = [{ key: "own", label: labels[own], words: words(own, speed), speed }];
  for (const kind of ["past", "oneSided", "before"] as const) {
    if (kind === own) continue;
    const nearest = nearestRow(rows, kind, speed);
    if (nearest === null) continue;
    if (kind === "oneSided" && Math.abs(Math.log(nearest / speed)) > Math.log(nearFactor)) continue;
    list.push({ key: kind, label: labels[kind], words: words(kind, nearest), speed: nearest });
  }
  return list;
}

/** The speed nearest to one at which a kind of flow was computed. */
function nearestRow(rows: readonly ResultRow[], kind: FlowKind, speed: number): number | null {
  let best: number | null = null;
  for (const row of rows) {
    const at = row.speedMetresPerSecond;
    if (at === null || row.branch !== "rising" || row.regime === null || kindOf(row) !== kind) continue;
    if (best === null || Math.abs(Math.log(at / speed)) < Math.abs(Math.log(best / speed))) best = at;
  }
  return best;
}
