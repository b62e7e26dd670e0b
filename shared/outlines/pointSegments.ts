import { fittedCircle, lineDeviation } from "./fitCircle";
import { apart, type Place } from "./outline";

/** What a stretch of points was recognised as; indices into the list of points, start before end. */
export interface Segment {
  readonly kind: "line" | "arc" | "curve";
  readonly start: number;
  readonly end: number;
  /** Centre of an arc. */
  readonly centre?: Place;
}

/** A chord so many times longer than both its neighbours is a straight side. */
const longChord = 3;
/** Chords of one arc may differ in length by this factor, its first and last aside; those of one with many by the larger. */
const arcChords = 3;
const manyChords = 6;
const unevenArcChords = 30;
/** Fewest chords of an arc, and the least that it turns, rad. */
const fewestArcChords = 3;
const leastArcTurn = 0.4;
/** Part of the perimeter from which on points in a row make a straight side. */
const leastLine = 0.02;
/** Fewest chords of a curve that stands alone: fewer points are corners. */
const fewestCurveChords = 4;

/**
 * Cuts a run of points, whose inner ones are no corners, into lines, arcs and curves, each as long as it goes.
 * @param tolerance largest distance of a point from its line or arc
 * @param perimeter of the whole outline
 */
export function segmentsOf(points: readonly Place[], tolerance: number, perimeter: number): Segment[] {
  const last = points.length - 1;
  if (last === 1) return [{ kind: "line", start: 0, end: 1 }];
  const chords = Array.from({ length: last }, (_, i) => apart(points[i], points[i + 1]));
  const found: Segment[] = [];
  for (let at = 0; at < last; ) {
    const lineEnd = furthestLine(points, at, tolerance);
    const isLine =
      (lineEnd - at > 1 && apart(points[at], points[lineEnd]) >= leastLine * perimeter) ||
      (at === 0 && lineEnd === last) ||
      (chords[at] >= leastLine * perimeter && isLong(chords, at));
    const arc = isLine ? null : furthestArc(points, chords, at, tolerance);
    const next: Segment = isLine
      ? { kind: "line", start: at, end: lineEnd }
      : (arc ?? { kind: "curve", start: at, end: at + 1 });
    const before = found[found.length - 1];
    if (next.kind === "curve" && before?.kind === "curve") found[found.length - 1] = { ...before, end: next.end };
    else found.push(next);
    at = next.end;
  }
  return found.flatMap((segment, i) => {
    const { kind, start, end } = segment;
    // A few chords beside an arc are the crossing from it to a line; a few elsewhere are sides between corners.
    const besideArc = found[i - 1]?.kind === "arc" || found[i + 1]?.kind === "arc";
    if (kind !== "curve" || end - start >= fewestCurveChords || besideArc) return [segment];
    return Array.from(
      { length: end - start },
      (_, k): Segment => ({ kind: "line", start: start + k, end: start + k + 1 }),
    );
  });
}

/** The last point up to which all lie on one line from the point at an index. */
function furthestLine(points: readonly Place[], at: number, tolerance: number): number {
  return furthest(at + 1, points.length - 1, (end) => {
    const stretch = points.slice(at, end + 1);
    return lineDeviation(stretch) <= tolerance && goesAhead(stretch);
  });
}

/** Whether every point of a row lies further along than the one before. */
function goesAhead(row: readonly Place[]): boolean {
  const [a, b] = [row[0], row[row.length - 1]];
  return row.every(
    ([x, y], i) => i === 0 || (b[0] - a[0]) * (x - row[i - 1][0]) + (b[1] - a[1]) * (y - row[i - 1][1]) > 0,
  );
}

/** The largest number up to which something fits, by doubling steps and then halving them; the first is taken to fit. */
function furthest(first: number, most: number, fits: (end: number) => boolean): number {
  let end = first;
  let step = 1;
  while (end + step <= most && fits(end + step)) {
    end += step;
    step *= 2;
  }
  for (; step >= 1; step >>= 1) if (end + step <= most && fits(end + step)) end += step;
  return end;
}

/** Whether a chord is much longer than those beside it. */
function isLong(chords: readonly number[], at: number): boolean {
  const beside = [chords[at - 1], chords[at + 1]].filter((length) => length !== undefined);
  return beside.every((length) => chords[at] > longChord * length);
}

/** The longest arc from a point, or null. */
function furthestArc(
  points: readonly Place[],
  chords: readonly number[],
  at: number,
  tolerance: number,
): Segment | null {
  const fits = (end: number) => {
    const inner = chords.slice(at + 1, end - 1);
    const longest = Math.max(...inner);
    const uneven = Math.max(longest / Math.min(...inner), chords[at] / longest, chords[end - 1] / longest);
    if (uneven > (end - at >= manyChords ? unevenArcChords : arcChords)) return false;
    const circle = fittedCircle(points.slice(at, end + 1));
    // More than once round is no longer one arc.
    return circle !== null && circle.deviation <= tolerance && (end - at) * longest <= 2 * Math.PI * circle.radius;
  };
  const first = at + fewestArcChords;
  if (first >= points.length || !fits(first)) return null;
  const end = furthest(first, points.length - 1, fits);
  const circle = fittedCircle(points.slice(at, end + 1));
  if (circle === null) return null;
  const length = chords.slice(at, end).reduce((sum, chord) => sum + chord, 0);
  return length >= leastArcTurn * circle.radius ? { kind: "arc", start: at, end, centre: circle.centre } : null;
}
