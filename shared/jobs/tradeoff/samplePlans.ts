import { problem, type Result, success } from "../../result";
import { randomDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";
import { checkSpace, type DesignSpace, valuesAt } from "./designSpace";

/** Most points of one plan. */
export const mostPoints = 100_000;

/**
 * All combinations of evenly spaced levels, the last variable running fastest.
 * @param levels of each variable, 1 (its middle) or more, shape [variables]
 */
export function gridPoints(space: DesignSpace, levels: readonly number[]): Result<number[][]> {
  const checked = checkSpace(space);
  if (!checked.ok) return checked;
  if (levels.length !== space.variables.length) {
    throw new RangeError(`there are ${levels.length} level counts and ${space.variables.length} variables.`);
  }
  if (!levels.every((count) => Number.isInteger(count) && count >= 1)) {
    return problem("tradeoff", "each number of levels must be a whole number of 1 or more", "levels");
  }
  const total = levels.reduce((product, count) => product * count, 1);
  if (total > mostPoints) return problem("tradeoff", `the grid has ${total} points; at most ${mostPoints}`, "levels");
  const points = Array.from({ length: total }, (_, index) => {
    let rest = index;
    const shares = levels.map(() => 0.5);
    for (let i = levels.length - 1; i >= 0; i--) {
      if (levels[i] > 1) shares[i] = (rest % levels[i]) / (levels[i] - 1);
      rest = Math.floor(rest / levels[i]);
    }
    return valuesAt(space, shares);
  });
  return success(points);
}

/**
 * Latin hypercube: in each variable every one of `count` equal slices holds exactly one point.
 * Source: McKay, Beckman & Conover (1979), Technometrics 21, 239-245.
 */
export function latinHypercube(space: DesignSpace, count: number, seed: number): Result<number[][]> {
  const checked = checkSpace(space);
  if (!checked.ok) return checked;
  if (!(Number.isInteger(count) && count >= 1 && count <= mostPoints)) {
    return problem(
      "tradeoff",
      `number of points is ${count}; it must be a whole number from 1 to ${mostPoints}`,
      "count",
    );
  }
  if (!Number.isInteger(seed)) return problem("seed", `seed is ${seed}; it must be a whole number`, "seed");
  const draws = randomDraws(seed);
  const slices = space.variables.map(() => shuffledOrder(draws, count));
  const points = Array.from({ length: count }, (_, i) =>
    valuesAt(
      space,
      slices.map((order) => (order[i] + draws.uniform()) / count),
    ),
  );
  return success(points);
}
