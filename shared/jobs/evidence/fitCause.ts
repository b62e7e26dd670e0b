import { expandSweep } from "../../document/expandSweep";
import type { Cause } from "./causes";

/** How well one value of a setting fits: the sum of squared residuals over their combined uncertainty. */
export interface CauseTrial {
  readonly value: number;
  readonly misfit: number;
}

/** Where the setting fits best, among the values tried. */
export interface CauseFit {
  readonly value: number;
  readonly misfit: number;
  /** Values that fit about as well: misfit within 4 of the lowest (or within 4 times its mean per point, if that is larger). */
  readonly low: number;
  readonly high: number;
  readonly trials: readonly CauseTrial[];
}

/** Values laid out over the whole range, then twice between the neighbours of the best, then to find the range's ends. */
export const coarseCount = 17;
export const fineCount = 8;
const fineRounds = 2;
const endHalvings = 4;

/** Most values that a fit tries, for progress. */
export const mostTrials = coarseCount + 1 + fineRounds * fineCount + 2 * endHalvings;

/** A cause that leaves more than this share of the squares is not looked at closely. */
const worthwhile = 0.9;

/** Rise of the misfit at the edge of the range, about two standard uncertainties of one fitted value: k = 2, squared. */
const edgeRise = 4;

/**
 * Looks for the value of one setting that fits best, one trial per `next()`. The misfit jumps where a point changes its
 * regime, so the whole range is laid out before any part of it is refined.
 * @param misfitAt   sum of squares at a value
 * @param before     sum of squares at the stated value; where the layout takes off less than a tenth, nothing is refined
 * @param pointCount number of residuals in the sum, 1 or more
 */
export function* fitCause(
  cause: Pick<Cause, "from" | "to" | "stated" | "logarithmic">,
  misfitAt: (value: number) => number,
  before: number,
  pointCount: number,
): Generator<CauseTrial, CauseFit> {
  const trials: CauseTrial[] = [];
  const tried = (value: number): CauseTrial => {
    const trial = { value, misfit: misfitAt(value) };
    trials.push(trial);
    return trial;
  };
  const layout = between(cause, cause.from, cause.to, coarseCount);
  for (const value of [...layout, cause.stated]) yield tried(value);
  const isWorthwhile = around(trials)[1].misfit < worthwhile * before;
  for (let round = 0; isWorthwhile && round < fineRounds; round++) {
    const [low, , high] = around(trials);
    for (const value of between(cause, low, high, fineCount + 2).slice(1, -1)) yield tried(value);
  }
  const [, best] = around(trials);
  const rise = edgeRise * Math.max(1, best.misfit / Math.max(1, pointCount - 1));
  const isInside = (trial: CauseTrial) => trial.misfit <= best.misfit + rise;
  const ends: number[] = [];
  for (const step of [-1, 1]) {
    const sorted = [...trials].sort((a, b) => step * (a.value - b.value));
    const start = sorted.findIndex(({ value }) => value === best.value);
    const out = sorted.findIndex((trial, i) => i > start && !isInside(trial));
    if (out < 0) {
      ends.push(sorted[sorted.length - 1].value);
      continue;
    }
    let inside = sorted[out - 1].value;
    let outside = sorted[out].value;
    for (let i = 0; isWorthwhile && i < endHalvings; i++) {
      const trial = tried(between(cause, inside, outside, 3)[1]);
      yield trial;
      if (isInside(trial)) inside = trial.value;
      else outside = trial.value;
    }
    ends.push(inside);
  }
  return { value: best.value, misfit: best.misfit, low: ends[0], high: ends[1], trials: sortedByValue(trials) };
}

/** Values from one end to the other, both met exactly, by equal ratios or steps. */
function between({ logarithmic }: Pick<Cause, "logarithmic">, from: number, to: number, count: number): number[] {
  return expandSweep({ from, to, count, spacing: logarithmic ? "log" : "linear" });
}

/**
 * The best trial and the values of its neighbours. Where several fit equally well (between two points that change
 * regime) the middle one is taken.
 */
function around(trials: readonly CauseTrial[]): [number, CauseTrial, number] {
  const sorted = sortedByValue(trials);
  const lowest = Math.min(...sorted.map(({ misfit }) => misfit));
  const equal = sorted.flatMap(({ misfit }, i) => (misfit <= lowest * (1 + 1e-9) + 1e-12 ? [i] : []));
  const at = equal[equal.length >> 1];
  return [sorted[Math.max(0, at - 1)].value, sorted[at], sorted[Math.min(sorted.length - 1, at + 1)].value];
}

function sortedByValue(trials: readonly CauseTrial[]): CauseTrial[] {
  return [...trials].sort((a, b) => a.value - b.value);
}
