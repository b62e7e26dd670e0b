import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoDesign } from "../../shared/case/design";
import { readCase } from "../../shared/case/readCase";
import type { SectionDocument } from "../../shared/document/sectionDocument";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { solveLive } from "../../shared/engine/section/solveLive";
import type { MeasuredCorrection } from "../../shared/jobs/evidence/carriedCorrection";
import type { ComparisonRow } from "../../shared/jobs/evidence/comparisonResult";
import type { TunnelReduction } from "../../shared/jobs/tunnel/reducedTest";
import { carriedCurves, carriedFigure } from "../../src/app/compare/carriedFigures";
import { compareCaseText, readCompareCase } from "../../src/app/compare/compareCaseText";
import type { MeasuredSetInputs } from "../../src/app/compare/compareInputs";
import { chosenKey, designChoices, ofThing } from "../../src/app/compare/designChoices";
import { emptyDraft, readDraft, withTable } from "../../src/app/compare/importDraft";
import { overlayFigure } from "../../src/app/compare/overlayFigure";
import { publishedCurves, publishedSet } from "../../src/app/compare/publishedSets";
import { residualFigure } from "../../src/app/compare/residualFigure";
import { fieldText, setupFieldsOf, withField } from "../../src/app/compare/setupFields";
import { setOfReduction } from "../../src/app/compare/tunnelOffer";
import type { Solved } from "../../src/app/section/solved";
import { lightPalette } from "../../src/app/style/palette";
import { examplePuck } from "../puck/examplePuck";

const root = join(import.meta.dirname, "../..");
const circle: SectionDocument = { family: "circle", diameterMetres: 0.08 };
const set: MeasuredSetInputs = {
  name: "A",
  kind: "tunnelTest",
  source: "invented",
  section: circle,
  points: [{ reynoldsNumber: 1e5, dragCoefficient: 1.2 }],
};

function row(changes: Partial<ComparisonRow>): ComparisonRow {
  return {
    set: "A",
    reynolds: 1e5,
    direction: "rising",
    measuredDragCoefficient: 1.1,
    measuredExpandedUncertainty: 0.05,
    predictedDragCoefficient: 1.2,
    predictedLow: 1.1,
    predictedHigh: 1.3,
    regime: "subcritical",
    residual: -0.1,
    residualPercent: -8.3,
    normalisedError: -0.7,
    exceedsBothBands: false,
    measuredStrouhal: null,
    predictedStrouhal: 0.2,
    measuredBasePressureCoefficient: null,
    predictedBasePressureCoefficient: -1.1,
    measuredSeparationAngleDegrees: null,
    predictedSeparationAngleDegrees: 80,
    applicability: null,
    applicabilityReason: null,
    ...changes,
  };
}

describe("readCompareCase(text) and compareCaseText(inputs)", () => {
  it("puts the case's sections into the sets, so that what is kept is whole and reads back the same", () => {
    const reading = readCompareCase(readFileSync(join(root, "cases/harbour-measured.json"), "utf8"));
    if (!reading.ok) throw new Error(reading.problems[0].message);
    expect(reading.value.sets[1].section).toMatchObject({ family: "roundedRectangle", edgeRadiusMetres: 0.006 });
    const text = compareCaseText(reading.value);
    expect(readCompareCase(text)).toEqual(reading);
    expect(readCase(text, "kept.json").ok).toBe(true);
  });

  it("takes the case's fluid along where points are given by speed", () => {
    const fluid = { kind: "freshWater", temperatureCelsius: 27 };
    const points = [{ speedMetresPerSecond: 2, dragCoefficient: 1 }];
    const text = JSON.stringify({
      wakewrightCase: 1,
      title: "t",
      fluid,
      measurements: { sets: [{ ...set, points }] },
    });
    const reading = readCompareCase(text);
    expect(reading).toMatchObject({ ok: true, value: { sets: [{ fluid }] } });
  });

  it("refuses hostile and broken text with reasons", () => {
    for (const text of ["", "[]", "{", '{"measurements":{"sets":[]}}', '{"measurements":{"sets":[{"name":"A"}]}}']) {
      const reading = readCompareCase(text);
      expect(reading.ok ? "" : reading.problems[0].message).not.toBe("");
    }
  });

  it("keeps an empty view empty", () => {
    const reading = readCompareCase(compareCaseText({ title: "none", sets: [], carriedSet: null }));
    expect(reading).toMatchObject({ ok: true, value: { title: "none", sets: [], carriedSet: null } });
  });
});

