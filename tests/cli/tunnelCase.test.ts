import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, describe, expect, it, vi } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { readCsvTable } from "../../shared/tables/csvTable";
import { projectFolder, runCaseCommand, startCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

const folder = mkdtempSync(join(tmpdir(), "wakewright-tunnel-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Copies the demo with another run table beside it. */
function copied(name: string, change: (csv: string) => string): string {
  const file = join(folder, name);
  copyFileSync(join(projectFolder, "cases/harbour-tunnel.json"), file);
  const csv = readFileSync(join(projectFolder, "cases/harbour-tunnel-runs.csv"), "utf8");
  writeFileSync(join(folder, "harbour-tunnel-runs.csv"), change(csv));
  return file;
}

describe("the case command with a tunnel test", () => {
  it("reads the table beside the case, and JSON and CSV have the same drag", async () => {
    const file = "cases/harbour-tunnel.json";
    const json = await runCaseCommand([file, "--json"]);
    expect(json.status).toBe(0);
    const { tunnel, problems } = JSON.parse(json.stdout) as CaseResults;
    expect(problems).toEqual([]);
    const csv = await runCaseCommand([file, "--csv", "--tunnel"]);
    const { data } = Papa.parse<Record<string, string>>(csv.stdout, { header: true, skipEmptyLines: true });
    expect(data.map(({ dragCoefficient }) => Number(dragCoefficient))).toEqual(
      tunnel?.reduction?.points.map(({ dragCoefficient }) => dragCoefficient),
    );
  });

  it("names a wrong cell by file, row and column, on one line", async () => {
    const file = copied("wrong.json", (csv) => csv.replace("183.16", "183.l6"));
    const { status, stderr, stdout } = await runCaseCommand([file]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(
      /^\S*wrong\.json: tunnel\.runs: row 6, column dynamicPressurePascals: "183\.l6" is not a number\n$/,
    );
  });

  it("names a table that is not there, and a case without a tunnel test", async () => {
    const file = copied("lost.json", (csv) => csv);
    writeFileSync(file, readFileSync(file, "utf8").replace("harbour-tunnel-runs.csv", "nowhere.csv"));
    const lost = await runCaseCommand([file]);
    expect(lost.status).toBe(2);
    expect(lost.stderr).toMatch(/tunnel\.runs\.data: nowhere\.csv: cannot be read/);
    const none = await runCaseCommand(["cases/cylinder-smooth.json", "--csv", "--tunnel"]);
    expect(none.stderr).toMatch(/tunnel is missing; --tunnel needs a case with a tunnel test/);
  });

  it("the sheets command writes a run sheet with a row for every run of the case's plan", async () => {
    const to = join(folder, "sheets");
    const { status, stdout } = await startCommand("sheets", ["cases/harbour-tunnel.json", "--to", to]).end;
    expect([status, stdout]).toEqual([0, "run-sheet.csv\nrun-sheet.html\n"]);
    const table = readCsvTable(readFileSync(join(to, "run-sheet.csv"), "utf8"));
    const { stdout: json } = await runCaseCommand(["cases/harbour-tunnel.json", "--json"]);
    const planned: number = JSON.parse(json).tunnel.plan.runs.length;
    expect(planned).toBeGreaterThan(20);
    expect(table.ok && table.value.rows.length).toBe(planned);
    expect(readFileSync(join(to, "run-sheet.html"), "utf8")).toContain("Run sheet: Harbour League puck edge-on");
  });
});
