import { sharedRanks } from "../../statistics/ranks";

/** Scores of a block design: every block (a player) scores the treatments (the pucks) against each other. */
export interface BlockScores {
  readonly blockCount: number;
  readonly treatmentCount: number;
  /** Shape [blockCount * treatmentCount], block by block; larger is better, NaN where a score is missing. */
  readonly scores: Readonly<Float64Array>;
}

/**
 * Ranks within each block, 1 the expected; equal scores share the mean of their ranks.
 * @returns shape [blockCount * treatmentCount], NaN where the score is missing
 * @throws RangeError when the array does not have blockCount x treatmentCount values
 */
export function blockRanks({ blockCount, treatmentCount, scores }: BlockScores): Float64Array {
  if (scores.length !== blockCount * treatmentCount) {
    throw new RangeError(`scores has ${scores.length} values; it must have ${blockCount * treatmentCount}.`);
  }
  const found = new Float64Array(scores.length).fill(Number.NaN);
  for (let block = 0; block < blockCount; block++) {
    const places: number[] = [];
    for (let j = block * treatmentCount; j < (block + 1) * treatmentCount; j++) {
      if (!Number.isNaN(scores[j])) places.push(j);
    }
    // Negative, so that the highest score comes first.
    const own = sharedRanks(places.map((place) => -scores[place]));
    places.forEach((place, i) => {
      found[place] = own[i];
    });
  }
  return found;
}

/** The blocks in which no score is missing. */
export function completeBlocks(data: BlockScores): BlockScores {
  const { treatmentCount: k } = data;
  const rows = blockRows(data).filter((row) => !row.some(Number.isNaN));
  return { blockCount: rows.length, treatmentCount: k, scores: Float64Array.from(rows.flat()) };
}

/** One list of scores per block. */
export function blockRows({ blockCount, treatmentCount, scores }: BlockScores): number[][] {
  return Array.from({ length: blockCount }, (_, i) =>
    Array.from(scores.subarray(i * treatmentCount, (i + 1) * treatmentCount)),
  );
}

/** @param rows one list per block, all of one length; null where a score is missing */
export function blockScores(rows: readonly (readonly (number | null)[])[]): BlockScores {
  const treatmentCount = rows[0]?.length ?? 0;
  const odd = rows.find((row) => row.length !== treatmentCount);
  if (odd !== undefined) {
    throw new RangeError(`a block has ${odd.length} scores and the first ${treatmentCount}; all need the same number.`);
  }
  return {
    blockCount: rows.length,
    treatmentCount,
    scores: Float64Array.from(rows.flat(), (score) => score ?? Number.NaN),
  };
}
