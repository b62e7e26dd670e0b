import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insideHull } from "../../shared/engine/trust/insideHull";
import { described } from "./sampleTable";

describe("describeSection(nodes, incidence)", () => {
  it("recognises a circle at any incidence", () => {
    for (const incidence of [0, 0.3, -1.2, Math.PI]) {
      const section = described({ family: "circle", diameter: 0.08 }, incidence);
      expect(section.shape).toBe("circle");
      expect(section.lengthToHeight).toBeCloseTo(1, 6);
    }
  });

  it("recognises an ellipse along and across the stream", () => {
    const along = described({ family: "ellipse", length: 0.08, height: 0.03 });
    const across = described({ family: "ellipse", length: 0.08, height: 0.03 }, Math.PI / 2);
    expect(along.shape).toBe("ellipse");
    expect(along.lengthToHeight).toBeCloseTo(8 / 3, 4);
    expect(across.shape).toBe("ellipse");
    expect(across.lengthToHeight).toBeCloseTo(3 / 8, 4);
  });

  it("recognises a rounded rectangle with its corner radius within 0.5 % of the height, from nearly sharp to a stadium", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        (ratio, share) => {
          const edgeRadius = share * Math.min(ratio, 1);
          // A square with a radius of half its side is the circle.
          fc.pre(Math.abs(ratio - 1) > 0.05 || share < 0.4);
          const section = described({ family: "roundedRectangle", length: ratio, height: 1, edgeRadius });
          expect(section.shape).toBe("rectangle");
          expect(section.lengthToHeight / ratio).toBeCloseTo(1, 3);
          expect(Math.abs(section.cornerRadiusToHeight! - edgeRadius)).toBeLessThan(0.005);
        },
      ),
      { numRuns: 40 },
    );
    const stadium = described({ family: "stadium", length: 0.08, height: 0.03 });
    expect(stadium.shape).toBe("rectangle");
    expect(stadium.cornerRadiusToHeight).toBeCloseTo(0.5, 2);
  });

  it("calls a rectangle turned by a quarter a rectangle of the other extents, and one turned by less inclined", () => {
    const spec = { family: "roundedRectangle", length: 0.08, height: 0.04, edgeRadius: 0.008 } as const;
    const quarter = described(spec, Math.PI / 2);
    expect(quarter.shape).toBe("rectangle");
    expect(quarter.lengthToHeight).toBeCloseTo(0.5, 4);
    expect(quarter.cornerRadiusToHeight).toBeCloseTo(0.1, 3);
    expect(described(spec, 0.1)).toMatchObject({ shape: "other", inclined: true });
  });

  it("places superellipses and octagons between ellipse and rectangle, triangles and hollow sections not", () => {
    const between = (spec: Parameters<typeof described>[0]) => {
      const section = described(spec);
      expect(section.shape).toBe("other");
      expect(section.inclined).toBe(false);
      return section.betweenEllipseAndRectangle;
    };
    expect(between({ family: "superellipse", length: 0.08, height: 0.03, exponent: 3 })).toBe(true);
    expect(
      between({ family: "roundedPolygon", sides: 8, inscribedDiameter: 0.08, cornerRadius: 0.004, facing: "flat" }),
    ).toBe(true);
    expect(
      between({ family: "roundedTriangle", length: 0.08, height: 0.08, cornerRadius: 0.004, apex: "forward" }),
    ).toBe(false);
    const lobed = Array.from({ length: 90 }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * i) / 90;
      const radius = 1 + 0.15 * Math.cos(4 * angle + Math.PI);
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    expect(between({ family: "freeContour", points: lobed })).toBe(false);
  });
});

describe("insideHull(x, y, points)", () => {
  const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
  const points = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 12 });

  it("holds every mean of the points", () => {
    fc.assert(
      fc.property(points, (corners) => {
        const x = corners.reduce((sum, [px]) => sum + px, 0) / corners.length;
        const y = corners.reduce((sum, [, py]) => sum + py, 0) / corners.length;
        // Means of points on one line lie on the edge, where rounding decides.
        fc.pre(
          corners.some(([px, py]) => Math.abs((px - x) * (corners[0][1] - y) - (py - y) * (corners[0][0] - x)) > 1e-3),
        );
        expect(insideHull(x, y, corners)).toBe(true);
      }),
    );
  });

  it("holds nothing beyond the largest coordinate", () => {
    fc.assert(
      fc.property(points, coordinate, (corners, y) => {
        expect(insideHull(Math.max(...corners.map(([x]) => x)) + 0.01, y, corners)).toBe(false);
      }),
    );
  });

  it("holds corners and edges of a square, not its outside", () => {
    const square = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const;
    for (const [x, y] of [
      [0, 0],
      [0.5, 0],
      [1, 0.3],
      [0.5, 0.5],
    ])
      expect(insideHull(x, y, square)).toBe(true);
    for (const [x, y] of [
      [-0.01, 0.5],
      [0.5, 1.01],
      [1.01, 1.01],
    ])
      expect(insideHull(x, y, square)).toBe(false);
  });
});
