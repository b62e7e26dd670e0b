import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { readCase } from "../../shared/case/readCase";
import { outlineCommand } from "../../src/cli/commands/outline";
import { startCommand } from "./caseCommand";

const folder = mkdtempSync(join(tmpdir(), "outline-"));
afterAll(() => rmSync(folder, { recursive: true }));

const bevels = "-40,10\n-40,-10\n-35,-15\n35,-15\n40,-10\n40,10\n35,15\n-35,15\n";
writeFileSync(join(folder, "bevels.csv"), bevels);
writeFileSync(join(folder, "inches.csv"), `x (in),y (in)\n${bevels}`);
writeFileSync(join(folder, "bow.csv"), "0,0\n10,10\n10,0\n0,10\n-3,5\n");

describe("wakewright outline", () => {
  it("prints height, length, area and deviation, says that the unit was taken, and writes a case", async () => {
    const { status, stdout, stderr } = await startCommand(
      "outline",
      ["bevels.csv", "inches.csv", "--to", "both.json"],
      folder,
    ).end;
    expect([status, stderr]).toEqual([0, ""]);
    // 80 x 30 mm; an arc of 0.3 mm at eight corners of 45 degrees lies 0.3 (1 / cos 22.5 - 1) = 0.0247 mm from them.
    expect(stdout).toMatch(/bevels\.csv +30\.000 +80\.000 +2349\.98 +0\.0247 +8 +0\.300/);
    expect(stdout).toMatch(/inches\.csv +762\.000 +2032\.000/);
    expect(stdout).toMatch(/bevels\.csv: The file names no unit: taken as millimetres; --unit changes it\./);
    expect(stdout).not.toMatch(/inches\.csv: The file names no unit/);
    const written = readCase(readFileSync(join(folder, "both.json"), "utf8"), "both.json");
    expect(written.ok && written.value.shapes.length).toBe(2);
  });

  it("reads standard input and gives JSON; another unit holds for all", async () => {
    const started = startCommand("outline", ["-", "--json", "--unit", "cm"], folder, bevels);
    const { status, stdout } = await started.end;
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ unit: "cm", corners: 8, heightMetres: expect.closeTo(0.3, 6) });
  });

  it("an outline that crosses itself and a wrong unit end in one line and status 2", async () => {
    const { status, stdout, stderr } = await startCommand("outline", ["bow.csv"], folder).end;
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^bow\.csv: the outline crosses itself near .*\n$/);
    expect(outlineCommand.read(["a.csv", "--unit", "feet"])).toMatchObject({
      ok: false,
      problem: { message: '--unit is "feet"; it must be one of mm, cm, m, in' },
    });
  });
});
