import { problem, type Result, success } from "../../result";

/** Outcomes of paired comparisons, possibly weighted. */
export interface PairCounts {
  readonly itemCount: number;
  /** wins[i * itemCount + j]: times that i was preferred to j, 0 or more. */
  readonly wins: Readonly<Float64Array>;
  /** ties[i * itemCount + j] = ties[j * itemCount + i]: times that neither was preferred. */
  readonly ties: Readonly<Float64Array>;
}

/** Strengths of a model of paired comparisons with ties. */
export interface PairStrengths {
  /** Above 0, adding up to 1, shape [itemCount]. */
  readonly strengths: readonly number[];
  /** How often equals tie: two items of equal strength tie with probability nu / (2 + nu). */
  readonly tieParameter: number;
  readonly iterations: number;
}

const mostIterations = 20_000;
const tolerance = 1e-11;

/**
 * Maximum likelihood of the model of Bradley and Terry with Davidson's ties: i is preferred to j, j to i, or neither, in
 * proportion to s_i, s_j and nu sqrt(s_i s_j). Solved by the MM algorithm: the likelihood never falls. Without ties it is
 * the model of Bradley and Terry. Sources: Bradley & Terry (1952), Biometrika 39, 324-345; Davidson (1970), J. Am. Stat.
 * Assoc. 65, 317-328, eq. 2.4; Hunter (2004), Ann. Stat. 32, 384-406.
 * @param pseudoComparisons wins and losses of each item against one more of average strength, 0 or more: above 0 every
 *   strength is finite even when an item always wins, and strengths are drawn a little together (Turner et al. (2020),
 *   Comput. Stat. 35, 1027-1057, use 0.5)
 * @returns a problem "not-compared" when an item has no win and no tie, or no loss and no tie, and nothing is added
 */
export function pairStrengths(counts: PairCounts, pseudoComparisons: number): Result<PairStrengths> {
  const { itemCount: n } = counts;
  if (counts.wins.length !== n * n || counts.ties.length !== n * n) {
    throw new RangeError(
      `wins and ties have ${counts.wins.length} and ${counts.ties.length} values; both need ${n * n}.`,
    );
  }
  if (!(pseudoComparisons >= 0))
    throw new RangeError(`pseudo-comparisons are ${pseudoComparisons}; they must be 0 or more.`);
  const { points, meetings, tieTotal, isLinked } = sufficient(counts, pseudoComparisons);
  if (!isLinked) {
    return problem("not-compared", "an item always wins, always loses or is never compared: its strength has no bound");
  }
  const size = n + 1;
  const s = new Float64Array(size).fill(1);
  if (pseudoComparisons === 0) s[n] = 0;
  let nu = tieTotal > 0 ? 1 : 0;
  let iterations = 0;
  for (let change = 1; change > tolerance && iterations < mostIterations; iterations++) {
    change = 0;
    for (let i = 0; i < size; i++) {
      if (!(s[i] > 0)) continue;
      let expected = 0;
      for (let j = 0; j < size; j++) {
        const met = meetings[i * size + j];
        if (met === 0) continue;
        const mixed = Math.sqrt(s[i] * s[j]);
        expected += (met * (1 + (nu / 2) * Math.sqrt(s[j] / s[i]))) / (s[i] + s[j] + nu * mixed);
      }
      const next = points[i] / expected;
      change = Math.max(change, Math.abs(next / s[i] - 1));
      s[i] = next;
    }
    if (tieTotal > 0) {
      let expected = 0;
      for (let i = 0; i < size; i++) {
        for (let j = 0; j < i; j++) {
          const mixed = Math.sqrt(s[i] * s[j]);
          if (meetings[i * size + j] > 0) expected += (meetings[i * size + j] * mixed) / (s[i] + s[j] + nu * mixed);
        }
      }
      const next = tieTotal / expected;
      change = Math.max(change, Math.abs(next / nu - 1));
      nu = next;
    }
  }
  const own = s.subarray(0, n);
  const sum = own.reduce((total, each) => total + each, 0);
  return success({ strengths: Array.from(own, (each) => each / sum), tieParameter: nu, iterations });
}

/** Points (wins and half the ties) of each item, the added one last, and how often each pair met. */
function sufficient({ itemCount: n, wins, ties }: PairCounts, added: number) {
  const size = n + 1;
  const points = new Float64Array(size);
  const meetings = new Float64Array(size * size);
  let tieTotal = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      if (i === j) continue;
      points[i] += wins[i * n + j] + ties[i * n + j] / 2;
      meetings[i * size + j] = wins[i * n + j] + wins[j * n + i] + ties[i * n + j];
      if (j < i) tieTotal += ties[i * n + j];
    }
    points[i] += added;
    points[n] += added;
    meetings[i * size + n] = 2 * added;
    meetings[n * size + i] = 2 * added;
  }
  // With something added, every item is linked to the added one both ways.
  return { points, meetings, tieTotal, isLinked: added > 0 || isStronglyLinked({ itemCount: n, wins, ties }) };
}

/** Whether a chain of wins or ties leads from every item to every other: Ford's condition (1957), Am. Math. Mon. 64, 28. */
function isStronglyLinked({ itemCount: n, wins, ties }: PairCounts): boolean {
  const reachesAll = (beats: (i: number, j: number) => boolean) => {
    const reached = new Set([0]);
    for (const i of reached) for (let j = 0; j < n; j++) if (j !== i && beats(i, j)) reached.add(j);
    return reached.size === n;
  };
  const beats = (i: number, j: number) => wins[i * n + j] + ties[i * n + j] > 0;
  return reachesAll(beats) && reachesAll((i, j) => beats(j, i));
}
