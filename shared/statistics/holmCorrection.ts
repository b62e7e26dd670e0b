/**
 * p values of several tests, corrected so that the chance of any false finding stays at the level. Source: Holm (1979),
 * Scand. J. Stat. 6, 65-70: the smallest times their number, the next times one less, and so on, none below one before it.
 * @param pValues shape [n], each 0 to 1
 * @returns shape [n], in the same order, each 0 to 1
 */
export function holmCorrection(pValues: readonly number[]): number[] {
  const order = pValues.map((_, i) => i).sort((a, b) => pValues[a] - pValues[b]);
  const corrected = new Array<number>(pValues.length);
  let largest = 0;
  order.forEach((index, place) => {
    largest = Math.max(largest, Math.min(1, (pValues.length - place) * pValues[index]));
    corrected[index] = largest;
  });
  return corrected;
}
