import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { generatedBy } from "../../shared/document/generatedBy";
import { joinedCsv, joinedTables } from "../../src/cli/severalCases";
import { subCommands } from "../../src/cli/subCommands";
import { caseWith } from "../case/caseDocuments";
import { complaints, projectFolder, startCommand } from "./caseCommand";

// Some tests start processes of their own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 300_000 });

const { version }: { version: string } = JSON.parse(readFileSync(join(projectFolder, "package.json"), "utf8"));

const circle = (diameterMetres: number) =>
  caseWith({
    sections: [{ family: "circle", diameterMetres }],
    panelCount: 80,
    speedsMetresPerSecond: [1],
    branches: "rising",
  });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-several-"));
  writeFileSync(join(folder, "small.json"), JSON.stringify(circle(0.04)));
  writeFileSync(join(folder, "large.json"), JSON.stringify(circle(0.08)));
  writeFileSync(join(folder, "wrong.json"), JSON.stringify(circle(-1)));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("wakewright", () => {
  it("--help names every sub-command, --version the package's version", async () => {
    const [help, said] = await Promise.all([startCommand("--help", []).end, startCommand("--version", []).end]);
    for (const { name, about } of subCommands) expect(help.stdout).toMatch(new RegExp(`^  ${name} +${about}$`, "m"));
    expect(help).toMatchObject({ status: 0, stderr: "" });
    expect(said).toEqual({ status: 0, signal: null, stdout: `${version}\n`, stderr: "" });
    expect(generatedBy).toBe(`Wakewright ${version}`);
  });

  it.each([
    ["drag", /^"drag" is not a sub-command; name one of case, next, trade-off, hand-off, sheets, outline /],
    ["--json", /^"--json" is not a sub-command/],
  ])("refuses %s on one line, with status 2", async (name, message) => {
    const end = await startCommand(name, []).end;
    expect(end.stderr).toMatch(message);
    expect(end.stderr).toMatch(/^[^\n]+\n$/);
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });
});

describe("every sub-command", () => {
  it.each(subCommands.map((listed) => [listed.name, listed]))(
    "%s explains itself, with an example",
    async (name, listed) => {
      const { help, read } = await listed.load();
      expect(help).toContain(`\n  wakewright ${name} `);
      const [, examples] = help.split(/^Examples?, .*:$/m);
      const [example] = examples.trim().split("\n");
      expect(example).toMatch(new RegExp(`^wakewright ${name} `));
      // The words of the example as a shell gives them.
      const words = [...example.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);
      expect(read(words.slice(2))).toMatchObject({ ok: true });
      expect(help).toMatch(/Exit status: 0 done; .*2 unusable input/s);
      expect(help.split("\n").filter((line) => line.length > 120)).toEqual([]);
      expect(help).toContain(`\n  wakewright ${name} FILE... `);
      expect(help).toMatch(/- for\s+standard input/);
      expect(read([...words.slice(2), "another.json", "-"])).toMatchObject({ ok: true });
      expect(read(["--help"])).toEqual({ ok: true, value: "help" });
      expect(read([])).toMatchObject({
        ok: false,
        problem: { message: expect.stringMatching(/^no (case file|outline) was named/) },
      });
    },
  );
});

describe("several case files", () => {
  it("give one array of documents, one of them from standard input, with paths from where the user stands", async () => {
    const end = await startCommand("case", ["large.json", "-", "--json"], folder, JSON.stringify(circle(0.04))).end;
    expect([complaints(end.stderr), end.status]).toEqual(["", 0]);
    const documents: { file: string; results: { referenceWidth: number }[] }[] = JSON.parse(end.stdout);
    expect(documents.map(({ file, results }) => [file, results.map(({ referenceWidth }) => referenceWidth)])).toEqual([
      ["large.json", [expect.closeTo(0.08, 6)]],
      ["standard input", [expect.closeTo(0.04, 6)]],
    ]);
  });

  it("are all read before one is run, and an unusable one is named", async () => {
    const end = await startCommand("case", ["small.json", "wrong.json", "--out", "all.txt"], folder).end;
    expect(end.stderr).toMatch(
      /^wrong\.json: sections\[0\]\.diameterMetres is -1; it must be a number above 0[^\n]*\n$/,
    );
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });

  it("give one CSV with a first column of names, cells as they were", () => {
    const text = (drag: string) => `section,drag\r\n"a, ""b""",${drag}\r\nc,\r\n`;
    const joined = joinedCsv([
      { file: "one.json", text: text("1.10") },
      { file: "=two.json", text: text("2") },
    ]);
    expect(Papa.parse(joined.trimEnd()).data).toEqual([
      ["file", "section", "drag"],
      ["one.json", 'a, "b"', "1.10"],
      ["one.json", "c", ""],
      ["'=two.json", 'a, "b"', "2"],
      ["'=two.json", "c", ""],
    ]);
    expect(joinedCsv([{ file: "one.json", text: text("1") }])).toBe(text("1"));
  });

  it("give tables under the files' names", () => {
    const tables = [
      { file: "one.json", text: "A\n" },
      { file: "two.json", text: "B\n" },
    ];
    expect(joinedTables(tables)).toBe("one.json\n\nA\n\ntwo.json\n\nB\n");
    expect(joinedTables(tables.slice(0, 1))).toBe("A\n");
  });
});

describe("standard input", () => {
  it.each([
    ["text that is no case", "length = 80 mm", /^standard input: not a JSON document/],
    ["nothing", "", /^standard input: /],
    [
      "more than a case may have",
      `{${" ".repeat(6e6)}`,
      /^standard input: goes on after 5 MB; a case must have at most that/,
    ],
  ])("with %s is refused on one line, with status 2", async (_what, text, message) => {
    const end = await startCommand("case", ["-"], folder, text).end;
    expect(end.stderr).toMatch(message);
    expect(end.stderr).toMatch(/^[^\n]+\n$/);
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });

  it.each([["trade-off"], ["sheets"], ["hand-off"]])("is read by %s too", async (name) => {
    const options =
      { "trade-off": [], sheets: ["--to", "out"], "hand-off": ["--puck", "Gull", "--to", "out"] }[name] ?? [];
    const end = await startCommand(name, ["-", ...options], folder, JSON.stringify(circle(0.04))).end;
    expect(end.stderr).toMatch(/^standard input: (puck is missing|has nothing to fill in)/);
    expect(end.status).toBe(2);
  });
});
