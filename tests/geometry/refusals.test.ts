import { describe, expect, it } from "vitest";
import type { Point } from "../../shared/engine/geometry/lineArcContour";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { lobedPoints } from "./exampleSections";

const puck = { length: 0.08, height: 0.03 };
const bevelled = { family: "bevelledRectangle", ...puck, bevelLength: 0.006, bevelHeight: 0.006 } as const;
const polygon = { family: "roundedPolygon", sides: 6, inscribedDiameter: 0.03, cornerRadius: 0.002 } as const;
const dShape = { family: "dShape", ...puck, noseLength: 0.015, cornerRadius: 0.002, flatSide: "rear" } as const;
const triangle = { family: "roundedTriangle", ...puck, cornerRadius: 0.002, apex: "forward" } as const;
const ring = lobedPoints(24);
const withPoint = (index: number, point: Point) => ring.map((p, i) => (i === index ? point : p));
const free = (points: readonly Point[]): SectionSpec => ({ family: "freeContour", points });
const square = (perSide: number): Point[] =>
  [0, 1, 2, 3].flatMap((side) =>
    Array.from({ length: perSide }, (_, i): Point => {
      const along = 0.02 - (0.04 * i) / perSide;
      return (
        [
          [along, 0.02],
          [-0.02, along],
          [-along, -0.02],
          [0.02, -along],
        ] as const
      )[side];
    }),
  );

const lengthRange = "it must be from 0.01 mm to 10000000 mm";
const cases: readonly [SectionSpec, string, string][] = [
  [{ family: "circle", diameter: 0 }, "diameter", `diameter is 0 mm; ${lengthRange}`],
  [{ family: "circle", diameter: -0.08 }, "diameter", `diameter is -80 mm; ${lengthRange}`],
  [{ family: "circle", diameter: Number.NaN }, "diameter", `diameter is NaN; ${lengthRange}`],
  [
    { family: "ellipse", length: Number.POSITIVE_INFINITY, height: 0.03 },
    "length",
    `length is Infinity; ${lengthRange}`,
  ],
  [{ family: "ellipse", length: 0.08, height: -0.03 }, "height", `height is -30 mm; ${lengthRange}`],
  [{ family: "ellipse", length: 1, height: 0.03 }, "length", "length / height is 33.33; it must be from 0.05 to 20"],
  [{ family: "stadium", length: 0.01, height: 1 }, "length", "length / height is 0.01; it must be from 0.05 to 20"],
  [
    { family: "roundedRectangle", ...puck, edgeRadius: 0.018 },
    "edgeRadius",
    "edge radius 18 mm exceeds half the height, 15 mm",
  ],
  [
    { family: "roundedRectangle", length: 0.02, height: 0.03, edgeRadius: 0.018 },
    "edgeRadius",
    "edge radius 18 mm exceeds half the length, 10 mm",
  ],
  [
    { family: "roundedRectangle", ...puck, edgeRadius: 0.0001 },
    "edgeRadius",
    "edge radius 0.1 mm is below 1 % of the smaller dimension, the smallest radius allowed, 0.3 mm",
  ],
  [
    { family: "roundedRectangle", ...puck, edgeRadius: 0 },
    "edgeRadius",
    "edge radius is 0 mm; it must be from 0.3 mm to 15 mm",
  ],
  [
    { family: "roundedRectangle", ...puck, edgeRadius: Number.NaN },
    "edgeRadius",
    "edge radius is NaN; it must be from 0.3 mm to 15 mm",
  ],
  [{ family: "superellipse", ...puck, exponent: 1.5 }, "exponent", "exponent is 1.5; it must be from 2 to 20"],
  [{ family: "superellipse", ...puck, exponent: Number.NaN }, "exponent", "exponent is NaN; it must be from 2 to 20"],
  [
    { ...bevelled, bevelLength: 0.05, cornerRadius: 0.001 },
    "bevelLength",
    "bevel length 50 mm exceeds half the length, 40 mm",
  ],
  [
    { ...bevelled, bevelHeight: 0.016, cornerRadius: 0.001 },
    "bevelHeight",
    "bevel height 16 mm exceeds half the height, 15 mm",
  ],
  [
    { ...bevelled, cornerRadius: 0.05 },
    "cornerRadius",
    "corner radius 50 mm exceeds the largest that fits between the bevels, 10.2426 mm",
  ],
  [{ ...dShape, cornerRadius: 0.016 }, "cornerRadius", "corner radius 16 mm exceeds half the height, 15 mm"],
  [{ ...dShape, noseLength: 0.001 }, "noseLength", "nose length 1 mm is below 10 % of the height, 3 mm"],
  [
    { ...dShape, noseLength: 0.079 },
    "noseLength",
    "nose length 79 mm exceeds the length less the corner radius, 78 mm",
  ],
  [{ ...dShape, flatSide: "top" as "rear" }, "flatSide", 'flat side is "top"; use "front" or "rear"'],
  [{ ...polygon, sides: 2, facing: "flat" }, "sides", "sides is 2; it must be a whole number from 3 to 24"],
  [{ ...polygon, sides: 5.5, facing: "flat" }, "sides", "sides is 5.5; it must be a whole number from 3 to 24"],
  [
    { ...polygon, cornerRadius: 0.02, facing: "flat" },
    "cornerRadius",
    "corner radius 20 mm exceeds half the inscribed diameter, 15 mm",
  ],
  [{ ...polygon, facing: "edge" as "flat" }, "facing", 'facing is "edge"; use "flat" or "corner"'],
  [
    { ...triangle, cornerRadius: 0.0002 },
    "cornerRadius",
    "corner radius 0.2 mm is below 1 % of the smaller dimension, the smallest radius allowed, 0.3 mm",
  ],
  [{ ...triangle, apex: "up" as "forward" }, "apex", 'apex is "up"; use "forward" or "rearward"'],
  [free(ring.slice(0, 7)), "points", "the contour has 7 points; it must have from 8 to 2000"],
  [free([]), "points", "the contour has 0 points; it must have from 8 to 2000"],
  [free(lobedPoints(2001)), "points", "the contour has 2001 points; it must have from 8 to 2000"],
  [free(withPoint(4, [Number.NaN, 0.01])), "points", "point 5 is (NaN, 0.01); both coordinates must be finite numbers"],
  [free(withPoint(5, ring[4])), "points", "points 5 and 6 are both (16.1787, 21.0167) mm; remove one"],
  [
    free(Array.from({ length: 12 }, (_, i) => [0.01 * i, 0.02 * i] as const)),
    "points",
    "the points enclose no area; they must go once round the section, in order",
  ],
  [
    free(lobedPoints(60).map(([x, y]) => [x, y / 50] as const)),
    "points",
    "the points' extent: length / height is 63.96; it must be from 0.05 to 20",
  ],
];

