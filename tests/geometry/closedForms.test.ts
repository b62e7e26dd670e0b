import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { contourOf, nodeArea, nodeSum, nodesOf, relativeError } from "./exampleSections";

/**
 * Complete elliptic integral of the second kind E(k) by the arithmetic-geometric mean:
 * Abramowitz & Stegun (1964), eq. 17.6.1-17.6.4.
 */
function completeEllipticE(k: number): number {
  let a = 1;
  let b = Math.sqrt(1 - k * k);
  let sum = (k * k) / 2;
  let power = 0.5;
  for (let n = 0; n < 12; n++) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    power *= 2;
    sum += power * c * c;
  }
  return (Math.PI / (2 * a)) * (1 - sum);
}

function ellipsePerimeter(length: number, height: number): number {
  const a = Math.max(length, height) / 2;
  const b = Math.min(length, height) / 2;
  return 4 * a * completeEllipticE(Math.sqrt(1 - (b / a) ** 2));
}

/** Lanczos' approximation of the gamma function, g = 7, n = 9 (Press et al., Numerical Recipes, sec. 6.1; 1e-15). */
function gamma(z: number): number {
  const coefficients = [
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
  ];
  const x = z - 1;
  const sum = coefficients.reduce((total, c, i) => (i === 0 ? c : total + c / (x + i)), 0);
  const t = x + 7.5;
  return Math.sqrt(2 * Math.PI) * t ** (x + 0.5) * Math.exp(-t) * sum;
}

describe("elliptic integral used below", () => {
  it("E(sin 30 deg) and E(sin 60 deg): Abramowitz & Stegun (1964), table 17.2 (1e-9)", () => {
    expect(completeEllipticE(Math.sin(Math.PI / 6))).toBeCloseTo(1.467462209, 9);
    expect(completeEllipticE(Math.sin(Math.PI / 3))).toBeCloseTo(1.211056028, 9);
  });
});

/** Fillets of radius r take r^2 (2 tan(turn/2) - turn)/2 * 2 from the sharp corners: (tan - turn/2) r^2 each. */
function filletArea(radius: number, turns: readonly number[]): number {
  return radius * radius * turns.reduce((sum, turn) => sum + Math.tan(turn / 2) - turn / 2, 0);
}

function filletPerimeter(radius: number, turns: readonly number[]): number {
  return radius * turns.reduce((sum, turn) => sum + 2 * Math.tan(turn / 2) - turn, 0);
}

const bevelTurn = Math.atan2(0.004, 0.006);
const bevelTurns = [bevelTurn, Math.PI / 2 - bevelTurn];
const eightBevelTurns = [...bevelTurns, ...bevelTurns, ...bevelTurns, ...bevelTurns];
const triangleBaseTurn = Math.PI - Math.atan2(0.028, 0.5 * 0.018);
const [innerLength, innerHeight] = [0.028, 0.018];
const innerSlant = Math.hypot(innerLength, innerHeight / 2);

