import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { openCaseFile } from "../../src/cli/openCaseFile";
import { caseWith } from "../case/caseDocuments";
import { entryWith, puckCaseDocument, rules } from "../puck/puckDocuments";
import { runCaseCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-pucks-"));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function fileOf(name: string, document: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof document === "string" ? document : JSON.stringify(document));
  return path;
}

const openWater = { orientationShares: { upright: 1, flat: 1, faceOn: 1 }, flatPlace: "openWater" };

describe("the case command on a case with pucks", () => {
  it("--json has the pucks beside the results, with the rules file found from the case's folder", async () => {
    fileOf("rules.json", rules);
    const path = fileOf(
      "pucks.json",
      puckCaseDocument({ rules: "rules.json", play: openWater, candidates: [entryWith("other")] }),
    );
    const end = await runCaseCommand([path, "--json"], "/");
    expect(end.status).toBe(0);
    const { results, pucks, cautions }: CaseResults = JSON.parse(end.stdout);
    expect(results.every(({ section, reynolds, regime }) => section !== "" && reynolds > 0 && regime !== null)).toBe(
      true,
    );
    expect(pucks?.map(({ name, rules: judged }) => [name, judged?.ruleSet])).toEqual([
      ["Harbour League baseline", "Test rules"],
      ["other", "Test rules"],
    ]);
    expect(cautions.join(" ")).toContain("Lead is poisonous");
  });

  it("the table has the verdicts, and ends with the comparison; --csv --pucks is one table of pucks", async () => {
    const path = fileOf("table.json", puckCaseDocument({ play: openWater, candidates: [entryWith("other")] }));
    const [table, csv] = await Promise.all([runCaseCommand([path]), runCaseCommand([path, "--csv", "--pucks"])]);
    expect(table.stdout).toMatch(/^The candidate is not shown to beat a baseline/m);
    expect(table.stdout).toMatch(/^Compared with .*: change of the drag/m);
    expect(table.stdout.trimEnd().split("\n").at(-1)).toMatch(/ other .*not decided|less|more/);
    const { data, errors } = Papa.parse<Record<string, string>>(csv.stdout, { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(2 * 2 * 3);
    expect(data[0].orientation).toBe("upright");
  });

  it.each([
    [
      "a file that is not there",
      "gone.json",
      null,
      /case\.json: puck\.rules: gone\.json: cannot be read: no such file/,
    ],
    ["a folder", ".", null, /puck\.rules: \.: is a directory; it must be a rules file/],
    ["a file of another kind", "odd.json", "{}", /puck\.rules: odd\.json: .*wakewrightRules is missing/],
    ["a file that is no JSON", "words.json", "name: x", /puck\.rules: words\.json: /],
  ])("finds no rules in %s", (_what, rulesPath, content, message) => {
    if (content !== null) fileOf(rulesPath, content);
    const opened = openCaseFile(fileOf("case.json", puckCaseDocument({ rules: rulesPath })), "case.json");
    if (opened.ok) throw new Error("was accepted");
    expect(opened.problem.message).toMatch(message);
    expect(opened.problem.message).not.toContain("\n");
  });

  it.each([
    ["rules that are not there", { rules: "gone.json" }, [], /bad\.json: puck\.rules: gone\.json: cannot be read/],
    [
      "a puck that cannot be",
      { baselines: [entryWith("flat", { edge: { kind: "radius", edgeRadiusMetres: 0.018 } })] },
      [],
      /puck\.baselines\[0\]\.puck: edge radius 18 mm exceeds half the height, 15 mm/,
    ],
    ["--pucks where there are none", null, ["--csv", "--pucks"], /puck is missing; --pucks needs a case with a puck/],
  ])("refuses %s on one line, with status 2 and no stack trace", async (_what, block, options, message) => {
    const end = await runCaseCommand([
      fileOf("bad.json", block === null ? caseWith({}) : puckCaseDocument(block)),
      ...options,
    ]);
    expect(end.stderr).toMatch(/^[^\n]+\n$/);
    expect(end.stderr).toMatch(message);
    expect(end.stderr).not.toMatch(/\bat .*:\d+:\d+|node:internal/);
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });
});
