import type { SectionNodes } from "../geometry/sectionNodes";
import { mirrored } from "./floorImage";
import type { FloorPlane } from "./floorPlane";

/** A solved surface flow, as it is needed to evaluate the field: speeds / U at the nodes, shape [count] each. */
export interface SurfaceFlow {
  /** Counter-clockwise surface velocity / U. */
  readonly surfaceVelocity: Readonly<Float64Array>;
  /** Outflow speed / U. */
  readonly outflow: Readonly<Float64Array>;
  /** Angle of the stream direction to the x axis, rad. */
  readonly incidence: number;
  /** The floor, when there is one: the mirror images of the section's vortices and sources are added. */
  readonly floor?: FloorPlane | null;
}

/**
 * Velocity / U at points off the section: the stream, the vortex sheet and the surface sources.
 * Within about one panel of the surface the trapezoidal sums lose their accuracy; inside the section the result has no meaning.
 * Source: Lewis (1991), Vortex Element Methods, ch. 1.
 * @param points x0, y0, x1, y1, ..., m, shape [2 n]
 * @returns u0, v0, u1, v1, ..., shape [2 n]
 */
export function fieldVelocity(nodes: SectionNodes, flow: SurfaceFlow, points: Readonly<Float64Array>): Float64Array {
  const { count, x, y, ds } = nodes;
  const velocity = new Float64Array(points.length);
  const streamX = Math.cos(flow.incidence);
  const streamY = Math.sin(flow.incidence);
  for (let p = 0; p < points.length; p += 2) {
    let u = streamX;
    let v = streamY;
    for (let n = 0; n < count; n++) {
      const dx = points[p] - x[n];
      const dy = points[p + 1] - y[n];
      const factor = ds[n] / (2 * Math.PI * (dx * dx + dy * dy));
      const vortex = flow.surfaceVelocity[n] * factor;
      const source = flow.outflow[n] * factor;
      u += source * dx - vortex * dy;
      v += source * dy + vortex * dx;
    }
    velocity[p] = u;
    velocity[p + 1] = v;
  }
  if (flow.floor) addImageVelocity(nodes, flow, flow.floor, points, velocity);
  return velocity;
}

/** The image's vortices turn the other way, its sources blow likewise; adds their velocity to that of the section. */
function addImageVelocity(
  nodes: SectionNodes,
  flow: SurfaceFlow,
  floor: FloorPlane,
  points: Readonly<Float64Array>,
  velocity: Float64Array,
): void {
  for (let n = 0; n < nodes.count; n++) {
    const [imageX, imageY] = mirrored(floor, nodes.x[n], nodes.y[n]);
    for (let p = 0; p < points.length; p += 2) {
      const dx = points[p] - imageX;
      const dy = points[p + 1] - imageY;
      const factor = nodes.ds[n] / (2 * Math.PI * (dx * dx + dy * dy));
      velocity[p] += (flow.outflow[n] * dx + flow.surfaceVelocity[n] * dy) * factor;
      velocity[p + 1] += (flow.outflow[n] * dy - flow.surfaceVelocity[n] * dx) * factor;
    }
  }
}

/**
 * Stream function / U, m, at points off the section; its lines are streamlines, and the flow between two of them is the
 * difference of their values. A source makes it many-valued: the cut of every source runs downstream, into the wake.
 * @param points x0, y0, x1, y1, ..., m, shape [2 n]
 * @returns shape [n]; zero far upstream on the line through the origin; constant along a floor, there its level
 */
export function streamFunction(nodes: SectionNodes, flow: SurfaceFlow, points: Readonly<Float64Array>): Float64Array {
  const { count, x, y, ds } = nodes;
  const cosine = Math.cos(flow.incidence);
  const sine = Math.sin(flow.incidence);
  const values = new Float64Array(points.length / 2);
  for (let p = 0; p < values.length; p++) {
    const px = points[2 * p];
    const py = points[2 * p + 1];
    let value = cosine * py - sine * px;
    for (let n = 0; n < count; n++) {
      const dx = px - x[n];
      const dy = py - y[n];
      const along = cosine * dx + sine * dy;
      const across = -sine * dx + cosine * dy;
      // Angle from the upstream direction, so that the jump lies downstream.
      const angle = Math.atan2(-across, -along);
      value +=
        (ds[n] / (2 * Math.PI)) *
        (flow.outflow[n] * angle - (flow.surfaceVelocity[n] / 2) * Math.log(dx * dx + dy * dy));
    }
    values[p] = value;
  }
  if (flow.floor) addImageStream(nodes, flow, flow.floor, points, values);
  return values;
}