const cases: readonly [string, SectionSpec, number, number][] = [
  ["circle", { family: "circle", diameter: 0.08 }, Math.PI * 0.0016, Math.PI * 0.08],
  [
    "ellipse 80 x 30 mm, perimeter 4 a E(e)",
    { family: "ellipse", length: 0.08, height: 0.03 },
    Math.PI * 0.04 * 0.015,
    ellipsePerimeter(0.08, 0.03),
  ],
  [
    "ellipse 50 x 1000 mm, perimeter 4 a E(e)",
    { family: "ellipse", length: 0.05, height: 1 },
    Math.PI * 0.025 * 0.5,
    ellipsePerimeter(0.05, 1),
  ],
  [
    "stadium",
    { family: "stadium", length: 0.08, height: 0.03 },
    0.05 * 0.03 + Math.PI * 0.015 ** 2,
    0.1 + Math.PI * 0.03,
  ],
  [
    "rounded rectangle",
    { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 },
    0.08 * 0.03 - (4 - Math.PI) * 0.006 ** 2,
    2 * (0.068 + 0.018) + 2 * Math.PI * 0.006,
  ],
  [
    "bevelled rectangle, sharp outline less fillets",
    {
      family: "bevelledRectangle",
      length: 0.08,
      height: 0.03,
      bevelLength: 0.006,
      bevelHeight: 0.004,
      cornerRadius: 0.001,
    },
    0.08 * 0.03 - 2 * 0.006 * 0.004 - filletArea(0.001, eightBevelTurns),
    2 * (0.068 + 0.022) + 4 * Math.hypot(0.006, 0.004) - filletPerimeter(0.001, eightBevelTurns),
  ],
  [
    "D-shape with a semicircular nose",
    { family: "dShape", length: 0.08, height: 0.03, noseLength: 0.015, cornerRadius: 0.002, flatSide: "rear" },
    (Math.PI * 0.015 ** 2) / 2 + 0.065 * 0.03 - (2 - Math.PI / 2) * 0.002 ** 2,
    Math.PI * 0.015 + 2 * 0.063 + 0.026 + Math.PI * 0.002,
  ],
  [
    "D-shape with a half-ellipse nose",
    { family: "dShape", length: 0.08, height: 0.03, noseLength: 0.06, cornerRadius: 0.005, flatSide: "front" },
    (Math.PI * 0.06 * 0.015) / 2 + 0.02 * 0.03 - (2 - Math.PI / 2) * 0.005 ** 2,
    ellipsePerimeter(0.12, 0.03) / 2 + 2 * 0.015 + 0.02 + Math.PI * 0.005,
  ],
  [
    "hexagon: inscribed circle 30 mm, six fillets",
    { family: "roundedPolygon", sides: 6, inscribedDiameter: 0.03, cornerRadius: 0.002, facing: "flat" },
    6 * 0.015 ** 2 * Math.tan(Math.PI / 6) - filletArea(0.002, Array(6).fill(Math.PI / 3)),
    12 * 0.015 * Math.tan(Math.PI / 6) - filletPerimeter(0.002, Array(6).fill(Math.PI / 3)),
  ],
  [
    "triangle 30 x 20 mm: inner triangle grown by 1 mm (Steiner's formula)",
    { family: "roundedTriangle", length: 0.03, height: 0.02, cornerRadius: 0.001, apex: "forward" },
    (innerLength * innerHeight) / 2 + 0.001 * (innerHeight + 2 * innerSlant) + Math.PI * 0.001 ** 2,
    innerHeight + 2 * innerSlant + 2 * Math.PI * 0.001,
  ],
];

