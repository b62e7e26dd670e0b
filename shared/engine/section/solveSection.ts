import { type Result, success } from "../../result";
import type { SectionState } from "../solution";
import type { JudgedDragBand } from "../trust/judgedDragBand";
import type { PlacedSection } from "./placedSection";
import { type PreparedShape, prepareShape } from "./prepareShape";
import { branchRow, type ResultRow } from "./resultRow";
import { solveStream } from "./solveStreams";
import type { Stream } from "./stream";

/** A section solved in one stream. */
export interface SolvedSection {
  /** For more streams: solveStreams does not prepare it again. */
  readonly shape: PreparedShape;
  /** All steady states, from early to late separation; a slowly rising speed sits on the first. */
  readonly states: readonly SectionState[];
  /** How far the drag coefficient of the first state can be trusted; null when nothing converged. */
  readonly band: JudgedDragBand | null;
  /** The first state in the keys of a result file; its `problem` says why when nothing converged. */
  readonly row: ResultRow;
}

/**
 * From a section and a stream to its steady states, the 90 % band of its drag and its row in results: prepareShape and
 * solveStreams in one go.
 * @returns a problem whose field is the dimension that caused it when the section cannot be built or prepared
 */
export function solveSection(placed: PlacedSection, stream: Stream): Result<SolvedSection> {
  const shape = prepareShape(placed, stream);
  if (!shape.ok) return shape;
  const solved = solveStream(shape.value, stream);
  return success({
    shape: shape.value,
    states: solved.outcome.states,
    band: solved.bands[0] ?? null,
    row: branchRow(shape.value, solved, "rising"),
  });
}
