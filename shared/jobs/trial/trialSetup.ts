/** What a trial asks: pucks, players, activities and the scale of scores. Read, checked, all keys present. */
export interface TrialSetup {
  readonly pucks: readonly TrialPuck[];
  readonly players: readonly string[];
  readonly activities: readonly TrialActivity[];
  readonly scale: ScoreScale;
  /** Whole number; equal seeds give equal orders, codes and random permutations. */
  readonly seed: number;
  /** Times that each player scores each puck at each activity, 1 or more. */
  readonly repeats: number;
}

export interface TrialPuck {
  readonly name: string;
  /** Blind code, the only name that players see. */
  readonly code: string;
}

export interface TrialActivity {
  readonly name: string;
  /** Share in the overall ranking, above 0, on any scale. */
  readonly weight: number;
  /** What the player does and judges; may be empty. */
  readonly instruction: string;
}

/** An ordinal scale. */
export interface ScoreScale {
  readonly lowest: number;
  readonly highest: number;
  /** Scores are lowest, lowest + step, ... */
  readonly step: number;
  readonly question: string;
  readonly lowestMeans: string;
  readonly highestMeans: string;
  /** Whether a high score is a good one. */
  readonly isHigherBetter: boolean;
}

/** A score as it was given. */
export interface TrialScore {
  /** Indices into the setup's lists. */
  readonly player: number;
  readonly activity: number;
  readonly puck: number;
  /** 1 for the first time. */
  readonly repeat: number;
  /** 1 for the first puck of the session; null when not noted. */
  readonly position: number | null;
  /** null when missing. */
  readonly score: number | null;
  readonly comment: string | null;
}
