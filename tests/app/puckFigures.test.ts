import { describe, expect, test } from "vitest";
import type { PuckDragRow } from "../../shared/jobs/puck/puckResult";
import { legendEntries } from "../../src/app/plots/legendEntries";
import { puckDragFigure } from "../../src/app/plots/puckDragFigure";
import { puckFrontFigure } from "../../src/app/plots/puckFrontFigure";
import { puckMotionFigure } from "../../src/app/plots/puckMotionFigure";
import { puckStyle } from "../../src/app/plots/puckStyle";
import { asScatter } from "../../src/app/plots/scatterTrace";
import { lightPalette } from "../../src/app/style/palette";
import { unitChoices } from "../../src/app/units/units";

const [metresPerSecond, kilometresPerHour] = unitChoices.speed;
const metres = unitChoices.length.find(({ key }) => key === "m")!;

function row(speed: number, orientation: PuckDragRow["orientation"], expected: number): PuckDragRow {
  const band = (value: number) => ({ low: 0.5 * value, expected: value, high: 2 * value });
  return {
    turbulencePercent: 1,
    speedMetresPerSecond: speed,
    orientation,
    tiltDegrees: null,
    floorGapMetres: null,
    reynoldsOnDiameter: 9.4e4 * speed,
    dragAreaSquareMetres: band(expected),
    dragCoefficient: band(expected / 2e-3),
    referenceArea: "frontal area edge-on",
    referenceAreaSquareMetres: 2e-3,
    dragNewtons: band(500 * speed ** 2 * expected),
    states: [],
    crisisSpeedMetresPerSecond: null,
    twoSectionDragCoefficient: null,
    momentVolumeCubicMetres: null,
    liftAreaSquareMetres: null,
    applicability: "solved sections with published end relief",
  };
}

const pucks = ["A", "B"].map((name, i) => ({
  name,
  drag: [1, 2, 4].flatMap((speed) => [row(speed, "upright", (1 + i) * 1e-3), row(speed, "faceOn", 5e-3)]),
}));

describe("puckDragFigure(input, palette)", () => {
  const input = {
    pucks,
    orientation: "upright",
    turbulencePercent: 1,
    quantity: "area",
    speedUnit: metresPerSecond,
  } as const;

  test("one curve per puck with its band under the same name, in cm2; only curves are in the legend", () => {
    const figure = puckDragFigure(input, lightPalette);
    const curves = figure.data.map(asScatter);
    expect(curves.map(({ name }) => name)).toEqual(["A", "A", "B", "B"]);
    expect(Array.from(curves[1].y ?? [])).toEqual([10, 10, 10]);
    expect(Array.from(curves[0].y ?? [])).toEqual([20, 20, 20, 5, 5, 5]);
    expect(legendEntries(figure.data).map(({ name }) => name)).toEqual(["A", "B"]);
    expect(figure.table.rows).toHaveLength(6);
    expect(figure.table.rows[0].slice(0, 6)).toEqual(["A", 1, 9.4e4, 10, 5, 20]);
  });

  test("speeds come in the person's unit, and a coefficient names its area", () => {
    const figure = puckDragFigure({ ...input, quantity: "coefficient", speedUnit: kilometresPerHour }, lightPalette);
    expect(asScatter(figure.data[1]).x?.[0]).toBeCloseTo(3.6, 12);
    expect(figure.caption).toContain("frontal area edge-on");
    expect(figure.table.rows[0][3]).toBeCloseTo(0.5, 12);
  });

  test("rows at several tilts or gaps to the floor are curves of their own, named after them", () => {
    const over = (gap: number) =>
      [1, 2].map((speed) => ({ ...row(speed, "overFloor", 1e-3 + gap), floorGapMetres: gap }));
    const figure = puckDragFigure(
      { ...input, pucks: [{ name: "A", drag: [...over(0), ...over(0.003)] }], orientation: "overFloor" },
      lightPalette,
    );
    expect(legendEntries(figure.data).map(({ name }) => name)).toEqual(["A, gap 0 mm", "A, gap 3 mm"]);
    expect(figure.data.map(asScatter).every(({ x }) => x !== undefined)).toBe(true);
    expect(figure.table.rows.map(([name, speed]) => [name, speed])).toEqual([
      ["A, gap 0 mm", 1],
      ["A, gap 0 mm", 2],
      ["A, gap 3 mm", 1],
      ["A, gap 3 mm", 2],
    ]);
  });

  test("another turbulence has no rows, and the figure is still one", () => {
    expect(puckDragFigure({ ...input, turbulencePercent: 5 }, lightPalette).table.rows).toEqual([]);
  });
});

