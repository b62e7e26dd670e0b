import { resolve } from "node:path";
import { problem, type Result, success } from "../../shared/result";
import { mostTableBytes, readCsvTable } from "../../shared/tables/csvTable";
import { caseFileText } from "./caseFile";

/** Where a case may name a CSV file beside it in place of a table's rows; "*" is every item of a list. */
const tablePlaces: readonly (readonly string[])[] = [
  ["measurements", "sets", "*", "table", "data"],
  ["tunnel", "runs", "data"],
  ["tunnel", "wakeSurvey", "data"],
  ["tunnel", "pressureTaps", "data"],
  ["trial", "scores", "data"],
];

/**
 * The case document with the rows of every CSV file that it names in place of the path.
 * @param folder    where tables are looked for from: that of the case file
 * @param shownName of the case file, for messages
 */
export function inlineTables(document: unknown, folder: string, shownName: string): Result<unknown> {
  let value = document;
  for (const place of tablePlaces) {
    const inlined = replaceAt(value, place, "", (found, field) => {
      if (typeof found !== "string" || found === "") return success(found);
      const text = caseFileText(resolve(folder, found), found, "a CSV file", mostTableBytes);
      const table = text.ok ? readCsvTable(text.value) : text;
      if (table.ok) return table;
      const named = table.problem.message.startsWith(found) ? "" : `${found}: `;
      return problem("table", `${shownName}: ${field}: ${named}${table.problem.message}`, field);
    });
    if (!inlined.ok) return inlined;
    value = inlined.value;
  }
  return success(value);
}

/** A copy of plain data with the values at a place replaced; what is not there stays so. */
function replaceAt(
  value: unknown,
  place: readonly string[],
  field: string,
  replace: (found: unknown, field: string) => Result<unknown>,
): Result<unknown> {
  const [key, ...rest] = place;
  if (key === undefined) return replace(value, field);
  if (key === "*") {
    if (!Array.isArray(value)) return success(value);
    const items: unknown[] = [];
    for (const [i, item] of value.entries()) {
      const replaced = replaceAt(item, rest, `${field}[${i}]`, replace);
      if (!replaced.ok) return replaced;
      items.push(replaced.value);
    }
    return success(items);
  }
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return success(value);
  const inner = Object.getOwnPropertyDescriptor(value, key)?.value;
  const replaced = replaceAt(inner, rest, field === "" ? key : `${field}.${key}`, replace);
  return replaced.ok ? success({ ...value, [key]: replaced.value }) : replaced;
}
