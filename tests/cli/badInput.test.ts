import { mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { openCaseFile } from "../../src/cli/openCaseFile";
import { caseWith, goodCase } from "../case/caseDocuments";
import { runCaseCommand } from "./caseCommand";

// Some tests start processes of their own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-bad-"));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const rectangle = { family: "roundedRectangle", lengthMetres: 0.08, heightMetres: 0.03, edgeRadiusMetres: 0.006 };
const circle = { family: "circle", diameterMetres: 0.08 };
/** A large loop and a small one that crosses it. */
const crossing = [
  [0, 0],
  [0.02, -0.01],
  [0.04, -0.012],
  [0.06, -0.008],
  [0.07, 0.004],
  [0.08, 0.008],
  [0.084, 0],
  [0.078, -0.004],
  [0.066, 0.006],
  [0.04, 0.014],
  [0.02, 0.012],
];

const badDocuments: readonly (readonly [string, unknown, RegExp])[] = [
  ["missing key", caseWith({ turbulencePercents: undefined }), /turbulencePercents: it is missing; .*from 0 to 20 %/],
  [
    "wrong type",
    caseWith({ sections: [{ ...circle, diameterMetres: "80 mm" }] }),
    /sections\[0\]\.diameterMetres is "80 mm"; it must be a number above 0 and at most 100 m/,
  ],
  [
    "unknown key",
    caseWith({ sections: [{ ...circle, radius: 1 }] }),
    /sections\[0\]\.radius is not a known key; the keys of a circle are family, name, diameterMetres/,
  ],
  [
    "negative length",
    caseWith({ sections: [{ ...rectangle, lengthMetres: -0.08 }] }),
    /sections\[0\]\.lengthMetres is -0\.08; it must be a number above 0/,
  ],
  [
    "zero length",
    caseWith({ sections: [{ ...rectangle, heightMetres: 0 }] }),
    /sections\[0\]\.heightMetres is 0; it must be a number above 0/,
  ],
  [
    "radius too large",
    caseWith({ sections: [{ ...rectangle, edgeRadiusMetres: 0.018 }] }),
    /sections\[0\]\.edgeRadiusMetres: edge radius 18 mm exceeds half the height, 15 mm/,
  ],
  [
    "self-crossing contour",
    caseWith({ sections: [{ family: "freeContour", pointsMetres: crossing }] }),
    /sections\[0\]\.pointsMetres: .*cross/,
  ],
  [
    "Reynolds number outside its range",
    caseWith({ speedsMetresPerSecond: undefined, reynoldsNumbers: [10] }),
    /reynoldsNumbers\[0\] is 10; it must be a number from 1000 to 100000000/,
  ],
  [
    "speed outside the Reynolds range",
    caseWith({ speedsMetresPerSecond: [0.001] }),
    /speedsMetresPerSecond: .* is Reynolds number 93\.7; it must be from 1000 to 100000000/,
  ],
  [
    "3 panels",
    caseWith({ panelCount: 3 }),
    /panelCount is 3; it must be "auto" or an even whole number from 16 to 2000/,
  ],
  [
    "a million panels",
    caseWith({ panelCount: 1e6 }),
    /panelCount is 1000000; it must be "auto" or an even whole number from 16 to 2000/,
  ],
];

/** One line on standard error, nothing on standard output, status 2 and no stack trace. */
async function expectRefusal(args: readonly string[], message: RegExp): Promise<void> {
  const end = await runCaseCommand(args);
  expect(end.stderr).toMatch(/^[^\n]+\n$/);
  expect(end.stderr).toMatch(message);
  expect(end.stderr).not.toMatch(/\bat .*:\d+:\d+|node:internal/);
  expect(end.stdout).toBe("");
  expect(end.status).toBe(2);
}

/** What the command says of a file that it refuses, asked for without starting it. */
function refusalOf(name: string): string {
  const opened = openCaseFile(join(folder, name), name);
  expect(opened.ok).toBe(false);
  return opened.ok ? "" : opened.problem.message;
}

describe("the case command's reader refuses", () => {
  it.each(badDocuments)("%s", (name, document, message) => {
    writeFileSync(join(folder, `${name}.json`), JSON.stringify(document));
    const words = refusalOf(`${name}.json`);
    expect(words).toMatch(message);
    expect(words).toContain(`${name}.json: `);
  });

  it("NaN for a length, naming the key", () => {
    writeFileSync(
      join(folder, "nan.json"),
      JSON.stringify(goodCase()).replace('"diameterMetres":0.08', '"diameterMetres": NaN'),
    );
    expect(refusalOf("nan.json")).toMatch(/nan\.json: diameterMetres is NaN; it must be a finite number/);
  });

  it("a number too large for a computer, naming the key", () => {
    writeFileSync(
      join(folder, "huge.json"),
      JSON.stringify(goodCase()).replace('"diameterMetres":0.08', '"diameterMetres": 1e999'),
    );
    expect(refusalOf("huge.json")).toMatch(
      /sections\[0\]\.diameterMetres is Infinity; it must be a number above 0 and at most 100 m/,
    );
  });

  it("a picture", () => {
    writeFileSync(
      join(folder, "picture.png"),
      Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0xff, 0xfe]),
    );
    expect(refusalOf("picture.png")).toMatch(/picture\.png: is not UTF-8 text/);
  });
});

describe("the case command refuses with one line, status 2 and no stack trace", () => {
  it("a wrong value, naming file and key", async () => {
    const path = join(folder, "three.json");
    writeFileSync(path, JSON.stringify(caseWith({ panelCount: 3 })));
    await expectRefusal([path], /three\.json: panelCount is 3; it must be "auto" or an even whole number from 16/);
  });

  it("a file of 50 MB, without reading it", async () => {
    const path = join(folder, "large.json");
    writeFileSync(path, "{");
    truncateSync(path, 50_000_000);
    await expectRefusal([path], /large\.json: has 50\.0 MB; a case file must have at most 5 MB/);
  });

  it("a file that is not JSON", async () => {
    const path = join(folder, "text.json");
    writeFileSync(path, "length = 80 mm\nheight = 30 mm\n");
    await expectRefusal([path], /text\.json: not a JSON document/);
  });

  it("a folder", async () => {
    await expectRefusal([folder], /is a directory; it must be a case file/);
  });

  it("a missing file", async () => {
    await expectRefusal([join(folder, "nowhere.json")], /nowhere\.json: cannot be read: no such file or directory/);
  });

  it("no file", async () => {
    await expectRefusal([], /no case file was named/);
  });

  it("an unknown option", async () => {
    await expectRefusal(
      ["cases/cylinder-smooth.json", "--yaml"],
      /--yaml.*the options are --json, --csv, --pucks, --comparisons, --next, --tunnel, --trial, --measurements, --durability, --cost, --choice, --out PATH/,
    );
  });

  it("an output path in a missing folder, before any work", async () => {
    await expectRefusal(
      ["cases/cylinder-smooth.json", "--out", join(folder, "missing", "r.json")],
      /--out .*: cannot be written: no such file or directory; it must be a path in a directory you can write to/,
    );
  });

  it("an output path that is a folder", async () => {
    mkdirSync(join(folder, "results"), { recursive: true });
    await expectRefusal(
      ["cases/cylinder-smooth.json", "--out", join(folder, "results")],
      /not a regular file; it must be the path of a file/,
    );
  });

  it("the case file itself as output", async () => {
    const path = join(folder, "self.json");
    writeFileSync(path, JSON.stringify(goodCase()));
    await expectRefusal([path, "--out", path], /is the case file itself/);
  });
});
