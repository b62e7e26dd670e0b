import { locateInTable, type MeridianShape } from "./meridianShape";
import type { SurfaceField } from "./surfaceField";
import { divergenceAt, nodeValueAt, type SurfacePoint, surfacePoint, velocityAt } from "./surfacePoint";

/**
 * A streamline of the surface flow from near the front stagnation point. Arrays have shape [count]; index 0 is the start.
 * Lengths in m as the body is given, speeds over U.
 */
export interface SurfaceLine {
  readonly count: number;
  /** Place, m: x across the axis downstream edge-on, y to the side, z along the axis from the centre. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Arc length from the stagnation point, m; the start counts by the speed's rate of growth there. */
  readonly arc: Float64Array;
  /** q / U. */
  readonly speed: Float64Array;
  /** Distance between neighbouring lines over its value at the start: the divergence of the layer. */
  readonly spacing: Float64Array;
  /** Curvature of the wall along the line, 1/m, positive where convex. */
  readonly curvature: Float64Array;
}

/** Radius of the ring on which lines start, and the step along them, over the body's radius. */
export const START_RADIUS = 0.02;
const STEP = 0.01;
/** Steps are no longer than this part of the panel that they are on, so that sharp edges are seen. */
const PANEL_STEP = 0.15;
/** The way from the stagnation point to the start is at most this many steps. */
const MOST_LEAD = 10;

/**
 * Streamlines by the midpoint rule, held on the surface; the spacing by d(ln h q)/dt = div u along the line, which needs no
 * derivative of the speed.
 * @param stagnation direction from the centre to the front stagnation point, see {@link stagnationDirection}
 * @param angles  directions in which lines leave the stagnation point, rad: 0 along the equator, pi / 2 towards the upper end
 * @param reach   length to follow, over the body's radius
 */
export function surfaceLines(
  shape: MeridianShape,
  field: SurfaceField,
  stagnation: readonly [number, number, number],
  angles: readonly number[],
  reach = 3.2,
): SurfaceLine[] {
  return angles.map((angle) => surfaceLine(shape, field, stagnation, angle, reach));
}

/** Cosine of a start angle below which a line counts as in the plane of stream and axis. */
const IN_PLANE = 1e-9;

interface Motion {
  readonly vx: number;
  readonly vy: number;
  readonly vz: number;
  readonly speed: number;
  readonly divergence: number;
  readonly panel: number;
}

function surfaceLine(
  shape: MeridianShape,
  field: SurfaceField,
  stagnation: readonly [number, number, number],
  angle: number,
  reach: number,
): SurfaceLine {
  const { radius, panels } = shape.panels;
  const points: number[][] = [[], [], [], [], [], [], []];
  let here = startPoint(shape, stagnation, angle);
  let motion = motionAt(shape, field, here);
  const inPlane = Math.abs(Math.cos(angle)) < IN_PLANE;
  let logSpacingSpeed = 0;
  let passed = 0;
  const startSpeed = motion.speed;
  while (passed <= reach * radius) {
    const step = Math.min(STEP * radius, PANEL_STEP * panels[motion.panel].length);
    const direction = unit(motion);
    const spacing = (Math.exp(logSpacingSpeed) * startSpeed) / motion.speed;
    const row = [...here, passed, motion.speed, spacing, wallCurvature(shape, here, direction, step)];
    row.forEach((value, column) => {
      points[column].push(value);
    });
    const half = onSurface(shape, moved(here, direction, step / 2));
    const midway = motionAt(shape, field, half);
    logSpacingSpeed += (midway.divergence * step) / Math.max(midway.speed, 1e-9);
    here = onSurface(shape, moved(here, unit(midway), step));
    // Lines in the plane of stream and axis part from their neighbours exponentially: rounding must not push them off.
    if (inPlane) here[1] = 0;
    motion = motionAt(shape, field, here);
    passed += step;
  }
  const [x, y, z, arc, speed, spacing, curvature] = points.map((values) => Float64Array.from(values));
  // The speed grows from 0 at the stagnation point with the slope that it has here.
  const lead = (speed[0] * (arc[2] - arc[0])) / (speed[2] - speed[0]);
  const ahead = Math.max(0, Math.min(lead, MOST_LEAD * STEP * radius));
  return { count: arc.length, x, y, z, arc: arc.map((value) => value + ahead), speed, spacing, curvature };
}

/**
 * Direction from the centre to the front stagnation point in the plane of stream and axis: edge-on it is upstream, at a
 * tilt it is looked for where the speed along the meridian changes its sign on the upstream side.
 */
