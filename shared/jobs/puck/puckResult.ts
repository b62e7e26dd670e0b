import type { DragBand, DragState } from "../../engine/trust/dragInterval";
import type { PuckFigures } from "./body/puckFigures";
import type { PuckSpec } from "./body/puckSpec";
import type { DragVerdictKind } from "./drag/dragVerdict";
import type { Orientation } from "./drag/orientationIndex";
import type { MotionResult } from "./motion/puckMotion";
import type { PuckRole } from "./puckCase";
import type { PuckJudgement } from "./rules/judgePuck";

/** How far a drag figure is backed by measurements of such a body. */
export type PuckApplicability =
  | "extrapolated: solved sections with end relief beyond its tables"
  | "solved sections with published end relief"
  | "solved flow along the axis, base pressure of discs and spheres"
  | "solved flow of the whole body, base pressure of spheres, discs and finite cylinders"
  | "extrapolated: solved flow of the whole body, base pressure of longer cylinders"
  | "solved flow of the whole body, separation lines assumed between edge-on and face-on"
  | "published tables, no flow solved"
  | "extrapolated: near a floor, the wake taken as quiet, no measurement of such a body found"
  | "plate theory between edge-on and face-on, no measurement found";

/** Drag of one puck in one attitude at one condition. */
export interface PuckDragRow {
  readonly turbulencePercent: number;
  readonly speedMetresPerSecond: number;
  /** "overFloor": lying flat at one of the swept gaps. */
  readonly orientation: Orientation | "tilted" | "overFloor";
  /** Angle between mid-plane and stream; null except for "tilted". */
  readonly tiltDegrees: number | null;
  /** Gap to the floor, 0 when the puck lies on it; null in open water. */
  readonly floorGapMetres: number | null;
  readonly reynoldsOnDiameter: number;
  /** Drag / dynamic pressure: independent of any choice of area. */
  readonly dragAreaSquareMetres: DragBand;
  readonly dragCoefficient: DragBand;
  /** The area that dragCoefficient is on. */
  readonly referenceArea: string;
  readonly referenceAreaSquareMetres: number;
  readonly dragNewtons: DragBand;
  /** The ways in which the flow may pass the puck, most likely first; empty where sections or tables stand in for it. */
  readonly states: readonly DragState[];
  /** Speed from which the rim's layer turns, m/s: the puck's drag crisis; null face-on, and where it does not turn. */
  readonly crisisSpeedMetresPerSecond: number | null;
  /** The same drag coefficient from sections in plan and profile, for comparison; null where they were not solved. */
  readonly twoSectionDragCoefficient: DragBand | null;
  /** Moment about the centre over dynamic pressure, m^3, turning the leading edge away; null except for "tilted". */
  readonly momentVolumeCubicMetres: DragBand | null;
  /** Across the stream, towards the side that the face looks away from; null except for "tilted". */
  readonly liftAreaSquareMetres: DragBand | null;
  readonly applicability: PuckApplicability;
}

/** Orientation-weighted drag over a baseline's, 1 being equal. */
export interface PuckIndex {
  /** null for the average over turbulences and index speeds. */
  readonly turbulencePercent: number | null;
  readonly speedMetresPerSecond: number | null;
  /** Errors of candidate and baseline taken as independent. */
  readonly index: DragBand;
  /** Errors taken as common to both. */
  readonly indexWithCommonError: DragBand;
  readonly changePercent: DragBand;
  readonly verdict: DragVerdictKind;
  readonly sentence: string;
}

export interface PuckComparison {
  readonly baseline: string;
  /** The average over turbulences and index speeds: what the puck is judged by. */
  readonly overall: PuckIndex;
  readonly beatsBaselineByMoreThanBand: boolean;
  readonly conditions: readonly PuckIndex[];
}

/** Everything that a case yields for one puck. What could not be had is null or empty, with the reason in `problem`. */
export interface PuckResult {
  readonly name: string;
  readonly role: PuckRole;
  readonly note: string | null;
  /** The puck as judged, its core sized when the case wants a mass. */
  readonly puck: PuckSpec;
  readonly sandGrainRoughnessMetres: number;
  readonly figures: PuckFigures;
  readonly rules: PuckJudgement | null;
  readonly drag: readonly PuckDragRow[];
  /** One per baseline before it in the case; empty for the first baseline. */
  readonly comparisons: readonly PuckComparison[];
  readonly motions: readonly MotionResult[];
  /** What was assumed or left out. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly problem: string | null;
}
