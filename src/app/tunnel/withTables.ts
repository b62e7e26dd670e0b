import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import type { DataTable } from "../../../shared/tables/dataTable";
import { tell } from "../store/notices";
import { demoTable } from "./demoTables";

type TableKey = "runs" | "wakeSurvey" | "pressureTaps";
const tableKeys: readonly TableKey[] = ["runs", "wakeSurvey", "pressureTaps"];

/** The block with the page's own tables in place of their names; any other file must be opened by who has it. */
export async function withTables(block: TunnelBlockDocument): Promise<TunnelBlockDocument> {
  let filled = block;
  for (const key of tableKeys) {
    const part = filled[key];
    if (part === undefined || typeof part.data !== "string") continue;
    const table = await demoTable(part.data);
    if (table?.ok === true) filled = { ...filled, [key]: { ...part, data: tableInCase(table.value) } };
    else
      tell("warning", `The case names the table ${part.data}, which a page cannot open by itself: open it under Data.`);
  }
  return filled;
}

/** A table as plain data that a case file takes. */
export function tableInCase({ columns, rows, headerRow, separator }: DataTable) {
  return {
    columns: [...columns],
    rows: rows.map((row) => [...row]),
    ...(headerRow === undefined ? {} : { headerRow }),
    ...(separator === undefined ? {} : { separator }),
  };
}
