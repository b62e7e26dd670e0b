import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { runCase } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import { resultTable } from "../../shared/case/resultTable";
import { comparisonColumns, comparisonCsv } from "../../shared/jobs/evidence/comparisonCsv";
import { comparisonTable } from "../../shared/jobs/evidence/comparisonTable";
import { measuredFromTunnel } from "../../shared/jobs/evidence/fromTunnel";
import type { TunnelReduction } from "../../shared/jobs/tunnel/reducedTest";

const circle = { family: "circle", diameterMetres: 0.08 };
const points = [
  { reynoldsNumber: 1e5, dragCoefficient: 1.21, expandedUncertainty: 0.04 },
  ...[2e6, 2.5e6, 3e6, 4e6].map((reynoldsNumber) => ({
    reynoldsNumber,
    dragCoefficient: 0.92,
    expandedUncertainty: 0.04,
    strouhalNumber: 0.25,
  })),
];
const set = { name: "A", kind: "tunnelTest", source: "invented", section: circle, panelCount: 80, points };

function caseOf(block: object, others: object = {}): unknown {
  return { wakewrightCase: 1, title: "measured", measurements: block, ...others };
}

function messages(block: object, others: object = {}): string[] {
  const reading = readCaseDocument(caseOf(block, others), "c.json");
  return reading.ok ? [] : reading.problems.map(({ message }) => message);
}

const solved = {
  sections: [
    { ...circle, name: "plan" },
    { family: "ellipse", name: "oval", lengthMetres: 0.1, heightMetres: 0.05 },
  ],
  panelCount: 80,
  reynoldsNumbers: [2e6, 3e6],
  sandGrainRoughnessRatios: [1e-5],
  turbulencePercents: [0.1],
  branches: "rising",
};

describe("a case with measurements", () => {
  let results: CaseResults;
  beforeAll(() => {
    const block = { sets: [{ ...set, turbulencePercent: 0.1, sandGrainRoughnessRatio: 1e-5 }], carriedSet: "A" };
    const reading = readCaseDocument(caseOf(block, solved), "c.json");
    if (!reading.ok) throw new Error(reading.problem.message);
    let done = 0;
    results = runCase(reading.value, (step) => {
      expect(step.done).toBeGreaterThanOrEqual(done);
      expect(step.done).toBeLessThanOrEqual(step.total);
      done = step.done;
    });
  });

  it("compares every point, finds the disagreement and a plausible cause", () => {
    const [{ rows, causes, comparedCount, exceedingCount }] = results.comparison!.sets;
    expect(comparedCount).toBe(5);
    expect(exceedingCount).toBe(4);
    expect(rows.map(({ exceedsBothBands }) => exceedsBothBands)).toEqual([false, true, true, true, true]);
    expect(rows[1].measuredStrouhal).toBe(0.25);
    expect(causes[0]).toMatchObject({ key: "roughness", plausible: true, exceedingAfter: 0 });
  });

  it("moves the measured circle to the measurement, and the ellipse far less; each row says by how many points", () => {
    const { carried } = results.comparison!;
    const moved = (name: string) =>
      carried
        .filter(({ section }) => section === name)
        .map(
          (row) =>
            row.correctedDragCoefficient! /
            results.results.find(
              (own) => own.section === name && own.reynolds === row.reynolds && own.branch === row.branch,
            )!.dragCoefficientExpected!,
        );
    expect(Math.min(...moved("plan"))).toBeGreaterThan(1.03);
    for (const ratio of moved("oval")) expect(Math.abs(ratio - 1)).toBeLessThan(Math.min(...moved("plan")) - 1);
    for (const { label } of carried) expect(label).toMatch(/^with \d points? of "A" and its own bias/);
  });

  it("prints a table that names source, reference, residuals, bias, causes and labels", () => {
    const text = comparisonTable(results.comparison!);
    for (const words of [
      "Source: invented",
      "Cd on width across the stream x span",
      "beyond both bands",
      "Bias by regime of the prediction",
      "Likely causes",
      "Roughness would explain it: ks/D",
      "suggestions, not findings",
      'of "A" and its own bias',
    ]) {
      expect(text).toContain(words);
    }
    expect(resultTable(results)).toContain("all converged");
  });

  it("writes one CSV line per point with the keys of the JSON rows, whose numbers read back the same", () => {
    const parsed = Papa.parse<Record<string, string>>(comparisonCsv(results.comparison!), {
      header: true,
      skipEmptyLines: true,
    });
    expect(parsed.meta.fields).toEqual([...comparisonColumns]);
    const [{ rows }] = results.comparison!.sets;
    expect(parsed.data).toHaveLength(rows.length);
    expect(Object.keys(rows[0]).sort()).toEqual([...comparisonColumns].sort());
    expect(Number(parsed.data[1].residual)).toBe(rows[1].residual);
  });

  it("needs no stream, walls or sections of its own", () => {
    const reading = readCaseDocument(caseOf({ sets: [set], likelyCauses: false }), "c.json");
    if (!reading.ok) throw new Error(reading.problem.message);
    const alone = runCase(reading.value);
    expect(alone.results).toEqual([]);
    expect(alone.comparison!.sets[0].causes).toEqual([]);
    expect(alone.comparison!.sets[0].remarks.join(" ")).toContain("Turbulence is not stated; 0.1 % is assumed.");
  });
});

