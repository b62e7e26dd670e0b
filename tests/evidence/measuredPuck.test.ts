import { describe, expect, it } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { runCase } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import { causeSentence } from "../../shared/jobs/evidence/causeText";
import { compareSet } from "../../shared/jobs/evidence/compareSet";
import { comparisonTable } from "../../shared/jobs/evidence/comparisonTable";
import { confinedPuckDrag } from "../../shared/jobs/evidence/confinedPuckDrag";
import type { FlowSettings } from "../../shared/jobs/evidence/flowSettings";
import type { MeasuredBody } from "../../shared/jobs/evidence/measuredBody";
import { measuredPuck } from "../../shared/jobs/evidence/measuredPuck";
import { bareMeasuredPoint } from "../../shared/jobs/evidence/measurement";
import { puckFigures } from "../../shared/jobs/puck/body/puckFigures";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { sharpCylinderDrag } from "../../shared/jobs/puck/drag/faceOnDrag";
import type { PuckAttitude } from "../../shared/jobs/puck/drag/heldPuck";
import { maskell, maskellFactor } from "../../shared/jobs/tunnel/blockage";
import { predictDrag } from "../../shared/jobs/tunnel/predictedDrag";
import { examplePuck, unwrap } from "../puck/examplePuck";
import { causesOf, quietSettings, setOf, syntheticSet } from "./measuredSets";

const figures = unwrap(puckFigures(examplePuck, { fluidDensity: 997 }));
const held = (attitude: PuckAttitude, spec: PuckSpec = examplePuck): MeasuredBody =>
  unwrap(measuredPuck({ spec, figures, attitude }));
const reynoldsNumbers = [6e4, 1e5, 1.5e5, 2e5, 2.5e5, 3e5, 4e5];
const rising = (reynolds: readonly number[]) => reynolds.map((each) => ({ reynolds: each, direction: null }));

describe("measuredPuck({ spec, figures, attitude }).predict", () => {
  it.each(["edgeOn", "faceOn"] as const)("%s is the prediction that a tunnel test is planned with", (attitude) => {
    const shape = { kind: "puck", name: "A", spec: examplePuck, figures, attitude } as const;
    const settings: FlowSettings = { ...quietSettings, turbulenceIntensity: 0.01, sandGrainRoughnessRatio: 2.5e-4 };
    const [planned] = unwrap(predictDrag({ shape, sandGrainRoughness: 2e-5 }, reynoldsNumbers, [0.01]));
    const predicted = held(attitude).predict(settings, rising(reynoldsNumbers), true);
    expect(predicted).toHaveLength(planned.points.length);
    for (const [i, { dragCoefficient: band }] of planned.points.entries()) {
      const { dragCoefficient, low, high } = predicted[i]!;
      for (const [own, other] of [
        [dragCoefficient, band.expected],
        [low, band.low],
        [high, band.high],
      ]) {
        expect(own).toBeCloseTo(other, 10);
      }
    }
  });

  it("answers in the order that was asked for, names the plan's regime edge-on and how far each is backed", () => {
    const body = held("edgeOn");
    const there = body.predict(quietSettings, rising([1e5, 4e5]), true);
    const back = body.predict(quietSettings, rising([4e5, 1e5]), true);
    expect([...back].reverse()).toEqual(there);
    expect(there[0]).toMatchObject({ regime: "subcritical", strouhal: null });
    expect(there[0]!.applicability).toMatch(/^extrapolated/);
    expect(held("faceOn").predict(quietSettings, rising([1e5]), true)[0]).toMatchObject({
      regime: null,
      applicability: "solved flow of the whole body, base pressure of spheres, discs and finite cylinders",
    });
  });

  it("without bands gives the expected value alone", () => {
    for (const point of held("edgeOn").predict(quietSettings, rising([1e5, 3e5]), false)) {
      expect(point!.low).toBe(point!.dragCoefficient);
      expect(point!.high).toBe(point!.dragCoefficient);
    }
  });

  it("between walls has more drag, and Maskell's correction (1963, R&M 3400) takes it back to the free one", () => {
    const body = held("faceOn");
    const [confined] = body.predict({ ...quietSettings, blockageRatio: 0.06 }, rising([1e5]), false);
    const corrected = maskell(confined!.dragCoefficient, 0.06, maskellFactor.finite);
    const [free] = body.predict(quietSettings, rising([1e5 * corrected.speedRatio]), false);
    expect(confined!.dragCoefficient).toBeGreaterThan(1.1 * free!.dragCoefficient);
    expect(corrected.dragCoefficient).toBeCloseTo(free!.dragCoefficient, 10);
  });

  it("agrees inside both bands with a sharp cylinder along the stream, length/diameter 0.375 (Kritzinger 2004)", () => {
    const sharp: PuckSpec = { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0 } };
    const measured = sharpCylinderDrag(0.375);
    const points = [5e4, 1e5, 2e5].map((reynolds) =>
      bareMeasuredPoint(reynolds, measured.expected, (measured.high - measured.expected) / 2),
    );
    const comparison = compareSet(held("faceOn", sharp), setOf(points));
    expect(comparison).toMatchObject({ comparedCount: 3, exceedingCount: 0, beyondOneCount: 0 });
  });
});