describe("import draft", () => {
  it("guesses columns, keeps what was typed, and reads the way a case file is read", () => {
    const named = { ...emptyDraft, name: "typed before" };
    const draft = withTable(named, "Re;Cd;sweep\n1e5;1,2;up\n2e5;;up\n", "file.csv");
    expect(draft).toMatchObject({ name: "typed before", mapping: { dragCoefficient: { column: "Cd" } } });
    const reading = readDraft(draft, { section: circle }, demoDesign.fluid);
    if (!reading.ok) throw new Error(reading.messages[0]);
    expect(reading).toMatchObject({ pointCount: 1, skipped: ["Row 3 passed over: no drag coefficient."] });
    expect(readCase(compareCaseText({ title: "t", sets: [reading.set], carriedSet: null }), "t.json").ok).toBe(true);
  });

  it("names every fault by row and column", () => {
    const draft = withTable(emptyDraft, "Re,Cd\n1e5,1.2\nfast,1.1\n1e5,slow\n", "bad.csv");
    const reading = readDraft(draft, { section: circle }, demoDesign.fluid);
    expect(reading).toMatchObject({
      ok: false,
      messages: ['row 3, column Re: "fast" is not a number', 'row 4, column Cd: "slow" is not a number'],
    });
    expect(draft.text).toContain("fast");
  });

  it("passes over a row out of range and says which and why", () => {
    const draft = withTable(emptyDraft, "Re,Cd\n1e5,1.2\n1e5,-3\n", "range.csv");
    const reading = readDraft(draft, { section: circle }, demoDesign.fluid);
    if (!reading.ok) throw new Error(reading.messages[0]);
    expect(reading.pointCount).toBe(1);
    expect(reading.skipped).toHaveLength(1);
    expect(reading.skipped[0]).toMatch(/row 3.*above 0 and at most 10/i);
  });
});

describe("set-up fields", () => {
  const field = (key: string) => setupFieldsOf(set).find((one) => one.key === key)!;

  it("read and write the case file's units, and take an empty field for not stated", () => {
    const read = withField(set, field("sandGrainRoughnessMetres"), "12,5");
    if (!read.ok) throw new Error(read.message);
    expect(read.set.sandGrainRoughnessMetres).toBe(1.25e-5);
    expect(fieldText(read.set, field("sandGrainRoughnessMetres"))).toBe("12.5");
    const emptied = withField(read.set, field("sandGrainRoughnessMetres"), " ");
    expect(emptied).toEqual({ ok: true, set });
  });

  it("refuse what is out of range, with the range", () => {
    expect(withField(set, field("blockageRatio"), "40")).toMatchObject({
      ok: false,
      message: expect.stringContaining('is "40"; it must be a number from 0 to 25 %'),
    });
    expect(withField(set, field("turbulencePercent"), "low").ok).toBe(false);
  });
});

describe("figures of measured and predicted drag", () => {
  const rows = [
    row({ reynolds: 2e5, direction: "rising" }),
    row({ reynolds: 1e5, direction: "rising" }),
    row({ reynolds: 1e5, direction: "falling", predictedDragCoefficient: null, normalisedError: null }),
  ];
  const result = {
    name: "A",
    rows,
    referenceText: "Cd on its area",
    design: "section" as const,
    shownOn: "Cd on the width, Re on the width",
  };

  it("draw band, prediction by direction, and measured points with bars of k = 2; the table has them all", () => {
    const figure = overlayFigure({ result, shown: null }, lightPalette);
    expect(figure.data.map((trace) => (trace as { name: string }).name)).toEqual([
      "prediction, band",
      "prediction, rising speed",
      "measured, rising speed",
      "measured, falling speed",
    ]);
    const measured = figure.data[2] as unknown as { x: number[]; error_y: { array: number[] } };
    expect(measured.x).toEqual([1e5, 2e5]);
    expect(measured.error_y.array).toEqual([0.05, 0.05]);
    expect(figure.table.rows).toHaveLength(3);
    expect(figure.table.rows.every((cells) => cells.length === figure.table.columns.length)).toBe(true);
  });

  it("lay a cause's prediction over them under its own value, in plot and table", () => {
    const shown = { label: "Tu 2 %", rows: rows.map((one) => ({ ...one, predictedDragCoefficient: 0.3 })) };
    const figure = overlayFigure({ result, shown }, lightPalette);
    expect(figure.data.some((trace) => (trace as { name: string }).name === "prediction with Tu 2 %")).toBe(true);
    expect(figure.table.columns.at(-1)).toBe("predicted Cd with Tu 2 %");
    expect(figure.table.rows[0].at(-1)).toBe(0.3);
    const residuals = residualFigure({ result, shown }, lightPalette);
    expect(residuals.table.columns.at(-1)).toBe("normalised error with Tu 2 %");
    expect(residuals.table.rows[2][4]).toBe(null);
  });
});

