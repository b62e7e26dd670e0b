import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { bulgeOf, fittedCircle, lineDeviation } from "./fitCircle";
import { apart, type FittedPoints, type Place } from "./outline";
import { type Segment, segmentsOf } from "./pointSegments";
import { closedCurveThrough, curveThrough } from "./splineSides";
import { thinnedCurve } from "./thinnedCurve";

/** Points where the polygon turns further are corners, rad: 30 degrees, a coarse circle of twelve points is still one. */
export const cornerAngle = (30 * Math.PI) / 180;
const rounding = 1e-6;
/** A straight side so many times longer than its neighbours is where a list without corners is cut. */
const longChord = 3;
/** Curves keep the points within so many tolerances: they go through some of them, each off by as much itself. */
export const curveShare = 2;
/** Fewest stretches of a closed curve and of an open one that is thinned. */
const fewestClosed = 8;
const fewestOpen = 3;
/** A line and an arc touch when the line passes the centre at one radius within so many tolerances. */
const jointTolerance = 3;
/** Turns between which two lines meet well enough for an arc between them, rad: 6 and 150 degrees. */
const smallestFilletTurn = 0.1;
const largestFilletTurn = 2.6;
/** Mean chords of the arc within which the place where they touch is looked for. */
const jointReach = 2;
/** Most chords of a crossing from a line to an arc. */
const longestCrossing = 2;
/** Largest angle between a curve's first chord and the side before it at which they join smoothly, rad. */
const smoothJoint = cornerAngle;

/**
 * What a list of points stands for: corners where it turns sharply, lines and arcs where points lie on them within the
 * tolerance, and curves through the points elsewhere.
 * @param points closed, counter-clockwise or not, no two neighbours the same, 3 or more
 */
export function pointSides(
  points: readonly Place[],
  tolerance: number,
): { readonly sides: OutlineSide[]; readonly fitted: FittedPoints } {
  const count = points.length;
  const turns = points.map((_, i) => turnAt(points, i));
  const chords = points.map((point, i) => apart(point, points[(i + 1) % count]));
  const perimeter = chords.reduce((sum, chord) => sum + chord, 0);
  const corners = turns.flatMap((turn, i) => (Math.abs(turn) > cornerAngle + rounding ? [i] : []));
  const done = (sides: OutlineSide[], segments: readonly Segment[]) => ({
    sides,
    fitted: {
      points,
      tolerance,
      lines: segments.filter(({ kind }) => kind === "line").length,
      arcs: segments.filter(({ kind }) => kind === "arc").length,
      curvePoints: segments.reduce((sum, { kind, start, end }) => sum + (kind === "curve" ? end - start : 0), 0),
    },
  });
  if (corners.length === 0) {
    const circle = fittedCircle(points);
    const all: Segment = { kind: "curve", start: 0, end: count };
    if (circle !== null && circle.deviation <= tolerance) {
      const isLeft = turns[0] > 0;
      const half = points[count >> 1];
      return done(
        [
          { from: points[0], bulge: bulgeOf(points[0], half, circle.centre, isLeft) },
          { from: half, bulge: bulgeOf(half, points[0], circle.centre, isLeft) },
        ],
        [{ ...all, kind: "arc" }],
      );
    }
    const cut = straightStart(points, chords, tolerance, perimeter);
    if (cut === null) {
      const through = (indices: readonly number[]) => closedCurveThrough(indices.slice(0, -1).map((i) => points[i]));
      const at = (i: number) => points[i % count];
      return done([...thinnedCurve(count, at, through, curveShare * tolerance, fewestClosed)], [all]);
    }
    corners.push(cut);
  }
  const sides: OutlineSide[] = [];
  const segments: Segment[] = [];
  corners.forEach((first, k) => {
    const next = corners[(k + 1) % corners.length];
    const length = next > first ? next - first : next + count - first;
    const run = Array.from({ length: length + 1 }, (_, i) => points[(first + i) % count]);
    const closesSmoothly = corners.length === 1 && Math.abs(turns[first]) <= cornerAngle + rounding;
    const found = segmentsOf(run, tolerance, perimeter);
    sides.push(...runSides(run, found, tolerance, closesSmoothly));
    segments.push(...found);
  });
  return done(sides, segments);
}

