import { describe, expect, it } from "vitest";
import { freshWater } from "../../shared/engine/fluid/freshWater";
import { type CfdBriefInput, cfdBrief, largestFrictionSpeedRatio } from "../../shared/jobs/handoff/cfdBrief";
import { cfdBriefText } from "../../shared/jobs/handoff/cfdBriefText";
import { puckDrawing } from "../../shared/jobs/handoff/drawing";
import { letterAdvance, withTolerance } from "../../shared/jobs/handoff/drawingText";
import { leadCautions } from "../../shared/jobs/puck/body/materials";
import { puckFigures } from "../../shared/jobs/puck/body/puckFigures";
import { examplePuck, unwrap } from "../puck/examplePuck";

const input: CfdBriefInput = {
  title: "Harbour League baseline, plan section",
  referenceWidth: 0.08,
  speed: 3,
  fluid: unwrap(freshWater(27)),
  turbulenceIntensity: 0.01,
  sandGrainRoughness: 1e-5,
  wantedYPlus: 1,
  friction: { kind: "flatPlate", length: 0.08 },
  separationAngles: [1.4, 1.4],
  strouhal: 0.2,
  expectedDrag: { low: 1.1, expected: 1.2, high: 1.3 },
  dragAreaName: "width times span",
};

describe("cfdBrief(input)", () => {
  const brief = unwrap(cfdBrief(input));

  it("Reynolds number 9.4e4 per m/s at 27 degrees, shedding at S U / D, time step a 200th of its period", () => {
    expect(Math.abs(brief.reynolds / (3 * 9.39e4) - 1)).toBeLessThan(0.005);
    expect(brief.sheddingHertz).toBeCloseTo((0.2 * 3) / 0.08, 12);
    expect(brief.timeStepSeconds).toBeCloseTo(0.08 / (0.2 * 3) / 200, 12);
  });

  it("first cell: y+ nu / u_tau with the plate's Cf, checked against Schultz-Grunow (1940) Cf = 0.370 (log10 Re)^-2.584 within 6 %", () => {
    const Cf = 0.37 * Math.log10(brief.reynolds) ** -2.584;
    const height = brief.kinematicViscositySquareMetresPerSecond / (3 * Math.sqrt(Cf / 2));
    expect(Math.abs(brief.firstCellHeightMetres / height - 1)).toBeLessThan(0.06);
    const coarse = unwrap(cfdBrief({ ...input, wantedYPlus: 30 }));
    expect(coarse.firstCellHeightMetres).toBeCloseTo(30 * brief.firstCellHeightMetres, 12);
  });

  it("takes the friction of a solved layer", () => {
    const ratio = largestFrictionSpeedRatio(
      Float64Array.of(0, 1, 1.4, 1.2),
      Float64Array.of(0.1, 0.008, 0.005, -0.001),
    );
    expect(ratio).toBeCloseTo(1.4 * Math.sqrt(0.0025), 12);
    const solved = unwrap(cfdBrief({ ...input, friction: { kind: "solved", ratio } }));
    expect(solved.frictionSpeedMetresPerSecond).toBeCloseTo(0.21, 12);
  });

  it("keeps the blockage below 3 %", () => {
    expect(brief.blockage).toBeLessThan(0.03);
    expect(brief.blockage).toBeCloseTo(0.08 / (2 * brief.eachSideMetres), 12);
  });

  it("as text fits one page and names area, band and cautions", () => {
    const text = cfdBriefText(brief);
    expect(text.split("\n").length).toBeLessThan(60);
    expect(text).toContain("1.2 (1.1 to 1.3) on the width times span");
    expect(text).toContain("screening");
  });

  it("refuses a Strouhal number of 0", () => {
    expect(cfdBrief({ ...input, strouhal: 0 }).ok).toBe(false);
  });
});

