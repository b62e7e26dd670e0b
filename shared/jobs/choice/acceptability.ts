/**
 * Stochastic multicriteria acceptability analysis: which share of weights and draws makes each candidate the best, under
 * an additive value. Sources: Lahdelma, Hokkanen & Salminen (1998), Eur. J. Oper. Res. 106, 137-143; Lahdelma & Salminen
 * (2001), Oper. Res. 49, 444-454 (ranks).
 */
export interface Acceptability {
  /** Share of draws in which a candidate has a rank, 0 the first; of equals, shared. Shape [candidates][candidates]. */
  readonly rankShares: readonly (readonly number[])[];
  /** Mean of the weights under which a candidate is first, shape [candidates][criteria]; null where it never is. */
  readonly centralWeights: readonly (readonly number[] | null)[];
  /** Share of draws in which it is first under its central weights; null where it never is first. */
  readonly confidence: readonly (number | null)[];
  /** Share of draws in which one candidate has more value than another, equals shared. Shape [candidates][candidates]. */
  readonly pairwise: readonly (readonly number[])[];
  /** Weights of each criterion in the draws that a candidate is first in, shape [candidates][criteria][n]. */
  readonly winningWeights: readonly (readonly Float64Array[])[];
}

/**
 * @param values  partial values in every draw, more is better, shape [candidates][criteria][draws]
 * @param weights of the criteria in every draw, adding up to 1, shape [criteria][draws]
 */
export function acceptability(
  values: readonly (readonly Float64Array[])[],
  weights: readonly Float64Array[],
): Acceptability {
  const count = values.length;
  const draws = weights[0]?.length ?? 0;
  const rankShares = values.map(() => new Array<number>(count).fill(0));
  const pairwise = values.map(() => new Array<number>(count).fill(0));
  const winningDraws: number[][] = values.map(() => []);
  const totals = new Float64Array(count);
  for (let k = 0; k < draws; k++) {
    for (let i = 0; i < count; i++) {
      totals[i] = 0;
      for (let j = 0; j < weights.length; j++) totals[i] += weights[j][k] * values[i][j][k];
    }
    for (let i = 0; i < count; i++) {
      let better = 0;
      let equal = 0;
      for (let other = 0; other < count; other++) {
        if (other === i) continue;
        if (totals[other] > totals[i]) better++;
        else if (totals[other] === totals[i]) equal++;
        pairwise[i][other] += totals[i] > totals[other] ? 1 : totals[i] === totals[other] ? 1 / 2 : 0;
      }
      for (let rank = better; rank <= better + equal; rank++) rankShares[i][rank] += 1 / (equal + 1);
      if (better === 0) winningDraws[i].push(k);
    }
  }
  for (const counts of [...rankShares, ...pairwise]) {
    for (let j = 0; j < counts.length; j++) counts[j] /= draws;
  }
  const winningWeights = winningDraws.map((own) => weights.map((column) => Float64Array.from(own, (k) => column[k])));
  const centralWeights = winningWeights.map((own) => (own[0].length === 0 ? null : own.map(meanOf)));
  return {
    rankShares,
    pairwise,
    winningWeights,
    centralWeights,
    confidence: centralWeights.map((central, i) => (central === null ? null : firstShare(values, central, i))),
  };
}

function meanOf(column: Float64Array): number {
  return column.reduce((sum, value) => sum + value, 0) / column.length;
}

/** Share of draws in which a candidate is first under fixed weights; of equals, shared. */
function firstShare(
  values: readonly (readonly Float64Array[])[],
  weights: readonly number[],
  candidate: number,
): number {
  const draws = values[0][0].length;
  const total = (i: number, k: number) => weights.reduce((sum, weight, j) => sum + weight * values[i][j][k], 0);
  let first = 0;
  for (let k = 0; k < draws; k++) {
    const own = total(candidate, k);
    let equal = 1;
    let isFirst = true;
    for (let i = 0; i < values.length && isFirst; i++) {
      if (i === candidate) continue;
      const other = total(i, k);
      if (other > own) isFirst = false;
      if (other === own) equal++;
    }
    if (isFirst) first += 1 / equal;
  }
  return first / draws;
}
