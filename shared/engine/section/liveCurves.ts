import type { PreparedShape } from "./prepareShape";
import { branchRow, branchRows, type ResultRow } from "./resultRow";
import { sketchStreams, solveStream, solveStreams } from "./solveStreams";
import { flowCondition, type Stream } from "./stream";

/**
 * Rows of a prepared section over Reynolds numbers, everything else as in a stream.
 * @param reynoldsNumbers  rising
 * @param withBands  bands take as long again as the curve itself
 */
export function liveDragCurve(
  shape: PreparedShape,
  stream: Stream,
  reynoldsNumbers: readonly number[],
  withBands = true,
): ResultRow[] {
  const { fluid } = stream;
  const condition = flowCondition(stream, shape.referenceWidth);
  const streams = reynoldsNumbers.map((reynolds): Stream => ({ ...condition, reynolds, fluid }));
  return solveStreams(shape, streams, withBands ? "all" : "none").flatMap((solved) => branchRows(shape, solved));
}

/** Points closer than this, as a ratio of Reynolds numbers, would say the same twice. */
const samePoint = 1.005;

/**
 * The same as a sketch, for a design on the move: a few points, the stream's own among them, judged from themselves; see
 * sketchStreams.
 * @param reynoldsNumbers  rising
 */
export function liveSketch(shape: PreparedShape, stream: Stream, reynoldsNumbers: readonly number[]): ResultRow[] {
  const { fluid } = stream;
  const condition = flowCondition(stream, shape.referenceWidth);
  const others = reynoldsNumbers.filter((one) => Math.abs(Math.log(one / condition.reynolds)) > Math.log(samePoint));
  const stations = [...others, condition.reynolds].sort((a, b) => a - b);
  const streams = stations.map((reynolds): Stream => ({ ...condition, reynolds, fluid }));
  return sketchStreams(shape, streams).flatMap((solved) => branchRows(shape, solved));
}

/**
 * Rows of the rising branch over relative roughness, everything else as in a stream. Without bands, which would take two
 * more solutions for every row.
 */
export function liveRoughnessCurve(shape: PreparedShape, stream: Stream, ratios: readonly number[]): ResultRow[] {
  const { fluid } = stream;
  const condition = flowCondition(stream, shape.referenceWidth);
  return ratios.map((sandGrainRoughnessRatio) => {
    const rougher: Stream = { ...condition, sandGrainRoughnessRatio, fluid };
    return branchRow(shape, solveStream(shape, rougher, "none"), "rising");
  });
}

/** The row of a stream on the rising branch. */
export function liveRow(shape: PreparedShape, stream: Stream): ResultRow {
  return branchRow(shape, solveStream(shape, stream), "rising");
}
