import type { Problem } from "../../result";
import type { FlowCondition } from "../condition";
import type { ConditionOutcome } from "../solution";
import { traceDragCurve } from "../solve/dragCurve";
import { judgeCurve } from "../trust/judgeCurve";
import type { JudgedDragBand } from "../trust/judgedDragBand";
import { judgeOutcome } from "../trust/judgeOutcome";
import type { DragState } from "../trust/nearbyStates";
import type { NearOutcome } from "../trust/outcomesAround";
import type { PreparedShape } from "./prepareShape";
import { flowCondition, type Stream } from "./stream";

/** One stream solved: all steady states, which of them a rising and a falling speed sit on, and how far to trust them. */
export interface SolvedStream {
  /** As it was asked for. */
  readonly stream: Stream;
  /** The same over the reference width. */
  readonly condition: FlowCondition;
  /** All steady states, and which of them a rising and a falling speed sit on. */
  readonly outcome: ConditionOutcome;
  /** 90 % bands of the drag coefficients of the outcome's states, in their order; empty where none were asked for. */
  readonly bands: readonly JudgedDragBand[];
  /** The states that the bands were drawn about: those of the outcome, and with bands those about a near drag crisis. */
  readonly nearby: readonly DragState[];
  /** The outcomes that these are of, rising in Reynolds number. */
  readonly around: readonly NearOutcome[];
}

/** Which streams get bands; a curve's bands take as long again as the curve itself. */
export type WantedBands = "all" | "last" | "none";

/**
 * Solves a prepared section over streams in rising order of Reynolds number, alike otherwise, and follows what a slowly
 * rising and a slowly falling speed would sit on.
 * @throws RangeError when the Reynolds numbers do not rise
 */
export function solveStreams(
  { section, referenceWidth }: Pick<PreparedShape, "section" | "referenceWidth">,
  streams: readonly Stream[],
  wanted: WantedBands = "all",
): SolvedStream[] {
  const conditions = streams.map((stream) => flowCondition(stream, referenceWidth));
  const outcomes = traceDragCurve(section, conditions);
  const last = streams.length - 1;
  return outcomes.map((outcome, i) => {
    const judged = wanted === "all" || (wanted === "last" && i === last);
    const trust = judged
      ? judgeOutcome(section, conditions, outcomes, i)
      : { bands: [], nearby: outcome.states, around: [{ reynolds: conditions[i].reynolds, outcome }] };
    return { stream: streams[i], condition: conditions[i], outcome, ...trust };
  });
}

/**
 * A sketch of a drag curve: the rising branch is judged from the points themselves, see judgeCurve.ts, so that it takes
 * no longer than the points.
 * @throws RangeError when the Reynolds numbers do not rise
 */
export function sketchStreams(
  { section, referenceWidth }: Pick<PreparedShape, "section" | "referenceWidth">,
  streams: readonly Stream[],
): SolvedStream[] {
  const conditions = streams.map((stream) => flowCondition(stream, referenceWidth));
  const outcomes = traceDragCurve(section, conditions);
  const judged = judgeCurve(section, conditions, outcomes);
  return outcomes.map((outcome, i) => {
    const bands: JudgedDragBand[] = [];
    const band = judged[i];
    if (band !== null && outcome.rising !== null) bands[outcome.rising] = band;
    const around = [{ reynolds: conditions[i].reynolds, outcome }];
    return { stream: streams[i], condition: conditions[i], outcome, bands, nearby: outcome.states, around };
  });
}

/** Solves a prepared section in one stream. */
export function solveStream(
  shape: Pick<PreparedShape, "section" | "referenceWidth">,
  stream: Stream,
  wanted: WantedBands = "all",
): SolvedStream {
  return solveStreams(shape, [stream], wanted)[0];
}

/** A stream on a section that could not be prepared, for a row that says why. */
export function unsolvedStream(stream: Stream, referenceWidth: number, problem: Problem): SolvedStream {
  const outcome = { states: [], rising: null, falling: null, problem };
  return { stream, condition: flowCondition(stream, referenceWidth), outcome, bands: [], nearby: [], around: [] };
}
