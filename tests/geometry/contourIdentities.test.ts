import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bendsFromNose } from "../../shared/engine/geometry/bendsFromNose";
import type { Contour } from "../../shared/engine/geometry/contour";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { gaussAbscissae, gaussWeights } from "../../shared/numerics/gaussLegendre";
import { contourOf, exampleSections, goodValue, relativeError, titleOf } from "./exampleSections";

const titled = exampleSections.map((spec) => [titleOf(spec), spec] as const);

function wrapAngle(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Checks what must hold for any contour. */
function checkContour(contour: Contour): void {
  const { perimeter, area, centroid, bends, mirrorSymmetric, at } = contour;
  const count = 360;
  const step = perimeter / count;
  const scale = perimeter / 4;
  const points = Array.from({ length: count }, (_, i) => at(i * step));
  let turned = 0;
  let chords = 0;
  let longestChord = 0;
  let unitError = 0;
  let mirrorError = 0;
  points.forEach((here, i) => {
    const next = points[(i + 1) % count];
    const image = points[(count - i) % count];
    turned += wrapAngle(Math.atan2(next.tangentY, next.tangentX) - Math.atan2(here.tangentY, here.tangentX));
    const chord = Math.hypot(next.x - here.x, next.y - here.y);
    chords += chord;
    longestChord = Math.max(longestChord, chord);
    unitError = Math.max(unitError, Math.abs(Math.hypot(here.tangentX, here.tangentY) - 1));
    mirrorError = Math.max(mirrorError, Math.hypot(image.x - here.x, image.y + here.y - 2 * centroid[1]));
  });
  expect(unitError).toBeLessThan(1e-13);
  expect(longestChord).toBeLessThanOrEqual(step * (1 + 1e-9));
  if (mirrorSymmetric) expect(mirrorError).toBeLessThan(1e-12 * scale);
  else expect(mirrorError).toBeGreaterThan(1e-6 * scale);
  expect(turned).toBeCloseTo(2 * Math.PI, 10);
  expect(relativeError(chords, perimeter)).toBeLessThan(5e-3);
  expect(bends.reduce((sum, bend) => sum + bend.turning, 0)).toBeCloseTo(2 * Math.PI, 10);
  for (const { arc } of bends) expect(arc >= 0 && arc < perimeter).toBe(true);
  expect(area).toBeGreaterThan(0);
  // Isoperimetric inequality: 4 pi A <= P^2.
  expect(4 * Math.PI * area).toBeLessThanOrEqual(perimeter * perimeter * (1 + 1e-12));
  const nose = at(0);
  expect(Math.abs(nose.y - centroid[1])).toBeLessThan(1e-13 * scale);
  expect(nose.x).toBeLessThan(centroid[0]);
  expect(nose.tangentY).toBeLessThan(0);
}

describe("every family", () => {
  it.each(titled)("%s: turns once, closes, starts at its nose, is symmetric where it says so", (_, spec) => {
    checkContour(contourOf(spec));
  });

  it.each(titled)("%s: tangent and curvature are the derivatives of position and tangent by arc", (_, spec) => {
    const { perimeter, at } = contourOf(spec);
    const h = 1e-6 * perimeter;
    let compared = 0;
    for (let i = 0; i < 97; i++) {
      const arc = (perimeter * (i + 0.37)) / 97;
      const [before, here, after] = [at(arc - h), at(arc), at(arc + h)];
      expect((after.x - before.x) / (2 * h)).toBeCloseTo(here.tangentX, 5);
      expect((after.y - before.y) / (2 * h)).toBeCloseTo(here.tangentY, 5);
      // Across a joint of a line and an arc the curvature jumps, and there is no derivative to compare.
      if (
        Math.abs(after.curvature - before.curvature) * perimeter >
        1e-2 * (1 + Math.abs(here.curvature) * perimeter)
      ) {
        continue;
      }
      compared++;
      const turn = before.tangentX * after.tangentY - before.tangentY * after.tangentX;
      expect(Math.abs(turn / (2 * h) - here.curvature) * perimeter).toBeLessThan(
        1e-3 * (1 + Math.abs(here.curvature) * perimeter),
      );
    }
    expect(compared).toBeGreaterThan(85);
  });

  it.each(titled)("%s: area and centroid by Green's theorem on at() agree with the exact ones to 1e-4", (_, spec) => {
    const { perimeter, area, centroid, at } = contourOf(spec);
    const pieces = 256;
    const half = perimeter / pieces / 2;
    let sum = 0;
    let momentX = 0;
    let momentY = 0;
    for (let i = 0; i < pieces; i++) {
      for (let j = 0; j < gaussWeights.length; j++) {
        const { x, y, tangentX, tangentY } = at(half * (2 * i + 1 + gaussAbscissae[j]));
        const weight = half * gaussWeights[j];
        sum += weight * x * tangentY;
        momentX += (weight * x * x * tangentY) / 2;
        momentY -= (weight * y * y * tangentX) / 2;
      }
    }
    expect(relativeError(sum, area)).toBeLessThan(1e-4);
    expect(Math.abs(momentX / area - centroid[0])).toBeLessThan(1e-4 * perimeter);
    expect(Math.abs(momentY / area - centroid[1])).toBeLessThan(1e-4 * perimeter);
  });

  it("Pappus and Guldin: the stadium turned about a line at distance d sweeps 2 pi d A and 2 pi d P", () => {
    const { perimeter, area, at } = contourOf({ family: "stadium", length: 0.08, height: 0.03 });
    const distance = 0.1;
    const panels = 4000;
    let volume = 0;
    let surface = 0;
    for (let i = 0; i < panels; i++) {
      const point = at((perimeter * (i + 0.5)) / panels);
      const radius = point.y + distance;
      volume -= ((Math.PI * perimeter) / panels) * radius ** 2 * point.tangentX;
      surface += ((2 * Math.PI * perimeter) / panels) * radius;
    }
    expect(relativeError(volume, 2 * Math.PI * distance * area)).toBeLessThan(1e-6);
    expect(relativeError(surface, 2 * Math.PI * distance * perimeter)).toBeLessThan(1e-6);
  });

  it("at() is periodic, and at(perimeter) is at(0)", () => {
    for (const spec of exampleSections) {
      const { perimeter, at } = contourOf(spec);
      for (const arc of [0, 0.3 * perimeter, 0.77 * perimeter]) {
        expect(at(arc + perimeter).x).toBeCloseTo(at(arc).x, 12);
        expect(at(arc - 2 * perimeter).y).toBeCloseTo(at(arc).y, 12);
      }
    }
  });

  it("bendsFromNose turns as far as the exact bends", () => {
    for (const spec of exampleSections) {
      const turned = bendsFromNose(contourOf(spec)).reduce((sum, bend) => sum + bend.turning, 0);
      expect(turned).toBeCloseTo(2 * Math.PI, 10);
    }
  });
});

describe("random valid dimensions", () => {
  const size = fc.double({ min: 0.05, max: 0.5, noNaN: true });
  const slenderness = fc.double({ min: 0.051, max: 19.9, noNaN: true });
  const part = fc.double({ min: 0, max: 1, noNaN: true });
  const between = (low: number, high: number, p: number) => low + (high - low) * p;

  const anySpec: fc.Arbitrary<SectionSpec> = fc
    .record({
      length: size,
      slenderness,
      p: part,
      q: part,
      r: part,
      sides: fc.integer({ min: 3, max: 24 }),
      flip: fc.boolean(),
    })
    .chain(({ length, slenderness, p, q, r, sides, flip }) => {
      const height = length / slenderness;
      const smaller = Math.min(length, height);
      const cornerRadius = between(0.01 * smaller, 0.5 * smaller, p);
      const dRadius = between(0.01 * smaller, Math.min(height / 2, 0.4 * length), p);
      const noseRange = [0.1 * height, length - dRadius] as const;
      const bevelRadius = 0.01 * smaller;
      const specs: SectionSpec[] = [
        { family: "circle", diameter: length },
        { family: "ellipse", length, height },
        { family: "roundedRectangle", length, height, edgeRadius: cornerRadius },
        { family: "superellipse", length, height, exponent: between(2, 20, p) },
        { family: "stadium", length, height },
        {
          family: "bevelledRectangle",
          length,
          height,
          bevelLength: between(0.1, 0.4, q) * smaller,
          bevelHeight: between(0.1, 0.4, r) * smaller,
          cornerRadius: bevelRadius,
        },
        {
          family: "roundedPolygon",
          sides,
          inscribedDiameter: length,
          cornerRadius: between(0.01, 0.5, p) * length,
          facing: flip ? "flat" : "corner",
        },
        { family: "roundedTriangle", length, height, cornerRadius, apex: flip ? "forward" : "rearward" },
      ];
      if (noseRange[0] <= noseRange[1]) {
        specs.push({
          family: "dShape",
          length,
          height,
          noseLength: between(noseRange[0], noseRange[1], q),
          cornerRadius: dRadius,
          flatSide: flip ? "front" : "rear",
        });
      }
      return fc.constantFrom(...specs);
    });

  it("every spec within its documented ranges gives a contour that passes all identities", () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        checkContour(goodValue(buildContour(spec)));
      }),
      { numRuns: 100 },
    );
  });

  it("scaling all lengths scales the contour", () => {
    fc.assert(
      fc.property(anySpec, fc.double({ min: 0.2, max: 5, noNaN: true }), (spec, factor) => {
        const scaled = Object.fromEntries(
          Object.entries(spec).map(([key, value]) => [
            key,
            typeof value === "number" && key !== "exponent" && key !== "sides" ? value * factor : value,
          ]),
        ) as unknown as SectionSpec;
        const [small, large] = [contourOf(spec), contourOf(scaled)];
        expect(relativeError(large.perimeter, factor * small.perimeter)).toBeLessThan(1e-12);
        expect(relativeError(large.area, factor ** 2 * small.area)).toBeLessThan(1e-12);
        const [a, b] = [small.at(0.3 * small.perimeter), large.at(0.3 * large.perimeter)];
        expect(Math.hypot(factor * a.x - b.x, factor * a.y - b.y)).toBeLessThan(1e-11 * large.perimeter);
      }),
      { numRuns: 60 },
    );
  });
});
