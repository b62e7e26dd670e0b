import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { accuracyTable } from "../accuracy/accuracyTable";
import { accuracyReport } from "../accuracy/report";
import { allSources } from "./allSources";

/**
 * `npm run accuracy [-- --json]`: runs the engine over every published value, prints the comparison (a table, or one
 * JSON document) and writes it to README.md beside this file. Progress goes to stderr.
 */
const { values } = parseArgs({ options: { json: { type: "boolean", default: false } } });

const table = accuracyTable(allSources, (text) => {
  if (process.stderr.isTTY) process.stderr.write(`\r\x1b[K${text}`);
});
if (process.stderr.isTTY) process.stderr.write("\r\x1b[K");
const report = accuracyReport(table);
writeFileSync(new URL("README.md", import.meta.url), report);
process.stdout.write(values.json ? `${JSON.stringify(table, null, 2)}\n` : report);
