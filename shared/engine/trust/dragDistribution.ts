import { meanExponential, mixtureQuantile, type NormalMixture, widened } from "../../statistics/normalMixture";
import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { Regime } from "../solution";
import { crisisKind } from "./crisisKind";
import { type DragKnots, dragAt } from "./dragKnots";
import { sourceDeviation } from "./errorCovariance";
import type { ErrorComponent, ErrorKnowledge } from "./errorKnowledge";
import { errorPoint, type SectionPoint } from "./errorPoint";
import { levelErrorsAt } from "./levelProcess";
import { standardShifts } from "./shiftNodes";
import { crisisPoint, standardShiftsAt } from "./shiftProcess";

/** ln Cd of a section in a stream: one normal component for each shift of the crisis. */
export interface DragDistribution {
  readonly logDrag: NormalMixture;
  /** Regime of each component. */
  readonly regimes: readonly Regime[];
}

/** What is said of a drag coefficient. */
export interface JudgedDrag {
  /** Mean over everything that is not known. */
  readonly expected: number;
  /** 5 and 95 % of the drag itself. */
  readonly low: number;
  readonly high: number;
  /** The same of a measurement in another tunnel, with its bias and scatter. */
  readonly measurementLow: number;
  readonly measurementHigh: number;
  /** Probability that the flow is past the crisis: no longer separated laminar on both sides. */
  readonly pastCrisisShare: number;
}

const LOW_SHARE = TRUST_NUMBERS.lowShare.value;

/**
 * The distribution of ln Cd at a condition: ln Cd = ln C(Re exp(e)) + level error, e normal, the level error a Gaussian
 * process of the regime that the shifted flow is in. Kennedy & O'Hagan (2001), J. R. Statist. Soc. B 63, 425.
 * @param knots     the engine's drag around the condition, in its stream
 */
export function dragDistribution(
  knowledge: ErrorKnowledge,
  section: SectionPoint,
  condition: FlowCondition,
  knots: DragKnots,
): DragDistribution {
  const parts = knowledge.map((component) => ({
    share: component.weight / standardShifts.length,
    ...componentDistribution(component, section, condition, knots),
  }));
  return {
    regimes: parts.flatMap((part) => part.regimes),
    logDrag: {
      weights: Float64Array.from(parts.flatMap(({ share, means }) => means.map(() => share))),
      means: Float64Array.from(parts.flatMap(({ means }) => means)),
      deviations: Float64Array.from(parts.flatMap(({ deviations }) => deviations)),
    },
  };
}

function componentDistribution(
  { level, shifts }: ErrorComponent,
  section: SectionPoint,
  condition: FlowCondition,
  knots: DragKnots,
) {
  const { parameters } = level;
  const { mean, deviation } = parameters.crisisShift[crisisKind(section.shape, condition.turbulenceIntensity)];
  const own = crisisPoint(errorPoint(section, condition, "critical"));
  const standard = standardShiftsAt(shifts, [own], parameters);
  const middle = Math.log(condition.reynolds) + mean + deviation * standard.mean[0];
  const spread = deviation * Math.sqrt(standard.covariance[0]);
  const shifted = Array.from(standardShifts, (z) => dragAt(knots, middle + spread * z));
  const found = [...new Set(shifted.map(({ regime }) => regime))];
  const errors = levelErrorsAt(
    level,
    found.map((regime) => errorPoint(section, condition, regime)),
  );
  const place = shifted.map(({ regime }) => found.indexOf(regime));
  return {
    regimes: shifted.map(({ regime }) => regime),
    means: shifted.map(({ logDrag }, i) => logDrag + errors.mean[place[i]]),
    deviations: place.map((at) => Math.sqrt(errors.covariance[at * (found.length + 1)])),
  };
}

/** The distribution of what another tunnel would measure. @param scatter standard deviation in ln Cd */
export function measurementDistribution(
  { logDrag, regimes }: DragDistribution,
  [
    {
      level: { parameters },
    },
  ]: ErrorKnowledge,
  scatter: number,
): NormalMixture {
  return widened(logDrag, (i) => Math.hypot(sourceDeviation(regimes[i], parameters), scatter));
}

/** @param scatter standard deviation of a measured value in ln Cd */
export function judgeDrag(distribution: DragDistribution, knowledge: ErrorKnowledge, scatter: number): JudgedDrag {
  const { logDrag, regimes } = distribution;
  const measured = measurementDistribution(distribution, knowledge, scatter);
  const quantile = (of: NormalMixture, share: number) => Math.exp(mixtureQuantile(of, share));
  return {
    expected: meanExponential(logDrag),
    low: quantile(logDrag, LOW_SHARE),
    high: quantile(logDrag, 1 - LOW_SHARE),
    measurementLow: quantile(measured, LOW_SHARE),
    measurementHigh: quantile(measured, 1 - LOW_SHARE),
    pastCrisisShare: regimes.reduce((sum, regime, i) => sum + (regime === "subcritical" ? 0 : logDrag.weights[i]), 0),
  };
}
