import { type FaceGrooves, halfAngle, innerArc, outerArc, type RimGrooves, rimFloorCorners } from "./groovePlan";
import { addPlaneFace, addQuad, addVertex, type MeshBuilder } from "./meshBuilder";
import { angleIndex } from "./ringAngles";

/** Rings of vertices about the axis, from the bottom's middle over the rim to the top's. */
export interface PuckRings {
  /** rad, rising, one per vertex of a ring. */
  readonly angles: Float64Array;
  /** Vertex numbers, ring by ring. */
  readonly numbers: readonly (readonly number[])[];
  /** m. */
  readonly radii: readonly number[];
  readonly heights: readonly number[];
}

/** Where a groove cuts into a ring: places of its corners on it, and the vertices that the cut follows between them. */
export interface Notch {
  readonly from: number;
  readonly to: number;
  readonly path: readonly number[];
}

/** Places on a ring from one to another, both included, forwards, over the end of the ring where need be. */
function places(from: number, to: number, count: number): number[] {
  return Array.from({ length: ((to - from + count) % count) + 1 }, (_, i) => (from + i) % count);
}

/** A ring counter-clockwise, with each notch's path in place of what it cuts out. */
export function notchedRing(ring: readonly number[], notches: readonly Notch[]): number[] {
  const inside = new Set(notches.flatMap(({ from, to }) => places(from, to, ring.length).slice(1, -1)));
  const pathFrom = new Map(notches.map(({ from, path }) => [from, path]));
  return ring.flatMap((vertex, k) => (inside.has(k) ? [] : [vertex, ...(pathFrom.get(k) ?? [])]));
}

/**
 * Walls and floor of one groove in a face.
 * @param edge ring of the face's edge that the groove reaches; null when it ends before
 * @returns its outline at the level of the face, counter-clockwise seen from above, and the notch it makes in the edge
 */
export function addFaceGroove(
  builder: MeshBuilder,
  { angles, numbers }: PuckRings,
  face: FaceGrooves,
  angle: number,
  level: number,
  edge: number | null,
  deviation: number,
): { readonly outline: number[]; readonly notch: Notch | null } {
  const isTop = level > 0;
  const floor = level + (isTop ? -1 : 1) * face.depthMetres;
  const half = halfAngle(face.widthMetres, face.outerRadiusMetres);
  const inner = innerArc(face, angle, deviation).map(([x, y]) => addVertex(builder, x, y, level));
  const [from, to] = edge === null ? [0, 0] : [angleIndex(angles, angle - half), angleIndex(angles, angle + half)];
  const outer =
    edge === null
      ? outerArc(face, angle, deviation).map(([x, y]) => addVertex(builder, x, y, level))
      : places(from, to, angles.length).map((k) => numbers[edge][k]);
  const outline = [...outer, ...[...inner].reverse()];
  const below = outline.map((vertex) => {
    const [x, y] = [builder.positions[3 * vertex], builder.positions[3 * vertex + 1]];
    return addVertex(builder, x, y, floor);
  });
  outline.forEach((vertex, i) => {
    const next = (i + 1) % outline.length;
    addQuad(builder, [vertex, outline[next], below[next], below[i]], !isTop);
  });
  addPlaneFace(builder, below, [], isTop);
  return { outline, notch: edge === null ? null : { from, to, path: inner } };
}

/**
 * Walls, floor and, where the rim ends at an edge, ends of one groove along the rim.
 * @param lower    the rim's lower ring; the next one is its upper
 * @param isClosed whether the groove ends below the faces; else it runs out into them
 * @returns the cells of the rim that it takes away, and its notches in the faces
 */
export function addRimGroove(
  builder: MeshBuilder,
  { angles, numbers, radii, heights }: PuckRings,
  lower: number,
  rim: RimGrooves,
  angle: number,
  isClosed: boolean,
): { readonly cells: readonly number[]; readonly bottom: Notch; readonly top: Notch } {
  const half = halfAngle(rim.widthMetres, radii[lower]);
  const [from, to] = [angleIndex(angles, angle - half), angleIndex(angles, angle + half)];
  const cut = places(from, to, angles.length);
  const corners = rimFloorCorners(rim, radii[lower], angle);
  const [a, b] = corners.map(([x, y]) => addVertex(builder, x, y, heights[lower]));
  const [c, d] = corners.map(([x, y]) => addVertex(builder, x, y, heights[lower + 1]));
  const [below, above] = [numbers[lower], numbers[lower + 1]];
  addQuad(builder, [a, b, d, c]);
  addQuad(builder, [below[from], a, c, above[from]]);
  addQuad(builder, [below[to], above[to], d, b]);
  if (isClosed) {
    addPlaneFace(builder, [a, ...cut.map((k) => below[k]), b], [], true);
    addPlaneFace(builder, [c, ...cut.map((k) => above[k]), d], [], false);
  }
  return { cells: cut.slice(0, -1), bottom: { from, to, path: [a, b] }, top: { from, to, path: [c, d] } };
}
