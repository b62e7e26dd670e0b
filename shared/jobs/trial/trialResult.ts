import type { RankCorrelation } from "../../statistics/rankCorrelation";
import type { JudgeConsistency } from "./judgeConsistency";
import type { OrderEffectTest } from "./orderEffects";
import type { PairComparison } from "./pairComparisons";
import type { PowerPoint } from "./powerSimulation";
import type { ScoreScale } from "./trialSetup";

/** What a player trial yields. Plain data; pucks go by their blind codes until the trial is unblinded. */
export interface TrialResult {
  /** Names are null while the trial is blind. */
  readonly pucks: readonly { readonly code: string; readonly name: string | null }[];
  readonly isUnblinded: boolean;
  readonly players: readonly string[];
  readonly scale: ScoreScale;
  readonly plan: PlanResult;
  /** null without scores. */
  readonly scores: ScoreCounts | null;
  /** One per activity, then the overall one when there are several; empty without scores. */
  readonly rankings: readonly RankingResult[];
  readonly orderEffects: readonly OrderEffectResult[];
  readonly judges: readonly (JudgeConsistency & { readonly name: string })[];
  readonly dragPreference: DragPreference | null;
  readonly power: PowerResult | null;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

export interface PlanResult {
  readonly sessions: readonly PlannedSession[];
  readonly sequenceCount: number;
  readonly isBalanced: boolean;
  /** How even the plan is, in a sentence. */
  readonly sentence: string;
}

export interface PlannedSession {
  readonly player: string;
  readonly activity: string;
  readonly repeat: number;
  /** Blind codes in the order of play. */
  readonly codes: readonly string[];
}

export interface ScoreCounts {
  readonly scored: number;
  readonly wanted: number;
  readonly missing: number;
}

export interface BlockTestResult {
  readonly name: "Friedman" | "Skillings-Mack";
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly chiSquareP: number;
  /** Of Iman and Davenport; null for Skillings-Mack. */
  readonly fP: number | null;
  /** Counted over all permutations, or drawn. */
  readonly pValue: number;
  /** The same, allowing for all rankings of the trial (`claimFamily.ts`): what is held against the level. */
  readonly familyP: number;
  readonly pMethod: "exact" | "permuted";
  /** Permutations drawn and the Monte Carlo error of p; null for an exact one. */
  readonly permutations: number | null;
  readonly standardError: number | null;
}

export interface RankingResult {
  /** Name of the activity; null for the overall ranking. */
  readonly activity: string | null;
  readonly players: number;
  readonly completePlayers: number;
  readonly missingCells: number;
  /** null when the data allow none, with the reason in `problem`. */
  readonly test: BlockTestResult | null;
  /** Kendall's coefficient of concordance of the complete players; null with fewer than 2. */
  readonly kendallW: number | null;
  /** The most liked puck first. */
  readonly standings: readonly PuckStanding[];
  /** How often equals tie: nu / (2 + nu) of the comparisons. */
  readonly tieParameter: number | null;
  readonly pairs: readonly PairResult[];
  /** What is shown and what is not, in sentences. */
  readonly conclusions: readonly string[];
  readonly problem: string | null;
}

export interface PuckStanding {
  readonly code: string;
  readonly scored: number;
  /** 1 the expected; of players with missing cells put on the full range. */
  readonly meanRank: number | null;
  /** In scale units; null overall. */
  readonly medianScore: number | null;
  readonly strength: number | null;
  readonly strengthLow: number | null;
  readonly strengthHigh: number | null;
  /** Share of resampled panels in which it comes first. */
  readonly firstShare: number | null;
}

/** A comparison with the codes of its pucks in place of their indices. */
export interface PairResult extends Omit<PairComparison, "better" | "worse"> {
  readonly better: string;
  readonly worse: string;
  /** Holm's p allowing for all rankings of the trial and for the ranking's own test: what is held against the level. */
  readonly familyP: number;
  /** Least such p that so many players could give. */
  readonly smallestFamilyP: number;
  readonly isShown: boolean;
}

export interface OrderEffectResult extends OrderEffectTest {
  readonly effect: "position" | "carryOver";
  /** Position numbers, or codes of the puck before, in the order of `effects`. */
  readonly levels: readonly string[];
  readonly sentence: string;
}

export interface DragPreference {
  /** What the drags are of. */
  readonly meaning: string;
  /** By code; drag and mean rank. */
  readonly pucks: readonly { readonly code: string; readonly drag: number; readonly meanRank: number }[];
  /** Of drag against liking: below 0 when less drag is liked more. null when there are too few. */
  readonly spearman: RankCorrelation | null;
  readonly kendall: RankCorrelation | null;
  readonly sentences: readonly string[];
}

export interface PowerResult {
  readonly curve: readonly PowerPoint[];
  readonly simulations: number;
  readonly wantedPower: number;
  readonly fewestPlayers: number | null;
  readonly sentence: string;
}
