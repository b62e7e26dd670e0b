import { traceDragCurve } from "../solve/dragCurve";
import type { SectionPoint } from "../trust/errorPoint";
import { branchKnots } from "../trust/outcomesAround";
import type { StudyStream } from "../trust/studyDraws";
import { studyPlace } from "../trust/studyPlace";
import type { PreparedShape } from "./prepareShape";
import { flowCondition, type Stream } from "./stream";

/** A section in one stream, ready for draws that it shares with others. */
export interface StudiedStream extends StudyStream {
  readonly section: SectionPoint;
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
