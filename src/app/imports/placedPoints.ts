import { convert } from "convert";
import type { Outline } from "./outline";

export type OutlineUnit = "mm" | "cm" | "m" | "in";

/** An outline in metres, scaled, turned, and moved so that the middle of its extent is the origin. */
export function placedPoints(
  { points }: Outline,
  unit: OutlineUnit,
  scale: number,
  quarterTurns: number,
): readonly (readonly [number, number])[] {
  const factor = convert(1, unit).to("m") * scale;
  const turned = points.map(([x, y]): [number, number] => {
    let [a, b] = [x * factor, y * factor];
    for (let k = 0; k < ((quarterTurns % 4) + 4) % 4; k++) [a, b] = [-b, a];
    return [a, b];
  });
  const middle = (axis: 0 | 1) => {
    const values = turned.map((point) => point[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  };
  const [middleX, middleY] = [middle(0), middle(1)];
  return turned.map(([x, y]) => [x - middleX, y - middleY] as const);
}

/** Extent along x and y, m. */
export function extent(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const spread = (axis: 0 | 1) => {
    const values = points.map((point) => point[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  return [spread(0), spread(1)];
}
