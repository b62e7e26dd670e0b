import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../shared/engine/geometry/lineArcContour";
import { parametricPiece } from "../../shared/engine/geometry/parametricContour";
import { periodicSpline } from "../../shared/engine/geometry/periodicSpline";
import { selfCrossing } from "../../shared/engine/geometry/selfCrossing";
import { contourOf, lobedPoints, relativeError } from "./exampleSections";

function ellipsePoints(count: number, a: number, b: number): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return [a * Math.cos(angle), b * Math.sin(angle)];
  });
}

describe("periodicSpline(points)", () => {
  it("passes through its points, and position, slope and second derivative are continuous at every knot", () => {
    const points = lobedPoints(37);
    const { path, knots } = periodicSpline(points);
    const h = 1e-9 * knots[37];
    for (let i = 0; i < 37; i++) {
      const here = path(knots[i]);
      expect(here.x).toBeCloseTo(points[i][0], 14);
      expect(here.y).toBeCloseTo(points[i][1], 14);
      const before = path(i === 0 ? knots[37] - h : knots[i] - h);
      for (const key of ["x", "y", "dx", "dy"] as const) expect(Math.abs(here[key] - before[key])).toBeLessThan(1e-7);
      expect(Math.abs(here.ddx - before.ddx) * knots[37]).toBeLessThan(1e-6);
      expect(Math.abs(here.ddy - before.ddy) * knots[37]).toBeLessThan(1e-6);
    }
  });

  it("points on a circle: error falls with the fourth power of the spacing (de Boor 1978, ch. V: h^4)", () => {
    const errors = [16, 32, 64].map((count) => {
      const { area } = contourOf({ family: "freeContour", points: ellipsePoints(count, 0.04, 0.04) });
      return relativeError(area, Math.PI * 0.0016);
    });
    expect(errors[0] / errors[1]).toBeGreaterThan(14);
    expect(errors[1] / errors[2]).toBeGreaterThan(14);
    expect(errors[2]).toBeLessThan(1e-6);
  });

  it("200 points of an ellipse give its area and perimeter to 1e-7 and its nose curvature to 0.5 %", () => {
    const free = contourOf({ family: "freeContour", points: ellipsePoints(200, 0.04, 0.015) });
    const ellipse = contourOf({ family: "ellipse", length: 0.08, height: 0.03 });
    expect(free.mirrorSymmetric).toBe(true);
    expect(relativeError(free.area, ellipse.area)).toBeLessThan(1e-7);
    expect(relativeError(free.perimeter, ellipse.perimeter)).toBeLessThan(1e-7);
    expect(relativeError(free.at(0).curvature, 0.04 / 0.015 ** 2)).toBeLessThan(5e-3);
  });
});

describe("freeContour", () => {
  it("accepts a repeated first point and either direction, and gives the same contour", () => {
    const points = lobedPoints(50);
    const plain = contourOf({ family: "freeContour", points });
    for (const other of [[...points, points[0]], [...points].reverse(), [...points, points[0]].reverse()]) {
      const contour = contourOf({ family: "freeContour", points: other });
      expect(relativeError(contour.area, plain.area)).toBeLessThan(1e-13);
      expect(relativeError(contour.perimeter, plain.perimeter)).toBeLessThan(1e-13);
      expect(contour.at(0.01).x).toBeCloseTo(plain.at(0.01).x, 13);
    }
  });

  it("accepts 2000 points", () => {
    const contour = contourOf({ family: "freeContour", points: lobedPoints(2000) });
    expect(contour.bends.reduce((sum, bend) => sum + bend.turning, 0)).toBeCloseTo(2 * Math.PI, 9);
  });

  it("knows its mirror symmetry about an axis that is not y = 0", () => {
    const shifted = lobedPoints(61, 0.15, 0).map(([x, y]): Point => [x, y + 0.1]);
    const contour = contourOf({ family: "freeContour", points: shifted });
    expect(contour.mirrorSymmetric).toBe(true);
    expect(contour.centroid[1]).toBeCloseTo(0.1, 10);
    expect(contour.at(0).y).toBeCloseTo(contour.centroid[1], 12);
    expect(contourOf({ family: "freeContour", points: lobedPoints(61) }).mirrorSymmetric).toBe(false);
  });

  it("names itself and its extent", () => {
    expect(contourOf({ family: "freeContour", points: ellipsePoints(40, 0.04, 0.015), name: "trial" }).name).toBe(
      "trial 80 x 30 mm",
    );
  });
});

describe("parametricPiece(path, breaks)", () => {
  it("arcAt and parameterAt undo each other to 1e-13 of the length", () => {
    const { path, knots } = periodicSpline(lobedPoints(40));
    const piece = parametricPiece(path, knots);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (part) => {
        const arc = part * piece.length;
        expect(Math.abs(piece.arcAt(piece.parameterAt(arc)) - arc)).toBeLessThan(1e-13 * piece.length);
      }),
    );
  });
});

describe("selfCrossing(points)", () => {
  it("agrees with a plain comparison of all pairs of sides on random polygons", () => {
    const coordinate = fc.integer({ min: 0, max: 12 });
    const polygon = fc.uniqueArray(fc.tuple(coordinate, coordinate), {
      minLength: 4,
      maxLength: 9,
      selector: ([x, y]) => x * 100 + y,
    });
    let simple = 0;
    fc.assert(
      fc.property(polygon, (points) => {
        const found = selfCrossing(points) !== null;
        expect(found).toBe(crossesPlainly(points));
        if (!found) simple++;
      }),
      { numRuns: 500 },
    );
    expect(simple).toBeGreaterThan(20);
  });

  it("names the two sides of a bow tie", () => {
    expect(
      selfCrossing([
        [0, 0],
        [1, 1],
        [1, 0],
        [0, 1],
      ]),
    ).toEqual([0, 2]);
  });

  it("finds a side that runs back on its neighbour", () => {
    expect(
      selfCrossing([
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ]),
    ).not.toBeNull();
  });
});

/** Exact on small whole numbers: solves for the common point of every pair of sides. */
function crossesPlainly(points: readonly (readonly [number, number])[]): boolean {
  const count = points.length;
  const cross = (ax: number, ay: number, bx: number, by: number) => ax * by - ay * bx;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const [p, q, r, s] = [points[i], points[(i + 1) % count], points[j], points[(j + 1) % count]];
      const [ux, uy, vx, vy] = [q[0] - p[0], q[1] - p[1], s[0] - r[0], s[1] - r[1]];
      const [wx, wy] = [r[0] - p[0], r[1] - p[1]];
      const denominator = cross(ux, uy, vx, vy);
      const neighbours = j === i + 1 || (i === 0 && j === count - 1);
      if (denominator !== 0) {
        if (neighbours) continue;
        const [t, u] = [cross(wx, wy, vx, vy) / denominator, cross(wx, wy, ux, uy) / denominator];
        if (t >= 0 && t <= 1 && u >= 0 && u <= 1) return true;
      } else if (cross(wx, wy, ux, uy) === 0) {
        const along = (x: number, y: number) => ((x - p[0]) * ux + (y - p[1]) * uy) / (ux * ux + uy * uy);
        const [a, b] = [along(r[0], r[1]), along(s[0], s[1])].sort((m, n) => m - n);
        if (neighbours ? Math.min(b, 1) > Math.max(a, 0) : b >= 0 && a <= 1) return true;
      }
    }
  }
  return false;
}