describe("puckMotionFigure(input, palette)", () => {
  const curve = (end: number) => ({
    timeSeconds: [0, end / 2, end],
    distanceMetres: [0, end, 1.5 * end],
    heightMetres: [0, 0.1, 0],
    speedMetresPerSecond: [2, 1, 0],
  });
  const motion = {
    motion: "slide",
    name: "slide",
    turbulencePercent: 1,
    figures: {},
    marks: [],
    ended: "rest",
    energyResidual: 0,
    curves: { expected: curve(1), leastResistance: curve(2), mostResistance: curve(0.5) },
  } as const;
  const input = {
    pucks: [{ name: "A", motions: [motion] }],
    motion: "slide",
    name: "slide",
    view: "speed",
    turbulencePercent: 1,
    lengthUnit: metres,
    speedUnit: metresPerSecond,
  } as const;

  test("the line is the run with the expected values; the band runs along the least and back along the most resistance", () => {
    const [band, line] = puckMotionFigure(input, lightPalette).data.map(asScatter);
    expect(Array.from(line.x ?? [])).toEqual([0, 0.5, 1]);
    expect(Array.from(line.y ?? [])).toEqual([2, 1, 0]);
    expect(Array.from(band.x ?? [])).toEqual([0, 1, 2, 0.5, 0.25, 0]);
  });

  test("a path is height over distance; the table has all three runs", () => {
    const figure = puckMotionFigure({ ...input, view: "path" }, lightPalette);
    expect(Array.from(asScatter(figure.data[1]).x ?? [])).toEqual([0, 1, 1.5]);
    expect(figure.table.rows.map(([, run]) => run)).toEqual([
      ...Array(3).fill("expected values"),
      ...Array(3).fill("least resistance"),
      ...Array(3).fill("most resistance"),
    ]);
  });

  test("of several slides the named one is drawn, and the title says which; a puck without it is left out", () => {
    const other = { ...motion, name: "hard slide", curves: { ...motion.curves, expected: curve(4) } };
    const pucks = [{ name: "A", motions: [motion, other] }];
    const figure = puckMotionFigure({ ...input, pucks, name: "hard slide" }, lightPalette);
    expect(Array.from(asScatter(figure.data[1]).x ?? [])).toEqual([0, 2, 4]);
    expect([figure.key, figure.title]).toEqual([
      "puck-hard-slide",
      "Slide along the floor, hard slide: speed over time",
    ]);
    expect(puckMotionFigure({ ...input, name: "sink" }, lightPalette).data).toEqual([]);
    expect(puckMotionFigure({ ...input, motion: "sink" }, lightPalette).data).toEqual([]);
  });
});

describe("puckFrontFigure(input, palette)", () => {
  const input = {
    variables: [{ label: "diameter", unit: "mm" }],
    goals: [
      { label: "drag index", unit: "–" },
      { label: "inertia", unit: "kg cm²" },
    ],
    front: [
      { variables: [80], goals: [0.9, 7] },
      { variables: [82], goals: [0.95, 9] },
    ],
    beaten: [{ variables: [78], goals: [1.1, 6] }],
    baseline: { name: "base", goals: [1, 6.5] },
    chosen: 1,
  };

  test("axes are the first two goals, with the baseline and the chosen member marked; the table has every puck", () => {
    const figure = puckFrontFigure(input, lightPalette);
    expect(legendEntries(figure.data).map(({ name }) => name)).toEqual([
      "beaten by another",
      "front: none beats it",
      "baseline: base",
      "looked at: number 2",
    ]);
    expect(asScatter(figure.data[3]).x).toEqual([0.95]);
    expect(figure.table.rows).toEqual([
      ["front 1", 80, 0.9, 7],
      ["front 2", 82, 0.95, 9],
      ["beaten", 78, 1.1, 6],
    ]);
  });

  test("with a single goal it is drawn over the first dimension, without the baseline", () => {
    const [first] = input.goals;
    const figure = puckFrontFigure({ ...input, goals: [first], chosen: null }, lightPalette);
    expect(asScatter(figure.data[1]).x).toEqual([80, 82]);
    expect(figure.data).toHaveLength(2);
  });
});

test("puckStyle tells twelve pucks apart by colour, dash and marker together", () => {
  const styles = Array.from({ length: 12 }, (_, i) => {
    const { color, dash, symbol } = puckStyle(lightPalette, i);
    return [color, dash, symbol].join();
  });
  expect(new Set(styles).size).toBe(12);
});
