import type { PowerAssumption } from "./powerSimulation";
import type { TrialPlan } from "./trialPlan";
import type { TrialScore, TrialSetup } from "./trialSetup";

/** A player trial that has been read and checked. */
export interface TrialCase {
  readonly setup: TrialSetup;
  readonly plan: TrialPlan;
  readonly isUnblinded: boolean;
  /** null without scores. */
  readonly scores: readonly TrialScore[] | null;
  readonly drag: TrialDrag;
  readonly analysis: TrialAnalysis;
  /** null when the case does not ask for it. */
  readonly power: PowerStudy | null;
}

/** Drags to hold against the ranking. */
export interface TrialDrag {
  readonly meaning: string;
  /** One per puck; null where it is to be taken from the case's puck results of the same name, or is not known. */
  readonly values: readonly (number | null)[];
}

export interface TrialAnalysis {
  /** p below which a difference counts as shown. */
  readonly significanceLevel: number;
  readonly bootstrapSamples: number;
  readonly bandCoverage: number;
  readonly permutations: number;
}

export interface PowerStudy {
  readonly assumption: PowerAssumption;
  /** Rising. */
  readonly playerCounts: readonly number[];
  readonly simulations: number;
  readonly wantedPower: number;
}
