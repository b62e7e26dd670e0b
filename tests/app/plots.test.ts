import { describe, expect, test } from "vitest";
import { demoDesign, designRequest } from "../../shared/case/design";
import { publishedSmoothCylinderCurves } from "../../shared/engine/reference/smoothCylinderCurve";
import { liveDragCurve, liveRoughnessCurve } from "../../shared/engine/section/liveCurves";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { solveLive } from "../../shared/engine/section/solveLive";
import { type CurveRow, curvesOverReynolds, curvesOverRoughness, roughnessLabel } from "../../src/app/plots/curveRow";
import { dragCurveFigure } from "../../src/app/plots/dragCurveFigure";
import { layerFigure } from "../../src/app/plots/layerFigure";
import { legendEntries } from "../../src/app/plots/legendEntries";
import { linePaths } from "../../src/app/plots/linePaths";
import { axisRange } from "../../src/app/plots/plotFigure";
import { pressureFigure } from "../../src/app/plots/pressureFigure";
import { asScatter } from "../../src/app/plots/scatterTrace";
import { separationRoughnessFigure } from "../../src/app/plots/separationRoughnessFigure";
import { strouhalFigure } from "../../src/app/plots/strouhalFigure";
import { rearToRear, surfacePositions } from "../../src/app/plots/surfacePosition";
import { sweepFigure } from "../../src/app/plots/sweepFigure";
import { tableCsv } from "../../src/app/plots/tableCsv";
import { thinned } from "../../src/app/plots/thinned";
import { darkPalette, lightPalette } from "../../src/app/style/palette";

const circle = { ...demoDesign, section: { family: "circle", diameter: 0.08 } as const, panelCount: 80 };

function solved(design = circle) {
  const made = designRequest(design);
  if (!made.ok) throw new Error(made.problem.message);
  const shape = prepareShape(made.value.request);
  if (!shape.ok) throw new Error(shape.problem.message);
  const solution = solveLive(shape.value, made.value.request);
  const { rising, states } = solution.outcome;
  if (rising === null) throw new Error("no state");
  const state = states[rising];
  const overlaid = {
    name: "circle",
    points: solution.nodes,
    state,
    incidence: 0,
    referenceWidth: solution.referenceWidth,
  };
  return { shape: shape.value, request: made.value.request, solution, state, overlaid };
}

const row = (change: Partial<CurveRow>): CurveRow => ({
  section: "circle",
  reynolds: 1e5,
  sandGrainRoughnessRatio: 0,
  turbulencePercent: 0.1,
  branch: "rising",
  regime: "subcritical",
  converged: true,
  separationAngleUpperDegrees: 78,
  separationAngleLowerDegrees: 78,
  strouhal: 0.2,
  dragCoefficient: 1.2,
  ...change,
});

describe("surfacePositions", () => {
  const { solution } = solved();

  test("a circle's angles run from -180 to 180 degrees, 0 at the nose, the upper side positive", () => {
    const angles = surfacePositions(solution.nodes, "angle", 0, solution.referenceWidth);
    expect(angles[0]).toBeCloseTo(0, 9);
    const quarter = solution.nodes.y.findIndex((y) => y > 0.0399);
    expect(angles[quarter]).toBeGreaterThan(80);
    const order = rearToRear(angles);
    for (let i = 1; i < order.length; i++) expect(angles[order[i]]).toBeGreaterThan(angles[order[i - 1]]);
  });

  test("nose-up incidence moves every angle by that much: the front stays where the stream comes from", () => {
    const level = surfacePositions(solution.nodes, "angle", 0, solution.referenceWidth);
    const turned = surfacePositions(solution.nodes, "angle", 0.2, solution.referenceWidth);
    const node = solution.nodes.y.findIndex((y) => y > 0.0399);
    expect(turned[node]).toBeCloseTo(level[node] + (0.2 * 180) / Math.PI, 9);
  });

  test("arc positions of a circle are angles times pi / 360 of the diameter", () => {
    const arcs = surfacePositions(solution.nodes, "arc", 0, solution.referenceWidth);
    const angles = surfacePositions(solution.nodes, "angle", 0, solution.referenceWidth);
    for (const node of [3, 17, 60, 79]) expect(arcs[node]).toBeCloseTo((angles[node] * Math.PI) / 360, 4);
  });
});

