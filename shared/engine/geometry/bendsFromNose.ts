import type { Contour, ContourBend } from "./contour";

const fewestBends = 32;
/** A bend that turns further than this is halved, rad. */
const largestTurn = 0.25;
const deepestHalving = 8;

/**
 * The turning of a contour in stretches found by halving the arc from its nose, so that the same curve, its mirror image
 * and a scaled copy get the same stretches however their points were listed.
 */
export function bendsFromNose({ perimeter, at }: Pick<Contour, "perimeter" | "at">): ContourBend[] {
  const bends: ContourBend[] = [];
  const tangentAngle = (arc: number) => {
    const { tangentX, tangentY } = at(arc);
    return Math.atan2(tangentY, tangentX);
  };
  const add = (start: number, end: number, startAngle: number, endAngle: number, depth: number): void => {
    const middle = (start + end) / 2;
    const middleAngle = tangentAngle(middle);
    const first = wrapAngle(middleAngle - startAngle);
    const second = wrapAngle(endAngle - middleAngle);
    if (Math.abs(first) + Math.abs(second) <= largestTurn || depth === deepestHalving) {
      bends.push({ arc: middle, length: end - start, turning: first + second });
      return;
    }
    add(start, middle, startAngle, middleAngle, depth + 1);
    add(middle, end, middleAngle, endAngle, depth + 1);
  };
  const angles = Array.from({ length: fewestBends }, (_, i) => tangentAngle((perimeter * i) / fewestBends));
  for (let i = 0; i < fewestBends; i++) {
    const start = (perimeter * i) / fewestBends;
    const end = (perimeter * (i + 1)) / fewestBends;
    add(start, end, angles[i], angles[(i + 1) % fewestBends], 0);
  }
  return bends;
}

function wrapAngle(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}
