/** How evenly orders treat the pucks. */
export interface PlanBalance {
  /** placeCounts[puck][place]: sessions in which the puck stands at the place. */
  readonly placeCounts: readonly (readonly number[])[];
  /** afterCounts[puck][other]: sessions in which the puck comes directly after the other. */
  readonly afterCounts: readonly (readonly number[])[];
  readonly isPlaceBalanced: boolean;
  readonly isCarryOverBalanced: boolean;
}

/** @param orders each of all treatment indices 0 to treatmentCount - 1 */
export function planBalance(orders: readonly (readonly number[])[], treatmentCount: number): PlanBalance {
  const zeros = () => Array.from({ length: treatmentCount }, () => new Array<number>(treatmentCount).fill(0));
  const placeCounts = zeros();
  const afterCounts = zeros();
  for (const order of orders) {
    if (order.length !== treatmentCount) {
      throw new RangeError(`an order has ${order.length} treatments; it must have ${treatmentCount}.`);
    }
    order.forEach((treatment, place) => {
      placeCounts[treatment][place]++;
      if (place > 0) afterCounts[treatment][order[place - 1]]++;
    });
  }
  const offDiagonal = afterCounts.flatMap((row, i) => row.filter((_, j) => j !== i));
  return {
    placeCounts,
    afterCounts,
    isPlaceBalanced: new Set(placeCounts.flat()).size === 1,
    isCarryOverBalanced: new Set(offDiagonal).size === 1,
  };
}
