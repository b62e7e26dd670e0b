import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
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

async function cruised(paths: string[]): Promise<ICruiseResult> {
  const { options, ...ruleSet } = importRules;
  const { output } = await cruise(paths, { ...options, baseDir: root, ruleSet, validate: true });
  if (typeof output === "string") throw new Error(output);
  return output;
}

function broken(result: ICruiseResult): string[] {
  return result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
}

describe("imports, by dependency-cruiser with the rules of importRules.ts", () => {
  const planted = join(root, "shared/numerics/planted");
  afterAll(() => rmSync(planted, { recursive: true, force: true }));

  test("every file is read, and none imports upward, in a circle or past a job's public list", async () => {
    const result = await cruised(folders);
    const read = new Set(result.modules.map(({ source }) => source));
    expect(folders.flatMap(codeFiles).filter((file) => !read.has(file))).toEqual([]);
    expect(result.summary.totalDependenciesCruised).toBeGreaterThan(2000);
    expect(broken(result)).toEqual([]);
  }, 120_000);

  test("a planted import that goes up a floor is found, also of a type alone, and so is a circle", async () => {
    mkdirSync(planted, { recursive: true });
    writeFileSync(
      join(planted, "upward.ts"),
      'import type { Case } from "../../case/resolvedCase";\nexport type A = Case;\n',
    );
    writeFileSync(join(planted, "one.ts"), 'import type { Two } from "./two";\nexport type One = Two;\n');
    writeFileSync(join(planted, "two.ts"), 'import type { One } from "./one";\nexport type Two = One | 1;\n');
    writeFileSync(join(planted, "listed.ts"), 'export { solveSection } from "../../engine/index";\n');
    const found = broken(await cruised(["shared/numerics/planted"]));
    expect(found.join("\n")).toContain("the public list is for others: shared/numerics/planted/listed.ts");
    expect(found.join("\n")).toContain("shared/numerics upward: shared/numerics/planted/upward.ts");
    expect(found.join("\n")).toContain("circle of files: shared/numerics/planted/one.ts");
  });
});

describe("the engine", () => {
  test("takes nothing of Node", () => {
    const wrong = codeFiles("shared").filter((file) => /from "node:/.test(readFileSync(join(root, file), "utf8")));
    expect(wrong).toEqual([]);
  });
});
