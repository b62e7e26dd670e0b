import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import { surveyTaps, type TapReading } from "../../shared/jobs/tunnel/pressureTaps";
import { contourPosition } from "../../shared/jobs/tunnel/tapPlace";
import { readTapTable } from "../../shared/jobs/tunnel/tapTable";
import { wakeDrag } from "../../shared/jobs/tunnel/wakeSurvey";
import { readWakeTable } from "../../shared/jobs/tunnel/wakeTable";
import { tableProblemText } from "../../shared/tables/dataTable";
import { value } from "./tunnelSamples";

const circle = value(buildContour({ family: "circle", diameter: 0.1 }));
const rectangle = value(buildContour({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }));

/** A Gaussian deficit u / U = 1 - depth exp(-(y/width)^2) at the dynamic pressure 100 Pa and a static pressure. */
function traverse(depth: number, width: number, fixed: ((y: number) => number) | null, n = 401) {
  const position = Float64Array.from({ length: n }, (_, i) => 0.8 * ((2 * i) / (n - 1) - 1));
  const p = position.map((y) => (fixed === null ? 0 : fixed(y)));
  const totalPressure = position.map((y, i) => 100 * (1 - depth * Math.exp(-((y / width) ** 2))) ** 2 + p[i]);
  return { position, totalPressure, staticPressure: fixed === null ? null : p, dynamicPressure: 100 };
}

const sure = { pressurePascals: 0, dynamicPressureShare: 0, referenceLengthShare: 0 };

/** Cd D = 2 width sqrt(pi) (depth - depth^2 / sqrt 2), the momentum deficit in closed form. */
const closedForm = (depth: number, width: number) =>
  (2 * width * Math.sqrt(Math.PI) * (depth - depth ** 2 / Math.SQRT2)) / 0.1;

