import type { DragComparison } from "../../engine/trust/compareDraws";
import type { Orientation } from "../puck/public";

/** One candidate against the baseline in one condition. The keys are those of the JSON output. Plain data. */
export interface Comparison {
  /** The candidate. */
  readonly first: string;
  /** The baseline. */
  readonly second: string;
  readonly condition: ComparedCondition;
  /** How many points of the case's own measurements the error model has learned from. */
  readonly measuredPointCount: number;
  /** 100 (first / second - 1), 5 % to 95 %, by the engine's errors; null where the two could not be compared. */
  readonly changePercent: DragComparison["changePercent"] | null;
  /** Probability that the first has less drag. */
  readonly probabilityLess: number | null;
  readonly decided: DragComparison["decided"] | null;
  /** All designs of the case in this condition, where there are three or more. */
  readonly ranking: readonly RankedDesign[] | null;
  readonly problem: string | null;
}

export interface ComparedCondition {
  /** What is compared: at one speed drag per span, at one Reynolds number the drag coefficient; of pucks the drag. */
  readonly compared: "drag per span" | "drag coefficient" | "drag";
  /** Of pucks: how they meet the water; "play" for the mean over attitudes and speeds by their shares. null of sections. */
  readonly attitude: Orientation | "play" | null;
  /** null where several conditions are taken together, and where it is not known. */
  readonly speedMetresPerSecond: number | null;
  /** null where the stream goes by speed, or several conditions are taken together. */
  readonly reynolds: number | null;
  readonly sandGrainRoughnessRatio: number | null;
  readonly sandGrainRoughnessMetres: number | null;
  readonly turbulencePercent: number | null;
  /** How many conditions are taken together, each as likely. */
  readonly conditionCount: number;
  /** Keys of what is not known and was drawn. */
  readonly unknown: readonly string[];
}

export interface RankedDesign {
  readonly name: string;
  /** Probability of the least drag. */
  readonly probabilityBest: number;
  /** Mean of 100 (own drag / least drag - 1). */
  readonly expectedRegretPercent: number;
}
