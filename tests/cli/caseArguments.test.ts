import { describe, expect, it } from "vitest";
import { caseCommand } from "../../src/cli/commands/case";

describe("the arguments of case", () => {
  it.each([
    [["a.json"], "table", null],
    [["a.json", "--json"], "json", null],
    [["--csv", "a.json", "--out", "b.csv"], "csv", "b.csv"],
    [["--out=b.txt", "a.json"], "table", "b.txt"],
    [["--json", "--", "-a.json"], "json", null],
    [["--csv", "--pucks", "a.json"], "pucks", null],
    [["--csv", "--measurements", "a.json"], "measurements", null],
  ])("of %j asks for a %s into %s", (args, format, out) => {
    expect(caseCommand.read(args)).toMatchObject({ ok: true, value: { wants: "run", format, out } });
  });

  it.each([[["--help"]], [["-h"]], [["a.json", "--help"]]])("of %j asks for help", (args) => {
    expect(caseCommand.read(args)).toEqual({ ok: true, value: "help" });
    expect(caseCommand.help).toContain("--out PATH");
  });

  it("of --schema asks for the JSON Schema", () => {
    expect(caseCommand.read(["--schema"])).toEqual({ ok: true, value: { wants: "schema" } });
  });

  it.each([
    [[], /no case file was named/],
    [["-", "-"], /standard input \(-\) was named twice/],
    [
      ["a.json", "--xml"],
      /--xml.*the options are --json, --csv, --pucks, --comparisons, --next, --tunnel, --trial, --measurements, --durability, --cost, --choice, --out PATH, --schema and --help/,
    ],
    [["a.json", "--out"], /the options are/],
    [["a.json", "--out="], /--out is empty/],
    [["a.json", "--json", "--csv"], /exclude each other/],
    [["a.json", "--json=yes"], /the options are/],
    [["a.json", "--pucks"], /--pucks goes with --csv/],
    [["a.json", "--measurements"], /--measurements goes with --csv/],
    [["a.json", "--csv", "--pucks", "--measurements"], /exclude each other/],
  ])("of %j is a problem of one line", (args, message) => {
    const result = caseCommand.read(args);
    if (result.ok) throw new Error("was accepted");
    expect(result.problem.message).toMatch(message);
    expect(result.problem.message).not.toContain("\n");
  });
});
