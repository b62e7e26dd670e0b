import { normalQuantile } from "../../statistics/normal";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { CrisisKind } from "./bandTable";
import type { DragKnots } from "./dragKnots";
import type { ErrorParameters } from "./errorCovariance";

/** Where a crisis lies: 5, 50 and 95 %. */
export interface CrisisPlace {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

const LOW_SHARE = TRUST_NUMBERS.lowShare.value;

/**
 * Reynolds number at which a branch of the drag leaves laminar separation on both sides, half way between two knots;
 * null when it does nowhere on the knots.
 */
export function crisisReynolds({ logReynolds, regimes }: DragKnots): number | null {
  for (let i = 1; i < regimes.length; i++) {
    if (regimes[i - 1] === "subcritical" && regimes[i] !== "subcritical") {
      return Math.exp((logReynolds[i - 1] + logReynolds[i]) / 2);
    }
  }
  return null;
}

/** Places of a crisis that the engine puts at a Reynolds number (or at a speed): the true one is that over exp(shift). */
export function crisisPlace(engine: number, kind: CrisisKind, { crisisShift }: ErrorParameters): CrisisPlace {
  const { mean, deviation } = crisisShift[kind];
  const half = deviation * normalQuantile(1 - LOW_SHARE);
  const at = (shift: number) => engine * Math.exp(-shift);
  return { low: at(mean + half), mid: at(mean), high: at(mean - half) };
}
