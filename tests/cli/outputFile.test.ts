import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { beginOutputFile, type OutputFile } from "../../src/cli/outputFile";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-output-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function begin(path: string, forbidden: string[] = []): OutputFile {
  const output = beginOutputFile(path, path, forbidden);
  if (!output.ok) throw new Error(output.problem.message);
  return output.value;
}

describe("beginOutputFile(path)", () => {
  it("puts the file in place only when it is committed", () => {
    const path = join(folder, "results.json");
    const output = begin(path);
    expect(existsSync(path)).toBe(false);
    expect(output.commit("all of it").ok).toBe(true);
    expect(readFileSync(path, "utf8")).toBe("all of it");
    expect(readdirSync(folder)).toEqual(["results.json"]);
  });

  it("leaves an older file as it was and no trace when it is discarded", () => {
    const path = join(folder, "results.json");
    writeFileSync(path, "older");
    begin(path).discard();
    expect(readFileSync(path, "utf8")).toBe("older");
    expect(readdirSync(folder)).toEqual(["results.json"]);
  });

  it("replaces what a symbolic link points to, not the link", () => {
    writeFileSync(join(folder, "real.json"), "older");
    symlinkSync(join(folder, "real.json"), join(folder, "link.json"));
    begin(join(folder, "link.json")).commit("newer");
    expect(readFileSync(join(folder, "real.json"), "utf8")).toBe("newer");
  });

  it.each([
    ["a missing folder", () => join(folder, "missing", "r.json"), /no such file or directory/],
    ["a folder", () => folder, /not a regular file/],
    ["a path through a file", () => join(folder, "case.json", "r.json"), /not a directory/],
    ["a device", () => "/dev/null", /not a regular file/],
    ["the input", () => join(folder, "case.json"), /is the case file itself/],
  ])("refuses %s", (_what, path, message) => {
    writeFileSync(join(folder, "case.json"), "{}");
    mkdirSync(join(folder, "sub"));
    const output = beginOutputFile(path(), "OUT", [join(folder, "case.json")]);
    if (output.ok) throw new Error("was accepted");
    expect(output.problem.message).toMatch(message);
    expect(output.problem.message).toMatch(/^--out OUT: /);
    expect(readdirSync(folder).sort()).toEqual(["case.json", "sub"]);
  });
});
