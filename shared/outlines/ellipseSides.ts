import type { OutlineSide } from "../engine/geometry/sectionSpec";
import type { Chain, Place } from "./outline";

/** Part by which the two axes of a circle may differ in length or from a right angle. */
const circleTolerance = 1e-9;
/** Longest stretch of an ellipse that one cubic curve stands for, rad: it then leaves it by less than 4e-7 radii. */
const longestStretch = Math.PI / 6;
/** Longest stretch of a circle that one bulge stands for, rad. */
const longestArc = Math.PI;

/**
 * A stretch of an ellipse centre + a cos(angle) + b sin(angle): circular arcs stay arcs, others become cubic curves.
 * The cubic's controls lie at 4/3 tan(turn / 4) along the tangents: common practice, from memory.
 * @param a, b   half axes as vectors
 * @param start  rad
 * @param turn   rad, either sign, not 0
 */
export function ellipseSides(centre: Place, a: Place, b: Place, start: number, turn: number): Chain {
  const at = (angle: number): Place => [
    centre[0] + a[0] * Math.cos(angle) + b[0] * Math.sin(angle),
    centre[1] + a[1] * Math.cos(angle) + b[1] * Math.sin(angle),
  ];
  const slope = (angle: number): Place => [
    b[0] * Math.cos(angle) - a[0] * Math.sin(angle),
    b[1] * Math.cos(angle) - a[1] * Math.sin(angle),
  ];
  const aa = a[0] * a[0] + a[1] * a[1];
  const bb = b[0] * b[0] + b[1] * b[1];
  const isCircle =
    Math.abs(aa - bb) <= 2 * circleTolerance * aa && Math.abs(a[0] * b[0] + a[1] * b[1]) <= circleTolerance * aa;
  const orientation = Math.sign(a[0] * b[1] - a[1] * b[0]);
  const longest = isCircle ? longestArc : longestStretch;
  const count = Math.max(1, Math.ceil(Math.abs(turn) / longest - circleTolerance));
  const step = turn / count;
  const sides = Array.from({ length: count }, (_, i): OutlineSide => {
    const from = start + step * i;
    if (isCircle) return { from: at(from), bulge: orientation * Math.tan(step / 4) };
    const reach = (4 / 3) * Math.tan(step / 4);
    const [p, q] = [at(from), at(from + step)];
    const [dp, dq] = [slope(from), slope(from + step)];
    return {
      from: p,
      controls: [
        [p[0] + reach * dp[0], p[1] + reach * dp[1]],
        [q[0] - reach * dq[0], q[1] - reach * dq[1]],
      ],
    };
  });
  return { sides, end: at(start + turn) };
}
