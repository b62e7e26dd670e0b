import { type PermutedP, permutedP } from "../../statistics/permutedP";
import type { RandomDraws } from "../../statistics/randomDraws";
import { mean } from "../../statistics/sample";
import { shuffleInPlace } from "../../statistics/shuffle";
import { fTail } from "../../statistics/tailProbability";

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

/** Multiplications of a permutation test above which fewer permutations are drawn; a second or two. */
const mostProducts = 4e8;

/**
 * Position and first-order carry-over effects: score = session + puck + position + puck before + error, each effect
 * tested over all others by the extra sum of squares. Ordinal scores are taken as numbers here, so p comes from
 * permuting the residuals of the reduced model within sessions. Sources: Jones & Kenward (2014), Design and Analysis of
 * Cross-Over Trials, 3rd ed., ch. 5 (model); Freedman & Lane (1983), J. Bus. Econ. Stat. 1, 292-298 (permutation).
 * @param permutations 1 or more; a very large trial gets fewer, the result says how many
 */
export function orderEffects(
  scores: readonly SessionScore[],
  puckCount: number,
  permutations: number,
  draws: RandomDraws,
): OrderEffects {
  const places = new Map<number, number[]>();
  scores.forEach(({ block }, i) => {
    const own = places.get(block);
    if (own === undefined) places.set(block, [i]);
    else own.push(i);
  });
  const sessions = [...places.values()];
  const positions = scores.reduce((most, { position }) => Math.max(most, position + 1), 0);
  const treatments = scores.reduce((most, { treatment }) => Math.max(most, treatment + 1), 0);
  const puck = levels(scores, treatments, ({ treatment }) => treatment, sessions);
  const position = levels(scores, positions, (one) => one.position, sessions);
  const before = levels(scores, puckCount, (one) => one.before, sessions);
  const y = withoutMeans(
    scores.map(({ score }) => score),
    sessions,
  );
  return {
    position: testEffect(y, [...puck, ...before], position, sessions, permutations, draws),
    carryOver: testEffect(y, [...puck, ...position], before, sessions, permutations, draws),
  };
}

/** One column per level, 1 where a score has it, less the mean of the session: that takes out the session's own level. */
function levels(
  scores: readonly SessionScore[],
  count: number,
  levelOf: (score: SessionScore) => number | null,
  sessions: readonly (readonly number[])[],
): number[][] {
  return Array.from({ length: count }, (_, level) =>
    withoutMeans(
      scores.map((one) => (levelOf(one) === level ? 1 : 0)),
      sessions,
    ),
  );
}

function withoutMeans(values: readonly number[], sessions: readonly (readonly number[])[]): number[] {
  const rest = [...values];
  for (const own of sessions) {
    const level = mean(own.map((i) => values[i]));
    for (const i of own) rest[i] -= level;
  }
  return rest;
}

/** @param y without the means of the sessions, as all columns are */
function testEffect(
  y: readonly number[],
  others: readonly (readonly number[])[],
  tested: readonly (readonly number[])[],
  sessions: readonly (readonly number[])[],
  permutations: number,
  draws: RandomDraws,
): OrderEffectTest | null {
  const reduced = orthonormalBasis(others, []);
  const extra = orthonormalBasis(tested, reduced);
  const residualDegrees = y.length - sessions.length - reduced.length - extra.length;
  if (extra.length === 0 || residualDegrees < 1) return null;
  const scale = extra.length / residualDegrees;
  const total = dot(y, y);
  const fOf = (rest: readonly number[]) => {
    const explained = extra.reduce((sum, column) => sum + dot(column, rest) ** 2, 0);
    const error = dot(rest, rest) - explained;
    // Noise of rounding counts as nothing.
    if (!(explained > 1e-12 * total)) return 0;
    return error > 1e-12 * explained ? explained / error / scale : Number.POSITIVE_INFINITY;
  };
  const rest = residuals(y, reduced);
  const fStatistic = fOf(rest);
  const products = y.length * (2 * reduced.length + extra.length);
  const drawn = Math.max(99, Math.min(permutations, Math.floor(mostProducts / products)));
  let asFar = 0;
  for (let m = 0; m < drawn; m++) {
    const shuffled = [...rest];
    for (const own of sessions) shuffleInPlace(shuffled, own, draws);
    // What the reduced model fits would be projected out again, so that it need not be added first.
    if (fOf(residuals(shuffled, reduced)) >= fStatistic * (1 - 1e-9)) asFar++;
  }
  return {
    fStatistic,
    degreesOfFreedom: extra.length,
    residualDegreesOfFreedom: residualDegrees,
    fP: fTail(fStatistic, extra.length, residualDegrees),
    permuted: permutedP(asFar, drawn),
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
  const level = mean(effects);
  return effects.map((effect) => effect - level);
}

/** Columns made orthonormal to each other and to a basis; those that add nothing are left out. Modified Gram-Schmidt, twice. */
function orthonormalBasis(columns: readonly (readonly number[])[], basis: readonly (readonly number[])[]): number[][] {
  const found: number[][] = [];
  for (const column of columns) {
    const length = Math.sqrt(dot(column, column));
    if (!(length > 1e-8)) continue;
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
