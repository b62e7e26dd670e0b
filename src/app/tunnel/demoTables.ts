import { problem, type Result } from "../../../shared/result";
import { readCsvTable } from "../../../shared/tables/csvTable";
import type { DataTable } from "../../../shared/tables/dataTable";

/** CSV files that come with the page's demo cases, loaded when a case names them. */
const loaders = import.meta.glob<string>("../../../cases/*.csv", { query: "?raw", import: "default" });

/** The table of a demo CSV file; null for a name that did not come with the page. */
export async function demoTable(path: string): Promise<Result<DataTable> | null> {
  const found = Object.keys(loaders).find((one) => one.split("/").at(-1) === path.split("/").at(-1));
  if (found === undefined) return null;
  try {
    return readCsvTable(await loaders[found]());
  } catch {
    return problem("load", `The table ${path} could not be loaded.`);
  }
}
