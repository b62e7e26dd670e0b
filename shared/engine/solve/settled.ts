import type { FlowCondition } from "../condition";
import { SOLVER_NUMBERS } from "../constants/solverNumbers";
import type { Side } from "../layer/sideStations";
import type { SectionState } from "../solution";
import { quadraticAt } from "../wake/wakeFlow";
import type { FixedPoint } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";
import { separatesThere } from "./separationSearch";

/** Relative changes of the Reynolds number that a settled state does not notice, and the one at which it is looked for again. */
const NUDGES = [1e-4, -1e-4, 3e-4, -3e-4];
export const RECHECKED_REYNOLDS = 1 - 1e-4;
/** Shift of a separation point for its slopes: node steps, and arc / D where nodes stand closer than the layers can tell apart. */
const SHIFT = 0.3;
const LEAST_SHIFT = 1e-3;
/** Part of the drag by which a state may waver and still be one answer; of a drag coefficient no smaller than the second number. */
const LARGEST_WAVER = SOLVER_NUMBERS.largestWaver.value;
const LARGEST_CHANGE = SOLVER_NUMBERS.largestSeenChange.value;
const LEAST_DRAG = SOLVER_NUMBERS.leastWaveredDrag.value;

/** How steady a fixed point is. */
export interface Steadiness {
  readonly unsettledBy: SectionState["unsettledBy"];
  /** Changes of its drag coefficient that were seen: the most downward, 0 or below, and the most upward. */
  readonly changes: readonly [number, number];
}

/**
 * Whether a fixed point is an answer or noise. Its layers are followed once more at slightly other Reynolds numbers on
 * the flow at hand: what they miss it by, then and as found, over the slope of the separation map, is how far its
 * separation points would move, and the slope of the drag how far its drag.
 * @param again all fixed points found a ten-thousandth lower in Reynolds number; null where that was not looked for
 */
export function steadinessOf(
  section: PreparedSection,
  condition: FlowCondition,
  point: FixedPoint,
  again: readonly FixedPoint[] | null,
): Steadiness {
  const drag = pressureDrag(point.flow);
  const scale = Math.max(LEAST_DRAG, Math.abs(drag));
  const found = separatesThere(point.lower) && separatesThere(point.upper);
  const waver = found ? waverOf(section, condition, point) : Number.POSITIVE_INFINITY;
  const others = (again ?? []).map((other) => pressureDrag(other.flow) - drag);
  const nearest = others.reduce(
    (best, each) => (Math.abs(each) < Math.abs(best) ? each : best),
    Number.POSITIVE_INFINITY,
  );
  const foundAgain = again === null || Math.abs(nearest) < LARGEST_WAVER * scale;
  // Beyond half of the drag a linear estimate says only that it may be anything of that size.
  const moves = Math.min(waver, LARGEST_CHANGE * scale);
  const unsettledBy = !found
    ? "missed"
    : !Number.isFinite(waver)
      ? "unstable"
      : !(waver < LARGEST_WAVER * scale)
        ? "wavers"
        : foundAgain
          ? null
          : "not found again";
  return {
    unsettledBy,
    // A state that is not found again has become one of the others.
    changes: [Math.min(-moves, ...(foundAgain ? [] : others)), Math.max(moves, ...(foundAgain ? [] : others))],
  };
}

function pressureDrag({ wake, speedRatio }: SeparatedFlow): number {
  return quadraticAt(wake.pressureDrag, speedRatio);
}

/** By how much the pressure drag wavers; infinite where the separation map does not fall through the point. */
function waverOf(section: PreparedSection, condition: FlowCondition, point: FixedPoint): number {
  const { wake } = point.flow;
  const contact = section.floor?.contact ?? null;
  const oneLayer = point.flow.upper === point.flow.lower;
  const flow = oneLayer ? section.flow : section.fullFlow();
  const sides: readonly Side[] = oneLayer ? [contact === null ? "lower" : "upper"] : ["lower", "upper"];
  let waver = 0;
  for (const side of sides) {
    const missAt = (reynolds: number) => followOneSide(section, { ...condition, reynolds }, point.flow, side).residual;
    const own = point[side].residual;
    const spread = Math.max(...NUDGES.map((nudge) => Math.abs(missAt(condition.reynolds * (1 + nudge)) - own)));
    const shift = shiftAt(section, side === "lower" ? wake.lower : wake.upper);
    // The lower end of the base on a floor is the contact, which stays.
    const lower = (oneLayer && contact === null) || side === "lower" ? wake.lower + shift : wake.lower;
    const upper = oneLayer || side === "upper" ? wake.upper - shift : wake.upper;
    const beside = separatedFlow(flow, section, lower, upper);
    if (beside === null) return Number.POSITIVE_INFINITY;
    const slope = (followOneSide(section, condition, beside, side).residual - own) / shift;
    if (!(slope < 0)) return Number.POSITIVE_INFINITY;
    const steps = (spread + Math.abs(own)) / -slope;
    waver += (steps * Math.abs(pressureDrag(beside) - pressureDrag(point.flow))) / shift;
  }
  return waver;
}

function shiftAt({ nodes, referenceWidth }: PreparedSection, position: number): number {
  const node = Math.round(position) - nodes.count * Math.floor(Math.round(position) / nodes.count);
  return Math.max(SHIFT, (LEAST_SHIFT * referenceWidth) / nodes.ds[node]);
}
