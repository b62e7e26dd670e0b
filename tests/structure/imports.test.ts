import { mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, relative, resolve } from "node:path";
import { parse } from "@swc/core";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import { afterAll, describe, expect, test } from "vitest";
import importRules from "./importRules";

const root = resolve(import.meta.dirname, "../..");
const folders = ["shared", "workers", "src"];

/** The code files that lie in the three folders, as the file system has them. */
function codeFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mjs)$/.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)));
}

/** @param baseDir what the rules' paths start from */
async function cruised(paths: string[], baseDir = root): Promise<ICruiseResult> {
  const { options, ...ruleSet } = importRules;
  const { output } = await cruise(paths, { ...options, baseDir, ruleSet, validate: true });
  if (typeof output === "string") throw new Error(output);
  return output;
}

/** Modules of which code takes more than types, as they are written there. */
async function valueImports(code: string): Promise<string[]> {
  const found: string[] = [];
  const { body } = await parse(code, { syntax: "typescript", decorators: true });
  for (const item of body) {
    if (item.type === "ImportDeclaration" || item.type === "ExportNamedDeclaration") {
      if (item.source && !item.typeOnly) found.push(item.source.value);
    }
    if (item.type === "ExportAllDeclaration") found.push(item.source.value);
  }
  JSON.stringify(body, (_key, node) => {
    if (node?.type === "CallExpression" && node.callee.type === "Import") {
      found.push(String(node.arguments[0]?.expression.value));
    }
    return node;
  });
  return found;
}

function broken(result: ICruiseResult): string[] {
  return result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
}

describe("imports, by dependency-cruiser with the rules of importRules.ts", () => {
  // A project of its own, since the real one is built and read by other tests at the same time.
  const project = realpathSync(mkdtempSync(join(tmpdir(), "wakewright-imports-")));
  afterAll(() => rmSync(project, { recursive: true, force: true }));
  const plant = (file: string, text: string) => {
    mkdirSync(dirname(join(project, file)), { recursive: true });
    writeFileSync(join(project, file), text);
  };

  test("every file is read, and none imports upward, in a circle or past a job's public list", async () => {
    const result = await cruised(folders);
    const read = new Set(result.modules.map(({ source }) => source));
    expect(folders.flatMap(codeFiles).filter((file) => !read.has(file))).toEqual([]);
    expect(result.summary.totalDependenciesCruised).toBeGreaterThan(2000);
    expect(broken(result)).toEqual([]);
  }, 120_000);

  test("a planted import that goes up a floor is found, also of a type alone, and so is a circle", async () => {
    const folder = "shared/numerics/planted";
    plant("shared/case/resolvedCase.ts", "export type Case = 1;\n");
    plant("shared/engine/index.ts", "export const solveSection = 1;\n");
    plant(`${folder}/upward.ts`, 'import type { Case } from "../../case/resolvedCase";\nexport type A = Case;\n');
    plant(`${folder}/one.ts`, 'import type { Two } from "./two";\nexport type One = Two;\n');
    plant(`${folder}/two.ts`, 'import type { One } from "./one";\nexport type Two = One | 1;\n');
    plant(`${folder}/listed.ts`, 'export { solveSection } from "../../engine/index";\n');
    const found = broken(await cruised([folder], project));
    expect(found.join("\n")).toContain("the public list is for others: shared/numerics/planted/listed.ts");
    expect(found.join("\n")).toContain("shared/numerics upward: shared/numerics/planted/upward.ts");
    expect(found.join("\n")).toContain("circle of files: shared/numerics/planted/one.ts");
  });

  test("a planted circle of folders without a circle of files is found, also of types alone", async () => {
    const [one, two] = ["src/app/plantedOne", "src/app/plantedTwo"];
    plant(`${one}/first.ts`, 'import type { Second } from "../plantedTwo/second";\nexport type First = Second;\n');
    plant(`${two}/second.ts`, "export type Second = 1;\n");
    plant(`${two}/third.ts`, 'import type { Fourth } from "../plantedOne/fourth";\nexport type Third = Fourth;\n');
    plant(`${one}/fourth.ts`, "export type Fourth = 1;\n");
    const found = broken(await cruised([one, two], project)).join("\n");
    expect(found).toContain(`circle of folders: ${one} -> ${two}`);
    expect(found).not.toContain("circle of files");
  });

  test("planted imports past a job's public list and past the engine's front are found, also of a type alone", async () => {
    const folder = "shared/jobs/tunnel/planted";
    plant("shared/jobs/puck/puckSpec.ts", "export type PuckSpec = 1;\n");
    plant("shared/jobs/puck/public.ts", 'export type { PuckSpec } from "./puckSpec";\n');
    plant("shared/engine/solve/solveCondition.ts", "export const solveCondition = 1;\n");
    plant(`${folder}/past.ts`, 'import type { PuckSpec } from "../../puck/puckSpec";\nexport type A = PuckSpec;\n');
    plant(`${folder}/by.ts`, 'import type { PuckSpec } from "../../puck/public";\nexport type A = PuckSpec;\n');
    plant(`${folder}/own.ts`, 'export { solveCondition } from "../../../engine/solve/solveCondition";\n');
    const found = broken(await cruised([folder], project)).join("\n");
    expect(found).toContain("past the public list of puck: shared/jobs/tunnel/planted/past.ts");
    expect(found).not.toContain("by.ts");
    expect(found).toContain("past the engine's front: shared/jobs/tunnel/planted/own.ts");
  });

  test("a planted component that reaches a store is found, also by way of a type that another file passes on", async () => {
    const folder = "src/app/components/planted";
    plant("src/app/store/notifier.ts", "export class Notifier {}\n");
    plant("src/app/bench.ts", 'import { Notifier } from "./store/notifier";\nexport const bench = new Notifier();\n');
    plant(`${folder}/passed.ts`, 'import type { bench } from "../../bench";\nexport type Bench = typeof bench;\n');
    plant(`${folder}/planted.ts`, 'import type { Bench } from "./passed";\nexport type A = Bench;\n');
    const found = broken(await cruised([folder], project));
    expect(found.join("\n")).toContain(`component knows a store: ${folder}/planted.ts`);
  });
});

