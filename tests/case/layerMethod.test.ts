import { describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { designRequest } from "../../shared/case/design";
import { designToCase } from "../../shared/case/designToCase";
import { readCase } from "../../shared/case/readCase";
import { resultCsv } from "../../shared/case/resultCsv";
import { resultTable } from "../../shared/case/resultTable";
import { caseWith, type PlainObject } from "./caseDocuments";

/** A smooth circular cylinder in a quiet stream below and beyond its drag crisis. */
const cylinder = caseWith({
  sections: [{ family: "circle", diameterMetres: 0.1 }],
  speedsMetresPerSecond: undefined,
  reynoldsNumbers: [1e5, 2e6],
  sandGrainRoughnessRatios: [1e-5],
  turbulencePercents: [0.1],
  branches: "rising",
  panelCount: 80,
});

function resultsOf(changes: PlainObject = {}) {
  const reading = readCase(JSON.stringify({ ...cylinder, ...changes }), "test.json");
  if (!reading.ok) throw new Error(reading.problem.message);
  return runCase(reading.value);
}

describe("the key layerMethod of a case", () => {
  const [own, textbook] = [resultsOf(), resultsOf({ layerMethod: "textbook" })];

  it("is integral when it is left out, and named in every row", () => {
    expect(own.results.map(({ layerMethod }) => layerMethod)).toEqual(["integral", "integral"]);
    expect(resultsOf({ layerMethod: "integral" }).results).toEqual(own.results);
    expect(textbook.results.map(({ layerMethod }) => layerMethod)).toEqual(["textbook", "textbook"]);
  });

  // Thwaites separates a little earlier than the exact layer (78.6 of 80.0 degrees on Hiemenz' fit), the drag of a
  // subcritical cylinder hardly notices, and beyond the crisis both turn.
  it("textbook: separates earlier below the crisis with about the same drag, and has a crisis too", () => {
    const [below, beyond] = textbook.results;
    expect(below.separationAngleUpperDegrees).toBeLessThan(own.results[0].separationAngleUpperDegrees ?? 0);
    expect(Math.abs((below.dragCoefficient ?? 0) / (own.results[0].dragCoefficient ?? 0) - 1)).toBeLessThan(0.05);
    expect(beyond.separationAngleUpperDegrees).toBeGreaterThan(100);
    expect(beyond.dragCoefficient).toBeLessThan(0.7 * (below.dragCoefficient ?? 0));
    expect(beyond.dragCoefficient).not.toBe(own.results[1].dragCoefficient);
  });

  it("textbook: the band is that of unchecked sections, at least as wide, and says so", () => {
    textbook.results.forEach((row, i) => {
      expect(row.applicability).toBe("outside: do not rely on it");
      expect(row.applicabilityReason).toMatch(/^Drag with textbook layers .* was not checked/);
      const width = ({ dragCoefficientLow, dragCoefficientHigh, dragCoefficient }: typeof row) =>
        ((dragCoefficientHigh ?? 0) - (dragCoefficientLow ?? 0)) / (dragCoefficient ?? 1);
      expect(width(row)).toBeGreaterThan(width(own.results[i]) - 1e-9);
    });
    expect(own.results[0].applicability).toBe("inside the checked range");
  });

  it("textbook: table, CSV and cautions are labelled", () => {
    expect(resultTable(textbook)).toContain("| textbook layers");
    expect(resultTable(own)).not.toContain("textbook");
    expect(resultCsv(textbook)).toContain(",textbook,");
    expect(textbook.cautions.join(" ")).toContain("Thwaites, Michel, Head");
    expect(own.cautions.join(" ")).not.toContain("Thwaites");
  });

  it("another word is refused with what is allowed", () => {
    const reading = readCase(JSON.stringify({ ...cylinder, layerMethod: "exact" }), "test.json");
    if (reading.ok) throw new Error("was accepted");
    expect(reading.problem.message).toContain('layerMethod is "exact"; it must be one of integral, textbook');
  });

  it("goes into a design and its request, and back into a case", () => {
    const reading = caseToDesign(JSON.stringify({ ...cylinder, layerMethod: "textbook" }), "test.json");
    if (!reading.ok) throw new Error(reading.problems[0].message);
    const request = designRequest(reading.value);
    if (!request.ok) throw new Error(request.problem.message);
    expect(request.value.request.layerMethod).toBe("textbook");
    expect(designToCase(reading.value)).toMatchObject({ layerMethod: "textbook" });
    expect(designToCase({ ...reading.value, layerMethod: undefined })).not.toHaveProperty("layerMethod");
  });
});
