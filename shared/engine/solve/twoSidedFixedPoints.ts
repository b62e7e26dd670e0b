import type { FlowCondition } from "../condition";
import type { Side } from "../layer/sideStations";
import { type FixedPoint, steadyOnes } from "./fixedPoint";
import { followBothSides, followOneSide, followStations } from "./followBothSides";
import { nearestApproach } from "./nearestApproach";
import type { PreparedSection } from "./preparedSection";
import { type Bracket, closeBracket, isBracket, type ProbeAt, type SideProbe } from "./separationSearch";
import type { SeparationTable } from "./separationTable";
import { settleTogether } from "./settleTogether";
import { twoSidedFlow } from "./twoSidedFlow";
import { curveCrossings, type FollowedLayer, type SeparationPair, zeroCurves } from "./zeroCurves";

/** The sides have settled when a sweep moves neither by more than this, in node steps. */
const SETTLED = 0.01;
const MOST_SWEEPS = 16;
/** Parts of the way around by which a bracket reaches to either side of a guess, one after the other. */
const REACHES = [1 / 400, 1 / 100, 1 / 25];
/** Pairs nearer to each other than this part of the way around lead to the same point. */
const SAME_GUESS = 1 / 100;

/**
 * All fixed points of a section that need not be symmetric, each once, in no order: the zero curves of both sides'
 * residuals are laid over the table of separation points, and every crossing is followed up. Where no crossing leads to
 * a state, the pair of separation points is taken whose layers come nearest to separating there.
 */
export function twoSidedFixedPoints(section: PreparedSection, condition: FlowCondition): FixedPoint[] {
  const guesses: SeparationPair[] = [];
  // Where the wakes end between two places of the table a crossing may hide: looked for when there is no other.
  const found: FixedPoint[] = [];
  for (const withEdges of [false, true]) {
    for (const guess of newGuesses(section, condition, withEdges, guesses)) {
      guesses.push(guess);
      const point = twoSidedFixedPoint(section, condition, guess);
      if (point !== null && !found.some((known) => sameWake(known, point))) found.push(point);
    }
    if (found.some(({ onSwitch }) => !onSwitch)) break;
  }
  if (found.length > 0) return steadyOnes(found);
  const nearest = nearestApproach(section, condition, guesses);
  if (nearest === null) return [];
  const point = twoSidedFixedPoint(section, condition, nearest);
  return [point ?? nearest.point];
}

/** Crossings of the two sides' zero curves that are not near a known guess or each other. */
function newGuesses(
  section: PreparedSection,
  condition: FlowCondition,
  withEdges: boolean,
  known: readonly SeparationPair[],
): SeparationPair[] {
  const table = section.table();
  const [lower, upper] = (["lower", "upper"] as const).map((side) =>
    zeroCurves(table, withEdges, (own, held) => followInTable(section, condition, table, side, own, held)),
  );
  const near = SAME_GUESS * section.nodes.count;
  const apart = (a: SeparationPair, b: SeparationPair) =>
    Math.abs(a.lower - b.lower) > near || Math.abs(a.upper - b.upper) > near;
  const found: SeparationPair[] = [];
  for (const pair of curveCrossings(lower, upper)) {
    if ([...known, ...found].every((other) => apart(pair, other))) found.push(pair);
  }
  return found;
}

function followInTable(
  section: PreparedSection,
  condition: FlowCondition,
  table: SeparationTable,
  side: Side,
  own: number,
  held: number,
): FollowedLayer | null {
  const stations = table.stations(side, own, held);
  if (stations === null) return null;
  const { state, residual } = followStations(section, condition, stations, side);
  return { state, residual, end: stations.arc[stations.count - 1] };
}

function sameWake(a: FixedPoint, b: FixedPoint): boolean {
  return Math.abs(a.flow.wake.lower - b.flow.wake.lower) < 0.1 && Math.abs(a.flow.wake.upper - b.flow.wake.upper) < 0.1;
}

/**
 * A fixed point of the two-sided separation map near a pair of separation points: both sides at once where that settles,
 * else one side solved with the other held, until neither moves. That finds points at which a layer changes its kind.
 * @returns null when a side finds no separation point near by or the sides do not settle
 */
export function twoSidedFixedPoint(
  section: PreparedSection,
  condition: FlowCondition,
  guess: SeparationPair,
): FixedPoint | null {
  const together = settleTogether(section, condition, guess);
  if (together !== null) return together;
  let { lower, upper } = guess;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    // Both from the same pair, so that a mirrored section has the mirror image of the states.
    const newLower = sideRoot(section, condition, "lower", lower, upper);
    const newUpper = sideRoot(section, condition, "upper", upper, lower);
    if (newLower === null || newUpper === null) return null;
    const moved = Math.max(Math.abs(newLower.distance - lower), Math.abs(newUpper.distance - upper));
    lower = newLower.distance;
    upper = newUpper.distance;
    const onSwitch = newLower.onSwitch || newUpper.onSwitch;
    if (moved < SETTLED) {
      const flow = twoSidedFlow(section.fullFlow(), section, lower, upper);
      return flow === null ? null : { flow, ...followBothSides(section, condition, flow), onSwitch };
    }
    if (!onSwitch) {
      const settled = settleTogether(section, condition, { lower, upper });
      if (settled !== null) return settled;
    }
  }
  return null;
}

/** Separation distance of one side nearest to a guess, the other side's held. */
function sideRoot(
  section: PreparedSection,
  condition: FlowCondition,
  side: Side,
  guess: number,
  held: number,
): { readonly distance: number; readonly onSwitch: boolean } | null {
  const whole = section.fullFlow();
  const probeAt: ProbeAt = (distance) => {
    const [lower, upper] = side === "lower" ? [distance, held] : [held, distance];
    const flow = twoSidedFlow(whole, section, lower, upper);
    return flow === null ? null : { distance, flow, layer: followOneSide(section, condition, flow, side) };
  };
  const bracket =
    bracketNear(probeAt, guess, section.nodes.count) ?? nearestBracket(probeAt, guess, section.table().distances);
  if (bracket === null) return null;
  const { probe, onSwitch } = closeBracket(probeAt, bracket);
  return { distance: probe.distance, onSwitch };
}

function bracketNear(probeAt: ProbeAt, guess: number, count: number): Bracket | null {
  let [before, after]: (SideProbe | null)[] = [null, null];
  for (const reach of REACHES) {
    before = probeAt(guess - reach * count) ?? before;
    after = probeAt(guess + reach * count) ?? after;
    if (before !== null && after !== null && isBracket(before, after)) return [before, after];
  }
  return null;
}

/** The bracket nearest to a guess among those that a walk along the whole side meets. */
function nearestBracket(probeAt: ProbeAt, guess: number, distances: readonly number[]): Bracket | null {
  const probes = distances.map(probeAt);
  let best: Bracket | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < probes.length; i++) {
    const [before, after] = [probes[i - 1], probes[i]];
    if (before === null || after === null || !isBracket(before, after)) continue;
    const apart = Math.abs((before.distance + after.distance) / 2 - guess);
    if (apart < least) [best, least] = [[before, after], apart];
  }
  return best;
}
