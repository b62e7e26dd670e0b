import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { markdownTable } from "../accuracy/markdownTable";

/**
 * `npm run mutants [-- --sample N --seed S] [FOLDER ...]`: changes the code of the physics folders one place at a time
 * and counts how many changes the folder's own tests notice. With a sample, N mutants of each folder are drawn by a
 * seeded generator and the score has the error of a binomial share. Long; survivors are printed, the score of every
 * folder is kept in scores.json and written to README.md beside this file.
 */
const root = resolve(import.meta.dirname, "../..");
const folders = ["roughness", "layer", "wake", "flow", "solve"] as const;
type Folder = (typeof folders)[number];
type MutantResult = Awaited<ReturnType<Stryker["runMutationTest"]>>[number];

interface Score {
  readonly mutants: number;
  /** Whether all of them were tried, but for those in code that runs only while its file is read. */
  readonly whole: boolean;
  readonly tried: number;
  readonly noticed: number;
  readonly survivors: readonly string[];
}

interface Place {
  readonly file: string;
  readonly start: { readonly line: number; readonly column: number };
  readonly end: { readonly line: number; readonly column: number };
  readonly replacement: string;
}

/** Numbers, texts and types are not mutated: numbers are the ledger's business, see `npm run calibrate -- --sensitivity`. */
const excludedMutations = ["StringLiteral"];

const keyOf = ({ file, start, end, replacement }: Place) =>
  [file, start.line, start.column, end.line, end.column, replacement].join("|");

/** All mutants of a folder, lines from 1 and columns from 0. */
async function listMutants(folder: Folder): Promise<Place[]> {
  const path = join(root, "shared/engine", folder);
  const files = readdirSync(path, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => ({ name: join(path, file), content: readFileSync(join(path, file), "utf8"), mutate: true }));
  const quiet = () => undefined;
  const logger = { debug: quiet, info: quiet, warn: quiet, error: quiet, trace: quiet, fatal: quiet };
  const off = () => false;
  const enabled = {
    isTraceEnabled: off,
    isDebugEnabled: off,
    isInfoEnabled: off,
    isWarnEnabled: off,
    isErrorEnabled: off,
    isFatalEnabled: off,
  };
  const { mutants } = await new Instrumenter({ ...logger, ...enabled }).instrument(files, {
    plugins: null,
    ignorers: [],
    excludedMutations,
  });
  return mutants.map(({ fileName, location, replacement }) => ({
    file: relative(root, fileName),
    start: { line: location.start.line + 1, column: location.start.column },
    end: { line: location.end.line + 1, column: location.end.column },
    replacement,
  }));
}

/** The first of a seeded shuffle. */
function drawn<T>(all: readonly T[], count: number, seed: number): T[] {
  const generator = xoroshiro128plus(seed);
  const pool = [...all];
  const length = Math.min(count, pool.length);
  for (let i = 0; i < length; i++) {
    const j = uniformInt(generator, i, pool.length - 1);
    [pool[i], pool[j]] = [pool[j], pool[i]];
  }
  return pool.slice(0, length);
}

function placeOf({ fileName, location, replacement }: MutantResult): Place {
  // The report counts lines and columns from 1.
  return {
    file: relative(root, resolve(root, fileName)),
    start: { line: location.start.line, column: location.start.column - 1 },
    end: { line: location.end.line, column: location.end.column - 1 },
    replacement: replacement ?? "",
  };
}

