import type { SectionNodes } from "../geometry/sectionNodes";
import { mirrored } from "./floorImage";
import type { FloorPlane } from "./floorPlane";

/**
 * Flow between a section and the floor, m^2/s downstream: the difference of the stream function between the floor under
 * the contact and the section's centroid. Inside the section the water is at rest, so any point there will do as long as
 * the straight line to it crosses the contour at the contact alone, as it does in a convex section.
 * @param surfaceVelocity counter-clockwise surface velocity, m/s, shape [count]
 * @param sources outflow speed * ds at the nodes, m^2/s, shape [count], or null
 * @param streamSpeed m/s
 */
export function flowBeneath(
  nodes: SectionNodes,
  floor: FloorPlane,
  surfaceVelocity: Readonly<Float64Array>,
  sources: Readonly<Float64Array> | null,
  streamSpeed: number,
): number {
  const { contact, upX, upY, level } = floor;
  if (contact === null) throw new RangeError(`the gap is ${floor.gapRatio} of D; only at 0 is there a contact.`);
  const { count, x, y, ds } = nodes;
  const [endX, endY] = nodes.centroid;
  const drop = upX * contact.x + upY * contact.y - level;
  const startX = contact.x - drop * upX;
  const startY = contact.y - drop * upY;
  let flow = streamSpeed * (upX * endX + upY * endY - level);
  for (let n = 0; n < count; n++) {
    const [imageX, imageY] = mirrored(floor, x[n], y[n]);
    const near = (endX - x[n]) ** 2 + (endY - y[n]) ** 2;
    const far = (endX - imageX) ** 2 + (endY - imageY) ** 2;
    flow -= ((surfaceVelocity[n] * ds[n]) / (4 * Math.PI)) * Math.log(near / far);
    if (sources === null || sources[n] === 0) continue;
    const swept =
      sweptAngle(startX - x[n], startY - y[n], endX - x[n], endY - y[n]) +
      sweptAngle(startX - imageX, startY - imageY, endX - imageX, endY - imageY);
    flow += (sources[n] * swept) / (2 * Math.PI);
  }
  return flow;
}

/** Angle from one vector to another, counter-clockwise, rad, in (-pi, pi]. */
function sweptAngle(ax: number, ay: number, bx: number, by: number): number {
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}
