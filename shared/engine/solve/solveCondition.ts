import type { Problem } from "../../result";
import type { FlowCondition } from "../condition";
import { SOLVER_NUMBERS } from "../constants/solverNumbers";
import { reattachmentDistance } from "../layer/bubble";
import { laminarShearLayerLength } from "../layer/sideLayer";
import { stationValue } from "../layer/sideStations";
import type { ConditionOutcome } from "../solution";
import { checkCondition } from "./checkCondition";
import type { FixedPoint } from "./fixedPoint";
import { closureNearFloor } from "./floorNotes";
import { intermittentState } from "./intermittentState";
import { type LongBubbleFlow, longBubbleFlow, mayReattach, opensAtFront } from "./longBubbleFlow";
import { oneSidedFixedPoint } from "./oneSidedFixedPoint";
import type { PreparedSection } from "./preparedSection";
import { restingFixedPoints } from "./restingFixedPoints";
import { sectionState } from "./sectionState";
import { RECHECKED_REYNOLDS, steadinessOf } from "./settled";
import { symmetricFixedPoints } from "./symmetricFixedPoints";
import { twoSidedFixedPoints } from "./twoSidedFixedPoints";
import { withBluntBase } from "./withBluntBase";

/**
 * All steady states of a section in one condition, sorted from early to late separation. Without a history, a rising
 * speed is taken to sit on the state that separates first and a falling speed on the one that separates last.
 * @returns an outcome with no states and a problem when the condition is out of range or nothing converges
 */
export function solveCondition(section: PreparedSection, condition: FlowCondition): ConditionOutcome {
  const refused = checkCondition(condition);
  if (refused !== null) return { states: [], rising: null, falling: null, problem: refused };
  const points = fixedPoints(section, condition);
  const closed = mayReattach(section, points) ? reattached(section, condition) : null;
  if (points.length === 0) {
    if (closed === null) return { states: [], rising: null, falling: null, problem: noFixedPoint(section, condition) };
    return { states: [closed.state], rising: 0, falling: 0, problem: null };
  }
  // A symmetric search walks one line and comes to the same states again; others may find more or fewer.
  const again = isSymmetric(section, condition)
    ? null
    : fixedPoints(section, { ...condition, reynolds: condition.reynolds * RECHECKED_REYNOLDS });
  const states = points
    .map((point) => {
      const steadiness = steadinessOf(section, condition, point, again);
      const state = sectionState(section, condition, withBluntBase(section, point), steadiness);
      if (closed === null || !opensAtFront(point, closed.point)) return state;
      return intermittentState(state, closed.state, closed.share);
    })
    .filter(({ dragCoefficient }) => dragCoefficient > 0);
  if (states.length === 0) {
    return { states, rising: null, falling: null, problem: noFixedPoint(section, condition) };
  }
  return { states, rising: 0, falling: states.length - 1, problem: null };
}

/** The flow whose layers come back to the sides; null where the section has none or lies on a floor. */
function reattached(section: PreparedSection, condition: FlowCondition): LongBubbleFlow | null {
  if (section.floor?.contact) return null;
  const symmetric = isSymmetric(section, condition);
  return longBubbleFlow(section, condition, (long) =>
    symmetric ? symmetricFixedPoints(section, long) : twoSidedFixedPoints(section, long),
  );
}

/** All stable fixed points, early separation first. */
function fixedPoints(section: PreparedSection, condition: FlowCondition): FixedPoint[] {
  if (section.floor?.contact) return restingFixedPoints(section, condition, section.floor.contact);
  if (isSymmetric(section, condition)) {
    const points = symmetricFixedPoints(section, condition);
    if (mayBeOneSided(section, condition, points)) {
      const oneSided = oneSidedFixedPoint(section, condition, points);
      if (oneSided !== null) points.push(oneSided);
    }
    return points.sort((a, b) => wettedSteps(section, a) - wettedSteps(section, b));
  }
  return twoSidedFixedPoints(section, condition).sort((a, b) => wettedSteps(section, a) - wettedSteps(section, b));
}

function isSymmetric(section: PreparedSection, { trips = [] }: FlowCondition): boolean {
  if (!section.symmetric) return false;
  return trips.every((trip) =>
    trips.some(
      (other) => other.side !== trip.side && other.arcRatio === trip.arcRatio && other.heightRatio === trip.heightRatio,
    ),
  );
}

/** How much sooner than a bubble closes on both sides a bubble on one side alone can close, as a ratio of Reynolds numbers. */
const ONE_SIDED_REACH = SOLVER_NUMBERS.oneSidedReach.value;

/**
 * Whether a symmetric section may shed one-sidedly: a laminar separation is there beside a state of another kind, or
 * its bubble would close at a Reynolds number not far above. A plate through the wake keeps the two sides alike.
 */
function mayBeOneSided(section: PreparedSection, condition: FlowCondition, points: readonly FixedPoint[]): boolean {
  if (section.flow.wakeSuctionShare < 1) return false;
  const laminar = points.find((point) => point.lower.state === "laminar separation");
  if (laminar === undefined) return false;
  if (points.some((point) => point.lower.state !== laminar.lower.state)) return true;
  if (laminar.flow.lower.laminar.separation === Number.POSITIVE_INFINITY) return false;
  const stations = laminar.flow.lower;
  const length = laminarShearLayerLength(stations, stations.laminar.separation, condition);
  const curvature = stationValue(stations.curvature, stations.laminar.separation);
  return reattachmentDistance(length / ONE_SIDED_REACH, curvature, section.constants.reattachmentSlope) !== null;
}

function wettedSteps(section: PreparedSection, point: FixedPoint): number {
  return point.flow.wake.lower + section.nodes.count - point.flow.wake.upper;
}

function noFixedPoint(section: PreparedSection, condition: FlowCondition): Problem {
  const { floor } = section;
  return {
    code: "no-fixed-point",
    message:
      `${section.nodes.name} at Re ${condition.reynolds.toExponential(3)}: no separation point was found at which the ` +
      "boundary layers separate where the wake assumes it. The layers may stay attached to the tail, or the two sides do not settle." +
      (floor === null ? "" : ` ${closureNearFloor(floor.gapRatio)}`),
  };
}
