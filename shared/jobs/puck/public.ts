/** The face of the puck job: other jobs and the case take nothing else from it. */

export { coreMeridian } from "./body/coreShape";
export { type MassTarget, sizeCoreForMass } from "./body/coreSizing";
export { type FigureKey, figureCatalogue, figureKeys } from "./body/figureCatalogue";
export { frontalAreaEdgeOn } from "./body/frontalArea";
export { findMaterial, type Material } from "./body/materials";
export { type Meridian, piecePoints } from "./body/meridian";
export { edgeReach, grooveMeridian, turnedMeridian } from "./body/outerShape";
export { checkOuterShape } from "./body/outerShapeCheck";
export { puckCautions } from "./body/playCautions";
export {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  dimensionTable,
  type PuckDesign,
  withDimension,
} from "./body/puckDimension";
export { puckDocument } from "./body/puckDocument";
export { type PuckFigures, puckFigures, standardGravity } from "./body/puckFigures";
export type { PuckFace, PuckSpec, RimTexture } from "./body/puckSpec";
export { endRelief } from "./drag/endRelief";
export { type HeldPuck, type PuckAttitude, prepareHeldPuck, puckAttitudes } from "./drag/heldPuck";
export { dragByOrientation } from "./drag/orientationDrag";
export { type Orientation, orientations as attitudes } from "./drag/orientationIndex";
export { comparePucks } from "./drag/puckComparison";
export { type PuckFlow, preparePlan, solvePuckFlows } from "./drag/puckFlow";
export { type ConditionDrags, conditionDrags, meanIndex } from "./drag/puckIndex";
export { prepareStrip, profileSection } from "./drag/solvedSections";
export { type PuckSample, uncertainPuckDrag } from "./drag/uncertainPuckDrag";
export { puckAddedMass } from "./motion/addedMass";
export { puckBlock, solvedPuckFlows } from "./puckBlock";
export type { CasePuck, PuckCase, PuckStream } from "./puckCase";
export type { PuckApplicability, PuckComparison, PuckResult } from "./puckResult";
export { ownTolerances } from "./puckSteps";
export { judgePuck, type MakingTolerances, type PuckJudgement, type RuleVerdict } from "./rules/judgePuck";
export type { RuleSet } from "./rules/ruleSet";
export type { TradeoffDocument } from "./tradeoffDocument";
