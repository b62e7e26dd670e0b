import type { Problem, Result } from "../../result";
import { type TableProblem, tableProblemText } from "../../tables/dataTable";

/** What is wrong with a block, gathered while it is read. */
export class BlockFaults {
  readonly problems: Problem[] = [];

  /** The value of a part, or null with its problem kept under the part's field. */
  keep<T>(result: Result<T>, field: string): T | null {
    if (result.ok) return result.value;
    const place = result.problem.field === undefined ? field : `${field}.${result.problem.field}`;
    this.problems.push({ ...result.problem, message: `${place}: ${result.problem.message}`, field: place });
    return null;
  }

  add(code: string, field: string, message: string): void {
    this.problems.push({ code, message: `${field}: ${message}`, field });
  }

  addTable(found: readonly TableProblem[], field: string): void {
    for (const each of found) this.add("table", field, tableProblemText(each));
  }
}
