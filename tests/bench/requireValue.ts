import type { Result } from "../../shared/result";

/** The value of a result that has to be good; a bench of failures would time nothing. */
export function requireValue<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}
