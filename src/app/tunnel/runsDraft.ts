import { columnIndex } from "../../../shared/tunnel/columnMapping";
import { unitsOf } from "../../../shared/tunnel/columnUnits";
import { csvOfTable, readCsvTable } from "../../../shared/tunnel/csvTable";
import type { DataTable } from "../../../shared/tunnel/dataTable";
import { type RunColumnKey, runColumnKeys } from "../../../shared/tunnel/runColumns";
import { runColumnQuantities } from "../../../shared/tunnel/runTable";
import { Notifier } from "../store/notifier";
import { tableInCase } from "./openTunnelCase";
import { changeBlock, presentTunnel } from "./tunnelBench";

/** Table text that cannot be taken as a table yet: what was typed stays, with the reason. Null: the block's own table is shown. */
export const runsDraft = new Notifier<{ readonly text: string; readonly message: string } | null>(null);

/** The text of the runs as it is edited. */
export function runsText(): string {
  const draft = runsDraft.value;
  if (draft !== null) return draft.text;
  const data = presentTunnel().block.runs?.data;
  return data === undefined || typeof data === "string" ? "" : csvOfTable(data);
}

/** Takes a table's text: as the runs where it is a table, else as a draft. An empty text takes the runs away. */
export function takeRuns(text: string): void {
  if (text.trim() === "") {
    runsDraft.value = null;
    changeBlock({ runs: undefined });
    return;
  }
  const table = readCsvTable(text);
  if (!table.ok) {
    runsDraft.value = { text, message: table.problem.message };
    return;
  }
  runsDraft.value = null;
  const before = presentTunnel().block.runs;
  const isSameShape = before !== undefined && typeof before.data !== "string" && sameColumns(before.data, table.value);
  changeBlock({
    runs: {
      ...(isSameShape ? before : {}),
      data: tableInCase(table.value),
      columns: isSameShape ? before.columns : guessedMapping(table.value),
    },
  });
}

function sameColumns(a: DataTable, b: DataTable): boolean {
  return JSON.stringify(a.columns) === JSON.stringify(b.columns);
}

/** Words that columns go by, besides the keys themselves; common practice. */
const columnWords: Readonly<Partial<Record<RunColumnKey, RegExp>>> = {
  kind: /^(kind|type|what)\b/i,
  direction: /^(direction|sweep)\b/i,
  timeMinutes: /^(time|t)\b/i,
  speedMetresPerSecond: /^(speed|velocity|u|v)\b/i,
  dynamicPressurePascals: /^(q|dynamic ?pressure|pdyn)\b/i,
  temperatureCelsius: /^(temp\w*|t)\b/i,
  staticPressurePascals: /^(p|pstat|static ?pressure|baro\w*)\b/i,
  relativeHumidityPercent: /^(rh|humidity)\b/i,
  forceNewtons: /^(force|drag|fx|f)\b/i,
};

/** A first guess of the columns, which the person confirms; columns by the keys' own names need none. */
export function guessedMapping(table: DataTable): NonNullable<RunsBlock["columns"]> {
  const mapping: Partial<Record<RunColumnKey, { column: string; unit?: string }>> = {};
  const taken = new Set<string>();
  for (const key of runColumnKeys) {
    if (columnIndex(table, key) >= 0) continue;
    const words = columnWords[key];
    const found = table.columns.find((column) => words?.test(column.trim()) === true && !taken.has(column));
    if (found === undefined) continue;
    taken.add(found);
    const unit = statedUnit(found, key);
    mapping[key] = unit === null ? { column: found } : { column: found, unit };
  }
  return mapping;
}

/** The unit that a column's name ends with, "v [km/h]" or "v (km/h)", where the key's quantity has it. */
function statedUnit(column: string, key: RunColumnKey): string | null {
  const unit = /[[(]\s*([^\])]+?)\s*[\])]\s*$/.exec(column)?.[1];
  const quantity = runColumnQuantities[key];
  if (unit === undefined || quantity === null) return null;
  return unitsOf(quantity).find((known) => known.toLowerCase() === unit.toLowerCase()) ?? null;
}

export type RunsBlock = NonNullable<ReturnType<typeof presentTunnel>["block"]["runs"]>;
