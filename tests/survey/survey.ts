import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { conditionsPerSection, randomSection } from "./randomConditions";
import { type SurveyedCondition, surveySection } from "./surveySection";

/**
 * Asks for answers all over the stated ranges and writes what came into README.md beside this file:
 * `npm run survey`, `npm run survey -- --sections 40` for fewer sections than its 700 (2,100 conditions), or with
 * `--first 5000` for other ones, then without writing.
 */
const { values } = parseArgs({ options: { sections: { type: "string" }, first: { type: "string" } } });
const sections = Number(values.sections ?? 700);
const first = Number(values.first ?? 0);
if (!(Number.isInteger(sections) && sections > 0 && Number.isInteger(first) && first >= 0)) {
  throw new RangeError(`--sections is ${values.sections} and --first ${values.first}; both must be whole numbers.`);
}

interface Surveyed extends SurveyedCondition {
  readonly family: string;
  readonly stream: string;
}

const surveyed: Surveyed[] = [];
for (let seed = first; seed < first + sections; seed++) {
  const drawn = randomSection(seed);
  const found = surveySection(drawn);
  const degrees = Math.abs(drawn.incidence) * (180 / Math.PI);
  const turn = degrees === 0 ? "0" : degrees <= 20 ? "to 20°" : degrees <= 90 ? "20 to 90°" : "over 90°";
  const floor = drawn.floorGapRatio === undefined ? "" : drawn.floorGapRatio === 0 ? ", on a floor" : ", over a floor";
  for (const each of found ?? []) surveyed.push({ ...each, family: drawn.spec.family, stream: `${turn}${floor}` });
  if (process.stderr.isTTY) process.stderr.write(`\r${seed - first + 1} of ${sections} sections`);
}

const perCent = (part: number, whole: number) => (whole === 0 ? "-" : `${((100 * part) / whole).toFixed(1)} %`);
const sum = (rows: readonly Surveyed[], key: "trials" | "jumps" | "silentJumps" | "milliseconds") =>
  rows.reduce((total, row) => total + row[key], 0);

function table(title: string, key: (row: Surveyed) => string): string[] {
  const groups = groupBy(surveyed, key);
  return [
    `| ${title} | conditions | answered | not settled | moved by 1e-6: trials | jumps | jumps called settled | ms |`,
    "| --- | --- | --- | --- | --- | --- | --- | --- |",
    ...[...groups].sort(([a], [b]) => a.localeCompare(b)).map(([name, rows]) => line(name, rows)),
    line("all", surveyed),
    "",
  ];
}

function groupBy(rows: readonly Surveyed[], key: (row: Surveyed) => string): Map<string, Surveyed[]> {
  const groups = new Map<string, Surveyed[]>();
  for (const row of rows) groups.set(key(row), [...(groups.get(key(row)) ?? []), row]);
  return groups;
}

function line(name: string, rows: readonly Surveyed[]): string {
  const answered = rows.filter((row) => row.answered);
  const unsettled = answered.filter((row) => !row.settled);
  const cells = [
    name,
    rows.length,
    perCent(answered.length, rows.length),
    perCent(unsettled.length, answered.length),
    sum(rows, "trials"),
    sum(rows, "jumps"),
    sum(rows, "silentJumps"),
    (sum(rows, "milliseconds") / rows.length).toFixed(0),
  ];
  return `| ${cells.join(" | ")} |`;
}

const mirrors = surveyed.flatMap(({ mirror, settled }) => (mirror === null || !settled ? [] : [mirror]));
const scales = surveyed.flatMap(({ scale, settled }) => (scale === null || !settled ? [] : [scale]));
const beyond = (differences: readonly number[]) => differences.filter((each) => each > 0.01).length;
const causesOf = (rows: readonly Surveyed[]): string[] => {
  const causes = groupBy(rows, ({ problem, stream }) => `${problem}, incidence ${stream}`);
  return causes.size === 0 ? ["- none"] : [...causes].map(([cause, found]) => `- ${cause}: ${found.length}`);
};
const report = [
  "# Is there an answer everywhere?",
  "",
  "Written by `npm run survey`. Random sections of all families, each at three random conditions, from fixed seeds:",
  "length / height 0.05 to 20, Reynolds number 1e4 to 1e8, ks / D 0 or 1e-5 to 2e-2, turbulence 0.05 to 5 %, half at zero",
  "incidence, a quarter within 20 degrees, a quarter from all round, one in three over or on a floor, one in five with",
  "trips. A jump is a change of Cd by more than 1 % when the Reynolds number or the turbulence moves by a millionth.",
  "",
  `${sections} sections from seed ${first}, ${conditionsPerSection} conditions each.`,
  "",
  ...table("family", ({ family }) => family),
  ...table("incidence", ({ stream }) => stream),
  "Without an answer:",
  "",
  ...causesOf(surveyed.filter((row) => !row.answered)),
  "",
  "Answered, but not settled:",
  "",
  ...causesOf(surveyed.filter((row) => row.answered && !row.settled)),
  "",
  `Mirror image (section turned the other way, ${mirrors.length} settled answers): ${beyond(mirrors)} differ by more than 1 % of Cd.`,
  `Seven times as large (${scales.length} settled answers): ${beyond(scales)} differ by more than 1 % of Cd.`,
  "",
].join("\n");
if (values.first === undefined) {
  writeFileSync(resolve(import.meta.dirname, "README.md"), report);
}
process.stdout.write(`${report}\n`);
