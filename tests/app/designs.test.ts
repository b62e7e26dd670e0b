import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { type Design, demoDesign, designRequest } from "../../shared/case/design";
import { readCase } from "../../shared/case/readCase";
import type { SectionFamily } from "../../shared/engine/geometry/sectionSpec";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { solveLive } from "../../shared/engine/section/solveLive";
import { handles, heldValue } from "../../src/app/drawing/handles";
import { caseFileName, caseText } from "../../src/app/files/caseText";
import { ofFamily } from "../../src/app/section/sectionFields";
import { rangeValues, sweepTasks } from "../../src/app/section/sweepInputs";

const families: Exclude<SectionFamily, "freeContour" | "outline">[] = [
  "circle",
  "ellipse",
  "roundedRectangle",
  "superellipse",
  "stadium",
  "bevelledRectangle",
  "dShape",
  "roundedPolygon",
  "roundedTriangle",
];

function back(design: Design): Design {
  const reading = caseToDesign(caseText(design), "test.json");
  if (!reading.ok) throw new Error(reading.problems[0].message);
  return reading.value;
}

describe("designs and case files", () => {
  test("a design of every family survives the way through a case file", () => {
    for (const family of families) {
      const design: Design = {
        ...demoDesign,
        section: ofFamily(family, demoDesign.section),
        incidence: 0,
        trips: [{ side: "upper", arc: 0.01, height: 0.0002 }],
      };
      expect(back(design)).toEqual(design);
    }
  });

  test("incidence, speed, turbulence and roughness come back within 1e-11, whatever their values", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        fc.double({ min: 0.3, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 1e-3, noNaN: true }),
        (incidence, speed, turbulenceIntensity, sandGrainRoughness) => {
          const read = back({ ...demoDesign, incidence, speed, turbulenceIntensity, sandGrainRoughness });
          expect(read.incidence).toBeCloseTo(incidence, 10);
          expect(read.speed).toBe(speed);
          expect(read.turbulenceIntensity).toBeCloseTo(turbulenceIntensity, 11);
          expect(read.sandGrainRoughness).toBe(sandGrainRoughness);
        },
      ),
      { numRuns: 30 },
    );
  });

  test("the live solution of a design equals its case run by the command line's path, within 1e-9 in Cd", () => {
    const design = { ...demoDesign, panelCount: 120 };
    const reading = readCase(caseText(design), "test.json");
    if (!reading.ok) throw new Error(reading.problem.message);
    const [row] = runCase(reading.value).results;
    const made = designRequest(design);
    if (!made.ok) throw new Error(made.problem.message);
    const shape = prepareShape(made.value.request);
    if (!shape.ok) throw new Error(shape.problem.message);
    const { outcome } = solveLive(shape.value, made.value.request);
    expect(outcome.states[outcome.rising!].dragCoefficient).toBeCloseTo(row.dragCoefficient!, 9);
  });

  test("caseFileName makes a plain name of any title", () => {
    expect(caseFileName("Harbour League: puck, 80 x 30 mm")).toBe("harbour-league-puck-80-x-30-mm.json");
    expect(caseFileName("???")).toBe("case.json");
  });
});

describe("handles", () => {
  const made = designRequest(demoDesign);
  if (!made.ok) throw new Error(made.problem.message);
  const shape = prepareShape(made.value.request);
  if (!shape.ok) throw new Error(shape.problem.message);
  const { nodes } = shape.value.section;

  test("every handle's own point gives its own value back, trips to a panel", () => {
    const design: Design = {
      ...demoDesign,
      incidence: 0.1,
      trips: [
        { side: "upper", arc: 0.02, height: 1e-4 },
        { side: "lower", arc: 0.03, height: 1e-4 },
      ],
    };
    const list = handles(design, nodes);
    expect(list.map((handle) => handle.key)).toEqual([
      "length",
      "height",
      "edgeRadius",
      "incidence",
      "trip-0",
      "trip-1",
    ]);
    for (const handle of list) {
      const tolerance = handle.key.startsWith("trip") ? 0.003 : 1e-5;
      expect(Math.abs(handle.valueAt(...handle.point) - handle.value)).toBeLessThan(tolerance);
    }
  });

  test("the edge radius is held between 1 % and 50 % of the smaller dimension", () => {
    const radius = handles(demoDesign, nodes).find((handle) => handle.key === "edgeRadius")!;
    expect(heldValue(radius, 1)).toBe(0.015);
    expect(heldValue(radius, 0)).toBeCloseTo(0.0003, 12);
    expect(radius.change(0.004)).toEqual({ section: { ...demoDesign.section, edgeRadius: 0.004 }, sectionName: null });
  });
});

describe("sweeps", () => {
  test("two ranges give all pairs, both ends met, everything else as in the design", () => {
    const tasks = sweepTasks(demoDesign, [
      { key: "edgeRadius", from: 0.003, to: 0.009, count: 3 },
      { key: "speed", from: 1, to: 4, count: 4 },
    ]);
    expect(tasks).toHaveLength(12);
    expect(tasks.at(-1)).toEqual({
      at: [2, 3],
      design: { ...demoDesign, section: { ...demoDesign.section, edgeRadius: 0.009 }, sectionName: null, speed: 4 },
    });
    expect(rangeValues({ key: "", from: 0, to: 1, count: 3 })).toEqual([0, 0.5, 1]);
  });
});
