import { describe, expect, test } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { type Design, demoDesign, designRequest } from "../../shared/case/design";
import { readCase } from "../../shared/case/readCase";
import { liveRow } from "../../shared/engine/section/liveCurves";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { solveLive } from "../../shared/engine/section/solveLive";
import { keyFigures } from "../../src/app/components/key-figures/keyFigures";
import { differenceTable } from "../../src/app/components/pin-panel/differences";
import { reportInputs } from "../../src/app/components/report/reportInputs";
import { floorShape } from "../../src/app/drawing/floorShape";
import { handles } from "../../src/app/drawing/handles";
import { streamFrame } from "../../src/app/drawing/streamFrame";
import { surfaceMarks } from "../../src/app/drawing/surfaceParts";
import { caseText } from "../../src/app/files/caseText";
import { pressureFigure } from "../../src/app/plots/pressureFigure";
import { sweepInputs } from "../../src/app/section/sweepInputs";
import { lightPalette } from "../../src/app/style/palette";
import { createSolver } from "../../workers/solverApi";

const above = (floorGap: number | null, incidence = 0): Design => ({
  ...demoDesign,
  // Fewer than about 100 do not resolve the corner ahead of a contact.
  panelCount: 100,
  floorGap,
  incidence,
});

function requestOf(design: Design) {
  const made = designRequest(design);
  if (!made.ok) throw new Error(made.problem.message);
  return made.value;
}

function solve(design: Design) {
  const { request, fluid } = requestOf(design);
  const shape = prepareShape(request);
  if (!shape.ok) throw new Error(shape.problem.message);
  const solution = solveLive(shape.value, request, "quick");
  const { rising, states } = solution.outcome;
  if (rising === null || solution.picture === null || solution.floor === null) throw new Error("no state");
  return {
    request,
    shape: shape.value,
    solution,
    state: states[rising],
    picture: solution.picture,
    floor: solution.floor,
    solved: { design, fluid, solution },
  };
}

const resting = solve(above(0));
const hovering = solve(above(0.012, 0.1));

describe("a design above a floor", () => {
  test("the gap survives the way through a case file, 0 and none included", () => {
    for (const design of [above(null), above(0), above(0.0125)]) {
      const reading = caseToDesign(caseText(design), "test.json");
      expect(reading).toMatchObject({ ok: true, value: design });
    }
  });

  test("its row on the page equals the row of its case on the command line, the gap included", () => {
    for (const { solved, shape, request } of [resting, hovering]) {
      const reading = readCase(caseText(solved.design), "test.json");
      if (!reading.ok) throw new Error(reading.problem.message);
      const [row] = runCase(reading.value).results;
      const own = liveRow(shape, request);
      expect(own.floorGapMetres).toBe(row.floorGapMetres);
      expect(own.dragCoefficient).toBeCloseTo(row.dragCoefficient!, 9);
      expect(own.liftCoefficient === null).toBe(solved.design.floorGap === 0);
      expect(own.applicabilityReason).toBe(row.applicabilityReason);
    }
  });

  test("a gap filled by boundary layers is refused at its field with the least one in millimetres", () => {
    const refused = prepareShape(requestOf(above(0.0003)).request);
    expect(refused).toMatchObject({ ok: false, problem: { field: "floorGap" } });
    if (!refused.ok) expect(refused.problem.message).toMatch(/0\.3 mm, must be 0 .* or at least 0\.6 mm/);
  });

  test("the solver prepares the shape anew when the gap alone changes", async () => {
    const solver = createSolver();
    const drags = [];
    for (const gap of [null, 0.003, 0.02]) {
      const row = await solver.solveRow(requestOf(above(gap)).request);
      if (row.ok) drags.push(row.value.dragCoefficient);
    }
    expect(new Set(drags).size).toBe(3);
  });
});