describe("area and perimeter in closed form", () => {
  it.each(cases)("%s: contour to 1e-13", (_, spec, area, perimeter) => {
    const contour = contourOf(spec);
    expect(relativeError(contour.area, area)).toBeLessThan(1e-13);
    expect(relativeError(contour.perimeter, perimeter)).toBeLessThan(1e-13);
  });

  it.each(cases)("%s: sums over 200 nodes, perimeter to 1e-5, area to 1e-4", (_, spec, area, perimeter) => {
    const nodes = nodesOf(spec, 200);
    expect(
      relativeError(
        nodeSum(nodes, () => 1),
        perimeter,
      ),
    ).toBeLessThan(1e-5);
    expect(relativeError(nodeArea(nodes), area)).toBeLessThan(1e-4);
  });

  it("superellipse: area 4 a b Gamma(1 + 1/n)^2 / Gamma(1 + 2/n) (Loria 1910; from memory) to 1e-12", () => {
    for (const exponent of [2, 2.5, 3, 4, 7.3, 20]) {
      const { area } = contourOf({ family: "superellipse", length: 0.08, height: 0.03, exponent });
      const expected = (0.08 * 0.03 * gamma(1 + 1 / exponent) ** 2) / gamma(1 + 2 / exponent);
      expect(relativeError(area, expected)).toBeLessThan(1e-12);
    }
  });

  it("rounded triangle: its turning at the base agrees with the inner triangle's angle", () => {
    const { bends } = contourOf({
      family: "roundedTriangle",
      length: 0.03,
      height: 0.02,
      cornerRadius: 0.001,
      apex: "rearward",
    });
    const front = bends.filter((bend) => bend.arc < 0.02).reduce((sum, bend) => sum + bend.turning, 0);
    expect(front).toBeCloseTo(triangleBaseTurn, 12);
  });

  it("centroid of a D-shape without straight sides beyond the corners (composite areas) to 1e-12", () => {
    const [L, H, r] = [0.05, 0.03, 0.005];
    const { centroid, area } = contourOf({
      family: "dShape",
      length: L,
      height: H,
      noseLength: H / 2,
      cornerRadius: r,
      flatSide: "rear",
    });
    const half = (Math.PI * (H / 2) ** 2) / 2;
    const boxLength = L - H / 2;
    const corner = (1 - Math.PI / 4) * r * r;
    // Semicircle: 4R/(3 pi) from its base. Corner cut: square r^2 less a quarter circle.
    const cornerX = L / 2 - r + (r * r * (r / 2) - r ** 3 / 3) / corner;
    const moment =
      half * (-L / 2 + H / 2 - (4 * (H / 2)) / (3 * Math.PI)) +
      boxLength * H * (L / 2 - boxLength / 2) -
      2 * corner * cornerX;
    expect(relativeError(area, half + boxLength * H - 2 * corner)).toBeLessThan(1e-13);
    expect(Math.abs(centroid[0] - moment / area)).toBeLessThan(1e-14);
    expect(centroid[1]).toBe(0);
  });
});

describe("families that meet", () => {
  const length = fc.double({ min: 0.01, max: 0.2, noNaN: true });
  const ratio = fc.double({ min: 0.06, max: 16, noNaN: true });

  it("superellipse with exponent 2 is the ellipse: area and perimeter to 1e-12", () => {
    fc.assert(
      fc.property(length, ratio, (L, q) => {
        const ellipse = contourOf({ family: "ellipse", length: L, height: L / q });
        const superellipse = contourOf({ family: "superellipse", length: L, height: L / q, exponent: 2 });
        expect(relativeError(superellipse.area, ellipse.area)).toBeLessThan(1e-12);
        expect(relativeError(superellipse.perimeter, ellipse.perimeter)).toBeLessThan(1e-12);
      }),
      { numRuns: 30 },
    );
  });

  it("rounded rectangle with a radius of half its smaller side is the stadium", () => {
    fc.assert(
      fc.property(length, ratio, (L, q) => {
        const edgeRadius = Math.min(L, L / q) / 2;
        const rectangle = contourOf({ family: "roundedRectangle", length: L, height: L / q, edgeRadius });
        const stadium = contourOf({ family: "stadium", length: L, height: L / q });
        expect(relativeError(rectangle.area, stadium.area)).toBeLessThan(1e-13);
        expect(relativeError(rectangle.perimeter, stadium.perimeter)).toBeLessThan(1e-13);
      }),
    );
  });

  it("polygon, triangle, D-shape and rounded rectangle with the largest radius are the circle", () => {
    const diameter = 0.03;
    const cornerRadius = diameter / 2;
    const square = { length: diameter, height: diameter };
    const specs: SectionSpec[] = [
      { family: "roundedPolygon", sides: 5, inscribedDiameter: diameter, cornerRadius, facing: "flat" },
      { family: "roundedTriangle", ...square, cornerRadius, apex: "forward" },
      { family: "dShape", ...square, noseLength: cornerRadius, cornerRadius, flatSide: "front" },
      { family: "roundedRectangle", ...square, edgeRadius: cornerRadius },
      { family: "stadium", ...square },
    ];
    for (const spec of specs) {
      const { area, perimeter } = contourOf(spec);
      expect(relativeError(area, (Math.PI * diameter ** 2) / 4)).toBeLessThan(1e-13);
      expect(relativeError(perimeter, Math.PI * diameter)).toBeLessThan(1e-13);
    }
  });
});
