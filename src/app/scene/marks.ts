import type { MarkName } from "../style/markName";
import type { Line } from "./scene";

const turn = (corners: number, first: number, radius = 1): number[] =>
  Array.from({ length: corners }, (_, i) => first + (2 * Math.PI * i) / corners).flatMap((angle) => [
    radius * Math.cos(angle),
    radius * Math.sin(angle),
  ]);

const up = -Math.PI / 2;

/** Outlines of half-width 1 about the origin, y down. */
export const markOutlines: Readonly<Record<MarkName, Line>> = {
  circle: turn(24, 0),
  square: [-0.9, -0.9, 0.9, -0.9, 0.9, 0.9, -0.9, 0.9],
  diamond: turn(4, up, 1.2),
  triangle: turn(3, up, 1.2),
  nabla: turn(3, -up, 1.2),
  hexagon: turn(6, 0, 1.1),
  cross: [
    -0.4, -1, 0.4, -1, 0.4, -0.4, 1, -0.4, 1, 0.4, 0.4, 0.4, 0.4, 1, -0.4, 1, -0.4, 0.4, -1, 0.4, -1, -0.4, -0.4, -0.4,
  ],
  bow: [-1, -0.9, 0, -0.2, 1, -0.9, 1, 0.9, 0, 0.2, -1, 0.9],
  plus: [
    -0.18, -1.2, 0.18, -1.2, 0.18, -0.18, 1.2, -0.18, 1.2, 0.18, 0.18, 0.18, 0.18, 1.2, -0.18, 1.2, -0.18, 0.18, -1.2,
    0.18, -1.2, -0.18, -0.18, -0.18,
  ],
};

/** A mark's outline at a place. */
export function markLine(mark: MarkName, x: number, y: number, size: number): Float64Array {
  return Float64Array.from(markOutlines[mark], (value, i) => (i % 2 === 0 ? x : y) + size * value);
}