describe("wakeDrag(traverse, referenceLength, uncertainty)", () => {
  it("closed form of a Gaussian deficit: all three methods agree with it where the wake has no pressure left, 1e-6", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        fc.double({ min: 0.04, max: 0.2, noNaN: true }),
        (depth, width) => {
          const found = value(
            wakeDrag(
              traverse(depth, width, () => 0),
              0.1,
              sure,
            ),
          );
          expect(found.drags.map(({ method }) => method)).toEqual(["jones", "betz", "simpleDeficit"]);
          for (const { dragCoefficient } of found.drags)
            expect(dragCoefficient).toBeCloseTo(closedForm(depth, width), 6);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("Schlichting, Boundary-Layer Theory, ch. 25 (from memory): Betz and Jones differ little in a wake under suction, 3 %", () => {
    const found = value(
      wakeDrag(
        traverse(0.3, 0.1, (y) => -15 * Math.exp(-((y / 0.12) ** 2))),
        0.1,
        sure,
      ),
    );
    const [jones, betz, simple] = found.drags.map(({ dragCoefficient }) => dragCoefficient);
    expect(Math.abs(jones / betz - 1)).toBeLessThan(0.03);
    // The deficit alone takes the speed from the total pressure as if there were no suction: far too much drag.
    expect(Math.abs(simple / betz - 1)).toBeGreaterThan(0.05);
  });

  it("has no drag in an undisturbed stream, exact", () => {
    for (const { dragCoefficient } of value(
      wakeDrag(
        traverse(0, 0.1, () => 0),
        0.1,
        sure,
      ),
    ).drags)
      expect(dragCoefficient).toBeCloseTo(0, 12);
  });

  it("takes a common error of the dynamic pressure along, and each reading's own by the square root of the sum of squares", () => {
    const exact = traverse(0.2, 0.1, () => 0, 41);
    const shared = value(wakeDrag(exact, 0.1, { ...sure, dynamicPressureShare: 0.01 })).drags[0];
    const moved = value(wakeDrag({ ...exact, dynamicPressure: 101 }, 0.1, sure)).drags[0];
    const change = Math.abs(moved.dragCoefficient - shared.dragCoefficient);
    expect(shared.uncertainty.combinedStandardUncertainty / change).toBeCloseTo(1, 1);
    const parts = value(wakeDrag(exact, 0.1, { ...sure, pressurePascals: 1, dynamicPressureShare: 0.01 })).drags[0]
      .uncertainty;
    expect(parts.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(parts.parts.map(({ name }) => name)).toContain("total pressure readings");
  });

  it("says when the traverse did not reach the free stream, and refuses what cannot be integrated", () => {
    expect(value(wakeDrag(traverse(0.4, 0.8, null), 0.1, sure)).notes.join()).toContain(
      "did not reach the free stream",
    );
    const broken = traverse(0.2, 0.1, null, 9);
    broken.position[4] = broken.position[3];
    const refused = wakeDrag(broken, 0.1, sure);
    expect(refused.ok ? "" : refused.problem.message).toContain("positions must rise");
    const few = wakeDrag(traverse(0.2, 0.1, null, 4), 0.1, sure);
    expect(few.ok ? "" : few.problem.message).toContain("has 4 points; it needs 5 or more");
  });
});

describe("readWakeTable(table, mapping, mark)", () => {
  it("sorts by position, converts units and names a missing reading by row and column", () => {
    const table = {
      columns: ["y", "H"],
      rows: [
        ["20", "90"],
        ["-20", "91"],
        ["0", ""],
      ],
    };
    const mapping = { positionMetres: { column: "y", unit: "mm" }, totalPressurePascals: { column: "H", unit: "hPa" } };
    const { traverse: found, problems } = readWakeTable(table, mapping, null);
    expect([...found.position]).toEqual([-0.02, 0.02]);
    expect([...found.totalPressure]).toEqual([9100, 9000]);
    expect(problems.map(tableProblemText)).toEqual([expect.stringContaining("row 4, column H: it is missing")]);
  });
});

function ring(count: number, pressure: (angle: number) => number): TapReading[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return { name: `T${i}`, row: i + 2, place: { kind: "angle", angle }, pressureCoefficient: pressure(angle) };
  });
}

describe("surveyTaps(readings, contour, width, ...)", () => {
  it("potential flow round a circle, Cp = 1 - 4 sin^2: no drag, exact by symmetry", () => {
    const found = value(
      surveyTaps(
        ring(36, (a) => 1 - 4 * Math.sin(a) ** 2),
        circle,
        0.1,
        0,
        0,
        null,
      ),
    );
    expect(found.pressureDrag.value).toBeCloseTo(0, 6);
  });

  it("Cp = cos(angle) round a circle: Cd = pi / 2, 0.2 % with 72 taps", () => {
    const found = value(surveyTaps(ring(72, Math.cos), circle, 0.1, 0, 0, null));
    expect(Math.abs(found.pressureDrag.value / (Math.PI / 2) - 1)).toBeLessThan(0.002);
  });

  it("tells what the taps miss from what the prediction misses: same taps, same prediction, no residual", () => {
    const predicted = (arc: number) => Math.cos((2 * Math.PI * arc) / circle.perimeter);
    const found = value(surveyTaps(ring(12, Math.cos), circle, 0.1, 0.01, 0, predicted));
    expect(found.rootMeanSquareResidual).toBeCloseTo(0, 6);
    expect(found.predictedDragAtTaps).toBeCloseTo(found.pressureDrag.value, 6);
    expect(found.predictedDrag).toBeCloseTo(Math.PI / 2, 4);
    expect(found.predictedDragAtTaps).toBeLessThan(found.predictedDrag ?? 0);
  });

  it("a uniform pressure has no drag on any contour, with taps anywhere", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 4, maxLength: 20 }), (degrees) => {
        const readings = degrees.map((each, i) => ({
          name: `T${i}`,
          row: i + 2,
          place: { kind: "angle" as const, angle: (each * Math.PI) / 180 },
          pressureCoefficient: -0.7,
        }));
        const found = surveyTaps(readings, rectangle, 0.03, 0, 0, null);
        expect(value(found).pressureDrag.value).toBeCloseTo(0, 6);
      }),
      { numRuns: 30 },
    );
  });

  it("warns of wide gaps and refuses two taps at one place", () => {
    expect(
      value(
        surveyTaps(
          ring(4, () => 0),
          circle,
          0.1,
          0,
          0,
          null,
        ),
      ).notes.join(),
    ).toContain("widest gap between taps is 25 %");
    const twins = [...ring(5, () => 0), { ...ring(5, () => 0)[0], name: "again", row: 9 }];
    const refused = surveyTaps(twins, circle, 0.1, 0, 0, null);
    expect(refused.ok ? "" : refused.problem.message).toMatch(
      /T0 \(row 2\) and again \(row 9\)|again \(row 9\) and T0 \(row 2\)/,
    );
  });
});

