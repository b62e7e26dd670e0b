import type { FlowCondition } from "../condition";
import type { SectionFlow } from "../flow/sectionFlow";
import type { Side } from "../layer/sideStations";
import { type FixedPoint, steadyOnes } from "./fixedPoint";
import { followBothSides, followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { separatedFlow } from "./separatedFlow";
import { type Bracket, closeBracket, isBracket, type ProbeAt, type SideProbe } from "./separationSearch";
import { settleTogether } from "./settleTogether";

/** Which root a side prefers where its layer could separate in several places: the one nearest to the nose or to the tail. */
export type RootChoice = "early" | "late";

/** Number of separation positions tried along a side when nothing is known. */
const SCAN_POINTS = 26;
/** The sides have settled when a sweep moves neither by more than this, in node steps. */
const SETTLED = 0.01;
const MOST_SWEEPS = 24;
/** After so many sweeps the sides are no longer tried together: something on the way keeps them apart. */
const SWEEPS_BEFORE_ALONE = 4;
const LOWER_FIRST: readonly Side[] = ["lower", "upper"];
const UPPER_FIRST: readonly Side[] = ["upper", "lower"];

/** Which side moves first in a sweep, the other then meeting it where it stands; or both from the same flow. */
export type SweepOrder = Side | "together";

/**
 * All fixed points that are found of a section that need not be symmetric, each once, in no order. The four
 * choices of roots and the orders of the sides are taken so that the mirror image of a section has the mirror image of
 * its states.
 */
export function twoSidedFixedPoints(section: PreparedSection, condition: FlowCondition): FixedPoint[] {
  const found: FixedPoint[] = [];
  const scanned: ScannedProbes = new Map();
  for (const [lower, upper, order] of SEARCHES) {
    const point = twoSidedFixedPoint(section, condition, { lower, upper }, null, order, scanned);
    if (point !== null && !found.some((known) => sameWake(known, point))) found.push(point);
  }
  return steadyOnes(found);
}

const SEARCHES: readonly (readonly [RootChoice, RootChoice, SweepOrder])[] = [
  ["early", "early", "together"],
  ["early", "late", "lower"],
  ["early", "late", "upper"],
  ["late", "early", "lower"],
  ["late", "early", "upper"],
  ["late", "late", "together"],
];

function sameWake(a: FixedPoint, b: FixedPoint): boolean {
  return Math.abs(a.flow.wake.lower - b.flow.wake.lower) < 0.1 && Math.abs(a.flow.wake.upper - b.flow.wake.upper) < 0.1;
}

/**
 * A fixed point of the two-sided separation map: a side is solved with the other held, until neither moves.
 * @param choice which root each side takes where it has several
 * @param guess separation positions to start from, in node steps, when something near is known
 * @param scanned probes of earlier searches in the same condition, and those of this one from now on
 * @returns null when a side finds no separation point or the sides do not settle
 */
export function twoSidedFixedPoint(
  section: PreparedSection,
  condition: FlowCondition,
  choice: { readonly lower: RootChoice; readonly upper: RootChoice },
  guess: { readonly lower: number; readonly upper: number } | null = null,
  order: SweepOrder = "lower",
  scanned: ScannedProbes = new Map(),
): FixedPoint | null {
  const flow = section.fullFlow();
  const count = section.nodes.count;
  let lower = guess?.lower ?? 0.36 * count * (choice.lower === "early" ? 0.6 : 1);
  let upper = guess?.upper ?? count - 0.36 * count * (choice.upper === "early" ? 0.6 : 1);
  let known = guess !== null;
  let onSwitch = false;
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    const before = { lower, upper };
    onSwitch = false;
    for (const side of order === "upper" ? UPPER_FIRST : LOWER_FIRST) {
      // The first sweep starts both sides alike in every search, so that its scans are shared.
      const held = order === "together" || !known ? before : { lower, upper };
      const other = side === "lower" ? held.upper : held.lower;
      const own = side === "lower" ? held.lower : held.upper;
      const root = sideRoot(section, flow, condition, side, other, known ? own : null, choice[side], scanned);
      if (root === null) return null;
      if (side === "lower") lower = root.position;
      else upper = root.position;
      onSwitch ||= root.onSwitch;
    }
    const lowerMove = Math.abs(lower - before.lower);
    const upperMove = Math.abs(upper - before.upper);
    if (known && lowerMove < SETTLED && upperMove < SETTLED) {
      const solved = separatedFlow(flow, section, lower, upper);
      if (solved === null) return null;
      return {
        flow: solved,
        ...followBothSides(section, condition, solved),
        onSwitch,
      };
    }
    known = true;
    if (!onSwitch && sweep < SWEEPS_BEFORE_ALONE && Math.max(lowerMove, upperMove) < count / 10) {
      const settled = settleTogether(section, flow, condition, lower, upper);
      if (settled !== null) return settled;
    }
  }
  return null;
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
  scanned: ScannedProbes,
): { position: number; onSwitch: boolean } | null {
  const count = section.nodes.count;
  // Distance from the nose along the side, in node steps, so that both sides run the same way.
  const probeAt = (distance: number): SideProbe | null => {
    const position = side === "lower" ? distance : count - distance;
    const lower = side === "lower" ? position : other;
    const upper = side === "lower" ? other : position;
    if (!(upper - lower > 2)) return null;
    const solved = separatedFlow(flow, section, lower, upper);
    if (solved === null) return null;
    return { distance, flow: solved, layer: followOneSide(section, condition, solved, side) };
  };
  const near = guess === null ? null : bracketNear(probeAt, side === "lower" ? guess : count - guess, count);
  const bracket =
    near ??
    bracketByScan(
      (distance) => remember(scanned, `${side} ${other} ${distance}`, () => probeAt(distance)),
      count,
      choice,
    );
  if (bracket === null) return null;
  const { probe, onSwitch } = closeBracket(probeAt, bracket);
  return { position: side === "lower" ? probe.distance : count - probe.distance, onSwitch };
}

/** Probes of the scans by side, held position and distance: searches that start alike share them. */
type ScannedProbes = Map<string, SideProbe | null>;

function remember(scanned: ScannedProbes, key: string, probe: () => SideProbe | null): SideProbe | null {
  let known = scanned.get(key);
  if (known === undefined) {
    known = probe();
    scanned.set(key, known);
  }
  return known;
}

function bracketNear(probeAt: ProbeAt, guess: number, count: number): Bracket | null {
  let reach = count / 400;
  for (let i = 0; i < 3; i++) {
    const before = probeAt(guess - reach);
    const after = probeAt(guess + reach);
    if (before !== null && after !== null && isBracket(before, after)) return [before, after];
    reach *= 3;
  }
  return null;
}

function bracketByScan(probeAt: ProbeAt, count: number, choice: RootChoice): Bracket | null {
  const first = 0.03 * count;
  const last = 0.62 * count;
  let found: Bracket | null = null;
  let previous: SideProbe | null = null;
  for (let i = 0; i <= SCAN_POINTS; i++) {
    const next: SideProbe | null = probeAt(first + ((last - first) * i) / SCAN_POINTS);
    if (next !== null && previous !== null && isBracket(previous, next)) {
      found = [previous, next];
      if (choice === "early") return found;
    }
    previous = next;
  }
  return found;
}