describe("figures", () => {
  const { shape, request, state, overlaid } = solved();

  test("pressureFigure has the engine's values in its line and its table, and marks both separations", () => {
    const figure = pressureFigure([overlaid], "angle", lightPalette);
    const [line, marks] = figure.data.map(asScatter);
    expect(line.x?.length).toBe(80);
    expect(Math.max(...Array.from(line.y as number[]))).toBe(Math.max(...state.pressureCoefficient));
    expect(marks.x?.length).toBe(2);
    expect(figure.table.rows).toHaveLength(80);
    expect(Math.abs(Number(marks.x?.[0]) - (state.upper.separationAngle * 180) / Math.PI)).toBeLessThan(3);
  });

  test("layerFigure joins the kinds of layer without a gap and lists every station", () => {
    const figure = layerFigure([overlaid], "shapeFactor", darkPalette);
    expect(figure.table.rows).toHaveLength(state.upper.layer.arc.length + state.lower.layer.arc.length);
    const upper = figure.data.map(asScatter).filter((trace) => trace.name?.includes("upper"));
    for (let i = 1; i < upper.length; i++) {
      const before = upper[i - 1].x!;
      expect(upper[i].x![0]).toBe(before[before.length - 1]);
    }
  });

  test("every figure has axis titles with a unit or (–)", () => {
    const rows = liveDragCurve(shape, request, [1e5, 2e5, 4e5]);
    const rough = liveRoughnessCurve(shape, request, [0, 1e-4, 1e-3]);
    const figures = [
      pressureFigure([overlaid], "arc", lightPalette),
      layerFigure([overlaid], "skinFriction", lightPalette),
      dragCurveFigure(
        { curves: curvesOverReynolds(rows), published: publishedSmoothCylinderCurves, workingPoint: null },
        lightPalette,
      ),
      separationRoughnessFigure(curvesOverRoughness(rough), lightPalette),
      strouhalFigure(curvesOverReynolds(rows), lightPalette),
      sweepFigure([{ title: "speed (m/s)", values: [1, 2] }], [[rows[0]], [rows[1]]], "dragCoefficient", lightPalette),
    ];
    for (const { layout, title, caption } of figures) {
      for (const axis of [layout.xaxis, layout.yaxis]) {
        expect((axis!.title as { text: string }).text).toMatch(/\((–|degrees|m\/s)\)/);
      }
      expect(title.length).toBeGreaterThan(5);
      expect(caption.length).toBeGreaterThan(20);
    }
  });

  test("dragCurveFigure draws a band only where rows carry one, and leaves out rows that did not converge", () => {
    const rows = [
      row({ reynolds: 1e5, dragCoefficientLow: 1.1, dragCoefficientHigh: 1.3 }),
      row({ reynolds: 2e5, dragCoefficientLow: 1.0, dragCoefficientHigh: 1.2 }),
      row({ reynolds: 3e5, converged: false, dragCoefficient: null }),
    ];
    const figure = dragCurveFigure({ curves: [{ name: "c", rows }], published: [], workingPoint: null }, lightPalette);
    const [band, line] = figure.data.map(asScatter);
    expect(band.fill).toBe("toself");
    expect(Array.from(band.y as number[])).toEqual([1.3, 1.2, 1.0, 1.1]);
    expect(line.x).toEqual([1e5, 2e5]);
  });

  test("separationRoughnessFigure puts a smooth wall half a decade left of the finest roughness with the tick 0", () => {
    const rows = [row({}), row({ sandGrainRoughnessRatio: 1e-3 }), row({ sandGrainRoughnessRatio: 1e-2 })];
    const figure = separationRoughnessFigure([{ name: "c", rows }], lightPalette);
    expect(Number(asScatter(figure.data[0]).x![0])).toBeCloseTo(1e-3 / Math.sqrt(10), 12);
    expect(figure.layout.xaxis?.ticktext?.[0]).toBe("0");
    expect(figure.table.rows[0][1]).toBe(0);
  });

  test("two swept inputs become a contour with the second input upward", () => {
    const grid = [
      [row({ dragCoefficient: 1 }), row({ dragCoefficient: 2 }), null],
      [row({ dragCoefficient: 3 }), row({ dragCoefficient: 4 }), row({ dragCoefficient: 5 })],
    ] as never;
    const axes = [
      { title: "a (mm)", values: [1, 2] },
      { title: "b (mm)", values: [10, 20, 30] },
    ];
    const { data } = sweepFigure(axes, grid, "dragCoefficient", lightPalette);
    expect((data[0] as { z: unknown }).z).toEqual([
      [1, 3],
      [2, 4],
      [null, 5],
    ]);
  });
});