function turnAt(points: readonly Place[], i: number): number {
  const count = points.length;
  const [a, b, c] = [points[(i + count - 1) % count], points[i], points[(i + 1) % count]];
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** Where a straight side begins in a list without corners: the longest chord, or the longest row of points on a line. */
function straightStart(
  points: readonly Place[],
  chords: readonly number[],
  tolerance: number,
  perimeter: number,
): number | null {
  const count = points.length;
  const longest = chords.indexOf(Math.max(...chords));
  const beside = Math.max(chords[(longest + count - 1) % count], chords[(longest + 1) % count]);
  if (chords[longest] > longChord * beside) {
    // The side may have more points: its start is where they leave its line.
    let back = 0;
    const rowFrom = (steps: number) =>
      Array.from({ length: steps + 2 }, (_, i) => points[(longest - steps + i + count) % count]);
    while (back + 3 < count && lineDeviation(rowFrom(back + 1)) <= tolerance) back++;
    return (longest - back + count) % count;
  }
  // Every straight side is met from its start when the walk begins at one end of the widest extent and goes round twice.
  const twice = Array.from({ length: 2 * count }, (_, i) => points[i % count]);
  const rows = segmentsOf(twice, tolerance, perimeter).filter(
    ({ kind, end }) => kind === "line" && end < twice.length - 1,
  );
  const second = rows.find(({ start }) => start > 0);
  return second === undefined ? null : second.start % count;
}

/** The sides of a run of points between two corners. */
function runSides(
  run: readonly Place[],
  segments: readonly Segment[],
  tolerance: number,
  closesSmoothly: boolean,
): OutlineSide[] {
  const { starts, ends, left, bulges } = tangentJoints(run, segments, tolerance);
  const leftTurn = (segment: Segment) => {
    const [a, b, c] = [run[segment.start], run[(segment.start + segment.end) >> 1], run[segment.end]];
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0;
  };
  const direction = (segment: Segment | undefined, atEnd: boolean): Place | null => {
    if (segment === undefined || segment.kind === "curve") return null;
    const [from, to] = [run[segment.start], run[segment.end]];
    if (segment.kind === "line" || segment.centre === undefined) return unit([to[0] - from[0], to[1] - from[1]]);
    const place = atEnd ? to : from;
    const radial: Place = [place[0] - segment.centre[0], place[1] - segment.centre[1]];
    return unit(leftTurn(segment) ? [-radial[1], radial[0]] : [radial[1], -radial[0]]);
  };
  return segments.flatMap((segment, i): readonly OutlineSide[] => {
    const { kind, start, end, centre } = segment;
    if (left.has(i)) return [];
    if (kind === "line") return [{ from: starts[i] }];
    if (kind === "arc" && centre !== undefined) {
      return [{ from: starts[i], bulge: bulges.get(i) ?? bulgeOf(starts[i], ends[i], centre, leftTurn(segment)) }];
    }
    const before = i > 0 ? segments[i - 1] : closesSmoothly ? segments[segments.length - 1] : undefined;
    const behind = i + 1 < segments.length ? segments[i + 1] : closesSmoothly ? segments[0] : undefined;
    const points = run.slice(start, end + 1);
    const first = smooth(direction(before, true), points[0], points[1]);
    const last = smooth(direction(behind, false), points[points.length - 2], points[points.length - 1]);
    const through = (indices: readonly number[]) =>
      curveThrough(
        indices.map((k) => points[k]),
        first,
        last,
      ).sides;
    return thinnedCurve(points.length - 1, (k) => points[k], through, curveShare * tolerance, fewestOpen);
  });
}

/**
 * Where the segments of a run start and end: at its points, but for lines that run into arcs, which meet at the foot of
 * the arc's centre on the line when the arc touches it there, and which then need no crossing between them.
 */
function tangentJoints(run: readonly Place[], segments: readonly Segment[], tolerance: number) {
  const starts = segments.map(({ start }) => run[start]);
  const ends = segments.map(({ end }) => run[end]);
  const left = new Set<number>();
  const bulges = new Map<number, number>();
  const isCrossing = (i: number) =>
    segments[i]?.kind === "curve" && segments[i].end - segments[i].start <= longestCrossing;
  const join = (line: number, arc: number, lineIsFirst: boolean) => {
    const { start, end, centre } = segments[arc];
    if (segments[line].kind !== "line" || centre === undefined) return false;
    const [a, b] = [run[segments[line].start], run[segments[line].end]];
    const foot = footOn(a, b, centre);
    const radius = apart(run[start], centre);
    const reach = (jointReach * arcLength(run, start, end)) / (end - start);
    if (Math.abs(apart(foot, centre) - radius) > jointTolerance * tolerance) return false;
    if (apart(foot, lineIsFirst ? b : a) > reach) return false;
    if (lineIsFirst) ends[line] = starts[arc] = foot;
    else starts[line] = ends[arc] = foot;
    return true;
  };
  segments.forEach(({ kind }, i) => {
    if (kind !== "arc") return;
    const touched = [-1, 1].map((side) => {
      const crossing = isCrossing(i + side);
      const line = crossing ? i + 2 * side : i + side;
      if (segments[line] === undefined || !join(line, i, side < 0)) return null;
      if (crossing) left.add(i + side);
      return line;
    });
    const [before, behind] = touched;
    if (before === null || behind === null) return;
    // Between two lines the arc is the one that touches both and comes as near to their meeting as the points do.
    const fillet = filletBetween(run, segments[before], segments[behind], segments[i]);
    if (fillet === null) return;
    ends[before] = starts[i] = fillet.from;
    starts[behind] = ends[i] = fillet.to;
    bulges.set(i, fillet.bulge);
  });
  return { starts, ends, left, bulges };
}

/** The arc that touches two lines; null where they are nearly parallel. */
function filletBetween(run: readonly Place[], before: Segment, behind: Segment, arc: Segment) {
  const [a, b] = [run[before.start], run[before.end]];
  const [c, d] = [run[behind.start], run[behind.end]];
  const first = unit([b[0] - a[0], b[1] - a[1]]);
  const second = unit([d[0] - c[0], d[1] - c[1]]);
  const sine = first[0] * second[1] - first[1] * second[0];
  const turn = Math.atan2(sine, first[0] * second[0] + first[1] * second[1]);
  if (arc.centre === undefined || Math.abs(turn) > largestFilletTurn || Math.abs(turn) < smallestFilletTurn)
    return null;
  const ahead = ((c[0] - b[0]) * second[1] - (c[1] - b[1]) * second[0]) / sine;
  const meeting: Place = [b[0] + ahead * first[0], b[1] + ahead * first[1]];
  const away = apart(meeting, arc.centre) - apart(run[arc.start], arc.centre);
  const radius = away / (1 / Math.cos(turn / 2) - 1);
  const reach = radius * Math.tan(Math.abs(turn) / 2);
  if (!(reach > 0)) return null;
  return {
    from: [meeting[0] - reach * first[0], meeting[1] - reach * first[1]] as Place,
    to: [meeting[0] + reach * second[0], meeting[1] + reach * second[1]] as Place,
    bulge: Math.tan(turn / 4),
  };
}

function footOn(a: Place, b: Place, point: Place): Place {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const share = ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / (dx * dx + dy * dy);
  return [a[0] + share * dx, a[1] + share * dy];
}

function arcLength(run: readonly Place[], start: number, end: number): number {
  let length = 0;
  for (let i = start; i < end; i++) length += apart(run[i], run[i + 1]);
  return length;
}

/** The direction, if a chord leaves it by a slight angle only. */
function smooth(direction: Place | null, from: Place, to: Place): Place | null {
  if (direction === null) return null;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const angle = Math.atan2(direction[0] * dy - direction[1] * dx, direction[0] * dx + direction[1] * dy);
  return Math.abs(angle) <= smoothJoint ? direction : null;
}

function unit([x, y]: Place): Place {
  const length = Math.hypot(x, y);
  return [x / length, y / length];
}
