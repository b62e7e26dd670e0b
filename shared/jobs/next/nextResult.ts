import type { DragComparison } from "../../engine/trust/compareDraws";
import type { ComparedCondition, RankedDesign } from "../compare/public";
import type { PossibleMeasurement } from "./nextBlockDocument";

/** A pair that the choice is between, as it stands before any further measurement. */
export interface OpenPair extends Pick<DragComparison, "probabilityLess" | "decided"> {
  readonly first: string;
  readonly second: string;
}

/** What one measurement would be worth. The keys are those of the JSON output; null where it could not be judged. */
export interface MeasurementWorth {
  readonly name: string;
  readonly kind: PossibleMeasurement["kind"];
  readonly designs: readonly string[];
  readonly speedMetresPerSecond: number | null;
  readonly reynolds: number | null;
  readonly standardUncertaintyPercent: number;
  readonly cost: number;
  /** Expected regret of the choice that is made after it, % of the least drag. */
  readonly regretAfterPercent: number | null;
  /** By how much that is less than without it. */
  readonly regretFallPercent: number | null;
  readonly regretFallPerCost: number | null;
  /** Probability that one design is then the best with a probability of 0.9 or more. */
  readonly decidesBestProbability: number | null;
  /** Probability that the order of each pair is then decided. */
  readonly decides: readonly { readonly first: string; readonly second: string; readonly probability: number }[];
  /** The outcome in one sentence. */
  readonly sentence: string;
  readonly problem: string | null;
}

/** What to test next. */
export interface NextResult {
  /** The condition that the choice is for. */
  readonly condition: ComparedCondition | null;
  /** All designs as they stand now. */
  readonly ranking: readonly RankedDesign[];
  /** The design with the least expected regret, to be chosen when nothing more is measured. */
  readonly choice: string | null;
  /** Expected regret of that choice, % of the least drag. */
  readonly regretPercent: number | null;
  readonly pairs: readonly OpenPair[];
  /** By fall of regret per cost, the largest first; those that could not be judged last. */
  readonly measurements: readonly MeasurementWorth[];
  readonly draws: number;
  readonly simulations: number;
  readonly seed: number;
  readonly problem: string | null;
}
