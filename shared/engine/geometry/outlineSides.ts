import { problem, type Result, success } from "../../result";
import { place } from "./contourPoints";
import { checkLengths, checkSlenderness, firstProblem } from "./dimensionChecks";
import type { Point } from "./lineArcContour";
import type { OutlineSide } from "./sectionSpec";
import { selfCrossing } from "./selfCrossing";
import { type SidePath, sidePath } from "./sidePath";

export const fewestSides = 2;
export const mostSides = 2000;
/** Sides shorter than this part of the larger extent count as a repeated point. */
const sameDistance = 1e-9;
/** Smallest enclosed area as a part of the rectangle around the outline. */
const smallestFill = 1e-3;
/** Largest bulge: an arc that turns by 359 degrees. */
export const largestBulge = 229;
/** Slowest place of a curve over its mean speed: below, it turns on the spot. */
const slowestShare = 1e-4;

/** The sides of an outline made ready, counter-clockwise, and its extents, m. */
export interface PreparedOutline {
  readonly paths: readonly SidePath[];
  readonly length: number;
  readonly height: number;
}

/**
 * Checks the sides of an outline and walks them counter-clockwise. Fails on too few or too many sides, numbers that are
 * not finite, sides without length, a bad size, no area and sides that cross.
 */
export function outlineSides(sides: readonly OutlineSide[]): Result<PreparedOutline> {
  const fail = (code: string, message: string) => problem(code, message, "sides");
  if (!(sides.length >= fewestSides && sides.length <= mostSides)) {
    const range = `it must have from ${fewestSides} to ${mostSides}`;
    return fail("side-count-out-of-range", `the outline has ${sides.length} sides; ${range}`);
  }
  const broken = sides.findIndex((side) => !numbersOf(side).every(Number.isFinite));
  if (broken >= 0) return fail("side-not-finite", `side ${broken + 1} has a number that is not finite; give another`);
  const bent = sides.findIndex(({ bulge = 0 }) => Math.abs(bulge) > largestBulge);
  if (bent >= 0) {
    const range = `it must be from ${-largestBulge} to ${largestBulge}`;
    return fail("bulge-out-of-range", `side ${bent + 1} has a bulge of ${sides[bent].bulge}; ${range}`);
  }
  const both = sides.findIndex(({ bulge, controls }) => bulge !== undefined && controls !== undefined);
  if (both >= 0)
    return fail("two-kinds", `side ${both + 1} has a bulge and controls; it must have one of them at most`);
  const corners = sides.map(({ from }) => from);
  const larger = Math.max(...extents(corners));
  const empty = sides.findIndex(
    (_, i) => apart(corners[i], corners[(i + 1) % corners.length]) <= sameDistance * larger,
  );
  if (empty >= 0) {
    return fail("side-without-length", `side ${empty + 1} starts and ends at ${place(corners[empty])}; remove it`);
  }
  const forward = pathsOf(sides);
  const stopped = forward.findIndex(stops);
  if (stopped >= 0) {
    return fail(
      "curve-stops",
      `the curve of side ${stopped + 1} stops at a point; move its controls or split it there`,
    );
  }
  const points = forward.flatMap(sidePoints);
  const [length, height] = extents(points);
  const area = areaOf(points);
  if (!(Math.abs(area) > smallestFill * length * height)) {
    return fail("no-area", "the outline encloses no area; it must go once round the section, in order");
  }
  const badSize = firstProblem(checkLengths({ length, height }), checkSlenderness(length, height));
  if (badSize) return fail(badSize.code, `the outline's extent: ${badSize.message}`);
  const crossing = selfCrossing(points);
  if (crossing) {
    return fail("self-crossing", `the outline crosses itself near ${place(points[crossing[0]])}; mend it there`);
  }
  return success({ paths: area > 0 ? forward : pathsOf(reversedSides(sides)), length, height });
}

/** Points of a side for a polygon that follows it closely, its end left out. */
export function sidePoints(path: SidePath): Point[] {
  return sideSteps(path).map((u): Point => {
    const { x, y } = path.at(u);
    return [x, y];
  });
}

/** Values of u for them. */
export function sideSteps({ kind }: SidePath): number[] {
  const steps = kind === "line" ? 1 : kind === "arc" ? arcSteps : curveSteps;
  return Array.from({ length: steps }, (_, i) => i / steps);
}

/** Both even, so that half circles and quarters show their extremes. */
const arcSteps = 48;
const curveSteps = 24;

/** The same outline walked the other way. */
export function reversedSides(sides: readonly OutlineSide[]): OutlineSide[] {
  return sides
    .map(({ bulge, controls }, i): OutlineSide => {
      const from = sides[(i + 1) % sides.length].from;
      if (controls !== undefined) return { from, controls: [controls[1], controls[0]] };
      return bulge === undefined ? { from } : { from, bulge: -bulge };
    })
    .reverse();
}

function pathsOf(sides: readonly OutlineSide[]): SidePath[] {
  return sides.map((side, i) => sidePath(side, sides[(i + 1) % sides.length].from));
}

function numbersOf({ from, bulge = 0, controls }: OutlineSide): number[] {
  return [...from, bulge, ...(controls ?? []).flat()];
}

/** Whether a curve comes to rest on its way, where it has no direction. */
function stops({ kind, at }: SidePath): boolean {
  if (kind !== "curve") return false;
  const speeds = Array.from({ length: curveSteps + 1 }, (_, i) => {
    const { dx, dy } = at(i / curveSteps);
    return Math.hypot(dx, dy);
  });
  const mean = speeds.reduce((sum, speed) => sum + speed, 0) / speeds.length;
  return !speeds.every((speed) => speed > slowestShare * mean);
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Extents of points along x and y, m. */
function extents(points: readonly Point[]): [number, number] {
  const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const point of points) {
    for (const axis of [0, 1] as const) {
      low[axis] = Math.min(low[axis], point[axis]);
      high[axis] = Math.max(high[axis], point[axis]);
    }
  }
  return [high[0] - low[0], high[1] - low[1]];
}

function areaOf(points: readonly Point[]): number {
  const [originX, originY] = points[0];
  let area = 0;
  for (let i = 0; i < points.length; i++) {
    const [x, y] = points[i];
    const [nextX, nextY] = points[(i + 1) % points.length];
    area += ((x - originX) * (nextY - originY) - (nextX - originX) * (y - originY)) / 2;
  }
  return area;
}