describe("puckDrawing(input)", () => {
  const figures = unwrap(puckFigures(examplePuck, { fluidDensity: 996.5 }));
  const drawing = puckDrawing({
    spec: { ...examplePuck, name: "Baseline <A>" },
    figures,
    tolerances: { diameterMetres: 0.0002, thicknessMetres: 0.0003 },
    date: "2026-03-01",
    notes: leadCautions,
  });

  it("is an A4 sheet with the dimensions, their tolerances and the cautions", () => {
    expect(drawing).toContain('width="297mm" height="210mm"');
    expect(drawing).toContain("\u230080 \u00b1 0.2");
    expect(drawing).toContain("30 \u00b1 0.3");
    expect(drawing).toContain("R6 all edges");
    expect(drawing).toContain("Scale 1 : 1");
    expect(drawing).toContain("Lead is poisonous");
  });

  it("is well formed: every element is closed, text is escaped, no number is broken", () => {
    expect(drawing).toContain("Baseline &lt;A&gt;");
    expect(drawing).not.toMatch(/NaN|undefined|Infinity/);
    const open = [...drawing.matchAll(/<[a-z]+(?:\s[^>]*[^/])?>/g)].length;
    const close = [...drawing.matchAll(/<\/[a-z]+>/g)].length;
    expect(open).toBe(close);
  });

  it("a larger puck goes to a smaller standard scale", () => {
    const large = { ...examplePuck, diameterMetres: 0.2 };
    const text = puckDrawing({ spec: large, figures, tolerances: {}, date: "2026-03-01", notes: [] });
    expect(text).toContain("Scale 1 : 2");
  });

  interface Line {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
    readonly text: string;
  }
  const unescaped = (text: string) => text.replaceAll(/&[a-z]+;/g, "x");
  /** Boxes of all upright text, by a mean advance of the letters. */
  const linesOf = (svg: string): Line[] =>
    [
      ...svg.matchAll(/<text x="([^"]+)" y="([^"]+)" text-anchor="(start|middle)"(?: font-size="([^"]+)")?>([^<]*)</g),
    ].map(([, x, y, anchor, size, raw]) => {
      const text = unescaped(raw);
      const height = Number(size ?? 3.2);
      const width = letterAdvance * height * text.length;
      const left = Number(x) - (anchor === "middle" ? width / 2 : 0);
      return { left, right: left + width, top: Number(y) - 0.75 * height, bottom: Number(y) + 0.22 * height, text };
    });
  const overlap = (a: Line, b: Line) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  const sentence =
    "Deburr all over and seal the coat twice, then weigh the puck in air and in water before it leaves. ";

  it.each([
    ["no note", 0, 0],
    ["a few notes", 4, 150],
    ["as many notes as a case may have", 20, 300],
  ])("%s: no line of text meets another, the title block or the frame", (_, count, length) => {
    const notes = Array.from({ length: count }, (_, i) => `${i + 1}. ${sentence.repeat(4)}`.slice(0, length));
    const grooves = { widthMetres: 0.002, depthMetres: 0.001 };
    const spec = {
      ...examplePuck,
      name: "Harbour League candidate of an unusually long name ".repeat(4).slice(0, 200),
      face: {
        kind: "radialGrooves",
        side: "both",
        number: 12,
        ...grooves,
        innerRadiusMetres: 0.01,
        outerRadiusMetres: 0.03,
      },
      rim: { kind: "axialGrooves", number: 24, ...grooves },
    } as const;
    const svg = puckDrawing({ spec, figures, tolerances: {}, date: "2026-03-01", notes });
    const lines = linesOf(svg);
    expect(lines.length).toBeGreaterThan(count + 8);
    lines.forEach((line, i) => {
      expect(line.left).toBeGreaterThan(5);
      expect(line.right).toBeLessThan(292);
      expect(line.bottom).toBeLessThan(205);
      for (const other of lines.slice(i + 1)) expect(overlap(line, other) ? [line.text, other.text] : null).toBe(null);
      const isTitle = line.left > 172 && line.top > 185;
      if (!isTitle) expect(line.right < 172 || line.bottom < 185).toBe(true);
    });
    if (count < 20) for (const note of notes) expect(svg).toContain(note.slice(0, 40));
    else expect(svg).toContain("More in the text file handed over");
  });

  it("grooves in the top face show in plan, those of the bottom and of the rim dashed, in the profile dashed", () => {
    const face = {
      kind: "radialGrooves",
      number: 6,
      widthMetres: 0.002,
      depthMetres: 0.001,
      innerRadiusMetres: 0.01,
      outerRadiusMetres: 0.03,
    } as const;
    const dashed = (side: "top" | "bottom", rim: typeof examplePuck.rim = { kind: "plain" }) =>
      puckDrawing({
        spec: { ...examplePuck, core: { kind: "none" }, face: { ...face, side }, rim },
        figures,
        tolerances: {},
        date: "2026-03-01",
        notes: [],
      }).match(/<path[^>]*stroke-dasharray/g)?.length;
    expect(dashed("top")).toBe(1);
    expect(dashed("bottom")).toBe(1 + 6);
    expect(dashed("top", { kind: "axialGrooves", number: 9, widthMetres: 0.002, depthMetres: 0.001 })).toBe(1 + 9);
  });
});

describe("withTolerance(millimetres, plusMinus)", () => {
  it("leaves the tolerance out when there is none", () => {
    expect(withTolerance(80, undefined)).toBe("80");
    expect(withTolerance(12.5, 1e-4)).toBe("12.5 \u00b1 0.1");
  });
});
