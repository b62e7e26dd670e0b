import { mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
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
});

describe("the engine", () => {
  test("takes nothing of Node", () => {
    const wrong = codeFiles("shared").filter((file) => /from "node:/.test(readFileSync(join(root, file), "utf8")));
    expect(wrong).toEqual([]);
  });
});
