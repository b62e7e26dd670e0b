/**
 * Share of the free wake's base suction that is left when the section itself fills a part of the near wake.
 *
 * The closure in basePressure.ts knows nothing of a body behind the separation points, but measured base suction
 * weakens as the section reaches further back between the separated layers: they have to roll up behind it. Rectangles
 * of growing length and rounded squares lie on one curve against the area behind separation, 1 / (1 + c A^2).
 * The form is ours; the constant is calibrated, see calibrated.ts.
 * @param afterbodyArea A, area of the section behind the chord between its separation points / D^2, at least 0
 * @param interference c, the calibrated constant
 */
export function afterbodySuctionShare(afterbodyArea: number, interference: number): number {
  return 1 / (1 + interference * afterbodyArea * afterbodyArea);
}
