import { describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { demoDesign } from "../../shared/case/design";
import { designToCase } from "../../shared/case/designToCase";
import { readCaseDocument } from "../../shared/case/readCase";
import { equivalentRoughness } from "../../shared/engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../../shared/engine/pattern/surfacePattern";
import { unwrap } from "../puck/examplePuck";
import { caseWith } from "./caseDocuments";

const pattern: SurfacePattern = { kind: "grooves", depth: 0.0004, width: 0.001, pitch: 0.003 };
const { sandGrainRoughness } = unwrap(equivalentRoughness(pattern));
const surfacePattern = { kind: "grooves", depthMetres: 0.0004, widthMetres: 0.001, pitchMetres: 0.003 };
const wallKeys = { sandGrainRoughnessMetres: undefined, sandGrainRoughnessRatios: undefined };

function messages(changes: object): string {
  const reading = readCaseDocument(JSON.parse(JSON.stringify(caseWith({ ...wallKeys, ...changes }))), "c.json");
  return reading.ok ? "" : reading.problems.map(({ message }) => message).join("\n");
}

describe("a case with a surface pattern in place of its roughness", () => {
  it("is solved at the estimated sand-grain roughness, as if that were given, and says what it rests on", () => {
    const solved = [{ surfacePattern }, { sandGrainRoughnessMetres: [sandGrainRoughness] }].map((keys) => {
      const document = JSON.parse(JSON.stringify(caseWith({ ...wallKeys, ...keys })));
      const reading = readCaseDocument(document, "c.json");
      if (!reading.ok) throw new Error(reading.problem.message);
      return runCase(reading.value);
    });
    expect(solved[0].results).toEqual(solved[1].results);
    expect(solved[0].cautions.join(" ")).toContain("is estimated from the pattern of grooves. Source: K. A. Flack");
    expect(solved[1].cautions.join(" ")).not.toContain("pattern");
  });

  it.each([
    ["a pitch below the width", { surfacePattern: { ...surfacePattern, pitchMetres: 0.0005 } }, "surfacePattern.pitch"],
    ["another kind", { surfacePattern: { ...surfacePattern, kind: "scales" } }, "one of grooves, ridges, dimples"],
    ["a roughness as well", { surfacePattern, sandGrainRoughnessMetres: [1e-5] }, "and surfacePattern must be given"],
    ["no wall at all", {}, "exactly one of sandGrainRoughnessRatios, sandGrainRoughnessMetres and surfacePattern"],
  ])("refuses %s", (_, changes, words) => {
    expect(messages(changes)).toContain(words);
  });
});

describe("designToCase(design, pattern) and caseToDesign", () => {
  it("write the pattern where the design has just its roughness, and give it back", () => {
    const design = { ...demoDesign, sandGrainRoughness };
    const document = designToCase(design, pattern);
    expect(document).toMatchObject({ surfacePattern });
    expect(document).not.toHaveProperty("sandGrainRoughnessMetres");
    expect(caseToDesign(JSON.stringify(document), "c.json")).toEqual({ ok: true, value: design, pattern });
  });

  it("write the roughness where it was given otherwise", () => {
    expect(designToCase(demoDesign, pattern)).not.toHaveProperty("surfacePattern");
    expect(caseToDesign(JSON.stringify(designToCase(demoDesign)), "c.json")).toMatchObject({ ok: true, pattern: null });
  });
});
