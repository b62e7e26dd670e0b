import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";

export const outlineUnits = ["mm", "cm", "m", "in"] as const;
export type OutlineUnit = (typeof outlineUnits)[number];

/** [x, y] in the file's unit. */
export type Place = readonly [number, number];

/** A closed outline as it stands in a file: lines, arcs and curves in the file's own unit, y up. */
export interface Outline {
  /** Each ends where the next one starts, the last where the first one does. */
  readonly sides: readonly OutlineSide[];
  /** Unit that the file itself names; null when it names none. */
  readonly unit: OutlineUnit | null;
  /** Of files that are a list of points: the points, and what was made of them. */
  readonly fitted: FittedPoints | null;
  /** What the reader did that a person should know. */
  readonly remarks: readonly string[];
}

export interface FittedPoints {
  readonly points: readonly Place[];
  /** Points lie on recognised lines and arcs within this, and on curves within twice as much, in the file's unit. */
  readonly tolerance: number;
  readonly lines: number;
  readonly arcs: number;
  /** Points on curves between them. */
  readonly curvePoints: number;
}

/** A stretch of sides that need not be closed. */
export interface Chain {
  readonly sides: readonly OutlineSide[];
  readonly end: Place;
}

export const largestOutlineBytes = 2_000_000;
export const mostOutlinePoints = 5000;
/** Sides and points of all shapes of one drawing. */
export const mostDrawnSides = 20_000;
/** Parts of the larger extent within which two places of a drawing are the same. */
export const samePlace = 1e-6;

/** Why a text is too large to be read as an outline; null when it is not. */
export function tooLarge(text: string): ReturnType<typeof problem> | null {
  if (text.length <= largestOutlineBytes) return null;
  return problem("outline", `the file has ${text.length} characters; it must have at most ${largestOutlineBytes}`);
}

export function apart(a: Place, b: Place): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Extents of points along x and y. */
export function extentsOf(points: Iterable<Place>): readonly [number, number] {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return [right - left, top - bottom];
}

/** A closed outline of a chain: sides without length are dropped, and its ends are joined by a line where they are apart. */
export function closedChain({ sides, end }: Chain): { readonly sides: readonly OutlineSide[]; readonly gap: number } {
  const [width, height] = extentsOf([...sides.map(({ from }) => from), end]);
  const negligible = samePlace * Math.max(width, height);
  const gap = apart(end, sides[0].from);
  const all: readonly OutlineSide[] = gap > negligible ? [...sides, { from: end }] : sides;
  const kept = all.filter(
    ({ from, controls }, i) => controls !== undefined || apart(from, all[(i + 1) % all.length].from) > negligible,
  );
  // A curve whose ends are one place would have no length to the next side's start: it is a loop, left to the checks.
  return { sides: kept, gap };
}

/** Refuses an outline whose numbers are no numbers. */
export function finiteOutline(outline: Outline): Result<Outline> {
  const hasNumbers = outline.sides.every(({ from, bulge = 0, controls }) =>
    [...from, bulge, ...(controls ?? []).flat()].every(Number.isFinite),
  );
  return hasNumbers ? success(outline) : problem("outline", "the outline has a coordinate that is not a finite number");
}

/** Extents of all ends of chains along x and y. */
export function chainExtent(chains: readonly Chain[]): readonly [number, number] {
  return extentsOf(chains.flatMap(({ sides, end }) => [...sides.map(({ from }) => from), end]));
}
