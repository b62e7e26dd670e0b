import { problem, type Result, success } from "../../result";

/** A dimension that the search may choose, in SI units. */
export interface FreeVariable {
  readonly key: string;
  readonly lowest: number;
  readonly highest: number;
}

/** A figure that the search makes small ("least") or large ("most"). */
export interface Goal {
  readonly key: string;
  readonly sense: "least" | "most";
}

export interface DesignSpace {
  readonly variables: readonly FreeVariable[];
  readonly goals: readonly Goal[];
}

/** What one point of the space came to. Plain data, so that it can cross to a worker and into a file. */
export interface Evaluation {
  /** Shape [variables]. */
  readonly variables: readonly number[];
  /** Shape [goals]; meaningless (all 0) where violation is above 0 and the figures could not be had. */
  readonly goals: readonly number[];
  /** How far it is outside what is allowed; 0 when it is inside, finite always. */
  readonly violation: number;
  /** Why it is outside; null when it is inside. */
  readonly reason: string | null;
}

export function checkSpace(space: DesignSpace): Result<null> {
  if (space.variables.length === 0) return problem("tradeoff", "no dimension is free; free one or more", "variables");
  if (space.goals.length === 0) return problem("tradeoff", "no goal was given; give one or more", "goals");
  for (const { key, lowest, highest } of space.variables) {
    if (!(Number.isFinite(lowest) && Number.isFinite(highest) && lowest < highest)) {
      return problem(
        "tradeoff",
        `${key} from ${lowest} to ${highest}: both must be numbers, the first below the second`,
        key,
      );
    }
  }
  const keys = [...space.variables, ...space.goals].map(({ key }) => key);
  const twice = keys.find((key, i) => keys.indexOf(key) !== i);
  return twice === undefined ? success(null) : problem("tradeoff", `${twice} is given twice`, twice);
}

/** Values from shares 0 to 1 of each variable's range. */
export function valuesAt(space: DesignSpace, shares: readonly number[]): number[] {
  return space.variables.map(({ lowest, highest }, i) => lowest + shares[i] * (highest - lowest));
}
