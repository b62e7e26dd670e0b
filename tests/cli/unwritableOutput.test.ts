import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { beginOutputFile } from "../../src/cli/outputFile";
import { writeFolder } from "../../src/cli/outputFolder";
import { temporaryPath } from "../../src/cli/temporaryFiles";
import { complaints, programFile, projectFolder } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-unwritable-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** EX_IOERR of BSD's sysexits.h: an error occurred while doing I/O on some file. */
const ioError = 74;

/** Runs a command line of a shell, in which `run` is the program; folders may have blanks in their names. */
function shell(line: string): { readonly status: number | null; readonly stderr: string } {
  const { npm_lifecycle_event: _event, INIT_CWD: _place, ...env } = process.env;
  return spawnSync("bash", ["-c", `run() { "$NODE" "$PROGRAM" "$@"; }; ${line}`], {
    cwd: projectFolder,
    encoding: "utf8",
    env: { ...env, NODE: process.execPath, PROGRAM: programFile },
  });
}

describe.skipIf(!existsSync("/dev/full"))("output that cannot be written", () => {
  it.each(["case --schema", "--help", "case --help"])(
    "%s to a full device ends in one line and a code of its own",
    (args) => {
      const { status, stderr } = shell(`run ${args} > /dev/full`);
      expect(stderr).toMatch(
        /^standard output: cannot be written: no space left on the device; 0 of \d+ bytes went out\n$/,
      );
      expect(status).toBe(ioError);
    },
  );

  it("a disk that fills up after the first part is noticed as well", () => {
    // The limit lets 1024 bytes through, as a nearly full disk would: the first write is cut short without any error.
    const target = join(folder, "schema.json");
    const { status, stderr } = shell(`trap '' XFSZ; ulimit -f 1; run case --schema > ${target}`);
    expect(statSync(target).size).toBe(1024);
    expect(stderr).toMatch(/^standard output: cannot be written: .*; 1024 of \d+ bytes went out\n$/);
    expect(status).toBe(ioError);
  });

  it("a reader that has seen enough is no failure, nor is a standard error that nobody can read", () => {
    expect(shell("set -o pipefail; run case --schema | head -c 10 > /dev/null").status).toBe(0);
    expect(shell("run case no-such-file 2> /dev/full").status).toBe(2);
  });

  it("--out on a disk that fills up leaves what was there, and no part", () => {
    const target = join(folder, "results.csv");
    writeFileSync(target, "older");
    const { status, stderr } = shell(
      `trap '' XFSZ; ulimit -f 1; run case cases/cylinder-smooth.json --json --out ${target}`,
    );
    expect(complaints(stderr)).toMatch(
      /^--out .*results\.csv: cannot be written: the file would be larger than is allowed\n$/,
    );
    expect(status).toBe(ioError);
    expect(readFileSync(target, "utf8")).toBe("older");
    expect(readdirSync(folder)).toEqual(["results.csv"]);
  });
});

describe("what a killed run left", () => {
  /** The same name as if another process had made it. */
  const leftBy = (target: string, id: number) => temporaryPath(target).replace(`${process.pid}.tmp`, `${id}.tmp`);
  const dead = () => spawnSync(process.execPath, ["--version"]).pid;

  it("is cleared by the next run that writes there; a run that is at work keeps its part", () => {
    const target = join(folder, "results.json");
    writeFileSync(leftBy(target, dead()), "half");
    writeFileSync(leftBy(target, process.ppid), "at work");
    const output = beginOutputFile(target, target, []);
    if (!output.ok) throw new Error(output.problem.message);
    output.value.commit("whole");
    expect(readdirSync(folder).sort()).toEqual([basename(leftBy(target, process.ppid)), "results.json"].sort());
  });

  it("is cleared for folders as well", () => {
    const target = join(folder, "sheets");
    mkdirSync(leftBy(target, dead()));
    writeFileSync(join(leftBy(target, dead()), "..", "other.tmp"), "not ours");
    expect(writeFolder(target, target, [{ name: "one.csv", content: "1" }], false).ok).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["other.tmp", "sheets"]);
  });
});
