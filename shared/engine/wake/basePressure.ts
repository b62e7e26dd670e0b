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
 * Cd(k) S(k) = F(k) with S = 0.16 k D / d'. All roots with a positive wake width are reported, lowest k first.
 * Sources: Roshko (1954, 1955), Bearman (1967), see vortexStreet.ts.
 * @returns a problem "no-base-pressure" when the curves do not meet in the range of k searched
 */
export function basePressures(wake: WakeFlow, street: VortexStreetTable): Result<BasePressure[]> {
  const highest = street.speedRatio[street.speedRatio.length - 1];
  const widthAt = (k: number) =>
    sheddingWidth(Math.max(0, wake.wakeWidth[0] + k * wake.wakeWidth[1]), wake.separationWidth);
  const mismatch = (k: number) => {
    const width = widthAt(k);
    // Multiplied by the width, so that it stays finite where the wake closes.
    return quadraticAt(wake.pressureDrag, k) * ROSHKO_STROUHAL * k - dragTimesStrouhalAt(street, k) * width;
  };
  const roots: BasePressure[] = [];
  let k0 = LOWEST_SPEED_RATIO;
  let f0 = mismatch(k0);
  for (let i = 1; i <= SEARCH_STEPS; i++) {
    const k1 = LOWEST_SPEED_RATIO + ((highest - LOWEST_SPEED_RATIO) * i) / SEARCH_STEPS;
    const f1 = mismatch(k1);
    if (f0 * f1 <= 0 && f0 !== f1) {
      const k = findRoot(mismatch, k0, k1, { endValues: [f0, f1] });
      const width = widthAt(k);
      if (width > 0) roots.push({ speedRatio: k, strouhal: roshkoStrouhal(k, width), sheddingWidth: width });
    }
    k0 = k1;
    f0 = f1;
  }
  if (roots.length === 0) {
    return problem(
      "no-base-pressure",
      `no base pressure between Cp ${(1 - highest * highest).toFixed(2)} and ${(1 - LOWEST_SPEED_RATIO ** 2).toFixed(2)} lets the wake's drag agree with its vortex street.`,
    );
  }
  return success(roots);
}
