import type { UncertainRange } from "../../statistics/uncertainRange";
import type { CostJob } from "../cost/public";
import type { DurabilityJob } from "../durability/public";
import type { MakingTolerances, Material } from "../puck/public";
import type { TrialCase } from "../trial/public";
import type { CriterionKey, CriterionSense } from "./criteria";

export interface ChoiceCriterion {
  readonly key: CriterionKey;
  readonly name: string;
  readonly sense: CriterionSense;
  /** Best value of sense "near"; null otherwise. */
  readonly target: number | null;
  /** Ends of the swing; null for those of the candidates. */
  readonly worst: number | null;
  readonly best: number | null;
  readonly scale: "linear" | "log";
  /** null where nothing is said of weights. */
  readonly swing: UncertainRange | null;
  /** m/s. */
  readonly speed: number;
  readonly batchSize: number;
  readonly impact: string;
}

/** The choice block, read and checked, with the jobs that its criteria rest on. */
export interface ChoiceJob {
  readonly candidates: readonly string[];
  readonly criteria: readonly ChoiceCriterion[];
  readonly draws: number;
  readonly seed: number;
  readonly cost: CostJob | null;
  readonly durability: DurabilityJob | null;
  readonly trial: TrialCase | null;
  readonly making: ChoiceMaking;
}

/** What pucks' own figures depend on as they are made and played. */
export interface ChoiceMaking {
  readonly tolerances: MakingTolerances;
  readonly sizes: "uniform" | "normal";
  readonly fluidDensity: number;
  /** m^2/s. */
  readonly kinematicViscosity: number;
  readonly userMaterials: readonly Material[];
  /** Shares of play by attitude; they add up to 1. */
  readonly shares: { readonly upright: number; readonly flat: number; readonly faceOn: number };
}
