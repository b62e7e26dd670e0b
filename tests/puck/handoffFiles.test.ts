import DxfParser from "dxf-parser";
import { unzipSync } from "fflate";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import type { HandoffFile } from "../../shared/jobs/handoff/handoffFile";
import { fileNameOf, handoffFiles } from "../../shared/jobs/handoff/handoffFiles";
import { ownTolerances } from "../../shared/jobs/puck/puckSteps";
import { judgePuck } from "../../shared/jobs/puck/rules/judgePuck";
import { unwrap } from "./examplePuck";
import { entryWith, puckCaseDocument, readGood, rules } from "./puckDocuments";

const { puck: theCase } = readGood(
  puckCaseDocument({
    rules,
    baselines: [entryWith("Gull & Söhne, 80 mm")],
    making: { tolerances: { diameterMetres: 0.0003 } },
    handoff: { wantedYPlus: 2, notes: ["Deburr all over"] },
  }),
);
const [puck] = theCase.pucks;
let files: readonly HandoffFile[];
beforeAll(() => {
  const design = { spec: puck.spec, setting: theCase.setting };
  const judgement =
    theCase.rules === null ? null : unwrap(judgePuck(design, theCase.rules, ownTolerances(puck, theCase), null));
  files = unwrap(handoffFiles(puck, theCase, { speed: 2, turbulenceIntensity: 0.01, date: "2026-03-01" }, judgement));
});

function textOf(ending: string): string {
  const { content } = fileOf(ending);
  if (typeof content !== "string") throw new Error(`${ending} is no text`);
  return content;
}

function fileOf(ending: string): HandoffFile {
  const found = files.find(({ name }) => name.endsWith(ending));
  if (found === undefined) throw new Error(`no file ${ending}`);
  return found;
}

describe("handoffFiles(puck, case, request, judgement)", () => {
  it("names every file after the puck, in plain letters", () => {
    expect(files.map(({ name }) => name)).toEqual(
      [
        "profile.csv",
        "profile.dxf",
        "profile.svg",
        "plan.csv",
        "plan.dxf",
        "plan.svg",
        "core.dxf",
        "solid.stl",
        "solid.3mf",
        "plan-brief.txt",
        "profile-brief.txt",
        "drawing.svg",
        "read-first.txt",
      ].map((ending) => `gull-so-hne-80-mm-${ending}`),
    );
  });

  it("the profile's points enclose the frontal area edge-on, in mm", () => {
    const { data } = Papa.parse<{ xMillimetres: number; yMillimetres: number }>(textOf("profile.csv"), {
      header: true,
      dynamicTyping: true,
      skipEmptyLines: true,
    });
    const area = data.reduce((sum, { xMillimetres: x, yMillimetres: y }, i) => {
      const next = data[(i + 1) % data.length];
      return sum + (x * next.yMillimetres - next.xMillimetres * y) / 2;
    }, 0);
    expect(area / 1e6 / puck.figures.frontalAreaEdgeOnSquareMetres).toBeCloseTo(1, 3);
  });

  it("the plan in DXF is 80 mm wide and the core is a drawing of its own", () => {
    const plan = new DxfParser().parseSync(textOf("plan.dxf"));
    expect(JSON.stringify(plan?.entities)).toContain("40");
    expect(new DxfParser().parseSync(textOf("core.dxf"))?.entities.length).toBe(1);
  });

  it("the STL holds as many triangles as the 3MF, in mm", () => {
    const { content: stl } = fileOf("solid.stl");
    const { content: package3mf } = fileOf("solid.3mf");
    if (typeof stl === "string" || typeof package3mf === "string") throw new Error("a solid is text");
    const triangles = new DataView(stl.buffer, stl.byteOffset).getUint32(80, true);
    const model = new TextDecoder().decode(unzipSync(package3mf)["3D/3dmodel.model"]);
    expect(model.match(/<triangle /g)).toHaveLength(triangles);
    expect(model).toContain('unit="millimeter"');
  });

  it("briefs give the Reynolds number on each section's width and the wanted y+", () => {
    const reynolds = (width: number) => ((2 * width) / theCase.stream.fluid.kinematicViscosity).toExponential(3);
    expect(textOf("plan-brief.txt")).toContain(reynolds(0.08));
    expect(textOf("profile-brief.txt")).toContain(reynolds(0.03));
    expect(textOf("profile-brief.txt")).toContain("First cell for y+ 2");
    expect(textOf("profile-brief.txt")).toMatch(/Regime expected: \w+/);
  });

  it("the drawing has tolerances, date and notes; the text to read first has cautions and rules", () => {
    const drawing = textOf("drawing.svg");
    expect(drawing).toContain("80 \u00b1 0.3");
    expect(drawing).toContain("2026-03-01");
    expect(drawing).toContain("Deburr all over");
    expect(drawing).toContain("statement of compliance");
    const readFirst = textOf("read-first.txt");
    expect(readFirst).toContain("Lead is poisonous");
    expect(readFirst).toContain("never throw it in air");
    expect(readFirst).toContain("Test rules");
  });
});

describe("fileNameOf(name)", () => {
  it.each([
    ["Pebble, round edge", "pebble-round-edge"],
    ["../../etc/passwd", "etc-passwd"],
    ["\u6c34\u7403", "puck"],
    ["x".repeat(200), "x".repeat(60)],
  ])("of %s is %s", (name, file) => {
    expect(fileNameOf(name)).toBe(file);
  });
});
