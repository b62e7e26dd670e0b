import type { RandomDraws } from "../../statistics/randomDraws";
import { type BlockScores, blockRanks } from "./blockScores";
import { exactFriedmanP } from "./exactFriedman";
import { friedmanTest } from "./friedman";
import { permutedBlocksP } from "./permutedBlocks";

/** Players up to whom all permutations are counted: of more there are too many ways for thousands of simulated trials. */
const mostCounted = 4;

/** Permutations of the first look, and of the closer looks where it leaves the decision open. */
const looks = [200, 1000, 4000];

/** Standard errors between p and the level at which a look is taken for decided; 1 in 15,000 is then wrong. */
const clearly = 4;

/**
 * Whether the ranking of complete scores finds a difference between the pucks: the decision of its analysis, by all
 * permutations of the scores of few players and by as many random ones as it takes for more.
 * @param level p up to which a difference counts as shown, above 0 and below 1
 */
export function isDifferenceShown(data: BlockScores, level: number, draws: RandomDraws): boolean {
  if (!friedmanTest(data).ok) return false;
  const exact = data.blockCount <= mostCounted ? exactFriedmanP(data) : null;
  if (exact !== null) return exact <= level;
  const ranks = blockRanks(data);
  // Of complete blocks the spread of the rank sums orders permutations as Friedman's statistic does.
  const spread = (sums: Readonly<Float64Array>) => sums.reduce((sum, each) => sum + each * each, 0);
  let p = 1;
  for (const count of looks) {
    p = permutedBlocksP(ranks, data.treatmentCount, spread, count, draws).pValue;
    if (Math.abs(p - level) > clearly * Math.sqrt((level * (1 - level)) / count) + 1 / count) break;
  }
  return p <= level;
}
