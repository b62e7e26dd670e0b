import { describe, expect, it } from "vitest";
import { type CaseReading, readCase } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { caseWith, goodCase, schemaBreakers } from "./caseDocuments";

function read(document: unknown): CaseReading {
  return readCase(JSON.stringify(document), "test.json");
}

function accepted(document: unknown): Case {
  const reading = read(document);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.value;
}

function refused(document: unknown) {
  const reading = read(document);
  if (reading.ok) throw new Error("was accepted");
  return reading;
}

describe("readCase(text) of a good case", () => {
  it("builds every section and keeps the file's numbers", () => {
    const theCase = accepted(goodCase());
    expect(theCase.shapes.map(({ section }) => section.perimeter)).toEqual([
      expect.closeTo(Math.PI * 0.08, 8),
      expect.closeTo(2 * (0.068 + 0.018) + 2 * Math.PI * 0.006, 8),
    ]);
    expect(theCase.speeds.map((stream) => "speed" in stream && stream.speed)).toEqual([1, 2]);
    expect(theCase.turbulenceIntensities).toEqual([0.01]);
    expect(theCase.shapes[0].panelCount).toBe("auto");
    expect(theCase.branches).toBe("whereDifferent");
    expect(theCase.fluid?.name).toContain("fresh water");
  });

  it("sorts the stream by rising Reynolds number", () => {
    const theCase = accepted(caseWith({ speedsMetresPerSecond: undefined, reynoldsNumbers: [3e5, 1e4, 1e5] }));
    expect(theCase.speeds.map((stream) => "reynolds" in stream && stream.reynolds)).toEqual([1e4, 1e5, 3e5]);
  });

  it("needs no fluid for Reynolds numbers", () => {
    expect(
      accepted(caseWith({ speedsMetresPerSecond: undefined, fluid: undefined, reynoldsNumbers: [1e5] })).fluid,
    ).toBe(null);
  });

  it("writes out a sweep and incidences, and names the shapes", () => {
    const theCase = accepted(
      caseWith({
        sections: [
          {
            family: "roundedRectangle",
            name: "rim",
            lengthMetres: 0.08,
            heightMetres: 0.03,
            edgeRadiusMetres: { from: 0.003, to: 0.015, count: 3 },
          },
        ],
        incidenceDegrees: [0, 5],
      }),
    );
    expect(theCase.shapes.map(({ name, incidence }) => [name, (incidence * 180) / Math.PI])).toEqual([
      ["rim, edge radius 3 mm", 0],
      ["rim, edge radius 3 mm", 5],
      ["rim, edge radius 9 mm", 0],
      ["rim, edge radius 9 mm", 5],
      ["rim, edge radius 15 mm", 0],
      ["rim, edge radius 15 mm", 5],
    ]);
    expect(theCase.shapes[5].sweep).toEqual({ key: "edgeRadiusMetres", value: 0.015 });
  });
});

describe("readCase(text) refuses", () => {
  it.each(schemaBreakers)("%s", (_what, document, field, message) => {
    const reading = refused(document);
    expect(reading.problems[0].field).toBe(field);
    expect(reading.problem.message).toMatch(message);
    expect(reading.problem.message).toMatch(/^test\.json: [^\n]+$/);
  });

  it.each([
    [
      "an edge radius above half the height",
      { sections: [{ family: "roundedRectangle", lengthMetres: 0.08, heightMetres: 0.03, edgeRadiusMetres: 0.018 }] },
      "sections[0].edgeRadiusMetres",
      /edge radius 18 mm exceeds half the height, 15 mm/,
    ],
    [
      "two swept keys in one section",
      {
        sections: [{ family: "roundedRectangle", lengthMetres: [0.08], heightMetres: [0.03], edgeRadiusMetres: 0.006 }],
      },
      "sections[0].heightMetres",
      /at most one key of a section may be a list or a range/,
    ],
    [
      "a self-crossing contour",
      {
        sections: [
          {
            family: "freeContour",
            pointsMetres: [
              [0, 0],
              [0.01, 0.01],
              [0.02, 0.02],
              [0.03, 0.02],
              [0.03, 0],
              [0.02, 0],
              [0.01, 0.01],
              [0, 0.02],
              [-0.01, 0.01],
            ],
          },
        ],
      },
      "sections[0].pointsMetres",
      /cross|same point|duplicate/i,
    ],
    [
      "a speed below the Reynolds range",
      { speedsMetresPerSecond: [0.001, 1] },
      "speedsMetresPerSecond",
      /0.001 m\/s on .* is Reynolds number 93.7; it must be from 1000 to 100000000, here 0.01\d+ to/,
    ],
    [
      "grains too large for the section",
      { sandGrainRoughnessRatios: undefined, sandGrainRoughnessMetres: [0.01] },
      "sandGrainRoughnessMetres",
      /ks\/D 0.125; it must be at most 0.05, here 0.004/,
    ],
    [
      "a trip beyond the rear",
      { trips: [{ side: "lower", arcMetres: 0.13, heightRatio: 0.002 }] },
      "trips[0].arcMetres",
      /beyond the rear of .*; it must be below 0.126/,
    ],
    [
      "a trip as high as a wall",
      { trips: [{ side: "lower", arcMetres: 0.02, heightMetres: 0.02 }] },
      "trips[0].heightMetres",
      /at most 0.1 of the reference width/,
    ],
    [
      "more results than can be read",
      { turbulencePercents: { from: 0, to: 1, count: 200 }, speedsMetresPerSecond: { from: 1, to: 2, count: 200 } },
      undefined,
      /up to 160000 results .* at most 20000/,
    ],
    [
      "more sections than are allowed",
      {
        sections: [{ family: "circle", diameterMetres: { from: 0.01, to: 0.02, count: 500 } }],
        incidenceDegrees: [0, 1, 2],
      },
      "sections",
      /1500 sections .* at most 1000/,
    ],
  ])("%s", (_what, changes, field, message) => {
    const reading = refused(caseWith(changes));
    expect(reading.problems[0].field).toBe(field);
    expect(reading.problem.message).toMatch(message);
  });

  it("a file with several problems by its first, and lists every one", () => {
    const reading = refused(
      caseWith({ title: "", turbulencePercents: [30, 40], panelCount: 3, colour: "red", branches: "up" }),
    );
    expect(reading.problems.map(({ field }) => field)).toEqual([
      "title",
      "panelCount",
      "turbulencePercents[0]",
      "turbulencePercents[1]",
      "branches",
      "colour",
    ]);
    expect(reading.problem.message).toMatch(/^test\.json: title is "".*\(and 5 more problems\)$/);
  });

  it("hostile files at once: a huge list, deep nesting, a prototype key, a long string", () => {
    refused(caseWith({ turbulencePercents: Array(1_000_000).fill("x") }));
    expect(readCase("[".repeat(1_000_000), "deep.json").ok).toBe(false);
    expect(readCase("[".repeat(1_000_000) + "]".repeat(1_000_000), "deep.json").ok).toBe(false);
    expect(readCase('{"__proto__": {"wakewrightCase": 1}}', "proto.json").ok).toBe(false);
    expect(readCase(`{"title": "${"x".repeat(6_000_000)}"}`, "long.json")).toMatchObject({
      problem: { code: "size", message: /at most 5000000/ },
    });
    const reading = refused(caseWith({ title: "x".repeat(4_000_000) }));
    expect(reading.problem.message.length).toBeLessThan(300);
  });
});
