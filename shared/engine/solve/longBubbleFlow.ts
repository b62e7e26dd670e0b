import type { FlowCondition } from "../condition";
import { LAYER_NUMBERS } from "../constants/layerNumbers";
import { reattachedShare } from "../layer/longBubble";
import type { SideLayer } from "../layer/sideLayer";
import type { SectionState } from "../solution";
import type { FixedPoint } from "./fixedPoint";
import type { PreparedSection } from "./preparedSection";
import { sectionState } from "./sectionState";
import { steadinessOf } from "./settled";
import { withBluntBase } from "./withBluntBase";

const SIDE_END_SLOPE = LAYER_NUMBERS.sideEndSlope.value;

/** A flow whose layers come back to both sides as long bubbles, and the share of the time that it holds. */
export interface LongBubbleFlow {
  readonly point: FixedPoint;
  readonly state: SectionState;
  readonly share: number;
}

/**
 * The flow whose layers come back to both sides as long bubbles; of several the one that separates last. Null where the
 * section has none. The share of the time that it holds is the mean of both sides'.
 * @param search finds the fixed points of a condition
 */
export function longBubbleFlow(
  section: PreparedSection,
  condition: FlowCondition,
  search: (condition: FlowCondition) => readonly FixedPoint[],
): LongBubbleFlow | null {
  const long = { ...condition, longBubbles: true };
  let point: FixedPoint | null = null;
  for (const found of search(long)) {
    if (found.onSwitch || found.lower.longBubble === null || found.upper.longBubble === null) continue;
    if (point === null || wettedSteps(found) > wettedSteps(point)) point = found;
  }
  if (point === null) return null;
  const share = (shareOf(point.lower) + shareOf(point.upper)) / 2;
  if (!(share > 0)) return null;
  const steadiness = steadinessOf(section, long, point, null);
  return { point, share, state: sectionState(section, long, withBluntBase(section, point), steadiness) };
}

/**
 * Whether any of the states leaves a side behind its separation points that is long enough to be come back to for more
 * than a rare moment: what a bubble of no length at all would need. It spares round sections a second search.
 */
export function mayReattach(section: PreparedSection, points: readonly FixedPoint[]): boolean {
  if (points.length === 0) return true;
  return points.some(
    ({ flow: { wake } }) =>
      reattachedShare(sideBehind(section, wake.lower, 1), 0) > 0 ||
      reattachedShare(sideBehind(section, wake.upper, -1), 0) > 0,
  );
}

/** Length / D of the side from a position on, in a direction along the contour, to where the wall has turned away. */
function sideBehind(
  { nodes, incidence, referenceWidth }: PreparedSection,
  position: number,
  direction: 1 | -1,
): number {
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  let length = 0;
  for (let step = 0, i = Math.round(position); step < nodes.count; step++, i += direction) {
    const node = ((i % nodes.count) + nodes.count) % nodes.count;
    // Outward component of the tangent that runs with the stream.
    const outward = sine * nodes.tangentX[node] - cosine * nodes.tangentY[node];
    if (outward < SIDE_END_SLOPE) break;
    length += nodes.ds[node] / referenceWidth;
  }
  return length;
}

/** Whether a wake opens at the front on both sides, where the long bubbles of another flow begin. */
export function opensAtFront(open: FixedPoint, closed: FixedPoint): boolean {
  return opensEarly(open.lower, closed.lower) && opensEarly(open.upper, closed.upper);
}

function opensEarly(open: SideLayer, closed: SideLayer): boolean {
  const from = closed.bubble?.separationArc ?? 0;
  return open.state !== "separation bubble" && open.separationArc < (from + closed.separationArc) / 2;
}

function shareOf({ longBubble }: SideLayer): number {
  return longBubble === null ? 0 : reattachedShare(longBubble.side, longBubble.length);
}

function wettedSteps({ flow }: FixedPoint): number {
  return flow.wake.lower - flow.wake.upper;
}