describe("a measured offset on the section view", () => {
  const design = { ...demoDesign, section: { family: "circle", diameter: 0.08 } as const, sandGrainRoughness: 1e-6 };
  const shape = prepareShape({ section: design.section, panelCount: 80 });
  if (!shape.ok) throw new Error(shape.problem.message);
  const solution = solveLive(shape.value, {
    speed: 1,
    fluid: { kinematicViscosity: 8e-7 },
    sandGrainRoughness: 1e-6,
    turbulenceIntensity: 0.003,
  });
  const solved = { design, fluid: {} as Solved["fluid"], solution };
  const correction: MeasuredCorrection = {
    measurement: "B",
    source: "invented",
    member: {
      description: {
        shape: "circle",
        lengthToHeight: 1,
        cornerRadiusToHeight: null,
        betweenEllipseAndRectangle: true,
        inclined: false,
        nearFloor: false,
      },
      settings: { turbulenceIntensity: 0.003, sandGrainRoughnessRatio: 1e-5 },
    },
    factors: [
      {
        regime: "subcritical",
        factor: 0.9,
        expandedUncertainty: 0.03,
        count: 4,
        exceedingCount: 0,
        from: 5e4,
        to: 2e5,
      },
    ],
    leftOut: [],
  };

  it("is a figure of its own with the correction's label", () => {
    const figure = carriedFigure(correction, solved)!;
    const state = solution.outcome.states[solution.outcome.rising!];
    expect(Number(figure.value)).toBeCloseTo(0.9 * state.dragCoefficient, 3);
    expect(figure.detail).toContain('corrected by measurement "B", factor 0.90 ± 0.03 (k = 2), same family');
  });

  it("is no number on another family, but the reason", () => {
    const other = {
      ...correction,
      member: { ...correction.member, description: { ...correction.member.description, shape: "rectangle" as const } },
    };
    expect(carriedFigure(other, solved)).toMatchObject({ value: "–" });
    expect(carriedFigure(other, solved)!.detail).toContain("It is a circle; the measured design is a rectangle.");
    expect(carriedCurves(other, solved, [{ name: "c", rows: [curveRow(1e5)] }])).toEqual([]);
  });

  it("is a curve of its own where it holds, named by its label, and leaves the others alone", () => {
    const [curve] = carriedCurves(correction, solved, [{ name: "c", rows: [curveRow(1e5), curveRow(5e5)] }]);
    expect(curve.name).toContain('c, corrected by measurement "B", factor 0.90');
    expect(curve.rows).toHaveLength(1);
    expect(curve.rows[0].dragCoefficient).toBeCloseTo(1.08, 9);
  });

  function curveRow(reynolds: number) {
    return {
      section: "c",
      reynolds,
      sandGrainRoughnessRatio: 1e-5,
      turbulencePercent: 0.3,
      branch: "rising" as const,
      regime: "subcritical",
      converged: true,
      separationAngleUpperDegrees: 80,
      separationAngleLowerDegrees: 80,
      strouhal: 0.2,
      dragCoefficient: 1.2,
      dragCoefficientLow: 1.1,
      dragCoefficientHigh: 1.3,
    };
  }
});

describe("sets from elsewhere", () => {
  it("published curves and reduced tests are good cases", () => {
    const reduction = {
      blockageRatio: 0.06,
      correction: "allenVincenti",
      points: [
        {
          reynolds: 1e5,
          dragCoefficient: 1.1,
          direction: "rising",
          firstOrder: { combinedStandardUncertainty: 0.02 },
        },
      ],
    } as unknown as TunnelReduction;
    const tested = setOfReduction(reduction, { name: "T", source: "test 3", thing: { section: circle } });
    expect(tested).toMatchObject({ blockageCorrected: true, points: [{ standardUncertainty: 0.02 }] });
    const sets = [...publishedCurves.map(publishedSet), tested];
    expect(readCase(compareCaseText({ title: "t", sets, carriedSet: null }), "t.json").ok).toBe(true);
  });

  it("designChoices lists the design and the candidate first, then everything measured once", () => {
    const held = ofThing({ ...set, name: "C" }, { puck: examplePuck, attitude: "faceOn" });
    const choices = designChoices({ sets: [set, { ...set, name: "B" }, held] }, demoDesign, examplePuck);
    expect(choices.map(({ label }) => label).slice(1)).toEqual([
      "the puck view's candidate (Harbour League baseline), edge-on",
      "the puck view's candidate (Harbour League baseline), face-on",
      "circle 80 mm",
      "Harbour League baseline, face-on",
    ]);
    expect(choices.slice(3).map(({ key }) => key)).toEqual([chosenKey(set), chosenKey(held)]);
  });

  it("a set that becomes one of a puck leaves what holds for sections alone, and is a good case either way", () => {
    const whole = { ...set, ends: "free", lengthToWidth: 2, panelCount: 120, referenceArea: "plan" } as const;
    const puck = ofThing(whole, { puck: examplePuck, attitude: "faceOn" });
    expect(Object.keys(puck).sort()).toEqual(["attitude", "kind", "name", "points", "puck", "source"]);
    expect(setupFieldsOf(puck).map(({ key }) => key)).not.toContain("lengthToWidth");
    for (const one of [puck, ofThing(puck, { section: circle })]) {
      const text = compareCaseText({ title: "t", sets: [one], carriedSet: null });
      expect(readCase(text, "t.json").ok).toBe(true);
      const reading = readCompareCase(text);
      expect(reading.ok && reading.value.sets).toEqual([one]);
    }
  });
});