describe("groups and labels", () => {
  test("curvesOverReynolds names a curve by what differs only and sorts by Reynolds number", () => {
    const rows = [row({ reynolds: 3e5 }), row({ reynolds: 1e5 }), row({ sandGrainRoughnessRatio: 4.5e-3 })];
    const curves = curvesOverReynolds(rows);
    expect(curves.map((curve) => curve.name)).toEqual(["ks/D 0", "ks/D 4.5e-3"]);
    expect(curves[0].rows.map((one) => one.reynolds)).toEqual([1e5, 3e5]);
  });

  test("roughnessLabel writes ratios as people do", () => {
    expect([0, 1e-3, 4.5e-3, 9e-3, 1e-5].map(roughnessLabel)).toEqual([
      "ks/D 0",
      "ks/D 1e-3",
      "ks/D 4.5e-3",
      "ks/D 9e-3",
      "ks/D 1e-5",
    ]);
  });

  test("thinned keeps the first, the last and the number asked for", () => {
    expect(thinned([1, 2, 3, 4, 5, 6, 7, 8, 9], 3)).toEqual([1, 5, 9]);
    expect(thinned([1, 2], 3)).toEqual([1, 2]);
  });
});

describe("axes, legend, overlay and table", () => {
  test("axisRange spans finite values with 4 %, in exponents on a logarithmic axis", () => {
    expect(axisRange({ title: "", values: [0, null, Number.NaN, 10] })).toEqual([-0.4, 10.4]);
    const [low, high] = axisRange({ title: "", values: [0, 1e4, 1e6], logarithmic: true });
    expect(low).toBeCloseTo(3.92, 9);
    expect(high).toBeCloseTo(6.08, 9);
    expect(axisRange({ title: "", values: [] })).toEqual([0, 1]);
  });

  test("linePaths maps axis ends to the window's corners and breaks a line at a gap", () => {
    const window = {
      left: 10,
      top: 20,
      width: 100,
      height: 50,
      xRange: [4, 6],
      yRange: [0, 1],
      xLogarithmic: true,
      yLogarithmic: false,
    } as const;
    const data = [{ mode: "lines", x: [1e4, 1e5, 1e6], y: [0, null, 1], line: { color: "red", dash: "dot" } }];
    expect(linePaths(data as never, window)[0].path).toBe("M10.0 70.0M110.0 20.0");
    expect(linePaths(data as never, window)[0].dash).not.toBe("");
  });

  test("legendEntries leaves out bands and gives every other curve its name, dash and marker", () => {
    const rows = [
      row({ dragCoefficientLow: 1, dragCoefficientHigh: 2 }),
      row({ reynolds: 2e5, dragCoefficientLow: 1, dragCoefficientHigh: 2 }),
    ];
    const figure = dragCurveFigure(
      { curves: [{ name: "c", rows }], published: publishedSmoothCylinderCurves, workingPoint: null },
      lightPalette,
    );
    const names = legendEntries(figure.data).map((entry) => entry.name);
    expect(names).toHaveLength(3);
    expect(names[0]).toBe("c");
  });

  test("tableCsv has a heading line and escapes text that a spreadsheet would run", () => {
    const csv = tableCsv({
      columns: ["curve", "Cd"],
      rows: [
        ["=HYPERLINK(1)", -1.5],
        ["a, b", null],
      ],
    });
    expect(csv.split("\n")).toEqual(["curve,Cd", '"\'=HYPERLINK(1)",-1.5', '"a, b",']);
  });

  test("the eight overlaid curves differ in colour and marker, and the first six in their dash as well", () => {
    for (const palette of [lightPalette, darkPalette]) {
      for (const key of ["color", "symbol", "mark"] as const) {
        expect(new Set(palette.series.map((style) => style[key])).size).toBe(8);
      }
      expect(new Set(palette.series.slice(0, 6).map(({ dash }) => dash)).size).toBe(6);
    }
  });
});
