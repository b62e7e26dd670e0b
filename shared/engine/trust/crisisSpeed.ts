import { mixtureQuantile, type NormalMixture } from "../../statistics/normalMixture";
import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import { crisisKind } from "./crisisKind";
import type { DragKnots } from "./dragKnots";
import type { ErrorKnowledge } from "./errorKnowledge";
import { errorPoint, type SectionPoint } from "./errorPoint";
import { crisisPoint, standardShiftsAt } from "./shiftProcess";

/** Where a crisis lies: 5, 50 and 95 %. */
export interface CrisisPlace {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

const LOW_SHARE = TRUST_NUMBERS.lowShare.value;
/** Of a crisis that was measured exactly, so that it has a distribution at all. */
const LEAST_DEVIATION = 1e-9;

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
export function crisisPlace(
  engine: number,
  knowledge: ErrorKnowledge,
  section: SectionPoint,
  condition: Pick<FlowCondition, "sandGrainRoughnessRatio" | "turbulenceIntensity">,
): CrisisPlace {
  const own = crisisPoint(errorPoint(section, { ...condition, reynolds: 1 }, "critical"));
  const parts = knowledge.map(({ level: { parameters }, shifts }) => {
    const { mean, deviation } = parameters.crisisShift[crisisKind(section.shape, condition.turbulenceIntensity)];
    const standard = standardShiftsAt(shifts, [own], parameters);
    return {
      mean: mean + deviation * standard.mean[0],
      deviation: Math.max(LEAST_DEVIATION, deviation * Math.sqrt(standard.covariance[0])),
    };
  });
  const shift: NormalMixture = {
    weights: Float64Array.from(knowledge, ({ weight }) => weight),
    means: Float64Array.from(parts, ({ mean }) => mean),
    deviations: Float64Array.from(parts, ({ deviation }) => deviation),
  };
  const at = (share: number) => engine * Math.exp(-mixtureQuantile(shift, share));
  return { low: at(1 - LOW_SHARE), mid: at(1 / 2), high: at(LOW_SHARE) };
}
