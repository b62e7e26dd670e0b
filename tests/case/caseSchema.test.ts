import { readdirSync, readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { caseDocument, caseJsonSchema } from "../../shared/case/caseDocument";
import { readCase } from "../../shared/case/readCase";
import { caseWith, goodCase, schemaBreakers } from "./caseDocuments";

const folder = new URL("../../cases/", import.meta.url);

function fileText(name: string): string {
  return readFileSync(new URL(name, folder), "utf8");
}

const published: unknown = JSON.parse(fileText("case.schema.json"));
const otherFormat = /"wakewright(?!Case")[A-Z]\w*"\s*:/;
const caseNames = readdirSync(folder).filter(
  (name) => name.endsWith(".json") && !name.endsWith(".schema.json") && !otherFormat.test(fileText(name)),
);
const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictTypes: false,
  strictRequired: false,
  formats: { date: /^\d{4}-\d\d-\d\d$/ },
});
const validate = ajv.compile(caseJsonSchema());

describe("cases/case.schema.json", () => {
  it("is the schema of the reader; `npm run --silent case -- --schema > cases/case.schema.json` renews it", () => {
    expect(published).toEqual(caseJsonSchema());
  });
});

describe("every case in cases/", () => {
  it("exists for the drag curves, the edge radius and the puck", () => {
    expect(caseNames).toEqual(
      expect.arrayContaining([
        "cylinder-smooth.json",
        "cylinder-rough.json",
        "edge-radius-sweep.json",
        "harbour-league-puck.json",
      ]),
    );
  });

  it.each(caseNames)("%s is valid by the published schema and by the reader", (name) => {
    validate(JSON.parse(fileText(name)));
    expect(validate.errors ?? []).toEqual([]);
    const reading = readCase(fileText(name), name);
    expect(reading.ok ? null : reading.problem.message).toBe(null);
  });

  it("cylinder-smooth.json has 40 or more log-spaced Reynolds numbers from 1e4 to 1e7 at 0.1 %, both branches", () => {
    const reading = readCase(fileText("cylinder-smooth.json"), "cylinder-smooth.json");
    if (!reading.ok) throw new Error(reading.problem.message);
    const { speeds, turbulenceIntensities, branches } = reading.value;
    expect(speeds.length).toBeGreaterThanOrEqual(40);
    expect([speeds[0], speeds.at(-1)]).toMatchObject([{ reynolds: 1e4 }, { reynolds: 1e7 }]);
    expect(turbulenceIntensities).toEqual([0.001]);
    expect(branches).toBe("both");
  });
});

describe("the JSON Schema and the reader's schema agree", () => {
  it("that the good case is good", () => {
    expect(validate(goodCase())).toBe(true);
    expect(caseDocument.safeParse(goodCase()).success).toBe(true);
  });

  it.each(schemaBreakers)("to refuse %s", (_what, document) => {
    expect(validate(document)).toBe(false);
    expect(caseDocument.safeParse(document).success).toBe(false);
  });

  it.each([
    ["a schema link", { $schema: "./case.schema.json" }],
    ["a note", { note: "remarks" }],
    ["roughness in metres", { sandGrainRoughnessRatios: undefined, sandGrainRoughnessMetres: [1e-5] }],
    [
      "Reynolds numbers without a fluid",
      { speedsMetresPerSecond: undefined, fluid: undefined, reynoldsNumbers: [1e5] },
    ],
    ["a log range", { speedsMetresPerSecond: { from: 1, to: 6, count: 6, spacing: "log" } }],
    ["automatic panels", { panelCount: "auto" }],
    ["a swept diameter", { sections: [{ family: "circle", diameterMetres: [0.07, 0.08] }] }],
    ["a trip by ratios", { trips: [{ side: "lower", arcRatio: 0.3, heightRatio: 0.002 }] }],
    ["a trip in metres", { trips: [{ side: "upper", arcMetres: 0.02, heightMetres: 0.0002 }] }],
    ["sea water", { fluid: { kind: "seaWater", temperatureCelsius: 12, salinityGramsPerKilogram: 35 } }],
  ])("to accept %s", (_what, changes) => {
    expect(validate(caseWith(changes))).toBe(true);
    expect(caseDocument.safeParse(caseWith(changes)).success).toBe(true);
  });
});
