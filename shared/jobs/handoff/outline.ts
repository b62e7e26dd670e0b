import type { Contour } from "../../engine/geometry/contour";
import { coreMeridian, type Meridian, type PuckSpec, turnedMeridian } from "../puck/public";

/**
 * A closed outline, m, counter-clockwise, of lines and circular arcs. `bulge` is the tangent of a quarter of the angle
 * that the arc from this vertex to the next turns, 0 for a line, positive to the left: the convention of DXF polylines.
 */
export interface OutlineVertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

export interface Outline {
  readonly name: string;
  readonly vertices: readonly OutlineVertex[];
}

/** Most vertices of one outline. */
export const mostVertices = 20_000;

/**
 * A contour as straight lines that stay within `deviation` of it, m: steps of sqrt(8 deviation / curvature), at most a
 * fiftieth of the perimeter.
 */
export function contourOutline(contour: Contour, deviation: number): Outline {
  if (!(deviation > 0)) throw new RangeError(`deviation is ${deviation} m; it must be above 0.`);
  const longest = contour.perimeter / 50;
  const shortest = contour.perimeter / mostVertices;
  const stepAt = (arc: number) =>
    Math.max(shortest, Math.min(longest, Math.sqrt((8 * deviation) / Math.abs(contour.at(arc).curvature))));
  const vertices: OutlineVertex[] = [];
  const bendStarts = curvedStarts(contour);
  let ahead = 0;
  for (let arc = 0; arc < contour.perimeter; ) {
    const { x, y } = contour.at(arc);
    vertices.push({ x, y, bulge: 0 });
    // The step suits the tighter of the curvatures at its two ends, and none runs over the start of a bend unawares.
    const step = stepAt(arc);
    const next = arc + Math.min(step, stepAt(arc + step));
    while (ahead < bendStarts.length && bendStarts[ahead] < arc + shortest) ahead++;
    arc = Math.min(next, bendStarts[ahead] ?? next);
  }
  return { name: contour.name, vertices };
}

/** Arcs at which a straight stretch of a contour ends, m, rising. */
function curvedStarts({ bends, perimeter }: Contour): number[] {
  return bends.flatMap(({ arc, length }, i) => {
    const before = i === 0 ? Number.NEGATIVE_INFINITY : bends[i - 1].arc + bends[i - 1].length / 2;
    const start = arc - length / 2;
    return start - before > perimeter / mostVertices ? [start] : [];
  });
}

/** The whole profile section of a puck with all that is turned, recess and rings: exact arcs, x across, y along the axis. */
export function profileOutline(spec: PuckSpec): Outline {
  return { name: `${spec.name}, profile`, vertices: mirroredVertices(turnedMeridian(spec)) };
}

/** The core in the profile section: one outline, two for a ring, none without a core or where it is impossible. */
export function coreOutlines(spec: PuckSpec): Outline[] {
  const meridian = coreMeridian(spec);
  if (!meridian.ok || meridian.value.length === 0) return [];
  const name = `${spec.name}, core`;
  if (spec.core.kind !== "ring") return [{ name, vertices: mirroredVertices(meridian.value) }];
  const right = meridianVertices(meridian.value).slice(0, -1);
  const left = [...right].reverse().map((vertex) => ({ ...vertex, x: -vertex.x }));
  return [
    { name, vertices: right },
    { name, vertices: left },
  ];
}

/** Both halves of a meridian that starts and ends on the axis. */
export function mirroredVertices(meridian: Meridian): OutlineVertex[] {
  const right = meridianVertices(meridian);
  const last = right[right.length - 1];
  // The left half walks back down: vertices mirrored in reverse, each bulge now belonging to the vertex before it.
  const left = [...right]
    .reverse()
    .map(({ x, y }, i, all) => ({ x: -x, y, bulge: i + 1 < all.length ? right[right.length - 2 - i].bulge : 0 }));
  return [...right.slice(0, -1), { ...last, bulge: left[0].bulge }, ...left.slice(1, -1)];
}

/** The plan of a puck: a circle as two half-turn arcs. */
export function planOutline(spec: PuckSpec): Outline {
  const R = spec.diameterMetres / 2;
  return {
    name: `${spec.name}, plan`,
    vertices: [
      { x: R, y: 0, bulge: 1 },
      { x: -R, y: 0, bulge: 1 },
    ],
  };
}

/** Enclosed area, m^2, exact for lines and arcs: polygon plus the circular segment of each arc. */
export function outlineArea({ vertices }: Outline): number {
  return vertices.reduce((area, { x, y, bulge }, i) => {
    const next = vertices[(i + 1) % vertices.length];
    const polygon = (x * next.y - next.x * y) / 2;
    if (bulge === 0) return area + polygon;
    const turn = 4 * Math.atan(bulge);
    const chord = Math.hypot(next.x - x, next.y - y);
    const radius = chord / (2 * Math.sin(turn / 2));
    return area + polygon + (radius * radius * (turn - Math.sin(turn))) / 2;
  }, 0);
}

/** Points along an outline, arcs cut into chords within `deviation`, m; the first point is not repeated. */
export function outlinePoints({ vertices }: Outline, deviation: number): [number, number][] {
  return vertices.flatMap(({ x, y, bulge }, i) => {
    if (bulge === 0) return [[x, y] as [number, number]];
    const next = vertices[(i + 1) % vertices.length];
    const { centreX, centreY, radius, start, turn } = arcOf({ x, y, bulge }, next);
    const steps = Math.max(1, Math.ceil(Math.abs(turn) / Math.sqrt((8 * deviation) / radius)));
    return Array.from({ length: steps }, (_, k): [number, number] => {
      const phi = start + (turn * k) / steps;
      return [centreX + radius * Math.cos(phi), centreY + radius * Math.sin(phi)];
    });
  });
}

/** Centre, radius, first angle and turn (rad) of the arc from a vertex with a bulge to the next. */
export function arcOf(from: OutlineVertex, to: { readonly x: number; readonly y: number }) {
  const turn = 4 * Math.atan(from.bulge);
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const reach = (1 - from.bulge * from.bulge) / (4 * from.bulge); // centre's distance from the chord / chord
  const centreX = (from.x + to.x) / 2 - dy * reach;
  const centreY = (from.y + to.y) / 2 + dx * reach;
  const radius = Math.hypot(from.x - centreX, from.y - centreY);
  return { centreX, centreY, radius, start: Math.atan2(from.y - centreY, from.x - centreX), turn };
}

function meridianVertices(meridian: Meridian): OutlineVertex[] {
  const vertices = meridian.map((piece) =>
    piece.kind === "line"
      ? { x: piece.r1, y: piece.z1, bulge: 0 }
      : {
          x: piece.centreR + piece.radius * Math.cos(piece.phi1),
          y: piece.centreZ + piece.radius * Math.sin(piece.phi1),
          bulge: Math.tan((piece.phi2 - piece.phi1) / 4),
        },
  );
  const last = meridian[meridian.length - 1];
  if (last.kind === "line") vertices.push({ x: last.r2, y: last.z2, bulge: 0 });
  return vertices;
}