async function scoreOf(folder: Folder, sample: number | null, seed: number): Promise<Score> {
  process.env.MUTANT_FOLDER = folder;
  const all = await listMutants(folder);
  const wanted = sample === null ? all : drawn(all, sample, seed);
  const ranges = wanted.map(
    ({ file, start, end }) => `${file}:${start.line}:${start.column}-${end.line}:${end.column}`,
  );
  const keys = wanted.map(keyOf);
  const kept = join(root, "node_modules/.mutants");
  mkdirSync(kept, { recursive: true });
  // A sample is kept apart from others and from the whole: it leaves out what it has not drawn.
  const name = sample === null ? folder : `${folder}-${sample}-${seed}`;
  const draw = join(kept, `${name}-drawn.json`);
  if (sample !== null) writeFileSync(draw, JSON.stringify([root, keys]));
  process.env.MUTANT_DRAW = draw;
  const results = await new Stryker({
    configFile: join(import.meta.dirname, "stryker.config.json"),
    mutate: sample === null ? [`shared/engine/${folder}/**/*.ts`] : ranges,
    mutator: { plugins: null, excludedMutations },
    incrementalFile: `node_modules/.mutants/${name}.json`,
    checkers: sample === null ? [] : ["drawn"],
  } as ConstructorParameters<typeof Stryker>[0]).runMutationTest();
  const counted = new Set(keys);
  const judged = results.filter(
    (result) =>
      counted.has(keyOf(placeOf(result))) && !["Ignored", "CompileError", "RuntimeError"].includes(result.status),
  );
  const noticed = judged.filter(({ status }) => status === "Killed" || status === "Timeout");
  const survivors = judged
    .filter((result) => !noticed.includes(result))
    .map((result) => {
      const { file, start, end } = placeOf(result);
      const lines = readFileSync(join(root, file), "utf8")
        .split("\n")
        .slice(start.line - 1, end.line);
      const code =
        lines.length === 1 ? lines[0].slice(start.column, end.column) : `${lines[0].slice(start.column)} ...`;
      const unseen = result.status === "NoCoverage" ? " (reached by no test)" : "";
      return `${basename(file)}:${start.line} ${result.mutatorName}: ${code} -> ${result.replacement?.split("\n")[0]}${unseen}`;
    });
  return {
    mutants: all.length,
    whole: sample === null,
    tried: judged.length,
    noticed: noticed.length,
    survivors: survivors.sort(),
  };
}

/** Share in per cent, with the standard error of a binomial share where only some were tried. */
function scoreText({ mutants, whole, tried, noticed }: Score): string {
  const share = noticed / tried;
  const percent = (100 * share).toFixed(1);
  if (whole) return `${percent} %`;
  // Without replacement from a folder of this size.
  const error = 100 * Math.sqrt(((share * (1 - share)) / tried) * ((mutants - tried) / (mutants - 1)));
  return `${percent} ± ${error.toFixed(1)} %`;
}

const { values, positionals } = parseArgs({
  options: { sample: { type: "string" }, seed: { type: "string", default: "20261130" } },
  allowPositionals: true,
});
const sample = values.sample === undefined ? null : Number(values.sample);
const asked = positionals.length === 0 ? folders : folders.filter((folder) => positionals.includes(folder));
const scoresPath = join(import.meta.dirname, "scores.json");
for (const folder of asked) {
  const score = await scoreOf(folder, sample, Number(values.seed));
  console.log(`${folder}: ${scoreText(score)}, ${score.noticed} of ${score.tried} noticed, ${score.mutants} mutants`);
  for (const survivor of score.survivors) console.log(`  ${survivor}`);
  const kept = JSON.parse(readFileSync(scoresPath, "utf8")) as Partial<Record<Folder, Omit<Score, "survivors">>>;
  const { survivors, ...counts } = score;
  kept[folder] = { ...counts };
  writeFileSync(scoresPath, `${JSON.stringify(kept, null, 2)}\n`);
  const rows = folders.flatMap((name) => {
    const one = kept[name];
    if (one === undefined) return [];
    return [[name, String(one.mutants), String(one.tried), String(one.noticed), scoreText({ ...one, survivors: [] })]];
  });
  const readmePath = join(import.meta.dirname, "README.md");
  const table = markdownTable(["Folder", "Mutants", "Tried", "Noticed", "Score"], rows);
  const readme = readFileSync(readmePath, "utf8");
  writeFileSync(readmePath, readme.replace(/\| Folder[\s\S]*?(?=\n\n)/, table));
}
