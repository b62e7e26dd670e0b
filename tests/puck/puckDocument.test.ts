import { describe, expect, it } from "vitest";
import * as z from "zod";
import { documentProblems } from "../../shared/document/documentProblems";
import { standardMaterials } from "../../shared/jobs/puck/body/materials";
import { materialDocument, puckDocument } from "../../shared/jobs/puck/body/puckDocument";
import { examplePuck } from "./examplePuck";

function faults(document: unknown): string {
  const parsed = puckDocument.safeParse(document);
  return parsed.success
    ? "accepted"
    : documentProblems(document, parsed.error)
        .map(({ message }) => message)
        .join("; ");
}

describe("puckDocument", () => {
  it("reads the example puck back unchanged", () => {
    expect(puckDocument.parse(JSON.parse(JSON.stringify(examplePuck)))).toEqual(examplePuck);
  });

  it("reads the earlier name of the edge radius, as one of the two alone", () => {
    const edge = (keys: object) => ({ ...examplePuck, edge: { kind: "radius", ...keys } });
    expect(puckDocument.parse(edge({ radiusMetres: 0.004 })).edge).toEqual({ kind: "radius", edgeRadiusMetres: 0.004 });
    const rule = "exactly one of edgeRadiusMetres and radiusMetres must be given";
    expect(faults(edge({ radiusMetres: 0.004, edgeRadiusMetres: 0.004 }))).toContain(rule);
    expect(faults(edge({}))).toContain(rule);
  });

  it.each([
    ["an unknown key", { ...examplePuck, colour: "red" }, "colour is not a known key"],
    ["an unknown edge", { ...examplePuck, edge: { kind: "wavy" } }, "edge"],
    ["a negative diameter", { ...examplePuck, diameterMetres: -1 }, "diameterMetres is -1"],
    [
      "two grooves",
      { ...examplePuck, rim: { kind: "axialGrooves", number: 2, widthMetres: 1, depthMetres: 1 } },
      "rim.number is 2",
    ],
    ["a missing coat", { ...examplePuck, coatMaterial: undefined }, "coatMaterial is missing"],
  ])("refuses %s", (_, document, words) => {
    expect(faults(document)).toContain(words);
  });

  it("has a JSON Schema", () => {
    expect(Object.keys(z.toJSONSchema(puckDocument).properties ?? {})).toContain("thicknessMetres");
  });
});

describe("materialDocument", () => {
  it("accepts every standard material", () => {
    for (const material of standardMaterials) expect(materialDocument.parse(material)).toEqual(material);
  });
});
