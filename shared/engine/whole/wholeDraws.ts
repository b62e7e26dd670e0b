import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import { speedRatioOf } from "./baseBand";
import type { ConditionedBody, ConditionedFlow, EdgeState, FlowBranch, RimState } from "./conditionedFlow";
import { forcesAt, lostSuctionAt } from "./wakeRow";
import { WHOLE_ERROR_NAMES, type WholeErrorDraw, type WholeErrorDraws } from "./wholeErrors";

const RIM_SPREAD = WHOLE_NUMBERS.rimCrisisSpread.value;
const EDGE_SPREAD = WHOLE_NUMBERS.edgeCrisisSpread.value;
const LOST_ERROR = WHOLE_NUMBERS.lostSuctionError.value;
const FRICTION_ERROR = WHOLE_NUMBERS.frictionError.value;
const TILT_ERROR = WHOLE_NUMBERS.tiltError.value;

/** A base above this has no wake. */
const HIGHEST_BASE = WHOLE_NUMBERS.highestBasePressure.value;

/** One flow in one draw with its share of the time. Coefficients on the frontal area. */
export interface DrawnFlow {
  readonly rimState: RimState;
  readonly edgeState: EdgeState;
  readonly share: number;
  readonly branch: FlowBranch;
  readonly basePressure: number;
  readonly forebody: number;
  readonly lostSuction: number;
  readonly base: number;
  readonly friction: number;
  readonly lift: number;
  readonly moment: number;
}

/** The flows that a body has in one draw of what is not known; shares add up to 1. */
export function drawnFlows({ walls }: ConditionedBody, draw: WholeErrorDraw): DrawnFlow[] {
  const wall = walls[draw.groovedWall > 0 ? walls.length - 1 : 0];
  return wall.flatMap(({ flow, weight }) => flowsOf(flow, weight, draw)).filter(({ share }) => share > LEAST_WEIGHT);
}

/** Weights below rounding. */
const LEAST_WEIGHT = 1e-9;

function flowsOf(flow: ConditionedFlow, weight: number, draw: WholeErrorDraw): DrawnFlow[] {
  const turned = flow.rimMargin + RIM_SPREAD * draw.rimCrisis > 0;
  const { followed, open, backShares } = turned ? flow.turned : flow.laminar;
  const lines = flow.edgeMargins.length;
  if (lines === 0 || open === null) return [drawn(flow, followed, "kept", weight, draw)];
  let [kept, lost] = [0, 0];
  flow.edgeMargins.forEach((margin, i) => {
    if (margin + EDGE_SPREAD * draw.edgeBubble > 0) kept += 1 / lines;
    else lost += backShares[i] / lines;
  });
  return [
    drawn(flow, followed, "kept", weight * kept, draw),
    drawn(flow, followed, "lost", weight * lost, draw),
    drawn(flow, open, "open", weight * (1 - kept - lost), draw),
  ];
}

function drawn(
  { tiltedness }: ConditionedFlow,
  branch: FlowBranch,
  edgeState: EdgeState,
  share: number,
  draw: WholeErrorDraw,
): DrawnFlow {
  const { expected, wide, across, narrowed } = branch.base;
  const basePressure = Math.min(
    HIGHEST_BASE,
    expected - wide * draw.wideBasePressure - across * draw.acrossBasePressure - narrowed * draw.narrowedBasePressure,
  );
  const forces = forcesAt(branch.nodes, speedRatioOf(basePressure));
  const tilt = Math.max(0, 1 + TILT_ERROR * tiltedness * draw.tilt);
  const lost =
    edgeState === "lost"
      ? lostSuctionAt(forces, branch.suctionCap) * Math.max(0, 1 + LOST_ERROR * draw.lostSuction)
      : 0;
  return {
    rimState: branch.rimState,
    edgeState,
    share,
    branch,
    basePressure,
    forebody: tilt * forces.forebody,
    lostSuction: tilt * lost,
    base: tilt * forces.base,
    friction: branch.friction * Math.max(0, 1 + FRICTION_ERROR * draw.friction),
    lift: tilt * forces.lift,
    moment: tilt * forces.moment,
  };
}

/** Drag coefficients are no lower than this: a body's drag is not negative, and ratios divide by it. */
const LEAST_DRAG = WHOLE_NUMBERS.leastDrag.value;

export function dragOfDraw(body: ConditionedBody, draw: WholeErrorDraw): number {
  let sum = 0;
  for (const { share, forebody, lostSuction, base, friction } of drawnFlows(body, draw)) {
    sum += share * (forebody + lostSuction + base + friction);
  }
  return Math.max(LEAST_DRAG, sum);
}

/**
 * Drag area (drag over dynamic pressure, m^2) of a body in each of many draws of what is not known of such flows. Give the
 * same draws to all bodies of a study: their differences then hold only what is not common to them. The draws are standard
 * normals, independent unless something measured conditions them; see {@link WHOLE_ERROR_NAMES}. Above 0 a base pressure's
 * draw means more suction.
 * @param draws shape [n] of each name
 * @returns shape [n]
 */
export function wholeDragDraws(body: ConditionedBody, draws: WholeErrorDraws): Float64Array {
  const count = draws.wideBasePressure.length;
  for (const name of WHOLE_ERROR_NAMES) {
    if (draws[name].length !== count) {
      throw new RangeError(
        `${name} has ${draws[name].length} draws and wideBasePressure ${count}; all need the same number.`,
      );
    }
  }
  return Float64Array.from({ length: count }, (_, i) => body.frontalArea * dragOfDraw(body, drawAt(draws, i)));
}

export function drawAt(draws: WholeErrorDraws, i: number): WholeErrorDraw {
  return Object.fromEntries(WHOLE_ERROR_NAMES.map((name) => [name, draws[name][i]])) as Record<
    keyof WholeErrorDraw,
    number
  >;
}
