import { spearmanRho } from "../../statistics/rankCorrelation";
import { sharedRanks } from "../../statistics/ranks";
import { mean } from "../../statistics/sample";
import { type BlockScores, blockRows } from "./blockScores";

/** How a player's order agrees with that of the others, and with the player's own at another time. */
export interface JudgeConsistency {
  readonly player: number;
  /** Spearman's rho with the mean ranks of all other players; null with fewer than 3 pucks or no difference to rank. */
  readonly agreementWithOthers: number | null;
  /** Pucks that both sides have. */
  readonly comparedPucks: number;
  /** Spearman's rho of first and second scores of the same pucks and activities; null without repeats. */
  readonly agreementWithSelf: number | null;
  readonly repeatedScores: number;
}

/**
 * Agreement of each player with the rest by rank correlation. Source: Spearman (1904), Am. J. Psychol. 15, 72-101; the
 * player is left out of the mean that it is compared with.
 * @param data larger is better, NaN where missing
 * @param repeated per player, pairs of first and second score
 */
export function judgeConsistency(
  data: BlockScores,
  repeated: readonly (readonly (readonly [number, number])[])[],
): JudgeConsistency[] {
  const rows = blockRows(data).map(centredRanks);
  return rows.map((own, player) => {
    const pairs: [number, number][] = [];
    for (let j = 0; j < data.treatmentCount; j++) {
      const others = rows.flatMap((row, i) => (i === player || Number.isNaN(row[j]) ? [] : [row[j]]));
      if (Number.isNaN(own[j]) || others.length === 0) continue;
      pairs.push([own[j], mean(others)]);
    }
    const twice = repeated[player] ?? [];
    return {
      player,
      agreementWithOthers: rankAgreement(pairs),
      comparedPucks: pairs.length,
      agreementWithSelf: rankAgreement(twice),
      repeatedScores: twice.length,
    };
  });
}

function rankAgreement(pairs: readonly (readonly [number, number])[]): number | null {
  if (pairs.length < 3) return null;
  const rounded = (side: 0 | 1) => sharedRanks(pairs.map((pair) => Number(pair[side].toPrecision(10))));
  const rho = spearmanRho(rounded(0), rounded(1));
  return Number.isFinite(rho) ? rho : null;
}

/** Ranks of the scores that are there, their mean being 0; higher is better. */
function centredRanks(row: readonly number[]): number[] {
  const places = row.flatMap((score, j) => (Number.isNaN(score) ? [] : [j]));
  const own = sharedRanks(places.map((j) => row[j]));
  const centred = new Array<number>(row.length).fill(Number.NaN);
  places.forEach((j, i) => {
    centred[j] = own[i] - (places.length + 1) / 2;
  });
  return centred;
}
