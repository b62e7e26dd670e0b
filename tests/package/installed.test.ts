import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { parseSync } from "vite";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { findBrowser } from "../browser/findBrowser";
import { caseWith } from "../case/caseDocuments";
import { type InstalledPackage, installPackage, projectFolder, run } from "./installedPackage";

// Builds, packs and starts processes of its own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 300_000 });

let installed: InstalledPackage;
beforeAll(() => {
  installed = installPackage();
});
afterAll(() => installed?.remove());

/** The lines that the README promises. */
const fiveLines = `import { solveSection } from "wakewright";
const stream = { reynolds: 1.18e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 1e-3 };
const solved = solveSection({ section: { family: "circle", diameter: 0.08 } }, stream);
if (!solved.ok) throw new Error(solved.problem.message);
SHOW(solved.value.states[0].dragCoefficient);
`;

/** DNV-RP-C205 (edition 2025-04), smooth cylinder: Cd at Re 1.18e5, and how far the engine may be from it. */
const publishedDrag = { value: 1.211, within: 0.12 };

function expectPublishedDrag(text: string): void {
  expect(Math.abs(Number(text) - publishedDrag.value)).toBeLessThan(publishedDrag.within);
}

const program = () => join(installed.folder, "node_modules", ".bin", "wakewright");
const own = (path: string) => join(installed.folder, "node_modules", "wakewright", path);

describe("the package, packed and installed in an empty folder", () => {
  it("holds the built engine, its declarations, the command and the example cases, and nothing else", () => {
    const rest = installed.files.filter((file) => !/^(dist\/lib\/.*\.js|dist\/lib\/types\/.*\.d\.ts)$/.test(file));
    const cases = readdirSync(join(projectFolder, "cases")).map((file) => `cases/${file}`);
    expect(rest.sort()).toEqual([...cases, "LICENSE", "README.md", "package.json"].sort());
    for (const file of ["index.js", "wakewright.js", "types/engine/index.d.ts"]) {
      expect(installed.files).toContain(`dist/lib/${file}`);
    }
  });

  it("asks for the packages that its code imports, and for no other", () => {
    const asked = Object.keys(JSON.parse(readFileSync(own("package.json"), "utf8")).dependencies);
    const imported = installed.files
      .filter((file) => /\.(js|d\.ts)$/.test(file))
      .flatMap((file) => importedPackages(own(file)));
    expect([...new Set(imported)].sort()).toEqual(asked.sort());
  });

  it("gives the Cd of a cylinder in five lines, in Node", () => {
    writeFileSync(join(installed.folder, "five.mjs"), fiveLines.replace("SHOW", "console.log"));
    expectPublishedDrag(run(process.execPath, ["five.mjs"], installed.folder));
  });

  it("has declarations that a strict compiler takes by Node's rules, none of its own left out", () => {
    writeFileSync(join(installed.folder, "five.mts"), fiveLines.replace("SHOW", "((drag: number) => drag.toFixed(3))"));
    const strict = ["--strict", "--noEmit", "--module", "nodenext", "--target", "es2022", "--types", "", "five.mts"];
    const compiler = join(projectFolder, "node_modules", "typescript", "bin", "tsc");
    expect(run(process.execPath, [compiler, ...strict], installed.folder)).toBe("");
    writeFileSync(join(installed.folder, "wrong.mts"), fiveLines.replace("SHOW", "((drag: string) => drag)"));
    const wrong = [...strict.slice(0, -1), "wrong.mts"];
    expect(() => run(process.execPath, [compiler, ...wrong], installed.folder)).toThrow(/TS2345/);
  });

  it("gives the same in a browser, from a page's bundle", async () => {
    const page = join(installed.folder, "page");
    mkdirSync(page);
    writeFileSync(join(page, "index.html"), '<p id="drag"></p><script type="module" src="./five.js"></script>');
    writeFileSync(
      join(page, "five.js"),
      fiveLines.replace("SHOW", "((drag) => { document.getElementById('drag').textContent = drag; })"),
    );
    const bundler = join(projectFolder, "node_modules", "vite", "bin", "vite.js");
    run(process.execPath, [bundler, "build", page, "--logLevel", "warn"], installed.folder);
    const [script] = readdirSync(join(page, "dist", "assets"));
    const browser = await chromium.launch({ executablePath: findBrowser(), args: ["--headless", "--no-sandbox"] });
    try {
      const tab = await browser.newPage();
      await tab.setContent('<p id="drag"></p>');
      await tab.addScriptTag({ type: "module", content: readFileSync(join(page, "dist", "assets", script), "utf8") });
      await tab.waitForFunction("document.getElementById('drag').textContent !== ''");
      expectPublishedDrag((await tab.textContent("#drag")) ?? "");
    } finally {
      await browser.close();
    }
  });
});

