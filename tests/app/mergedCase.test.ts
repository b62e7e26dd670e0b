import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { demoDesign } from "../../shared/case/design";
import { designToCase } from "../../shared/case/designToCase";
import { readCase } from "../../shared/case/readCase";
import { type CaseObject, type MergeRequest, mergedCase } from "../../src/app/files/mergedCase";

const puckFile = JSON.parse(readFileSync("cases/harbour-league-candidates.json", "utf8")) as CaseObject;
const { wakewrightCase: _version, title: _title, ...section } = designToCase({ ...demoDesign, speed: 2.25 });
const sections = section.sections;

/** Puts the file's rules in, so that it can be read without its folder. */
function merged(request: Partial<MergeRequest>): CaseObject {
  return mergedCase({ opened: null, title: "A case", parts: [], section, shown: "section", ...request });
}

function expectReadable(content: CaseObject): void {
  const { puck, ...rest } = content as { puck?: Record<string, unknown> };
  const { rules: _rules, ...block } = puck ?? {};
  const reading = readCase(JSON.stringify(puck === undefined ? rest : { ...rest, puck: block }), "merged.json");
  expect(reading.ok ? [] : reading.problems).toEqual([]);
}

describe("a saved case", () => {
  test("of views that changed nothing is the opened file, under its title as it is now", () => {
    const parts = [
      { view: "section", keys: null },
      { view: "puck", keys: null },
    ] as const;
    const opened = { ...puckFile, sections };
    const content = merged({ opened, title: "Another title", parts });
    expect(content).toEqual({ ...opened, title: "Another title" });
  });

  test("of a section alone has its one condition and replaces streams and walls in other measures", () => {
    const opened = {
      wakewrightCase: 1,
      title: "Old",
      note: "kept",
      sections,
      reynoldsNumbers: [1e5, 2e5],
      sandGrainRoughnessRatios: [0],
      turbulencePercents: [0.1],
      branches: "both",
    };
    const content = merged({ opened, parts: [{ view: "section", keys: section }] });
    expect(content).toEqual({ wakewrightCase: 1, title: "A case", note: "kept", ...section });
    expectReadable(content);
  });

  test("of a changed section with pucks keeps the pucks' stream and opens at the section's own condition", () => {
    const opened = { ...puckFile, sections };
    const parts = [
      { view: "section", keys: section },
      { view: "puck", keys: null },
    ] as const;
    const content = merged({ opened, parts });
    for (const key of ["puck", "speedsMetresPerSecond", "turbulencePercents", "sandGrainRoughnessMetres"]) {
      expect(content[key]).toEqual(puckFile[key]);
    }
    expectReadable(content);
    const { rules: _, ...block } = puckFile.puck as Record<string, unknown>;
    const design = caseToDesign(JSON.stringify({ ...content, puck: block }), "merged.json");
    expect(design.ok && design.value).toMatchObject({
      speed: 2.25,
      turbulenceIntensity: demoDesign.turbulenceIntensity,
    });
  });

  test("without the section view has neither sections nor what belongs to them", () => {
    const opened = { ...puckFile, sections, panelCount: 200, incidenceDegrees: 5, workingPoint: {} };
    const content = merged({ opened, parts: [{ view: "puck", keys: null }], shown: "puck" });
    for (const key of ["sections", "panelCount", "incidenceDegrees", "workingPoint"])
      expect(content).not.toHaveProperty(key);
    expectReadable(content);
  });
});