describe("the drawing above a floor", () => {
  test("no streamline and no shear layer passes through the floor, whatever the incidence", () => {
    for (const { picture, floor, solution } of [resting, hovering]) {
      const { incidence, nodes } = solution;
      const up = (x: number, y: number) =>
        (y - floor.foot[1]) * Math.cos(incidence) - (x - floor.foot[0]) * Math.sin(incidence);
      const lines = [...picture.streamlines, picture.upperShear, picture.lowerShear];
      expect(picture.streamlines.length).toBeGreaterThan(5);
      for (const line of lines) {
        for (let i = 0; i < line.length; i += 2) expect(up(line[i], line[i + 1])).toBeGreaterThan(-1e-6);
      }
      const lowest = Math.min(...Array.from(nodes.x, (x, i) => up(x, nodes.y[i])));
      expect(lowest).toBeCloseTo(floor.gapRatio * solution.referenceWidth, 4);
    }
  });

  test("the floor is level in the drawing and says when it lies outside", () => {
    const { solution, floor } = hovering;
    const frame = streamFrame(solution.nodes.centroid, solution.incidence, 1000, [100, 50]);
    const { level, isOutside } = floorShape(floor, frame, 400);
    const heights = Array.from(solution.nodes.x, (x, i) => frame.toView(x, solution.nodes.y[i])[1]);
    expect(level - Math.max(...heights)).toBeCloseTo(12, 1);
    expect(isOutside).toBe(false);
    expect(floorShape(floor, frame, 60)).toEqual({ level: 60, isOutside: true });
  });

  test("a section on the floor has no lower shear layer and no mark of separation below", () => {
    const { solution, state, picture } = resting;
    expect(picture.lowerShear).toHaveLength(0);
    const marks = surfaceMarks(solution.nodes, state, solution.referenceWidth);
    expect(marks.some(({ side }) => side === "lower")).toBe(false);
    const { data } = pressureFigure(
      [{ name: "puck", points: solution.nodes, state, incidence: 0, referenceWidth: solution.referenceWidth }],
      "angle",
      lightPalette,
    );
    expect(Reflect.get(data[1], "x")).toHaveLength(1);
  });

  test("the floor's handle gives its gap back from its own point; there is none in open water or in contact", () => {
    const { solution, solved } = hovering;
    const handle = handles(solved.design, solution.nodes).find(({ key }) => key === "floorGap")!;
    expect(handle.valueAt(...handle.point)).toBeCloseTo(0.012, 9);
    expect(handle.change(0.02)).toEqual({ floorGap: 0.02 });
    for (const gap of [0, null]) {
      expect(handles(above(gap), solution.nodes).some(({ key }) => key === "floorGap")).toBe(false);
    }
  });
});

describe("the figures above a floor", () => {
  test("on the floor neither lift nor lower separation nor a Strouhal number is told", () => {
    const told = Object.fromEntries(keyFigures(resting.solved, {}).map(({ name, value }) => [name, value]));
    expect(told).toMatchObject({
      "Separation, lower": "none",
      "Lift coefficient, Cl": "not known",
      "Strouhal number, S": "none",
    });
    const pin = { id: 1, name: "pin A", design: hovering.solved.design, solved: hovering.solved, curves: null };
    const row = differenceTable(resting.solved, [pin]).rows.find(({ figure }) => figure.startsWith("Lift"))!;
    expect(row.cells.map(({ value, change }) => [value === "–", change])).toEqual([
      [true, ""],
      [false, ""],
    ]);
  });

  test("the report names the floor and a sweep can vary its gap", () => {
    const floorOf = (solved: typeof resting.solved) => new Map(reportInputs(solved, {})).get("Floor");
    expect(floorOf(resting.solved)).toBe("the section lies on it");
    expect(floorOf(hovering.solved)).toBe("12 mm below the section");
    const input = sweepInputs(hovering.solved.design).find(({ key }) => key === "floorGap")!;
    expect(input.of(input.set(hovering.solved.design, 0.005))).toBe(0.005);
    expect(sweepInputs(above(null)).some(({ key }) => key === "floorGap")).toBe(false);
  });
});
