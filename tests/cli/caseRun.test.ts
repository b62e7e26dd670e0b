import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { caseWith } from "../case/caseDocuments";
import { complaints, projectFolder, runCaseCommand, startCase } from "./caseCommand";

// Every test starts processes of its own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-run-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const smallCase = caseWith({
  sections: [{ family: "circle", name: "pool circle", diameterMetres: 0.08 }],
  panelCount: 80,
  speedsMetresPerSecond: [1, 1.5],
  branches: "both",
});

/** Long enough to be interrupted: hundreds of shapes, one step each. */
const longCase = caseWith({
  sections: [
    {
      family: "roundedRectangle",
      lengthMetres: 0.08,
      heightMetres: 0.03,
      edgeRadiusMetres: { from: 0.003, to: 0.015, count: 400 },
    },
  ],
  panelCount: 400,
  branches: "rising",
});

function fileOf(document: unknown): string {
  const path = join(folder, "case.json");
  writeFileSync(path, JSON.stringify(document));
  return path;
}

function resultsOf(json: string): CaseResults {
  return JSON.parse(json);
}

describe("the case command", () => {
  it("--json prints one document with a row for every condition and branch", async () => {
    const end = await runCaseCommand([fileOf(smallCase), "--json"]);
    expect(complaints(end.stderr)).toBe("");
    const { results } = resultsOf(end.stdout);
    expect(results.map(({ section, speedMetresPerSecond, branch }) => [section, speedMetresPerSecond, branch])).toEqual(
      [
        ["pool circle", 1, "rising"],
        ["pool circle", 1, "falling"],
        ["pool circle", 1.5, "rising"],
        ["pool circle", 1.5, "falling"],
      ],
    );
    expect(end.status).toBe(results.every(({ converged }) => converged) ? 0 : 1);
    expect(results[0].reynolds).toBeCloseTo(0.08 / 0.8539e-6, -2);
    expect(results[0].referenceWidth).toBeCloseTo(0.08, 6);
  });

  it("gives the same document every time", async () => {
    const path = fileOf(smallCase);
    const [first, second] = await Promise.all([runCaseCommand([path, "--json"]), runCaseCommand([path, "--json"])]);
    expect(second.stdout).toBe(first.stdout);
  });

  it("prints a table by default, with what the coefficients refer to and the caution", async () => {
    const end = await runCaseCommand([fileOf(smallCase)]);
    expect(end.stdout).toContain("frontal width x span");
    expect(end.stdout).toContain("Caution: Screening estimates");
    expect(end.stdout).toMatch(/pool circle \| D 80 mm \| incidence 0°/);
    expect(end.stdout).toMatch(/^ *9369\d +1 +rising/m);
  });

  it("--csv and --json agree", async () => {
    const path = fileOf(smallCase);
    const [csv, json] = await Promise.all([runCaseCommand([path, "--csv"]), runCaseCommand([path, "--json"])]);
    const parsed = Papa.parse<Record<string, unknown>>(csv.stdout, {
      header: true,
      dynamicTyping: true,
      skipEmptyLines: true,
    });
    expect(parsed.data.map((row) => row.dragCoefficient)).toEqual(
      resultsOf(json.stdout).results.map((row) => row.dragCoefficient),
    );
  });

  it("--out writes the whole file, nothing on standard output, and finds paths from where it stands", async () => {
    fileOf(smallCase);
    const end = await runCaseCommand(["case.json", "--json", "--out", "results.json"], folder);
    expect(end.stdout).toBe("");
    expect(readdirSync(folder).sort()).toEqual(["case.json", "results.json"]);
    expect(resultsOf(readFileSync(join(folder, "results.json"), "utf8")).results).toHaveLength(4);
  });

  it("runs through npm with nothing around its document", () => {
    const path = fileOf(smallCase);
    const end = spawnSync("npm", ["run", "--silent", "case", "--", path, "--json"], {
      cwd: projectFolder,
      encoding: "utf8",
      shell: process.platform === "win32",
    });
    expect(resultsOf(end.stdout).results).toHaveLength(4);
  });

  it("--schema prints the JSON Schema and --help the options", async () => {
    const [schema, help] = await Promise.all([runCaseCommand(["--schema"]), runCaseCommand(["--help"])]);
    const published: unknown = JSON.parse(readFileSync(join(projectFolder, "cases", "case.schema.json"), "utf8"));
    expect(JSON.parse(schema.stdout)).toEqual(published);
    expect(help).toMatchObject({ status: 0, stderr: "" });
    expect(help.stdout).toContain("Exit status");
  });

  it("is silent when the reader of its output stops early", () => {
    const path = fileOf(smallCase);
    const end = spawnSync("bash", ["-c", `node src/setup/wakewright.mjs case "${path}" --json | head -n 1`], {
      cwd: projectFolder,
      encoding: "utf8",
    });
    expect(complaints(end.stderr)).toBe("");
    expect(end.stdout).toBe("{\n");
  });
});

