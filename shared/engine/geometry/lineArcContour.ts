import { areaMoments } from "./areaMoments";
import type { ContourBend } from "./contour";
import type { ContourPiece } from "./contourPiece";

/** A point [x, y], m. */
export type Point = readonly [number, number];

/** Longest stretch of a circular arc that counts as one bend, rad. */
const longestBend = Math.PI / 12;

/** A straight piece between two points, m. */
export function linePiece(start: Point, end: Point): ContourPiece {
  const spanX = end[0] - start[0];
  const spanY = end[1] - start[1];
  const length = Math.hypot(spanX, spanY);
  if (!(length > 0)) throw new RangeError(`A line from ${start} to ${end} has length ${length}; it must be above 0.`);
  const tangentX = spanX / length;
  const tangentY = spanY / length;
  const path = (t: number) => ({
    x: start[0] + spanX * t,
    y: start[1] + spanY * t,
    dx: spanX,
    dy: spanY,
    ddx: 0,
    ddy: 0,
  });
  return {
    length,
    at: (arc) => ({ x: start[0] + tangentX * arc, y: start[1] + tangentY * arc, tangentX, tangentY, curvature: 0 }),
    moments: areaMoments(path, [0, 1]),
    bends: [],
  };
}

/**
 * A circular arc, convex when it turns counter-clockwise.
 * @param centre m
 * @param radius m, above 0
 * @param from   direction of the start as seen from the centre, rad
 * @param turn   angle covered, rad, in [-2 pi, 2 pi], positive counter-clockwise, not 0
 */
export function arcPiece(centre: Point, radius: number, from: number, turn: number): ContourPiece {
  if (!(radius > 0 && Math.abs(turn) > 0)) {
    throw new RangeError(`Arc radius ${radius} must be above 0 and its turn ${turn} not 0.`);
  }
  const side = Math.sign(turn);
  const path = (angle: number) => {
    const x = radius * Math.cos(angle);
    const y = radius * Math.sin(angle);
    return { x: centre[0] + x, y: centre[1] + y, dx: -y, dy: x, ddx: -x, ddy: -y };
  };
  const count = Math.ceil(Math.abs(turn) / longestBend - 1e-9);
  const breaks = Float64Array.from({ length: count + 1 }, (_, i) => from + (turn * i) / count);
  const length = radius * Math.abs(turn);
  const bends: ContourBend[] = Array.from({ length: count }, (_, i) => ({
    arc: (length * (i + 0.5)) / count,
    length: length / count,
    turning: turn / count,
  }));
  return {
    length,
    at: (arc) => {
      const angle = from + (side * arc) / radius;
      const cosine = Math.cos(angle);
      const sine = Math.sin(angle);
      return {
        x: centre[0] + radius * cosine,
        y: centre[1] + radius * sine,
        tangentX: -side * sine,
        tangentY: side * cosine,
        curvature: side / radius,
      };
    },
    moments: areaMoments(path, breaks),
    bends,
  };
}

/**
 * The lines and arcs of a convex polygon grown by a disc: every side moves outward by the radius, every corner becomes
 * an arc. Coinciding vertices are merged, so that a single point gives a circle and two points a stadium.
 * @param vertices of the polygon before growing, counter-clockwise, m
 * @param radius   of the disc, m, above 0
 */
export function grownPolygonPieces(vertices: readonly Point[], radius: number): ContourPiece[] {
  const negligible = 1e-12 * (radius + Math.max(...vertices.flat().map(Math.abs)));
  const corners = vertices.filter(([x, y], i) => {
    const [nextX, nextY] = vertices[(i + 1) % vertices.length];
    return Math.hypot(nextX - x, nextY - y) > negligible;
  });
  if (corners.length === 0) return [arcPiece(vertices[0], radius, Math.PI, 2 * Math.PI)];
  const normals = corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length];
    return Math.atan2(x - nextX, nextY - y);
  });
  const pieces: ContourPiece[] = [];
  corners.forEach((corner, i) => {
    const before = normals[(i + corners.length - 1) % corners.length];
    const after = normals[i];
    const raw = after - before;
    const turn = raw - 2 * Math.PI * Math.floor(raw / (2 * Math.PI));
    const straight = turn < 1e-12 || turn > 2 * Math.PI - 1e-12;
    if (!straight) pieces.push(arcPiece(corner, radius, before, turn));
    const next = corners[(i + 1) % corners.length];
    const offsetX = radius * Math.cos(after);
    const offsetY = radius * Math.sin(after);
    pieces.push(linePiece([corner[0] + offsetX, corner[1] + offsetY], [next[0] + offsetX, next[1] + offsetY]));
  });
  return pieces;
}
