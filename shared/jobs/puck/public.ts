/** The face of the puck job: other jobs and the case take nothing else from it. */

export { coreMeridian } from "./coreShape";
export { type MassTarget, sizeCoreForMass } from "./coreSizing";
export { endRelief } from "./endRelief";
export { type FigureKey, figureCatalogue, figureKeys } from "./figureCatalogue";
export { frontalAreaEdgeOn } from "./frontalArea";
export { type HeldPuck, type PuckAttitude, prepareHeldPuck, puckAttitudes } from "./heldPuck";
export { type Meridian, piecePoints } from "./meridian";
export { edgeReach, grooveMeridian, turnedMeridian } from "./outerShape";
export { checkOuterShape } from "./outerShapeCheck";
export { puckCautions } from "./playCautions";
export { puckBlock } from "./puckBlock";
export type { CasePuck, PuckCase, PuckStream } from "./puckcase/puckCase";
export { comparePucks } from "./puckcase/puckComparison";
export { preparePlan, solvePuckFlows } from "./puckcase/puckFlow";
export { type ConditionDrags, conditionDrags, meanIndex } from "./puckcase/puckIndex";
export type { PuckApplicability, PuckComparison } from "./puckcase/puckResult";
export { ownTolerances } from "./puckcase/puckSteps";
export type { TradeoffDocument } from "./puckcase/tradeoffDocument";
export {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  dimensionTable,
  type PuckDesign,
  withDimension,
} from "./puckDimension";
export { puckDocument } from "./puckDocument";
export { type PuckFigures, puckFigures } from "./puckFigures";
export type { PuckFace, PuckSpec, RimTexture } from "./puckSpec";
export { judgePuck, type MakingTolerances, type PuckJudgement, type RuleVerdict } from "./rules/judgePuck";
export type { RuleSet } from "./rules/ruleSet";
export { prepareStrip, profileSection } from "./solvedSections";
