import { mean, quantileOfSorted } from "../../statistics/sample";
import { TRUST_NUMBERS } from "../constants/trustNumbers";

/** How one body's drag compares with another's, over common draws. */
export interface DragComparison {
  /** 100 (first / second - 1): 5 %, mean and 95 %. */
  readonly changePercent: { readonly low: number; readonly expected: number; readonly high: number };
  /** Probability that the first has less drag. */
  readonly probabilityLess: number;
  readonly decided: "less" | "more" | "not decided";
}

/** How the bodies of a study rank. */
export interface DragRanking {
  /** Probability of each to have the least drag; of equals, shared. */
  readonly probabilityBest: readonly number[];
  /** Mean of 100 (own drag / least drag - 1). */
  readonly expectedRegretPercent: readonly number[];
}

const DECIDED_PROBABILITY = TRUST_NUMBERS.decidedProbability.value;
const LOW_SHARE = TRUST_NUMBERS.lowShare.value;

/**
 * @param first, second ln Cd in the same draws, shape [draws]
 */
export function compareDraws(first: Readonly<Float64Array>, second: Readonly<Float64Array>): DragComparison {
  const changes = first.map((value, k) => 100 * Math.expm1(value - second[k]));
  let less = 0;
  for (const change of changes) less += change < 0 ? 1 : change === 0 ? 1 / 2 : 0;
  const probabilityLess = less / changes.length;
  const sorted = changes.slice().sort();
  return {
    changePercent: {
      low: quantileOfSorted(sorted, LOW_SHARE),
      expected: mean(changes),
      high: quantileOfSorted(sorted, 1 - LOW_SHARE),
    },
    probabilityLess,
    decided: decision(probabilityLess),
  };
}

export function decision(probabilityLess: number): DragComparison["decided"] {
  if (probabilityLess >= DECIDED_PROBABILITY) return "less";
  return 1 - probabilityLess >= DECIDED_PROBABILITY ? "more" : "not decided";
}

/** @param logDrag ln Cd of every body in the same draws, shape [bodies][draws] */
export function rankDraws(logDrag: readonly Readonly<Float64Array>[]): DragRanking {
  const count = logDrag[0]?.length ?? 0;
  const best = logDrag.map(() => 0);
  const regret = logDrag.map(() => 0);
  for (let k = 0; k < count; k++) {
    const least = Math.min(...logDrag.map((column) => column[k]));
    const ties = logDrag.filter((column) => column[k] === least).length;
    logDrag.forEach((column, i) => {
      if (column[k] === least) best[i] += 1 / ties;
      regret[i] += 100 * Math.expm1(column[k] - least);
    });
  }
  return {
    probabilityBest: best.map((n) => n / count),
    expectedRegretPercent: regret.map((sum) => sum / count),
  };
}
