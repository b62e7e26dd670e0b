/** What is known of a root beforehand, and how exactly it is wanted. */
export interface RootOptions {
  /** Values of the function at the two ends, when they are at hand. */
  readonly endValues?: readonly [number, number];
  /** The root is found to this, in the units of x, or to neighbouring numbers where that is coarser; 0 by default. */
  readonly tolerance?: number;
  /** A value of the function as small as this ends a search for the nearest end; 0 by default. */
  readonly valueTolerance?: number;
  /** Which end of the last bracket is wanted: the one with the smaller |f|, or the one on the side of `from` or `to`. An exact zero counts as either. */
  readonly end?: "nearest" | "from" | "to";
  /** Derivative of the function: Newton's steps are then taken wherever they stay inside the bracket. */
  readonly slope?: (x: number) => number;
  /** Where to look first, between the ends; their middle by default. */
  readonly guess?: number;
}

const MOST_EVALUATIONS = 200;

/**
 * A zero of a function between two places where it has opposite signs. The bracket is kept throughout, so that the
 * search cannot leave it: steps of inverse quadratic interpolation where the three last points let it be trusted, of
 * Newton's method where a slope is given, and halving otherwise.
 * Source: Chandrupatla (1997), Adv. Eng. Softw. 28, 145-149.
 * @param f continuous between the ends; a jump through zero is found as a root is
 * @param from, to the ends, in either order
 * @returns the end of the last bracket that is asked for, within twice the tolerance of the other end
 * @throws RangeError when the function has the same sign at both ends, or no value at one of them
 */
export function findRoot(f: (x: number) => number, from: number, to: number, options: RootOptions = {}): number {
  const { tolerance = 0, valueTolerance = 0, end = "nearest", slope } = options;
  const [fFrom, fTo] = options.endValues ?? [f(from), f(to)];
  if (fFrom === 0) return from;
  if (fTo === 0) return to;
  if (!(fFrom < 0 ? fTo > 0 : fFrom > 0 && fTo < 0)) {
    throw new RangeError(`f(${from}) is ${fFrom} and f(${to}) is ${fTo}; they must have opposite signs.`);
  }
  // a is the newest end of the bracket, b the other one, c the point that a or b replaced.
  let [a, b, c] = [from, to, to];
  let [fa, fb, fc] = [fFrom, fTo, fTo];
  let wanted = from;
  let next = options.guess ?? a + (b - a) / 2;
  for (let evaluation = 0; evaluation < MOST_EVALUATIONS; evaluation++) {
    const fNext = f(next);
    if (fNext === 0 || (Math.abs(fNext) <= valueTolerance && end === "nearest")) return next;
    if (fNext > 0 === fa > 0) {
      [c, fc] = [a, fa];
    } else {
      [c, fc] = [b, fb];
      [b, fb] = [a, fa];
    }
    [a, fa] = [next, fNext];
    const aIsWanted =
      end === "nearest" ? Math.abs(fa) < Math.abs(fb) : fa > 0 === (end === "from" ? fFrom > 0 : fTo > 0);
    wanted = aIsWanted ? a : b;
    // As far as two numbers of this size can be told apart.
    const closest = tolerance + 2 * Number.EPSILON * Math.abs(wanted);
    const leastShare = closest / Math.abs(b - a);
    if (!(leastShare <= 0.5)) return wanted;
    if (slope !== undefined) {
      const newton = a - fa / slope(a);
      const share = (newton - a) / (b - a);
      if (share >= 0 && share <= 1) {
        if (end === "nearest" && Math.abs(newton - a) <= closest) return newton;
        next = newton;
        continue;
      }
    }
    const share = slope === undefined ? quadraticShare(a, b, c, fa, fb, fc) : 0.5;
    next = a + Math.min(1 - leastShare, Math.max(leastShare, share)) * (b - a);
  }
  return wanted;
}

/** Share of the way from a to b at which the inverse quadratic through three points is zero; 1/2 where it cannot be trusted. */
function quadraticShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
}

/** Two neighbouring places: a property holds at the first and not at the second. */
export interface SwitchPoint {
  readonly holding: number;
  readonly failing: number;
}

/**
 * Where a property that is there at one place and gone at another ends, for what can only be asked yes or no. Halving,
 * until the two places are as near as asked for or are neighbouring numbers.
 * @param holding a place where it holds, as the caller has found
 * @param failing a place where it does not; above or below `holding`
 */
export function findSwitch(
  holds: (x: number) => boolean,
  holding: number,
  failing: number,
  tolerance = 0,
): SwitchPoint {
  let [yes, no] = [holding, failing];
  while (Math.abs(no - yes) > tolerance) {
    const middle = yes + (no - yes) / 2;
    if (middle === yes || middle === no) break;
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return { holding: yes, failing: no };
}
