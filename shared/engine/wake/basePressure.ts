import { findRoot } from "../../numerics/rootFinder";
import { problem, type Result, success } from "../../result";
import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import { dragTimesStrouhalAt, type VortexStreetTable } from "./vortexStreet";
import { quadraticAt, type WakeFlow } from "./wakeFlow";

/** Roshko's (1954, NACA TN 3169) universal Strouhal number on the wake width d' and the speed k U: S d' / (k D). */
const ROSHKO_STROUHAL = WAKE_NUMBERS.roshkoStrouhal.value;

const SEPARATION_WIDTH_EXPONENT = WAKE_NUMBERS.sheddingWidthExponent.value;

/** Lower end of the separation speed ratios that are searched (Cpb = 0.51); the upper one is the end of the street table. */
const LOWEST_SPEED_RATIO = 0.7;
const SEARCH_STEPS = 40;

/**
 * Behind a plate the wake's drag and its street's both grow nearly as k^2: their two roots lie close together, and a
 * slight rounding of the edges makes the curves pass each other without meeting. A wake that sheds strongly (k above the
 * first number) is then taken where they come nearest, if they miss each other there by no more than the second number
 * times the drag: the relations they rest on are not known better than that.
 */
const STRONG_WAKE = WAKE_NUMBERS.strongWake.value;
const NEAR_MISS = WAKE_NUMBERS.nearMiss.value;

/** One base pressure that satisfies the closure. */
export interface BasePressure {
  /** k = sqrt(1 - Cpb). */
  readonly speedRatio: number;
  readonly strouhal: number;
  /** d' / D, the wake width that sets the shedding frequency. */
  readonly sheddingWidth: number;
}

/**
 * Width of the wake that sets the shedding frequency, d' / D: between the displacement width Q / U far downstream and
 * the width of the body at separation, as their geometric mean. Roshko (1954) leaves the choice of width open; Q / U
 * alone makes the late separation above the drag crisis too weak a wake.
 * @param displacementWidth Q / (U D), at least 0
 * @param separationWidth distance across the stream between the separation points / D
 */
export function sheddingWidth(displacementWidth: number, separationWidth: number): number {
  return displacementWidth ** (1 - SEPARATION_WIDTH_EXPONENT) * separationWidth ** SEPARATION_WIDTH_EXPONENT;
}

/** Strouhal number f D / U of a wake by Roshko's universal number; `wakeWidth` is d' / D. */
export function roshkoStrouhal(k: number, wakeWidth: number): number {
  return (ROSHKO_STROUHAL * k) / wakeWidth;
}

/**
 * Base pressures at which the pressure drag of a wake flow and the drag of its vortex street agree:
 * Cd(k) S(k) = F(k) with S = 0.16 k D / d'. All roots with a positive wake width are reported, lowest k first; a strong
 * wake whose two drags only come near each other has its root there.
 * Sources: Roshko (1954, 1955), Bearman (1967), see vortexStreet.ts.
 * @returns a problem "no-base-pressure" when the curves do not meet in the range of k searched
 */
export function basePressures(wake: WakeFlow, street: VortexStreetTable): Result<BasePressure[]> {
  const highest = street.speedRatio[street.speedRatio.length - 1];
  const widthAt = (k: number) =>
    sheddingWidth(Math.max(0, wake.wakeWidth[0] + k * wake.wakeWidth[1]), wake.separationWidth);
  const streetAt = (k: number) => dragTimesStrouhalAt(street, k) * widthAt(k);
  // Multiplied by the width, so that it stays finite where the wake closes.
  const mismatch = (k: number) => quadraticAt(wake.pressureDrag, k) * ROSHKO_STROUHAL * k - streetAt(k);
  const roots: BasePressure[] = [];
  const add = (k: number): void => {
    const width = widthAt(k);
    if (width > 0) roots.push({ speedRatio: k, strouhal: roshkoStrouhal(k, width), sheddingWidth: width });
  };
  const step = (highest - LOWEST_SPEED_RATIO) / SEARCH_STEPS;
  let k0 = LOWEST_SPEED_RATIO;
  let f0 = mismatch(k0);
  let missBefore = Number.NaN;
  let miss0 = Number.NaN;
  let nearest: number | null = null;
  for (let i = 1; i <= SEARCH_STEPS; i++) {
    const k1 = i < SEARCH_STEPS ? LOWEST_SPEED_RATIO + i * step : highest;
    const f1 = mismatch(k1);
    const miss1 = k1 > STRONG_WAKE ? f1 / streetAt(k1) : Number.NaN;
    if (f0 * f1 <= 0 && f0 !== f1) add(findRoot(mismatch, k0, k1, { endValues: [f0, f1] }));
    if (miss0 > 0 && missBefore > miss0 && miss1 > miss0) nearest = k0;
    missBefore = miss0;
    miss0 = miss1;
    k0 = k1;
    f0 = f1;
  }
  if (nearest !== null && !roots.some(({ speedRatio }) => speedRatio > STRONG_WAKE)) {
    const k = lowestWithin((at) => mismatch(at) / streetAt(at), nearest - step, nearest + step);
    const least = mismatch(k) / streetAt(k);
    if (least < 0) {
      // Both roots lie between two of the places tried.
      add(findRoot(mismatch, nearest - step, k));
      add(findRoot(mismatch, k, nearest + step));
    } else if (least < NEAR_MISS) add(k);
  }
  if (roots.length === 0) {
    return problem(
      "no-base-pressure",
      `no base pressure between Cp ${(1 - highest * highest).toFixed(2)} and ${(1 - LOWEST_SPEED_RATIO ** 2).toFixed(2)} lets the wake's drag agree with its vortex street.`,
    );
  }
  return success(roots);
}

/**
 * Strouhal number of a wake whose base pressure is settled, f D / U. A wake that narrows sheds on its width far downstream,
 * S = 0.16 k D U / Q; one that widens rolls up before it has that width, at the frequency at which its street has its
 * drag, S = F(k) / Cd. Whichever is higher holds: without an afterbody they cross where Q / U is the width at separation.
 * @param k speed / U at separation, the afterbody's share included
 * @returns 0 where neither is positive: such a wake sheds no street
 */
export function wakeStrouhal(wake: WakeFlow, k: number, street: VortexStreetTable): number {
  const displacementWidth = wake.wakeWidth[0] + k * wake.wakeWidth[1];
  const far = displacementWidth > 0 ? roshkoStrouhal(k, displacementWidth) : 0;
  const rolling = dragTimesStrouhalAt(street, k) / quadraticAt(wake.pressureDrag, k);
  return rolling > 0 ? Math.max(far, rolling) : far;
}

/** Where a function with one minimum between two places is lowest, by golden sections, to 1e-5 of the way. */
function lowestWithin(f: (k: number) => number, low: number, high: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let a = low;
  let b = high;
  let c = b - ratio * (b - a);
  let d = a + ratio * (b - a);
  let fc = f(c);
  let fd = f(d);
  for (let i = 0; i < 24; i++) {
    if (fc < fd) {
      b = d;
      d = c;
      fd = fc;
      c = b - ratio * (b - a);
      fc = f(c);
    } else {
      a = c;
      c = d;
      fc = fd;
      d = a + ratio * (b - a);
      fd = f(d);
    }
  }
  return (a + b) / 2;
}
