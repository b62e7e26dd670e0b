import { traceDragCurve } from "../solve/dragCurve";
import { sectionPoint } from "../trust/errorPoint";
import { branchKnots, type NearOutcome } from "../trust/outcomesAround";
import { describeSection } from "../trust/sectionDescription";
import type { StudyStream } from "../trust/studyDraws";
import { studyPlace } from "../trust/studyPlace";
import type { PreparedShape } from "./prepareShape";
import type { SolvedStream } from "./solveStreams";
import { flowCondition, type Stream } from "./stream";

/** A section in one stream, ready for draws that it shares with others. */
export interface StudiedStream extends StudyStream {
  /** False where the engine was compared with nothing of the kind: its errors are then known by their spread alone. */
  readonly isChecked: boolean;
}

/**
 * What common draws need of a prepared section on the branch of a rising speed.
 * @param streams in rising order of Reynolds number, alike otherwise
 * @returns one for every stream; null where nothing converged
 */
export function studiedStreams(
  { section, referenceWidth }: Pick<PreparedShape, "section" | "referenceWidth">,
  streams: readonly Stream[],
): (StudiedStream | null)[] {
  const conditions = streams.map((stream) => flowCondition(stream, referenceWidth));
  const outcomes = traceDragCurve(section, conditions);
  return outcomes.map(({ states }, i) => {
    if (states.length === 0) return null;
    const { point, around, applicability } = studyPlace(section, conditions, outcomes, i);
    return {
      section: point,
      condition: conditions[i],
      knots: branchKnots(around, "rising"),
      isChecked: applicability !== "outside: do not rely on it",
    };
  });
}

/** The drag of a section along a whole curve in one stream, ready for draws at any of its speeds. */
export interface StudiedCurve extends Pick<StudiedStream, "section" | "knots"> {
  /** Where the curve's conditions were compared with published values: true for all of them or none. */
  readonly isChecked: boolean;
}

/**
 * What common draws need of a curve that is solved already.
 * @returns null where nothing converged
 */
export function studiedCurve(
  { section, referenceWidth }: Pick<PreparedShape, "section" | "referenceWidth">,
  solved: readonly SolvedStream[],
): StudiedCurve | null {
  const found = new Map<number, NearOutcome>();
  for (const near of solved.flatMap(({ around }) => around)) {
    if (near.outcome.states.length > 0) found.set(near.reynolds, near);
  }
  if (found.size === 0) return null;
  const around = [...found.values()].sort((a, b) => a.reynolds - b.reynolds);
  const description = describeSection(section.nodes, section.incidence, section.floor !== null);
  return {
    section: sectionPoint(description, section.nodes, referenceWidth),
    knots: branchKnots(around, "rising"),
    isChecked: solved.every(({ bands }) =>
      bands.every(({ applicability }) => applicability !== "outside: do not rely on it"),
    ),
  };
}