describe("confinedPuckDrag(Cd, b)", () => {
  it("is the inverse of Maskell's correction and has an end", () => {
    for (const [drag, blockage] of [
      [1.1, 0.02],
      [0.5, 0.1],
      [1.17, 0.2],
    ]) {
      const confined = confinedPuckDrag(drag, blockage)!;
      const back = maskell(confined.dragCoefficient, blockage, maskellFactor.finite);
      expect(back.dragCoefficient).toBeCloseTo(drag, 12);
      expect(back.speedRatio).toBeCloseTo(confined.speedRatio, 12);
    }
    expect(confinedPuckDrag(1.17, 0.4)).toBe(null);
  });
});

describe("causeSteps on a puck: a measurement made by the engine under another setting than it states", () => {
  it("edge-on an early crisis lies outside the band, and the turbulence that made it is named first", () => {
    const body = held("edgeOn");
    const set = syntheticSet(
      body,
      { ...quietSettings, turbulenceIntensity: 0.05 },
      [1e5, 1.5e5, 2e5, 2.5e5, 3e5],
      0.01,
    );
    const comparison = compareSet(body, set);
    expect(comparison.exceedingCount).toBeGreaterThan(0);
    const [first] = causesOf(body, set, comparison);
    expect(first).toMatchObject({ key: "turbulence", exceedingBefore: comparison.exceedingCount, exceedingAfter: 0 });
    expect(first.low).toBeLessThanOrEqual(0.05);
    expect(first.high).toBeGreaterThanOrEqual(0.05);
    expect(first.explainedShare).toBeGreaterThan(0.9);
    expect(causeSentence(first)).toContain("Tu ");
  });

  it("face-on points to the walls first and finds their share of the section", () => {
    const body = held("faceOn");
    const set = syntheticSet(body, { ...quietSettings, blockageRatio: 0.09 }, [6e4, 8e4, 1e5, 1.2e5], 0.01);
    const comparison = compareSet(body, set);
    expect(comparison.exceedingCount).toBe(4);
    const causes = causesOf(body, set, comparison);
    expect(causes.map(({ key }) => key).sort()).toEqual(["blockage", "turbulence"]);
    expect(causes[0]).toMatchObject({ key: "blockage", plausible: true, exceedingAfter: 0 });
    expect(Math.abs(causes[0].value / 0.09 - 1)).toBeLessThan(0.05);
    expect(causes[0].quantity).toContain("area of the test section");
  });
});

const set = {
  name: "face-on",
  kind: "tunnelTest",
  source: "invented",
  puck: examplePuck,
  attitude: "faceOn",
  points: [{ reynoldsNumber: 1e5, dragCoefficient: 0.9, expandedUncertainty: 0.03 }],
};

function run(changes: object): CaseResults {
  const document = { wakewrightCase: 1, title: "measured", measurements: { sets: [{ ...set, ...changes }] } };
  const reading = readCaseDocument(JSON.parse(JSON.stringify(document)), "c.json");
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join("\n"));
  return runCase(reading.value);
}

describe("a case with a measured puck", () => {
  it("compares it and says what its figures are on, and that its offset is not carried", () => {
    const { comparison } = run({});
    const [result] = comparison!.sets;
    expect(result).toMatchObject({ section: "Harbour League baseline, face-on", comparedCount: 1, factors: [] });
    expect(result.referenceText).toBe("Cd on the face area, Re on the diameter");
    expect(result.shownOn).toBe("Cd on the face area, Re on the diameter");
    expect(result.remarks.join(" ")).toContain("carried to no other design");
    expect(result.factorsLeftOut.join(" ")).toContain("only offsets of sections are carried");
    expect(comparisonTable(comparison!)).toContain("Harbour League baseline, face-on");
  });

  it("puts values on the face onto the frontal area edge-on, and a Reynolds number on the thickness onto the diameter", () => {
    const [edgeOn] = run({ attitude: "edgeOn", referenceArea: "plan" }).comparison!.sets[0].rows;
    const faceArea = (Math.PI / 4) * 0.08 ** 2;
    expect(edgeOn.measuredDragCoefficient).toBeCloseTo((0.9 * faceArea) / figures.frontalAreaEdgeOnSquareMetres, 12);
    const [faceOn] = run({ referenceLength: "alongStream" }).comparison!.sets[0].rows;
    expect(faceOn.reynolds).toBeCloseTo((1e5 * 0.08) / 0.03, 6);
  });

  it.each([
    ["a section too", { section: { family: "circle", diameterMetres: 0.08 } }, "exactly one of section and puck"],
    ["no design", { puck: undefined, attitude: undefined }, "exactly one of section and puck"],
    ["an attitude of a section", { puck: undefined, section: { family: "circle", diameterMetres: 0.08 } }, "attitude"],
    ["ends of its own", { ends: "free" }, "measurements.sets[0].ends: it holds for sections alone"],
    ["the face edge-on as plan", { referenceArea: "plan" }, "referenceArea: a puck held face-on shows its face"],
    [
      "an edge that does not fit",
      { puck: { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0.018 } } },
      "measurements.sets[0].puck: ",
    ],
  ])("refuses %s", (_, changes, words) => {
    expect(() => run(changes)).toThrow(words);
  });
});
