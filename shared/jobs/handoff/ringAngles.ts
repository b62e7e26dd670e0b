/** An even angle this near to a fixed one, in steps, makes way for it: no needles of triangles between them. */
const leastShare = 0.25;
/** rad; fixed angles nearer than this are one. */
const coincident = 1e-9;

/**
 * Angles round the axis, rad, rising, from 0 to below 2 pi: evenly spaced, the fixed ones among them.
 * @param count how many even ones, 3 or more
 * @param fixed any angles, rad
 */
export function ringAngles(count: number, fixed: readonly number[]): Float64Array {
  const turn = 2 * Math.PI;
  const step = turn / count;
  const wrapped = fixed.map((angle) => wrap(angle)).sort((a, b) => a - b);
  const kept = wrapped.filter((angle, i) => i === 0 || angle - wrapped[i - 1] > coincident);
  const distance = (a: number, b: number) => Math.min(Math.abs(a - b), turn - Math.abs(a - b));
  const even = Array.from({ length: count }, (_, i) => i * step).filter((angle) =>
    kept.every((one) => distance(one, angle) > leastShare * step),
  );
  return Float64Array.from([...even, ...kept]).sort();
}

/** Place of a fixed angle among the angles. */
export function angleIndex(angles: Readonly<Float64Array>, angle: number): number {
  const wanted = wrap(angle);
  const found = angles.findIndex((one) => Math.abs(one - wanted) <= coincident);
  if (found < 0) throw new RangeError(`there is no angle ${wanted} rad among ${angles.length}.`);
  return found;
}

/** Into [0, 2 pi), what lies within a hair's breadth of a whole turn at 0. */
function wrap(angle: number): number {
  const turn = 2 * Math.PI;
  const within = angle - turn * Math.floor(angle / turn);
  return turn - within <= coincident ? 0 : within;
}
