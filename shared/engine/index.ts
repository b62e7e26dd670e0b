/**
 * The engine for others: from a section and a stream to its steady states, their drag and how far to trust it.
 * SI units and radians throughout; ratios are on the section's extent across the stream. Expected failures are
 * {@link Result} values with a message to act on; calls that can only be mistakes throw a RangeError.
 *
 * This is the package's public list. Nothing inside the project imports it.
 *
 * @packageDocumentation
 */
export type { Problem, Result } from "../result";
export type { FlowCondition, Trip } from "./condition";
export type { FluidProperties, FluidSpec } from "./fluid/fluidSpec";
export { resolveFluid } from "./fluid/resolveFluid";
export type { Contour, ContourPoint } from "./geometry/contour";
export { buildContour } from "./geometry/sectionFamilies";
export type { SectionNodes } from "./geometry/sectionNodes";
export type {
  BevelledRectangleSpec,
  CircleSpec,
  DShapeSpec,
  EllipseSpec,
  FreeContourSpec,
  RoundedPolygonSpec,
  RoundedRectangleSpec,
  RoundedTriangleSpec,
  SectionFamily,
  SectionSpec,
  StadiumSpec,
  SuperellipseSpec,
} from "./geometry/sectionSpec";
export type { LayerMethodName } from "./layer/layerMethodName";
export { equivalentRoughness, type PatternEstimate } from "./pattern/equivalentRoughness";
export type { SurfacePattern } from "./pattern/surfacePattern";
export { type FlowPicture, flowPicture } from "./section/flowPicture";
export type { PlacedSection } from "./section/placedSection";
export { type PreparedShape, prepareShape } from "./section/prepareShape";
export type { Branch, ResultRow } from "./section/resultRow";
export { type SolvedSection, solveSection } from "./section/solveSection";
export { type SolvedStream, solveStreams } from "./section/solveStreams";
export type { Stream, StreamFluid, StreamTrip } from "./section/stream";
export type {
  ConditionOutcome,
  LayerProfile,
  Regime,
  SectionState,
  SideSolution,
  SideState,
  TransitionCause,
} from "./solution";
export type { Applicability } from "./trust/applicability";
export type { JudgedDragBand } from "./trust/judgedDragBand";
