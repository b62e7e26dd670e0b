import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { CHECKED_ERRORS } from "../../shared/engine/trust/checkedErrors";
import { accuracyTable } from "../accuracy/accuracyTable";
import { bandsFile } from "../accuracy/bandsFile";
import { storedAnswersText } from "../accuracy/before";
import { errorsFile } from "../accuracy/errorsFile";
import { accuracyReport } from "../accuracy/report";
import { allSources } from "./allSources";

/**
 * `npm run accuracy [-- --json]`: runs the engine over every published value, prints the comparison (a table, or one
 * JSON document), writes it to README.md beside this file and the bands and errors that it
 * gives to checkedBands.ts and checkedErrors.ts in shared/engine/trust. Progress goes to stderr.
 *
 * With --store "NAME" it does nothing of that but keeps the engine's answers under that name in
 * tests/accuracy/before.json, for later engines to be compared with.
 */
const { values } = parseArgs({ options: { json: { type: "boolean", default: false }, store: { type: "string" } } });

if (values.store !== undefined) {
  writeFileSync(new URL("../accuracy/before.json", import.meta.url), storedAnswersText(values.store, allSources));
  process.exit();
}

const table = accuracyTable(allSources, (text) => {
  if (process.stderr.isTTY) process.stderr.write(`\r\x1b[K${text}`);
});
if (process.stderr.isTTY) process.stderr.write("\r\x1b[K");
const report = accuracyReport(table);
writeFileSync(new URL("README.md", import.meta.url), report);
writeFileSync(new URL("../../shared/engine/trust/checkedBands.ts", import.meta.url), bandsFile(table.bands));
writeFileSync(
  new URL("../../shared/engine/trust/checkedErrors.ts", import.meta.url),
  errorsFile(CHECKED_ERRORS.fittedOn, CHECKED_ERRORS.parameters, table.levelData),
);
process.stdout.write(values.json ? `${JSON.stringify(table, null, 2)}\n` : report);