describe("readCaseDocument refuses, by set and place,", () => {
  it.each([
    ["two sets of one name", { sets: [set, set] }, 'measurements.sets[1].name: "A" is the name of another set'],
    ["a carried set that is not there", { sets: [set], carriedSet: "B" }, 'there is no set "B"; the sets are "A"'],
    ["a section that is not there", { sets: [{ ...set, section: "rim" }] }, 'there is no section "rim"'],
    [
      "a swept section",
      { sets: [{ ...set, section: { family: "circle", diameterMetres: [0.08, 0.1] } }] },
      "measurements.sets[0].section: has a sweep",
    ],
    [
      "no points at all",
      { sets: [{ ...set, points: undefined }] },
      "measurements.sets[0].points: exactly one of points, table and fromTunnel must be given",
    ],
    [
      "speeds without a fluid",
      { sets: [{ ...set, points: [{ speedMetresPerSecond: 2, dragCoefficient: 1 }] }] },
      "measurements.sets[0].points[0]: speedMetresPerSecond needs a fluid",
    ],
    [
      "a drag coefficient that is no number",
      { sets: [{ ...set, points: [{ reynoldsNumber: 1e5, dragCoefficient: "1,2" }] }] },
      "measurements.sets[0].points[0].dragCoefficient",
    ],
    [
      "a bad cell of a table, by row and column",
      {
        sets: [
          {
            ...set,
            points: undefined,
            table: {
              data: { columns: ["Re", "dragCoefficient"], rows: [["1e5", "x"]] },
              columns: { reynoldsNumber: { column: "Re" } },
            },
          },
        ],
      },
      'measurements.sets[0].table: row 2, column dragCoefficient: "x" is not a number',
    ],
    [
      "a path that nobody read",
      { sets: [{ ...set, points: undefined, table: { data: "a.csv" } }] },
      'measurements.sets[0].table.data: is the path "a.csv", which was not read here',
    ],
    [
      "a roughness too coarse for the section",
      { sets: [{ ...set, sandGrainRoughnessMetres: 0.01 }] },
      "measurements.sets[0].sandGrainRoughnessMetres: is ks/D 0.125",
    ],
    ["an unknown key", { sets: [{ ...set, colour: "red" }] }, "measurements.sets[0].colour is not a known key"],
  ])("%s", (_, block, words) => {
    expect(messages(JSON.parse(JSON.stringify(block))).join("\n")).toContain(words);
  });
});

describe("resolveMeasurements", () => {
  it("puts values on plan area and length onto the width, and speeds onto the fluid", () => {
    const rectangle = { family: "roundedRectangle", lengthMetres: 0.08, heightMetres: 0.04, edgeRadiusMetres: 0.01 };
    const read = (changes: object) => {
      const reading = readCaseDocument(caseOf({ sets: [{ ...set, section: rectangle, ...changes }] }), "c.json");
      if (!reading.ok) throw new Error(reading.problem.message);
      return reading.value.measurements!.measurements[0].set.points[0];
    };
    const plan = read({ referenceArea: "plan", referenceLength: "alongStream" });
    expect(plan.reynolds).toBeCloseTo(5e4, 0);
    expect(plan.dragCoefficient).toBeCloseTo(2.42, 3);
    expect(plan.standardUncertainty).toBeCloseTo(0.04, 4);
    const bySpeed = read({
      fluid: { kind: "userFluid", densityKilogramsPerCubicMetre: 1000, kinematicViscositySquareMetresPerSecond: 1e-6 },
      points: [{ speedMetresPerSecond: 2, dragCoefficient: 1 }],
    });
    expect(bySpeed.reynolds).toBeCloseTo(8e4, 0);
  });
});

describe("measuredFromTunnel(reduction)", () => {
  it("takes Reynolds number, reported coefficient, standard uncertainty and direction of every point", () => {
    const point = {
      reynolds: 1e5,
      dragCoefficient: 1.1,
      direction: "falling",
      firstOrder: { combinedStandardUncertainty: 0.02 },
    } as unknown as TunnelReduction["points"][number];
    expect(measuredFromTunnel({ points: [point] })).toEqual([
      {
        reynolds: 1e5,
        dragCoefficient: 1.1,
        standardUncertainty: 0.02,
        direction: "falling",
        strouhal: null,
        basePressureCoefficient: null,
        separationAngleDegrees: null,
      },
    ]);
  });
});
