import type { DrawnBand } from "../../statistics/drawnBand";
import type { CriterionKey, CriterionSense } from "./criteria";

/** What a choice between pucks comes to. Plain data. */
export interface ChoiceResult {
  /** The most likely first one at the top. */
  readonly candidates: readonly ChoiceCandidate[];
  readonly criteria: readonly ChoiceCriterionResult[];
  /** What decides between the two likeliest; null where a criterion could not be had. */
  readonly decides: ChoiceDecision | null;
  /** In one sentence. */
  readonly sentence: string;
  readonly draws: number;
  readonly seed: number;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  /** Why there is no choice; null when there is one. */
  readonly problem: string | null;
}

export interface ChoiceCandidate {
  readonly name: string;
  /** Over all weights allowed and all draws. */
  readonly probabilityFirst: number;
  /** Of every rank, the first at 0. */
  readonly rankProbabilities: readonly number[];
  /** The weights under which it is first, in the order of the criteria; null where it never is. */
  readonly winningWeights: readonly DrawnBand[] | null;
  /** Probability to be first under the mean of those weights; null where it never is first. */
  readonly confidence: number | null;
  /** Candidates that are at least as good in every criterion by their means, with the probability that it is so. */
  readonly dominatedBy: readonly { readonly name: string; readonly probability: number }[];
  readonly criteria: readonly CandidateCriterion[];
}

/** A criterion of one candidate, in the criterion's unit. */
export interface CandidateCriterion extends DrawnBand {
  readonly criterion: string;
  readonly unit: string;
  /** On the scale of the swing, 0 the worst and 1 the best. */
  readonly value: DrawnBand;
}

export interface ChoiceCriterionResult {
  readonly key: CriterionKey;
  readonly name: string;
  readonly unit: string;
  readonly sense: CriterionSense;
  readonly target: number | null;
  readonly scale: "linear" | "log";
  readonly worst: number;
  readonly best: number;
  /** As drawn. */
  readonly weight: DrawnBand;
}

/** Between the two likeliest candidates. */
export interface ChoiceDecision {
  readonly first: string;
  readonly second: string;
  /** Probability that the first has more value than the second. */
  readonly probabilityBetter: number;
  readonly criteria: readonly DecidingCriterion[];
  readonly sentence: string;
}

export interface DecidingCriterion {
  readonly criterion: string;
  /** Weight times difference of values: above 0 it speaks for the first. */
  readonly contribution: DrawnBand;
  /** Part of the variance of the difference, per cent; below 0 it balances others. */
  readonly varianceSharePercent: number;
  /** Weight at which the two are equal by their means, the others in proportion; null where no weight does it. */
  readonly turningWeight: number | null;
}
