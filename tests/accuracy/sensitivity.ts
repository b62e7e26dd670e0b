import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "vite";
import { type LedgerKey, ledgerNumbers } from "../../shared/engine/constants/ledger";
import { markdownTable } from "./markdownTable";
import type { ResultMeasures } from "./resultMeasures";

const root = resolve(import.meta.dirname, "../..");
/** Each number is taken down and up by this part of it. */
const change = 0.2;

/**
 * In the bundle of the measuring run alone, a number of the ledger is multiplied when the file that defines it is read:
 * which and by how much stands in the query of the bundle's address, so that every import is an engine of its own. The
 * engine as it is delivered knows nothing of this and pays nothing for it.
 */
const overrides: Plugin = {
  name: "ledger-overrides",
  enforce: "post",
  transform(code, id) {
    if (!/engine\/constants\/\w+Numbers\.ts$/.test(id)) return null;
    const name = /export const (\w+_NUMBERS)/.exec(code)?.[1];
    if (name === undefined) throw new Error(`${id} exports no numbers.`);
    return `${code}
{
  const query = new URL(import.meta.url).searchParams;
  for (const key of (query.get("numbers") ?? "").split(",")) {
    if (key in ${name}) ${name}[key].value *= Number(query.get("factor"));
  }
}`;
  },
};

async function measuringBundle(folder: string): Promise<string> {
  await build({
    root,
    configFile: false,
    logLevel: "error",
    plugins: [overrides],
    ssr: { noExternal: true, target: "node" },
    build: {
      ssr: join(root, "tests/accuracy/resultMeasures.ts"),
      outDir: folder,
      emptyOutDir: false,
      minify: false,
      target: "esnext",
      rollupOptions: { output: { entryFileNames: "measures.mjs", codeSplitting: false } },
    },
  });
  return pathToFileURL(join(folder, "measures.mjs")).href;
}

/** The results with some numbers multiplied by a factor. */
type Measuring = (numbers: readonly LedgerKey[], factor: number) => Promise<ResultMeasures>;

function measuringWith(bundle: string): Measuring {
  return async (numbers, factor) => {
    const { resultMeasures } = await import(`${bundle}?numbers=${numbers.join(",")}&factor=${factor}`);
    return (resultMeasures as () => ResultMeasures)();
  };
}

/** How many numbers are changed together to see whether any of them is asked for. */
const together = 8;

/** Those numbers that may change an answer: groups that change none together are passed over. */
async function active(measuring: Measuring, base: ResultMeasures, keys: readonly LedgerKey[]): Promise<LedgerKey[]> {
  const found: LedgerKey[] = [];
  for (let i = 0; i < keys.length; i += together) {
    const group = keys.slice(i, i + together);
    if (group.length < 3 || (await measuring(group, 1 + change)).sum !== base.sum) found.push(...group);
  }
  return found;
}

/** Change of a measure against the engine's own, with its sign; "0" where it stays. */
function signed(difference: number, digits = 0): string {
  const text = difference.toFixed(digits);
  return Number(text) === 0 ? "0" : difference > 0 ? `+${text}` : text;
}

/**
 * Prints what 20 % less and more of every number in the ledger does to the results, and writes it to sensitivity.md
 * beside this file.
 * @param only keys of the numbers to look at; all when empty, and only then is the file written
 */
export async function printSensitivity(only: readonly string[]): Promise<void> {
  const unknown = only.filter((key) => !ledgerNumbers.some(([known]) => known === key));
  if (unknown.length > 0) throw new Error(`the ledger has no ${unknown.join(", ")}.`);
  const folder = mkdtempSync(join(root, "node_modules", ".sensitivity-"));
  try {
    const measuring = measuringWith(await measuringBundle(folder));
    const base = await measuring([], 1);
    const asked = ledgerNumbers.filter(([key]) => only.length === 0 || only.includes(key));
    const keys = asked.map(([key]) => key);
    const moving = new Set(await active(measuring, base, keys));
    const rows: string[][] = [];
    for (const [key, { kind, value }] of asked) {
      const down = moving.has(key) ? await measuring([key], 1 - change) : base;
      const ends = [down, down.sum === base.sum ? base : await measuring([key], 1 + change)];
      const both = (measure: keyof ResultMeasures, scale = 1, digits = 0) =>
        ends.map((end) => signed(scale * (end[measure] - base[measure]), digits)).join(" / ");
      const cells = [both("dragRms", 100, 1), both("answered"), both("targetsMet"), both("insideScatter")];
      rows.push([key, kind, String(Number(value.toPrecision(4))), ...cells]);
      console.error(rows[rows.length - 1].join("  "));
    }
    const text = [
      "# What 20 % of each number does",
      "",
      "Written by `npm run calibrate -- --sensitivity`. Every number of the ledger (`shared/engine/constants`) is taken 20 % down and up by itself, the others as they are, nothing fitted again; the changes are given as down / up. Cd rms: relative errors of the section drag coefficients in points of a per cent, those of the smooth cylinder's crisis left out; answered: how many of them have an answer; targets: stated targets met; inside scatter: published values met within their source's own scatter.",
      "",
      `As it is: Cd rms ${(100 * base.dragRms).toFixed(1)} %, ${base.answered} answered, ${base.targetsMet} targets met, ${base.insideScatter} values inside scatter. A row of zeros means that no published value in the comparison asks for the number: floors, trips, bands, grooves and the flow along an axis are not in it.`,
      "",
      markdownTable(["Number", "Kind", "Value", "Cd rms", "Answered", "Targets", "Inside scatter"], rows),
      "",
    ].join("\n");
    if (only.length === 0) writeFileSync(join(import.meta.dirname, "sensitivity.md"), text);
    console.log(text);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