describe("the case command, when a result does not converge", () => {
  it("prints every result, marks that one, gives the reason and ends with status 1", async () => {
    // Lying on the floor at few panels this profile has no state whose layers separate where the wake says; the circle,
    // far from any floor, has.
    const path = fileOf(
      caseWith({
        sections: [
          {
            family: "roundedRectangle",
            lengthMetres: 0.08,
            heightMetres: 0.03,
            edgeRadiusMetres: 0.008,
            floorGapMetres: 0,
          },
          { family: "circle", diameterMetres: 0.05 },
        ],
        panelCount: 80,
        turbulencePercents: [0.5],
        speedsMetresPerSecond: [1],
        branches: "rising",
      }),
    );
    const [json, table] = await Promise.all([runCaseCommand([path, "--json"]), runCaseCommand([path])]);
    const document = resultsOf(json.stdout);
    expect(document.results.map(({ converged, dragCoefficient }) => [converged, dragCoefficient])).toEqual([
      [false, null],
      [true, expect.any(Number)],
    ]);
    expect(document.problems).toEqual([document.results[0].problem]);
    expect(json.status).toBe(1);
    expect(table.status).toBe(1);
    expect(table.stdout).toContain("NOT CONVERGED: rounded rectangle 80 x 30 mm");
    expect(table.stdout).toContain("2 results, 1 did not converge (marked)");
  });
});

describe("the case command, interrupted", () => {
  it.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)("by %s leaves no file behind and ends with status %d", async (signal, status) => {
    const path = fileOf(longCase);
    const { child, end } = startCase([path, "--out", join(folder, "results.json")]);
    // The temporary file shows that the work has begun.
    await expect.poll(() => readdirSync(folder).length, { timeout: 60_000, interval: 20 }).toBe(2);
    child.kill(signal);
    expect((await end).status).toBe(status);
    expect(readdirSync(folder)).toEqual(["case.json"]);
  });

  it("leaves an older output file as it was", async () => {
    const path = fileOf(longCase);
    writeFileSync(join(folder, "results.json"), "older");
    const { child, end } = startCase([path, "--out", join(folder, "results.json")]);
    await expect.poll(() => readdirSync(folder).length, { timeout: 60_000, interval: 20 }).toBe(3);
    child.kill("SIGINT");
    await end;
    expect(readdirSync(folder).sort()).toEqual(["case.json", "results.json"]);
    expect(readFileSync(join(folder, "results.json"), "utf8")).toBe("older");
  });

  it("shows progress on standard error while it works", async () => {
    const { child, end } = startCase([fileOf(longCase)]);
    let shown = "";
    child.stderr?.on("data", (text: string) => {
      shown += text;
    });
    await expect.poll(() => shown, { timeout: 60_000, interval: 50 }).toMatch(/^\d+ of 800 steps, \d+ s: .*rectangle/);
    child.kill("SIGINT");
    const { stdout } = await end;
    expect(stdout).toBe("");
  });
});