export function stagnationDirection(
  shape: MeridianShape,
  field: SurfaceField,
  tilt: number,
): readonly [number, number, number] {
  const at = (beta: number): number => {
    // In the plane y = 0, beta from the upstream side of the equator towards the lower end of the axis.
    const direction = [-Math.cos(beta), 0, -Math.sin(beta)] as const;
    const [along] = velocityAt(shape.panels, field, surfacePoint(shape, direction));
    return along;
  };
  let best = tilt;
  let least = Number.POSITIVE_INFINITY;
  const lowest = Math.max(0, tilt - Math.PI / 2.2);
  const steps = 720;
  for (let i = 0; i <= steps; i++) {
    const beta = lowest + ((Math.PI / 2 - lowest) * i) / steps;
    const size = Math.abs(at(beta));
    if (size < least) {
      least = size;
      best = beta;
    }
  }
  return [-Math.cos(best), 0, -Math.sin(best)];
}

function startPoint(
  shape: MeridianShape,
  stagnation: readonly [number, number, number],
  angle: number,
): [number, number, number] {
  const { radius } = shape.panels;
  const [sx, , sz] = stagnation;
  const foot = onSurface(shape, [sx * radius, 0, sz * radius]);
  const up = [sz, 0, -sx] as const;
  const a = START_RADIUS * radius;
  return onSurface(shape, [
    foot[0] + a * Math.sin(angle) * up[0],
    a * Math.cos(angle),
    foot[2] + a * Math.sin(angle) * up[2],
  ]);
}

function motionAt(shape: MeridianShape, field: SurfaceField, place: readonly [number, number, number]): Motion {
  const { panels } = shape;
  const point = surfacePoint(shape, place);
  const [along, round] = velocityAt(panels, field, point);
  const [tr, tz] = tangentAt(shape, point);
  const [c, s] = [Math.cos(point.theta), Math.sin(point.theta)];
  return {
    vx: along * tr * c - round * s,
    vy: along * tr * s + round * c,
    vz: along * tz,
    speed: Math.hypot(along, round),
    divergence: divergenceAt(panels, field, point),
    panel: point.panel,
  };
}

function tangentAt({ panels }: MeridianShape, point: SurfacePoint): readonly [number, number] {
  const tr = nodeValueAt(panels, panels.tangentR, point);
  const tz = nodeValueAt(panels, panels.tangentZ, point);
  const size = Math.hypot(tr, tz);
  return [tr / size, tz / size];
}

function unit({ vx, vy, vz, speed }: Motion): [number, number, number] {
  const size = Math.max(speed, 1e-9);
  return [vx / size, vy / size, vz / size];
}

function moved(
  from: readonly [number, number, number],
  direction: readonly number[],
  step: number,
): [number, number, number] {
  return [from[0] + step * direction[0], from[1] + step * direction[1], from[2] + step * direction[2]];
}

/** A place near the surface moved onto it along the ray from the centre; z counts from the centre. */
function onSurface(shape: MeridianShape, place: readonly [number, number, number]): [number, number, number] {
  const size = Math.hypot(...place);
  const factor = locateInTable(shape, Math.atan2(place[2], Math.hypot(place[0], place[1]))) / size;
  return [place[0] * factor, place[1] * factor, place[2] * factor];
}

/** Normal curvature of the surface along a direction, from its curvatures along the meridian and round the axis (Euler). */
function wallCurvature(
  shape: MeridianShape,
  place: readonly [number, number, number],
  [dx, dy, dz]: readonly number[],
  step: number,
): number {
  const { panels } = shape;
  const point = surfacePoint(shape, place);
  const [tr, tz] = tangentAt(shape, point);
  const { curve, t1, t2 } = panels.panels[point.panel];
  let meridional = curve.curvature;
  if (Number.isNaN(meridional)) {
    const x = point.weights.reduce((sum, weight, k) => sum + weight * panels.polynomial.abscissae[k], 0);
    const t = t1 + ((t2 - t1) * (x + 1)) / 2;
    const delta = 1e-4;
    const [a, b] = [curve.at(Math.max(0, t - delta)), curve.at(Math.min(1, t + delta))];
    const turn = Math.atan2(b.dz, b.dr) - Math.atan2(a.dz, a.dr);
    meridional = turn / Math.max(1e-12, Math.hypot(b.r - a.r, b.z - a.z));
  }
  const r = Math.max(Math.hypot(place[0], place[1]), 1e-3 * step);
  const roundAxis = tz / r;
  const [c, s] = [Math.cos(point.theta), Math.sin(point.theta)];
  const alongMeridian = (dx * c + dy * s) * tr + dz * tz;
  const alongParallel = dy * c - dx * s;
  return meridional * alongMeridian ** 2 + roundAxis * alongParallel ** 2;
}
