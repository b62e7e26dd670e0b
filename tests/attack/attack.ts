import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { acceptedSolves } from "./acceptedSolves";
import { attackReport, type Done } from "./attackReport";
import type { Attack } from "./attackResult";
import { caseFiles } from "./caseFiles";
import { outlinesAndTables } from "./outlinesAndTables";

/** Every attack, in the order in which they run. */
const attacks: readonly Attack[] = [caseFiles, outlinesAndTables, acceptedSolves];

const help = `npm run attack -- [--share SHARE] [--only NAME]... [--write]

Attacks the program with seeded faults and tells what it could not stand. Takes minutes.
  --share SHARE  part of the full counts, above 0 to 1; 1 when left out
  --only NAME    one attack: ${attacks.map(({ name }) => name).join(", ")}; may be given several times
  --write        writes the report to tests/attack/README.md
`;

const { values } = parseArgs({
  options: {
    share: { type: "string", default: "1" },
    only: { type: "string", multiple: true },
    write: { type: "boolean" },
    help: { type: "boolean" },
  },
});

const share = Number(values.share);
const chosen = attacks.filter(({ name }) => values.only === undefined || values.only.includes(name));
if (values.help === true || !(share > 0 && share <= 1) || chosen.length === 0) {
  process.stderr.write(help);
  process.exit(values.help === true ? 0 : 2);
}

const done: Done[] = [];
for (const attack of chosen) {
  const start = performance.now();
  const result = await attack.run(Math.max(1, Math.round(share * attack.fullCount)));
  const seconds = (performance.now() - start) / 1000;
  done.push({ attack, result, seconds });
  process.stderr.write(
    `${attack.name}: ${result.tried} tries, ${result.faults.length} faults, ${seconds.toFixed(0)} s\n`,
  );
  for (const fault of result.faults.slice(0, 20)) process.stderr.write(`  ${fault}\n`);
}
const report = attackReport(done);
process.stdout.write(report);
if (values.write === true) writeFileSync(fileURLToPath(new URL("./README.md", import.meta.url)), report);
process.exitCode = done.every(({ result }) => result.faults.length === 0) ? 0 : 1;