function addImageStream(
  nodes: SectionNodes,
  flow: SurfaceFlow,
  floor: FloorPlane,
  points: Readonly<Float64Array>,
  values: Float64Array,
): void {
  const cosine = Math.cos(flow.incidence);
  const sine = Math.sin(flow.incidence);
  for (let n = 0; n < nodes.count; n++) {
    const [imageX, imageY] = mirrored(floor, nodes.x[n], nodes.y[n]);
    for (let p = 0; p < values.length; p++) {
      const dx = points[2 * p] - imageX;
      const dy = points[2 * p + 1] - imageY;
      const angle = Math.atan2(sine * dx - cosine * dy, -cosine * dx - sine * dy);
      values[p] +=
        (nodes.ds[n] / (2 * Math.PI)) *
        (flow.outflow[n] * angle + (flow.surfaceVelocity[n] / 2) * Math.log(dx * dx + dy * dy));
    }
  }
}

/**
 * The same velocity as `fieldVelocity` for one point after another: what does not depend on the point is worked out once,
 * which a line of many points is traced several times faster by.
 * @returns u, v at x, y
 */
function pointVelocity(nodes: SectionNodes, flow: SurfaceFlow): (x: number, y: number) => readonly [number, number] {
  const { count, x, y, ds } = nodes;
  const parts = flow.floor ? 2 : 1;
  // Node by node, the images behind the section: x, y, strength of vortex and source over 2 pi, m.
  const sheet = new Float64Array(4 * count * parts);
  for (let n = 0; n < count; n++) {
    const length = ds[n] / (2 * Math.PI);
    const vortex = flow.surfaceVelocity[n] * length;
    const source = flow.outflow[n] * length;
    sheet.set([x[n], y[n], vortex, source], 4 * n);
    if (flow.floor) sheet.set([...mirrored(flow.floor, x[n], y[n]), -vortex, source], 4 * (count + n));
  }
  const [streamX, streamY] = [Math.cos(flow.incidence), Math.sin(flow.incidence)];
  return (px, py) => {
    let u = streamX;
    let v = streamY;
    for (let k = 0; k < sheet.length; k += 4) {
      const dx = px - sheet[k];
      const dy = py - sheet[k + 1];
      const inverse = 1 / (dx * dx + dy * dy);
      const vortex = sheet[k + 2] * inverse;
      const source = sheet[k + 3] * inverse;
      u += source * dx - vortex * dy;
      v += source * dy + vortex * dx;
    }
    return [u, v];
  };
}

/** A streamline as x0, y0, x1, y1, ..., m. */
export type Streamline = Float64Array;

/**
 * Follows a streamline downstream by the fourth-order Runge-Kutta rule until it leaves the box or its steps run out.
 * @param start x, y, m
 * @param box xMin, yMin, xMax, yMax, m
 * @param step length of a step, m
 * @param mostSteps largest number of steps
 */
export function traceStreamline(
  nodes: SectionNodes,
  flow: SurfaceFlow,
  start: readonly [number, number],
  box: readonly [number, number, number, number],
  step: number,
  mostSteps: number,
): Streamline {
  const points: number[] = [start[0], start[1]];
  const velocityAt = pointVelocity(nodes, flow);
  const direction = (px: number, py: number): readonly [number, number] => {
    const [u, v] = velocityAt(px, py);
    const speed = Math.hypot(u, v) || 1;
    return [u / speed, v / speed];
  };
  let [px, py] = start;
  for (let i = 0; i < mostSteps; i++) {
    const [ax, ay] = direction(px, py);
    const [bx, by] = direction(px + (step / 2) * ax, py + (step / 2) * ay);
    const [cx, cy] = direction(px + (step / 2) * bx, py + (step / 2) * by);
    const [dx, dy] = direction(px + step * cx, py + step * cy);
    px += (step / 6) * (ax + 2 * bx + 2 * cx + dx);
    py += (step / 6) * (ay + 2 * by + 2 * cy + dy);
    if (!(px >= box[0] && px <= box[2] && py >= box[1] && py <= box[3])) break;
    points.push(px, py);
  }
  return Float64Array.from(points);
}
