import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it, vi } from "vitest";
import { inCaseFolders } from "../../src/cli/caseFolders";
import { sheetsCommand } from "../../src/cli/commands/sheets";
import { projectFolder, startCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

const folder = mkdtempSync(join(tmpdir(), "wakewright-sheets-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the sheets command", () => {
  it("writes score sheets with codes only, and the key apart; refuses to overwrite", async () => {
    const to = join(folder, "trial");
    const first = await startCommand("sheets", ["cases/harbour-trial.json", "--to", to]).end;
    expect([first.stderr, first.status]).toEqual(["", 0]);
    const names = first.stdout.trimEnd().split("\n");
    expect(names).toEqual(["score-sheets.html", "score-sheets.csv", "code-key.html", "code-key.csv"]);
    const [sheets, table, , key] = names.map((name) => readFileSync(join(to, name), "utf8"));
    for (const blind of [sheets, table]) expect(blind).not.toMatch(/Pebble|Barnacle|Breakwater/);
    expect(sheets.match(/<section>/g)).toHaveLength(12);
    expect(table.trimEnd().split("\r\n")).toHaveLength(1 + 12 * 3 * 4);
    expect(key).toMatch(/Pebble, round edge/);
    const again = await startCommand("sheets", ["cases/harbour-trial.json", "--to", to]).end;
    expect(again.status).toBe(2);
    expect(again.stderr).toMatch(/is there already; give --replace/);
  });

  it("gives each of several cases a folder of its own, one of them from standard input", async () => {
    const to = join(folder, "several");
    const tunnel = readFileSync(join(projectFolder, "cases/harbour-tunnel.json"), "utf8").replace(
      '"harbour-tunnel-runs.csv"',
      '"cases/harbour-tunnel-runs.csv"',
    );
    const end = await startCommand("sheets", ["cases/harbour-trial.json", "-", "--to", to], undefined, tunnel).end;
    expect([end.stderr, end.status]).toEqual(["", 0]);
    const names = end.stdout.trimEnd().split("\n");
    expect(new Set(names.map((name) => name.split("/")[0]))).toEqual(new Set(["harbour-trial", "standard-input"]));
    for (const name of names) expect(readFileSync(join(to, name), "utf8")).not.toBe("");
  });

  it("refuses cases that would go into the same folder, also where capitals are not told apart", () => {
    const made = [{ name: "a.txt", content: "a" }];
    const files = ["x/Trial.json", "y/trial.json"].map((file) => ({ file, made }));
    expect(inCaseFolders(files)).toMatchObject({
      ok: false,
      problem: { message: expect.stringMatching(/^y\/trial\.json: .*same folder, trial, as x\/Trial\.json/) },
    });
    expect(inCaseFolders(files.slice(1))).toEqual({ ok: true, value: made });
  });

  it("refuses a case without anything to fill in", async () => {
    const { status, stderr } = await startCommand("sheets", ["cases/cylinder-rough.json", "--to", folder]).end;
    expect(status).toBe(2);
    expect(stderr).toMatch(/has nothing to fill in; sheets need a tunnel test or a player trial/);
  });

  it("names what is wrong with its arguments on one line", () => {
    expect(sheetsCommand.read([])).toMatchObject({ ok: false });
    expect(sheetsCommand.read(["a.json"])).toMatchObject({
      ok: false,
      problem: { message: "--to FOLDER is missing; it must be the folder that the files go to" },
    });
    expect(sheetsCommand.read(["a.json", "--to", "x", "--bare"])).toMatchObject({ ok: false });
    expect(sheetsCommand.read(["a.json", "--to", "x"])).toEqual({
      ok: true,
      value: { files: ["a.json"], folder: "x", isReplacing: false },
    });
  });
});
