import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import type { DragBand } from "../../engine/trust/dragInterval";
import type { MassTarget } from "./body/coreSizing";
import type { PuckFigures, PuckSetting } from "./body/puckFigures";
import type { PuckSpec } from "./body/puckSpec";
import type { OrientationShares } from "./drag/orientationIndex";
import type { MotionDocument } from "./motionDocument";
import type { PuckBlockDocument } from "./puckBlockDocument";
import type { MadeSampling, MakingTolerances } from "./rules/judgePuck";
import type { RuleSet } from "./rules/ruleSet";
import type { TradeoffDocument } from "./tradeoffDocument";

export type PuckRole = "baseline" | "candidate";

/** A puck of a case, its core sized when the case wants a mass. */
export interface CasePuck {
  readonly role: PuckRole;
  readonly spec: PuckSpec;
  readonly figures: PuckFigures;
  /** Equivalent sand-grain roughness of its faces and of a plain rim, m. */
  readonly sandGrainRoughness: number;
  readonly note: string | null;
}

/** The stream in which pucks are judged, and how finely their sections are solved. */
export interface PuckStream {
  readonly fluid: FluidProperties;
  /** Speeds at which results are given, m/s, rising. */
  readonly speeds: readonly number[];
  /** Speeds at which sections are solved, m/s, rising: those of the results, and slower ones for motions. */
  readonly solvedSpeeds: readonly number[];
  /** Fractions. */
  readonly turbulenceIntensities: readonly number[];
  readonly panelCount: number;
  readonly chordRatios: readonly number[];
  /** Relative error of a solved section's drag; null for the bands by the engine's errors against published values. */
  readonly sectionError: number | null;
}

/** The conditions of play, in SI units and radians. */
export interface PuckPlay {
  readonly shares: OrientationShares;
  readonly indexSpeeds: readonly number[];
  /** Gap to the floor under a puck that lies flat, m, 0 when it lies on the floor; null in open water. */
  readonly flatGap: number | null;
  /** Further gaps to report, m, rising. */
  readonly sweptGaps: readonly number[];
  /** rad. */
  readonly tilts: readonly number[];
  readonly friction: DragBand;
}

/** The puck block of a case, read and checked. */
export interface PuckCase {
  /** Baselines first. */
  readonly pucks: readonly CasePuck[];
  readonly setting: PuckSetting;
  readonly stream: PuckStream;
  readonly play: PuckPlay;
  readonly rules: RuleSet | null;
  /** The path of a rules file that was not put in place of it; null otherwise. */
  readonly unreadRules: string | null;
  readonly tolerances: MakingTolerances;
  readonly sampling: MadeSampling | null;
  readonly massTarget: MassTarget | null;
  readonly motions: readonly MotionDocument[];
  readonly tradeoff: TradeoffDocument | null;
  readonly handoff: NonNullable<PuckBlockDocument["handoff"]>;
}
