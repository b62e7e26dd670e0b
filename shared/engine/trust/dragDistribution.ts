import { meanExponential, mixtureQuantile, type NormalMixture, widened } from "../../statistics/normalMixture";
import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { Regime } from "../solution";
import { crisisKind } from "./crisisKind";
import { type DragKnots, dragAt } from "./dragKnots";
import { sourceDeviation } from "./errorCovariance";
import { errorPoint, type SectionPoint } from "./errorPoint";
import { type LevelProcess, levelErrorsAt } from "./levelProcess";
import { standardShifts } from "./shiftNodes";

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
  level: LevelProcess,
  section: SectionPoint,
  condition: FlowCondition,
  knots: DragKnots,
): DragDistribution {
  const kind = crisisKind(section.shape, condition.turbulenceIntensity);
  const { mean, deviation } = level.parameters.crisisShift[kind];
  const here = Math.log(condition.reynolds);
  const shifted = Array.from(standardShifts, (z) => dragAt(knots, here + mean + deviation * z));
  const found = [...new Set(shifted.map(({ regime }) => regime))];
  const errors = levelErrorsAt(
    level,
    found.map((regime) => errorPoint(section, condition, regime)),
  );
  const place = shifted.map(({ regime }) => found.indexOf(regime));
  return {
    regimes: shifted.map(({ regime }) => regime),
    logDrag: {
      weights: new Float64Array(shifted.length).fill(1 / shifted.length),
      means: Float64Array.from(shifted, ({ logDrag }, i) => logDrag + errors.mean[place[i]]),
      deviations: Float64Array.from(shifted, (_, i) => Math.sqrt(errors.covariance[place[i] * (found.length + 1)])),
    },
  };
}

/** The distribution of what another tunnel would measure. @param scatter standard deviation in ln Cd */
export function measurementDistribution(
  { logDrag, regimes }: DragDistribution,
  { parameters }: LevelProcess,
  scatter: number,
): NormalMixture {
  return widened(logDrag, (i) => Math.hypot(sourceDeviation(regimes[i], parameters), scatter));
}

/** @param scatter standard deviation of a measured value in ln Cd */
export function judgeDrag(distribution: DragDistribution, level: LevelProcess, scatter: number): JudgedDrag {
  const { logDrag, regimes } = distribution;
  const measured = measurementDistribution(distribution, level, scatter);
  const quantile = (of: NormalMixture, share: number) => Math.exp(mixtureQuantile(of, share));
  return {
    expected: meanExponential(logDrag),
    low: quantile(logDrag, LOW_SHARE),
    high: quantile(logDrag, 1 - LOW_SHARE),
    measurementLow: quantile(measured, LOW_SHARE),
    measurementHigh: quantile(measured, 1 - LOW_SHARE),
    pastCrisisShare: regimes.filter((regime) => regime !== "subcritical").length / regimes.length,
  };
}
