import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { handoffCommand } from "../../src/cli/commands/handoff";
import { writeFolder } from "../../src/cli/outputFolder";
import { entryWith, puckCaseDocument } from "../puck/puckDocuments";
import { startCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

let folder: string;
let path: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-handoff-"));
  path = join(folder, "case.json");
  writeFileSync(
    path,
    JSON.stringify(puckCaseDocument({ baselines: [entryWith("Gull")], handoff: { date: "2026-03-01" } })),
  );
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function run(args: readonly string[]) {
  return startCommand("hand-off", args).end;
}

describe("the hand-off command", () => {
  it("writes a folder whole, refuses to overwrite, and replaces when told to", async () => {
    const to = join(folder, "deep", "gull");
    const first = await run([path, "--puck", "Gull", "--to", to]);
    expect([first.stderr, first.status]).toEqual(["", 0]);
    const names = first.stdout.trimEnd().split("\n");
    expect(readdirSync(to).sort()).toEqual([...names].sort());
    expect(names).toHaveLength(13);
    for (const name of names) expect(statSync(join(to, name)).size).toBeGreaterThan(100);
    expect(readdirSync(join(folder, "deep"))).toEqual(["gull"]);

    writeFileSync(join(to, "gull-plan.csv"), "mine");
    writeFileSync(join(to, "notes.txt"), "mine");
    const again = await run([path, "--puck", "Gull", "--to", to]);
    expect(again.stderr).toMatch(
      /^--to .*gull-profile\.csv is there already; give --replace to replace it, or another folder\n$/,
    );
    expect(again.status).toBe(2);
    expect(readFileSync(join(to, "gull-plan.csv"), "utf8")).toBe("mine");

    const replaced = await run([path, "--puck", "Gull", "--to", to, "--replace"]);
    expect(replaced.status).toBe(0);
    expect(readFileSync(join(to, "gull-plan.csv"), "utf8")).toContain("xMillimetres");
    expect(readFileSync(join(to, "notes.txt"), "utf8")).toBe("mine");
    expect(readdirSync(join(folder, "deep"))).toEqual(["gull"]);
  });

  it("writes the same puck of several cases, each into a folder with the name of its file", async () => {
    const other = join(folder, "other.json");
    writeFileSync(other, JSON.stringify(puckCaseDocument({ baselines: [entryWith("Gull"), entryWith("Tern")] })));
    const to = join(folder, "both");
    const both = await run([path, other, "--puck", "Gull", "--to", to]);
    expect([both.stderr, both.status]).toEqual(["", 0]);
    const names = both.stdout.trimEnd().split("\n");
    expect(names).toHaveLength(26);
    for (const name of names) expect(statSync(join(to, name)).size).toBeGreaterThan(100);
    expect(readdirSync(to).sort()).toEqual(["case", "other"]);

    const missing = await run([path, other, "--puck", "Tern", "--to", join(folder, "none")]);
    expect(missing.stderr).toMatch(/^--puck Tern: no puck of .*case\.json has this name/);
    expect([missing.status, readdirSync(folder).includes("none")]).toEqual([2, false]);
  });

  it.each([
    ["an unknown puck", () => ["--puck", "Tern", "--to", join(folder, "x")], /--puck Tern: .*must be one of "Gull"/],
    ["an unknown option", () => ["--force"], /--force.*the options are --puck NAME, --to FOLDER, --replace/],
    ["a folder under a file", () => ["--puck", "Gull", "--to", join(path, "x")], /cannot be written: /],
  ])("refuses %s on one line, with status 2 and no stack trace", async (_what, args, message) => {
    const end = await run([path, ...args()]);
    expect(end.stderr).toMatch(/^[^\n]+\n$/);
    expect(end.stderr).toMatch(message);
    expect(end.stderr).not.toMatch(/\bat .*:\d+:\d+|node:internal/);
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });
});

describe("writeFolder(folder, shownName, files, isReplacing)", () => {
  const files = [
    { name: "a.txt", content: "a" },
    { name: "b.bin", content: new Uint8Array([1, 2]) },
  ];

  it("makes the folder with its files, open to others as the user's own folders are", () => {
    const to = join(folder, "made");
    expect(writeFolder(to, "TO", files, false).ok).toBe(true);
    expect(readdirSync(to).sort()).toEqual(["a.txt", "b.bin"]);
    mkdirSync(join(folder, "own"));
    expect(statSync(to).mode).toBe(statSync(join(folder, "own")).mode);
  });

  it("takes files in folders of it, whether it is there or not, and leaves what stands beside them", () => {
    const nested = [
      { name: "one/a.txt", content: "1" },
      { name: "two/a.txt", content: "2" },
    ];
    const to = join(folder, "nested");
    expect(writeFolder(to, "TO", nested.slice(0, 1), false).ok).toBe(true);
    writeFileSync(join(to, "one", "notes.txt"), "mine");
    expect(writeFolder(to, "TO", nested, false)).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("one/a.txt is there already") },
    });
    expect(readdirSync(to)).toEqual(["one"]);
    expect(writeFolder(to, "TO", nested, true).ok).toBe(true);
    expect(readFileSync(join(to, "two", "a.txt"), "utf8")).toBe("2");
    expect(readdirSync(join(to, "one")).sort()).toEqual(["a.txt", "notes.txt"]);
  });

  it("refuses a file in place of the folder, and a folder in place of a file", () => {
    mkdirSync(join(folder, "taken", "a.txt"), { recursive: true });
    const refusals = [writeFolder(path, "TO", files, true), writeFolder(join(folder, "taken"), "TO", files, true)];
    expect(refusals.map((result) => (result.ok ? "" : result.problem.message))).toEqual([
      "--to TO: exists and is not a folder; it must be the path of a folder",
      "--to TO: a.txt is there and is not a regular file",
    ]);
    expect(readdirSync(join(folder, "taken"))).toEqual(["a.txt"]);
  });
});

describe("the arguments of hand-off", () => {
  it("of a file, a puck and a folder asks for a run", () => {
    expect(handoffCommand.read(["a.json", "--puck", "Gull", "--to", "b", "--replace"])).toEqual({
      ok: true,
      value: { files: ["a.json"], puck: "Gull", folder: "b", isReplacing: true },
    });
    expect(handoffCommand.read(["--help"])).toEqual({ ok: true, value: "help" });
    expect(handoffCommand.help).toContain("--to FOLDER");
  });

  it.each([
    [[], /no case file was named/],
    [["a.json", "--to", "x"], /--puck NAME is missing/],
    [["a.json", "--puck", "Gull"], /--to FOLDER is missing/],
  ])("of %j is a problem of one line", (args, message) => {
    const result = handoffCommand.read(args);
    if (result.ok) throw new Error("was accepted");
    expect(result.problem.message).toMatch(message);
  });
});