describe("contourPosition(contour, place)", () => {
  it("puts an angle of 90 deg on the upper side, three quarters of the walk round a circle", () => {
    expect(contourPosition(circle, { kind: "angle", angle: Math.PI / 2 }) / circle.perimeter).toBeCloseTo(0.75, 6);
    expect(contourPosition(circle, { kind: "angle", angle: -Math.PI / 2 }) / circle.perimeter).toBeCloseTo(0.25, 6);
  });

  it("finds the nearest point of a contour to given axes", () => {
    const arc = contourPosition(rectangle, { kind: "point", x: 0.01, y: 0.0152 });
    const found = rectangle.at(arc);
    expect(found.x - rectangle.centroid[0]).toBeCloseTo(0.01, 5);
    expect(found.y - rectangle.centroid[1]).toBeCloseTo(0.015, 6);
  });
});

describe("readTapTable(table, mapping, mark, dynamicPressure)", () => {
  it("takes pressures over the dynamic pressure, leaves blocked taps out and names impossible ones", () => {
    const table = {
      columns: ["tap", "angleDegrees", "pressurePascals"],
      rows: [
        ["A", 0, 200],
        ["B", 90, ""],
        ["C", 45, 900],
        ["D", "", 3],
      ],
    };
    const { taps, problems, notes } = readTapTable(table, {}, null, 200);
    expect(notes).toEqual(["Row 4 passed over: a pressure coefficient out of range; it must be from -20 to 1.5."]);
    expect(taps).toEqual([{ name: "A", row: 2, place: { kind: "angle", angle: 0 }, pressureCoefficient: 1 }]);
    expect(problems.map(tableProblemText)).toEqual(["row 5, column angleDegrees: it is missing; a tap needs a place"]);
    expect(readTapTable(table, {}, null, null).problems[0].message).toContain("dynamicPressurePascals");
  });
});

describe("taps on half a ring", () => {
  // Cp = 1 - 4 sin^2 in front of 90 degrees and a base pressure of -1 behind: the drag of cos times it in closed form.
  const pressure = (degrees: number) => (degrees <= 90 ? 1 - 4 * Math.sin((degrees * Math.PI) / 180) ** 2 : -1);
  /** Half of the integral of Cp cos over the ring: the front gives 1 - 4/3, the base 1. */
  const closed = 1 - 4 / 3 + 1;
  const half = Array.from(
    { length: 37 },
    (_, i): TapReading => ({
      name: `${5 * i}`,
      row: i + 2,
      place: { kind: "angle", angle: (5 * i * Math.PI) / 180 },
      pressureCoefficient: pressure(5 * i),
    }),
  );

  it("mirrored they give the drag of the whole ring; without it no uncertainty is given, and symmetry is asked for", () => {
    const mirrored = value(surveyTaps(half, circle, 0.1, 0.02, 0, null, 0.95, true));
    expect(mirrored.isCovered).toBe(true);
    expect(mirrored.taps).toHaveLength(72);
    // The jump behind 90 degrees is spread over one step of 5 degrees: half of it times the jump of 2 in each half.
    expect(Math.abs(mirrored.pressureDrag.value - closed)).toBeLessThan(0.01);
    const alone = value(surveyTaps(half, circle, 0.1, 0.02, 0, null));
    expect(alone.isCovered).toBe(false);
    expect(alone.notes.join(" ")).toMatch(/no uncertainty is given across it.*isMirrored/);
  });
});
