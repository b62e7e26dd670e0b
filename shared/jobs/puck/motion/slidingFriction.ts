import type { DragBand } from "../../../engine/trust/dragInterval";
import { problem, type Result, success } from "../../../result";

/** Hard plastic on wet ceramic tile: no published value was found (from memory, low confidence). Measure your own. */
export const wetTileFriction: DragBand = { low: 0.15, expected: 0.22, high: 0.3 };

/**
 * A coefficient of sliding friction with its band, from a person's input.
 * @param coefficient friction / weight in water, 0 or more
 * @param spread      half the width of its band, 0 to coefficient
 */
export function slidingFriction(coefficient: number, spread: number): Result<DragBand> {
  if (!(coefficient >= 0 && coefficient <= 2)) {
    return problem("friction", `friction coefficient is ${coefficient}; it must be 0 to 2`, "frictionCoefficient");
  }
  if (!(spread >= 0 && spread <= coefficient)) {
    return problem(
      "friction",
      `friction spread is ${spread}; it must be 0 to the coefficient, ${coefficient}`,
      "spread",
    );
  }
  return success({ low: coefficient - spread, expected: coefficient, high: coefficient + spread });
}
