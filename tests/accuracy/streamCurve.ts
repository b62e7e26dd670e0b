import type { FlowCondition } from "../../shared/engine/condition";
import type { CalibratedConstants } from "../../shared/engine/constants/calibrated";
import type { ConditionOutcome, SectionState } from "../../shared/engine/solution";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import type { PublishedStream, SectionQuantity } from "../published/quantity";
import { sectionLabel, sectionNodesOf } from "./preparedSections";

/** A drag curve of a slowly rising speed in one stream. */
export interface StreamCurve {
  readonly section: PreparedSection;
  /** Rising in Reynolds number; the outcomes are theirs. */
  readonly conditions: readonly FlowCondition[];
  readonly outcomes: readonly ConditionOutcome[];
  readonly points: readonly CurvePoint[];
}

export interface CurvePoint {
  readonly reynolds: number;
  /** Null when the engine found no state there. */
  readonly state: SectionState | null;
  /** Largest magnitude of the lift coefficient among the one-sided states found there, whichever branch they are on. */
  readonly oneSidedLift: number | null;
  readonly reason: string | null;
}

/** Reynolds numbers per decade of the curves: fine enough for a critical Reynolds number to 3 %, or for memory alone. */
const finePerDecade = 40;
const coarsePerDecade = 8;
const lowestReynolds = 1e4;

/** Two quantities with the same key lie on one curve. */
export function streamKey(stream: PublishedStream): string {
  return `${sectionLabel(stream.section)} | ks/D ${stream.sandGrainRoughnessRatio} | Tu ${stream.turbulenceIntensity}`;
}

/** Reynolds numbers that the quantities of one stream need, rising; curves start at 1e4, so that hysteresis has its history. */
export function reynoldsNumbersFor(quantities: readonly SectionQuantity[]): number[] {
  const wanted = new Set<number>([lowestReynolds]);
  for (const quantity of quantities) {
    if ("reynolds" in quantity) addGrid(wanted, lowestReynolds, quantity.reynolds, coarsePerDecade);
    else {
      addGrid(wanted, lowestReynolds, quantity.reynoldsFrom, coarsePerDecade);
      addGrid(wanted, quantity.reynoldsFrom, quantity.reynoldsTo, finePerDecade);
    }
  }
  return [...wanted].sort((a, b) => a - b);
}

/** Adds both ends and the points of a fixed logarithmic grid between them, so that the grids of several quantities share points. */
function addGrid(wanted: Set<number>, from: number, to: number, perDecade: number): void {
  wanted.add(from);
  wanted.add(to);
  for (let i = Math.ceil(Math.log10(from) * perDecade); i <= Math.log10(to) * perDecade; i++) {
    const reynolds = Number((10 ** (i / perDecade)).toPrecision(5));
    if (reynolds > from && reynolds < to) wanted.add(reynolds);
  }
}

/** Runs the engine along a stream; a problem of the section itself is returned as text. */
export function traceStream(
  stream: PublishedStream,
  reynoldsNumbers: readonly number[],
  constants: CalibratedConstants,
): StreamCurve | string {
  const nodes = sectionNodesOf(stream.section);
  if (!nodes.ok) return nodes.problem.message;
  const section = prepareSection(
    nodes.value,
    0,
    constants,
    undefined,
    stream.section.shape === "circle with splitter plate",
  );
  if (!section.ok) return section.problem.message;
  const { sandGrainRoughnessRatio, turbulenceIntensity } = stream;
  const conditions = reynoldsNumbers.map((reynolds) => ({ reynolds, sandGrainRoughnessRatio, turbulenceIntensity }));
  const outcomes = traceDragCurve(section.value, conditions);
  return {
    section: section.value,
    conditions,
    outcomes,
    points: outcomes.map((outcome, i) => ({
      reynolds: reynoldsNumbers[i],
      state: outcome.rising === null ? null : outcome.states[outcome.rising],
      oneSidedLift: largestLift(outcome.states.filter(({ oneSided }) => oneSided)),
      reason: outcome.problem?.message ?? null,
    })),
  };
}

function largestLift(states: readonly SectionState[]): number | null {
  return states.length === 0 ? null : Math.max(...states.map(({ liftCoefficient }) => Math.abs(liftCoefficient)));
}
