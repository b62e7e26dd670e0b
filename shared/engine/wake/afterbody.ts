/**
 * Share of the free wake's base suction that is left when the section itself reaches into the near wake.
 *
 * The closure in basePressure.ts knows nothing of a body behind the separation points, but measured base suction
 * weakens as the section runs on between the separated layers: they have to roll up behind it. Sharp rectangles of
 * growing length, rounded squares, stadiums and the ellipse fall on one curve against the full length behind separation
 * over the width of the free wake, 1 / (1 + c L^2 / d'). The form is ours; the constant is calibrated, see calibrated.ts.
 * @param afterbodyLength L, full length of the section behind its separation points / D, at least 0
 * @param sheddingWidth d' / D of the free wake, above 0
 * @param interference c, the calibrated constant
 */
export function afterbodySuctionShare(afterbodyLength: number, sheddingWidth: number, interference: number): number {
  return 1 / (1 + (interference * afterbodyLength * afterbodyLength) / sheddingWidth);
}