describe("sections that are refused", () => {
  it.each(cases.map(([spec, field, message]) => [spec.family, field, message, spec] as const))(
    "%s, %s: %s",
    (_, field, message, spec) => {
      const result = buildContour(spec);
      expect(result.ok ? "accepted" : result.problem.message).toBe(message);
      expect(result.ok ? "" : result.problem.field).toBe(field);
    },
  );

  it("an unknown family is refused with the list of families", () => {
    const result = buildContour({ family: "toString" } as unknown as SectionSpec);
    expect(result.ok ? "" : result.problem.message).toMatch(
      /^section family "toString" is not known; use one of circle,/,
    );
  });

  it("a contour that crosses itself is refused, naming the two places", () => {
    const swapped = [...ring];
    [swapped[6], swapped[7]] = [swapped[7], swapped[6]];
    const result = buildContour(free(swapped));
    expect(result.ok ? "" : result.problem.code).toBe("self-crossing");
    expect(result.ok ? "" : result.problem.message).toMatch(/\(points 6 and 8\); sort or remove points$/);
  });

  it("a figure of eight with unequal loops is refused as self-crossing", () => {
    const points = Array.from({ length: 40 }, (_, i): Point => {
      const t = (2 * Math.PI * (i + 0.3)) / 40;
      return [0.04 * Math.cos(t), 0.02 * Math.sin(2 * t) * (1 + 0.5 * Math.cos(t))];
    });
    const result = buildContour(free(points));
    expect(result.ok ? "" : result.problem.code).toBe("self-crossing");
  });

  it("points that leave a corner too sharp are refused with the place and the allowed radius", () => {
    const result = buildContour(free(square(100)));
    expect(result.ok ? "" : result.problem.code).toBe("radius-too-small");
    expect(result.ok ? "" : result.problem.message).toMatch(
      /^the curve turns with a radius of 0\.\d+ mm near \(-?(20|19\.\d+), -?(20|19\.\d+)\) mm; the smallest allowed is 0\.4 mm/,
    );
    expect(buildContour(free(square(8))).ok).toBe(true);
  });

  it("no message ends in a full stop or carries a stack", () => {
    for (const [spec] of cases) {
      const result = buildContour(spec);
      expect(result.ok ? "" : result.problem.message).not.toMatch(/\.$|\n| at /);
    }
  });
});
