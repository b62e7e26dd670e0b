import type { RandomDraws } from "../tunnel/randomDraws";
import { type PermutedP, permutedP, shuffleInPlace } from "./permutedBlocks";
import { fTail } from "./tailProbability";

/** A score as it was given in a session: one block is one player at one activity, scored puck after puck. */
export interface SessionScore {
  readonly block: number;
  /** The puck; where pucks may rank differently at each activity, the puck at this activity. */
  readonly treatment: number;
  /** 0 for the first puck of the session. */
  readonly position: number;
  /** The puck just before, 0 to puckCount - 1; null for the first one, or when that is not known. */
  readonly before: number | null;
  readonly score: number;
}

/** Test of one effect in the analysis of variance of a cross-over trial. */
export interface OrderEffectTest {
  readonly fStatistic: number;
  readonly degreesOfFreedom: number;
  readonly residualDegreesOfFreedom: number;
  /** By the F distribution: holds for normal errors. */
  readonly fP: number;
  /** By permutation of residuals within sessions. */
  readonly permuted: PermutedP;
  /** Least-squares estimate of each level in score units, the mean of all levels being 0; by position or by puck before. */
  readonly effects: readonly number[];
}

export interface OrderEffects {
  /** null when the plan leaves too few scores to tell it from the pucks themselves. */
  readonly position: OrderEffectTest | null;
  readonly carryOver: OrderEffectTest | null;
}

/**
 * Position and first-order carry-over effects: score = session + puck + position + puck before + error, each effect
 * tested over all others by the extra sum of squares. Ordinal scores are taken as numbers here, so p comes from
 * permuting the residuals of the reduced model within sessions. Sources: Jones & Kenward (2014), Design and Analysis of
 * Cross-Over Trials, 3rd ed., ch. 5 (model); Freedman & Lane (1983), J. Bus. Econ. Stat. 1, 292-298 (permutation).
 * @param permutations 1 or more
 */
export function orderEffects(
  scores: readonly SessionScore[],
  puckCount: number,
  permutations: number,
  draws: RandomDraws,
): OrderEffects {
  const blocks = [...new Set(scores.map(({ block }) => block))];
  const positions = scores.reduce((most, { position }) => Math.max(most, position + 1), 0);
  const treatments = scores.reduce((most, { treatment }) => Math.max(most, treatment + 1), 0);
  const session = blocks.map((block) => scores.map((one) => (one.block === block ? 1 : 0)));
  const puck = levels(scores, treatments, ({ treatment }) => treatment);
  const position = levels(scores, positions, (one) => one.position);
  const before = levels(scores, puckCount, (one) => one.before);
  const y = scores.map(({ score }) => score);
  const places = blocks.map((block) => scores.flatMap((one, i) => (one.block === block ? [i] : [])));
  return {
    position: testEffect(y, [...session, ...puck, ...before], position, places, permutations, draws),
    carryOver: testEffect(y, [...session, ...puck, ...position], before, places, permutations, draws),
  };
}

function levels(
  scores: readonly SessionScore[],
  count: number,
  levelOf: (score: SessionScore) => number | null,
): number[][] {
  return Array.from({ length: count }, (_, level) => scores.map((one) => (levelOf(one) === level ? 1 : 0)));
}

function testEffect(
  y: readonly number[],
  others: readonly (readonly number[])[],
  tested: readonly (readonly number[])[],
  places: readonly (readonly number[])[],
  permutations: number,
  draws: RandomDraws,
): OrderEffectTest | null {
  const reduced = orthonormalBasis(others, []);
  const extra = orthonormalBasis(tested, reduced);
  const residualDegrees = y.length - reduced.length - extra.length;
  if (extra.length === 0 || residualDegrees < 1) return null;
  const scale = extra.length / residualDegrees;
  const fOf = (values: readonly number[]) => {
    const rest = residuals(values, reduced);
    const explained = extra.reduce((sum, column) => sum + dot(column, rest) ** 2, 0);
    const error = dot(rest, rest) - explained;
    // Noise of rounding counts as nothing.
    if (!(explained > 1e-12 * dot(values, values))) return 0;
    return error > 1e-12 * explained ? explained / error / scale : Number.POSITIVE_INFINITY;
  };
  const fStatistic = fOf(y);
  const rest = residuals(y, reduced);
  const fitted = y.map((value, i) => value - rest[i]);
  let asFar = 0;
  for (let m = 0; m < permutations; m++) {
    const shuffled = [...rest];
    for (const own of places) shuffleInPlace(shuffled, own, draws);
    if (fOf(fitted.map((value, i) => value + shuffled[i])) >= fStatistic * (1 - 1e-9)) asFar++;
  }
  return {
    fStatistic,
    degreesOfFreedom: extra.length,
    residualDegreesOfFreedom: residualDegrees,
    fP: fTail(fStatistic, extra.length, residualDegrees),
    permuted: permutedP(asFar, permutations),
    effects: levelEffects(tested, reduced, rest),
  };
}

/**
 * Least-squares effects of the levels: those of least norm, moved to a mean of 0. Solved by conjugate gradients on the
 * normal equations, which give the solution of least norm (Hestenes & Stiefel (1952)).
 */
function levelEffects(
  tested: readonly (readonly number[])[],
  reduced: readonly (readonly number[])[],
  rest: readonly number[],
): number[] {
  const columns = tested.map((column) => residuals(column, reduced));
  const effects = new Array<number>(columns.length).fill(0);
  let error = columns.map((column) => dot(column, rest));
  let direction = [...error];
  let size = dot(error, error);
  const small = 1e-20 * size;
  for (let i = 0; i < 4 * columns.length && size > small; i++) {
    const step = columns.reduce<number[]>(
      (sum, column, j) => sum.map((value, row) => value + direction[j] * column[row]),
      new Array<number>(rest.length).fill(0),
    );
    const length = size / dot(step, step);
    for (let j = 0; j < effects.length; j++) effects[j] += length * direction[j];
    error = error.map((value, j) => value - length * dot(columns[j], step));
    const next = dot(error, error);
    direction = direction.map((value, j) => error[j] + (next / size) * value);
    size = next;
  }
  const mean = effects.reduce((sum, effect) => sum + effect, 0) / effects.length;
  return effects.map((effect) => effect - mean);
}

/** Columns made orthonormal to each other and to a basis; those that add nothing are left out. Modified Gram-Schmidt, twice. */
function orthonormalBasis(columns: readonly (readonly number[])[], basis: readonly (readonly number[])[]): number[][] {
  const found: number[][] = [];
  for (const column of columns) {
    const length = Math.sqrt(dot(column, column));
    const all = [...basis, ...found];
    const rest = residuals(residuals(column, all), all);
    const own = Math.sqrt(dot(rest, rest));
    if (own > 1e-8 * length) found.push(rest.map((value) => value / own));
  }
  return found;
}

function residuals(values: readonly number[], basis: readonly (readonly number[])[]): number[] {
  const rest = [...values];
  for (const column of basis) {
    const share = dot(column, rest);
    for (let i = 0; i < rest.length; i++) rest[i] -= share * column[i];
  }
  return rest;
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
