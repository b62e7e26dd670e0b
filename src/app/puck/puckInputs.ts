import type { FluidSpec } from "../../../shared/engine/fluid/fluidSpec";
import type { MassTarget } from "../../../shared/jobs/puck/body/coreSizing";
import type { Material } from "../../../shared/jobs/puck/body/materials";
import type { DimensionKey } from "../../../shared/jobs/puck/body/puckDimension";
import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";
import type { OrientationShares } from "../../../shared/jobs/puck/drag/orientationIndex";
import type { MadeSampling, MakingTolerances } from "../../../shared/jobs/puck/rules/judgePuck";
import type { RuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import type { PuckGoal } from "../../../shared/jobs/tradeoff/puckEvaluation";
import type { ChooseInputs } from "./chooseInputs";
import type { MotionInput } from "./motionInputs";

/** A puck with its finish. */
export interface PuckMake {
  readonly spec: PuckSpec;
  /** Equivalent sand-grain roughness of the faces and of a plain rim, m. */
  readonly sandGrainRoughness: number;
}

/** The water that pucks meet and how they are used in it. */
export interface PlayInputs {
  readonly fluid: FluidSpec;
  /** Speeds at which drag is given, m/s, rising. */
  readonly speeds: readonly number[];
  /** Fractions, rising; the index is averaged over them as well. */
  readonly turbulenceIntensities: readonly number[];
  readonly shares: OrientationShares;
  /** Where a puck lies flat. */
  readonly flatPlace: "floor" | "openWater";
  /** Gap between the floor and a puck that lies flat, and further gaps to report, m, rising. */
  readonly flatGap: number;
  readonly sweptGaps: readonly number[];
  /** Speeds over which the index is averaged, m/s; null for all of them. */
  readonly indexSpeeds: readonly number[] | null;
  /** Between edge-on (0) and face-on (pi/2), rad, rising. */
  readonly tilts: readonly number[];
  /** Sliding friction / weight in water, and half the width of its band. */
  readonly frictionCoefficient: number;
  readonly frictionSpread: number;
  /** Relative error of a solved section's drag; null for the bands by the engine's errors against published values. */
  readonly sectionError: number | null;
  /** Panels of each section, and chords / diameter at which the profile is solved; null for the engine's own. */
  readonly panelCount: number | null;
  readonly chordRatios: readonly number[] | null;
}

export interface FreeDimension {
  readonly key: DimensionKey;
  /** m. */
  readonly lowest: number;
  readonly highest: number;
}

export type SearchMethod = "paretoSearch" | "latinHypercube" | "sweep";

export interface TradeoffInputs {
  readonly variables: readonly FreeDimension[];
  readonly goals: readonly PuckGoal[];
  readonly method: SearchMethod;
  readonly populationSize: number;
  readonly generations: number;
  /** Points of a Latin hypercube. */
  readonly points: number;
  /** Values of each free dimension in a sweep. */
  readonly levels: number;
  readonly seed: number;
  /** How far each dimension is taken to be made wrong, m. */
  readonly madeOff: number;
}

/** Everything that a person enters in the puck view. SI units and radians; plain data, so that it can be kept. */
export interface PuckInputs {
  readonly title: string;
  readonly candidate: PuckMake;
  readonly baseline: PuckMake;
  readonly userMaterials: readonly Material[];
  readonly play: PlayInputs;
  readonly rules: RuleSet | null;
  readonly tolerances: MakingTolerances;
  readonly sampling: MadeSampling;
  readonly massTarget: MassTarget;
  readonly motions: readonly MotionInput[];
  readonly tradeoff: TradeoffInputs;
  /** What a choice between the pucks rests on. */
  readonly choose: ChooseInputs;
}
