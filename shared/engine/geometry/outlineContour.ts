import { problem, type Result, success } from "../../result";
import { bendsFromNose } from "./bendsFromNose";
import type { Contour } from "./contour";
import type { ContourPiece } from "./contourPiece";
import { place } from "./contourPoints";
import { checkRadius, halfSmaller, millimetres, smallestRadiusRatio } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { isMirrorSymmetric } from "./mirrorSymmetry";
import { outlineSides, sideSteps } from "./outlineSides";
import { parametricPiece } from "./parametricContour";
import { type CornerArc, cornerArc, turnBetween } from "./roundedCorner";
import { extent } from "./sectionNames";
import type { OutlineSpec } from "./sectionSpec";
import { selfCrossing } from "./selfCrossing";
import { curvatureAt, type SidePath } from "./sidePath";

/** Angle between two sides that counts as none, rad: 0.3 degrees. */
export const smoothKink = 5e-3;
/** Part of the smaller dimension that a slight corner's larger radius may take off it. */
const slightDeviation = 1e-4;
/** Part of a side that the arc of a slight corner may take at most. */
const slightShare = 0.3;
/** Part of a curve's own radius that the arc of a slight corner beside it may have at most. */
const slightRadius = 0.5;
/** Difference between an outline and its mirror image that counts as none, as a part of the perimeter: files are rounded. */
const mirrorTolerance = 1e-5;
/** Sides from which on the stretches of turning are counted from the nose, as many as the shape needs. */
const manySides = 200;
/** Places along a curve at which its radius is looked at. */
const radiusPlaces = 16;
/** A radius that a file's rounding makes so much smaller than the least is taken. */
const radiusSlack = 5e-3;
/** Relative excess over a limit that is put down to rounding. */
const slack = 1e-6;

/** A stretch of a rounded outline: a side between two values of its u, or all of the arc of a corner. */
export interface OutlineStretch {
  readonly path: SidePath;
  readonly from: number;
  readonly to: number;
}

/** A rounded outline, counter-clockwise; extents in m are those of the outline with sharp corners. */
export interface RoundedOutline {
  readonly stretches: readonly OutlineStretch[];
  readonly corners: number;
  readonly cornerRadius: number;
  readonly length: number;
  readonly height: number;
}

/**
 * A closed outline of lines, arcs and cubic curves with rounded corners. Sides that meet without an angle are joined as
 * they are. Fails, naming the place, when a corner's arc does not fit on its sides or a curve turns too sharply.
 */
export function buildOutline(spec: OutlineSpec): Result<Contour> {
  const rounded = roundedOutline(spec);
  if (!rounded.ok) return rounded;
  const { stretches, length, height } = rounded.value;
  const points = stretches.flatMap(stretchPoints);
  const crossing = selfCrossing(points);
  if (crossing) {
    const where = place(points[crossing[0]]);
    return problem("curve-self-crossing", `the rounded outline crosses itself near ${where}; mend it there`, "sides");
  }
  const pieces = outlinePieces(stretches, 2 * (length + height));
  const contour = joinPieces(`${spec.name ?? "outline"} ${extent(length, height)}`, pieces, false, smoothKink);
  return success({
    ...contour,
    bends: stretches.length > manySides ? bendsFromNose(contour) : contour.bends,
    mirrorSymmetric: isMirrorSymmetric(contour, mirrorTolerance),
  });
}

/** The sides of an outline with an arc in place of every corner. */
export function roundedOutline(spec: OutlineSpec): Result<RoundedOutline> {
  const prepared = outlineSides(spec.sides);
  if (!prepared.ok) return prepared;
  const { paths, length, height } = prepared.value;
  const smaller = Math.min(length, height);
  const smallestRadius = smallestRadiusRatio * smaller;
  const cornerRadius = spec.cornerRadius ?? smallestRadius;
  const bad = checkRadius("cornerRadius", cornerRadius, smaller, halfSmaller(length, height));
  if (bad) return { ok: false, problem: bad };
  const sharp = sharpestCurve(paths);
  if (!(sharp.radius >= smallestRadius * (1 - radiusSlack))) {
    const found = `the outline turns with a radius of ${millimetres(sharp.radius)} near ${place(sharp.at)}`;
    const limit = `the smallest allowed is ${millimetres(smallestRadius)} (1 % of the smaller dimension)`;
    return problem("radius-too-small", `${found}; ${limit}: draw a corner or a larger radius there`, "sides");
  }
  const rounded = roundCorners(paths, cornerRadius, slightDeviation * smaller);
  return rounded.ok ? success({ ...rounded.value, cornerRadius, length, height }) : rounded;
}