describe("src takes only types from workers, by the syntax tree of the compiler's parser", () => {
  // The worker is started by its address, which is no import.
  test("no file of src imports a value of theirs", async () => {
    const files = codeFiles("src").filter((file) => readFileSync(join(root, file), "utf8").includes("workers/"));
    expect(files.length).toBeGreaterThan(5);
    const wrong = await Promise.all(
      files.map(async (file) =>
        (await valueImports(readFileSync(join(root, file), "utf8")))
          .filter((target) => relative(root, resolve(root, dirname(file), target)).startsWith("workers/"))
          .map((target) => `${file} imports ${target}`),
      ),
    );
    expect(wrong.flat()).toEqual([]);
  });

  test.each([
    ["a value", 'import { a } from "../workers/a";', ["../workers/a"]],
    ["a value beside a type", 'import { type A, a } from "../workers/a";', ["../workers/a"]],
    ["a module for its effects", 'import "../workers/a";', ["../workers/a"]],
    ["a value handed on", 'export { a } from "../workers/a";', ["../workers/a"]],
    ["everything handed on", 'export * from "../workers/a";', ["../workers/a"]],
    ["a module when it is needed", 'export const a = () => import("../workers/a");', ["../workers/a"]],
    ["a type", 'import type { A } from "../workers/a";', []],
    ["types one by one, whose module is still loaded", 'import { type A } from "../workers/a";', ["../workers/a"]],
    ["a type handed on", 'export type { A } from "../workers/a";', []],
  ])("%s", async (_, code, found) => {
    expect(await valueImports(code)).toEqual(found);
  });
});

describe("folders", () => {
  test("none has an index.ts but the engine, whose public list it is", () => {
    const lists = folders.flatMap(codeFiles).filter((file) => basename(file) === "index.ts");
    expect(lists).toEqual(["shared/engine/index.ts"]);
  });
});

describe("the engine", () => {
  test("takes nothing of Node", () => {
    const wrong = codeFiles("shared").filter((file) => /from "node:/.test(readFileSync(join(root, file), "utf8")));
    expect(wrong).toEqual([]);
  });
});
