import type { SectionFlow } from "../flow/sectionFlow";
import { followSide, type SideLayer } from "../layer/sideLayer";
import type { Side } from "../layer/sideStations";
import type { FlowCondition } from "./condition";
import type { FixedPoint } from "./fixedPoints";
import type { PreparedSection } from "./prepareSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";
import { stationTrips } from "./stationTrips";

/** Which root a side prefers where its layer could separate in several places: the one nearest to the nose or to the tail. */
export type RootChoice = "early" | "late";

/** Number of separation positions tried along a side when nothing is known, and how close a bracket is closed, in node steps. */
const SCAN_POINTS = 26;
const POSITION_TOLERANCE = 1e-3;
/** The sides have settled when a sweep moves neither by more than this, in node steps. */
const SETTLED = 0.01;
const MOST_SWEEPS = 24;

interface SideProbe {
  readonly position: number;
  readonly residual: number;
  readonly layer: SideLayer;
  readonly flow: SeparatedFlow;
}

/**
 * A fixed point of the two-sided separation map: each side in turn is solved with the other held, until neither moves.
 * @param choice which root each side takes where it has several
 * @param guess separation positions to start from, in node steps, when something near is known
 * @returns null when a side finds no separation point or the sides do not settle
 */
export function twoSidedFixedPoint(
  section: PreparedSection,
  condition: FlowCondition,
  choice: { readonly lower: RootChoice; readonly upper: RootChoice },
  guess: { readonly lower: number; readonly upper: number } | null = null,
): FixedPoint | null {
  const flow = section.fullFlow();
  const count = section.nodes.count;
  let lower = guess?.lower ?? 0.36 * count * (choice.lower === "early" ? 0.6 : 1);
  let upper = guess?.upper ?? count - 0.36 * count * (choice.upper === "early" ? 0.6 : 1);
  let known = guess !== null;
  let onSwitch = false;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    const lowerRoot = sideRoot(section, flow, condition, "lower", upper, known ? lower : null, choice.lower);
    if (lowerRoot === null) return null;
    const lowerMove = Math.abs(lowerRoot.position - lower);
    lower = lowerRoot.position;
    const upperRoot = sideRoot(section, flow, condition, "upper", lower, known ? upper : null, choice.upper);
    if (upperRoot === null) return null;
    const upperMove = Math.abs(upperRoot.position - upper);
    upper = upperRoot.position;
    onSwitch = lowerRoot.onSwitch || upperRoot.onSwitch;
    if (known && lowerMove < SETTLED && upperMove < SETTLED) {
      const solved = separatedFlow(flow, section.street, section.constants.afterbodyInterference, lower, upper);
      if (solved === null) return null;
      return {
        flow: solved,
        lower: sideLayer(section, condition, solved, "lower"),
        upper: sideLayer(section, condition, solved, "upper"),
        onSwitch,
      };
    }
    known = true;
  }
  return null;
}

function sideLayer(section: PreparedSection, condition: FlowCondition, flow: SeparatedFlow, side: Side): SideLayer {
  const trips = condition.trips?.length ? stationTrips(section, flow, side, condition.trips) : [];
  const stations = side === "lower" ? flow.lower : flow.upper;
  return followSide(stations, condition, trips, section.constants);
}

/** Separation position of one side with the other side's held; searched near `guess` first when there is one. */
function sideRoot(
  section: PreparedSection,
  flow: SectionFlow,
  condition: FlowCondition,
  side: Side,
  other: number,
  guess: number | null,
  choice: RootChoice,
): { position: number; onSwitch: boolean } | null {
  const count = section.nodes.count;
  // Distance from the nose along the side, in node steps, so that both sides run the same way.
  const probe = (distance: number): SideProbe | null => {
    const position = side === "lower" ? distance : count - distance;
    const lower = side === "lower" ? position : other;
    const upper = side === "lower" ? other : position;
    if (!(upper - lower > 2)) return null;
    const solved = separatedFlow(flow, section.street, section.constants.afterbodyInterference, lower, upper);
    if (solved === null) return null;
    const layer = sideLayer(section, condition, solved, side);
    return { position: distance, residual: layer.residual, layer, flow: solved };
  };
  const near = guess === null ? null : bracketNear(probe, side === "lower" ? guess : count - guess, count);
  const bracket = near ?? bracketByScan(probe, count, choice);
  if (bracket === null) return null;
  const closed = closeBracket(probe, bracket[0], bracket[1]);
  return { position: side === "lower" ? closed.position : count - closed.position, onSwitch: closed.onSwitch };
}

type ProbeAt = (distance: number) => SideProbe | null;

function bracketNear(probe: ProbeAt, guess: number, count: number): [SideProbe, SideProbe] | null {
  let reach = count / 400;
  for (let i = 0; i < 3; i++) {
    const before = probe(guess - reach);
    const after = probe(guess + reach);
    if (before !== null && after !== null && before.residual > 0 && after.residual <= 0) return [before, after];
    reach *= 3;
  }
  return null;
}

function bracketByScan(probe: ProbeAt, count: number, choice: RootChoice): [SideProbe, SideProbe] | null {
  const first = 0.03 * count;
  const last = 0.62 * count;
  let found: [SideProbe, SideProbe] | null = null;
  let previous: SideProbe | null = null;
  for (let i = 0; i <= SCAN_POINTS; i++) {
    const next = probe(first + ((last - first) * i) / SCAN_POINTS);
    if (next !== null && previous !== null && previous.residual > 0 && next.residual <= 0) {
      found = [previous, next];
      if (choice === "early") return found;
    }
    previous = next;
  }
  return found;
}

function closeBracket(
  probe: ProbeAt,
  attached: SideProbe,
  separated: SideProbe,
): { position: number; onSwitch: boolean } {
  let a = attached;
  let b = separated;
  for (let i = 0; i < 40 && b.position - a.position > POSITION_TOLERANCE; i++) {
    const smooth = a.layer.state === b.layer.state && i % 3 !== 2;
    const share = smooth ? Math.min(0.95, Math.max(0.05, a.residual / (a.residual - b.residual))) : 0.5;
    const next = probe(a.position + share * (b.position - a.position));
    if (next === null) break;
    if (next.residual > 0) a = next;
    else b = next;
  }
  return { position: b.position, onSwitch: a.layer.state !== b.layer.state };
}