/** Smallest radius of the arcs and curves, m, and where. */
function sharpestCurve(paths: readonly SidePath[]): { radius: number; at: readonly [number, number] } {
  let sharpest = { radius: Number.POSITIVE_INFINITY, at: [0, 0] as readonly [number, number] };
  for (const { kind, at } of paths) {
    if (kind === "line") continue;
    for (let i = 0; i <= radiusPlaces; i++) {
      const here = at(i / radiusPlaces);
      const radius = 1 / Math.abs(curvatureAt(here));
      if (!(radius >= sharpest.radius)) sharpest = { radius, at: [here.x, here.y] };
    }
  }
  return sharpest;
}

/** The sides with an arc in place of every corner. A problem's code is "corner-does-not-fit" where there is no room. */
function roundCorners(
  paths: readonly SidePath[],
  radius: number,
  deviation: number,
): Result<{ stretches: OutlineStretch[]; corners: number }> {
  const count = paths.length;
  const arcs: (CornerArc | null)[] = [];
  for (let i = 0; i < count; i++) {
    const before = paths[i];
    const behind = paths[(i + 1) % count];
    const turn = Math.abs(turnBetween(before, behind));
    if (turn < smoothKink) {
      arcs.push(null);
      continue;
    }
    const larger = slightCornerRadius(before, behind, turn, deviation);
    const arc = (larger > radius ? cornerArc(before, behind, larger) : null) ?? cornerArc(before, behind, radius);
    if (arc === null) return doesNotFit(behind, radius);
    arcs.push(arc);
  }
  const stretches: OutlineStretch[] = [];
  for (let i = 0; i < count; i++) {
    const start = arcs[(i + count - 1) % count]?.meets ?? 0;
    const end = arcs[i]?.leaves ?? 1;
    if (end < start - slack) return doesNotFit(paths[i], radius);
    if (end > start + slack) stretches.push({ path: paths[i], from: start, to: end });
    const arc = arcs[i];
    if (arc !== null) stretches.push({ path: arc.path, from: 0, to: 1 });
  }
  return success({ stretches, corners: arcs.filter((arc) => arc !== null).length });
}

/** The radius that takes just the deviation off a slight corner, m, kept within the sides and their curvature. */
function slightCornerRadius(before: SidePath, behind: SidePath, turn: number, deviation: number): number {
  const end = before.at(1);
  const start = behind.at(0);
  const shorter = Math.min(Math.hypot(end.dx, end.dy), Math.hypot(start.dx, start.dy));
  const sharper = Math.max(Math.abs(curvatureAt(end)), Math.abs(curvatureAt(start)));
  return Math.min(
    deviation / (1 / Math.cos(turn / 2) - 1),
    (slightShare * shorter) / Math.tan(turn / 2),
    slightRadius / sharper,
  );
}

function doesNotFit({ at }: SidePath, radius: number) {
  const { x, y } = at(0);
  const found = `a corner radius of ${millimetres(radius)} does not fit on the sides near ${place([x, y])}`;
  return problem("corner-does-not-fit", `${found}; lengthen the short side there or leave it out`, "sides");
}

/** Places along a stretch, its end left out, as dense as a side's. */
function stretchPoints({ path, from, to }: OutlineStretch): [number, number][] {
  return sideSteps(path).map((share): [number, number] => {
    const { x, y } = path.at(from + (to - from) * share);
    return [x, y];
  });
}

/** Pieces of contour: lines and arcs each by itself, and curves that follow one another as one. */
function outlinePieces(stretches: readonly OutlineStretch[], whole: number): ContourPiece[] {
  const pieces: ContourPiece[] = [];
  let curves: OutlineStretch[] = [];
  const finish = () => {
    if (curves.length > 0) pieces.push(curvePiece(curves, whole));
    curves = [];
  };
  for (const stretch of stretches) {
    if (stretch.path.kind === "curve") curves.push(stretch);
    else {
      finish();
      pieces.push(stretch.path.piece(stretch.from, stretch.to));
    }
  }
  finish();
  return pieces;
}

function curvePiece(stretches: readonly OutlineStretch[], whole: number): ContourPiece {
  const last = stretches.length - 1;
  const path = (t: number) => {
    const i = Math.min(last, Math.floor(t));
    const { path: side, from, to } = stretches[i];
    const share = to - from;
    const { x, y, dx, dy, ddx, ddy } = side.at(from + share * (t - i));
    return { x, y, dx: share * dx, dy: share * dy, ddx: share * share * ddx, ddy: share * share * ddy };
  };
  return parametricPiece(
    path,
    Float64Array.from({ length: last + 2 }, (_, i) => i),
    whole,
  );
}