describe("the installed command", () => {
  it("says the package's version", () => {
    const { version } = JSON.parse(readFileSync(own("package.json"), "utf8"));
    expect(run(program(), ["--version"], installed.folder)).toBe(`${version}\n`);
  });

  it("runs an example case from where the user stands", () => {
    const example = own("cases/cylinder-smooth.json");
    const { results } = JSON.parse(run(program(), ["case", example, "--json"], installed.folder));
    const near = results.find((row: { reynolds: number }) => Math.abs(row.reynolds - 1.12e5) < 1e4);
    expectPublishedDrag(near.dragCoefficient);
  });

  it.each([[["--help"]], [["--version"]], [["case", "--help"]], [["trade-off", "--help"]]])(
    "loads nothing but its own start for %j",
    (args) => {
      const loaded = loadedBy(own("dist/lib/wakewright.js"), args);
      expect(loaded.length).toBeGreaterThan(1);
      expect(loaded.filter((address) => !address.includes("/node_modules/wakewright/dist/lib/"))).toEqual([]);
      expect(loaded.filter((address) => /solve|openCase|readCase/.test(address))).toEqual([]);
    },
  );

  it("loads no compiler, runner or bundler to run a case, also from a checkout that is built", () => {
    const builders = /node_modules\/(typescript|@typescript|tsx|esbuild|vite|rolldown|@rolldown)\//;
    const small = { sections: [{ family: "circle", diameterMetres: 0.08 }], panelCount: 80, branches: "rising" };
    const example = join(installed.folder, "small.json");
    writeFileSync(example, JSON.stringify(caseWith({ ...small, speedsMetresPerSecond: [1] })));
    const checkout = join(projectFolder, "src", "setup", "wakewright.mjs");
    run(process.execPath, [checkout, "--version"], installed.folder);
    for (const start of [own("dist/lib/wakewright.js"), checkout]) {
      const loaded = loadedBy(start, ["case", example, "--csv", "--out", join(installed.folder, "small.csv")]);
      expect(loaded.some((address) => address.includes("node_modules/zod/"))).toBe(true);
      expect(loaded.filter((address) => builders.test(address))).toEqual([]);
    }
  });
});

/** The addresses of the files that a program loads, Node's own left out. */
function loadedBy(start: string, args: readonly string[]): string[] {
  const list = join(installed.folder, "loaded.txt");
  if (existsSync(list)) rmSync(list);
  const watcher = new URL("./loadedFiles.mjs", import.meta.url).href;
  run(process.execPath, ["--import", watcher, start, ...args], installed.folder, { LOADED_FILES: list });
  return readFileSync(list, "utf8")
    .split("\n")
    .filter((address) => address !== "" && !address.startsWith("node:"));
}

/** Packages that a file imports; a package of types stands for one that has none. */
function importedPackages(file: string): string[] {
  const { staticImports, staticExports } = parseSync(file, readFileSync(file, "utf8")).module;
  return [...staticImports, ...staticExports.flatMap(({ entries }) => entries)]
    .flatMap(({ moduleRequest }) => (moduleRequest ? [moduleRequest.value] : []))
    .filter((specifier) => !/^(\.|node:)/.test(specifier))
    .map((specifier) => specifier.split("/", specifier.startsWith("@") ? 2 : 1).join("/"))
    .map((name) => (file.endsWith(".d.ts") && name === "ndarray" ? "@types/ndarray" : name));
}
