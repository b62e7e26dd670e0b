/**
 * Sequences in which every treatment stands equally often at every place and directly after every other treatment equally
 * often: k sequences for an even count, 2k (a square and its mirror) for an odd one. Source: Williams (1949), Austral.
 * J. Sci. Res. A 2, 149-168; construction as in Jones & Kenward (2014), 4.2.3.
 * @param treatmentCount 2 to 26
 * @returns sequences of treatment indices, each of all treatments
 */
export function williamsDesign(treatmentCount: number): number[][] {
  const k = treatmentCount;
  if (!(Number.isInteger(k) && k >= 2 && k <= 26)) {
    throw new RangeError(`treatments are ${k}; they must be a whole number from 2 to 26.`);
  }
  // 0, k-1, 1, k-2, 2, ...: neighbours differ by every step from 1 to k-1 once.
  const zigzag = Array.from({ length: k }, (_, i) => (i % 2 === 0 ? i / 2 : k - (i + 1) / 2));
  const square = Array.from({ length: k }, (_, row) => zigzag.map((value) => (value + row) % k));
  return k % 2 === 0 ? square : [...square, ...square.map((sequence) => [...sequence].reverse())];
}
