import type { Regime } from "../../engine/solution";
import { regimes } from "../../engine/trust/bandTable";
import { mean, standardDeviation } from "../../statistics/sample";
import { coverageFactor } from "../../statistics/studentT";

/** How the measured values of one regime lie against the prediction. */
export interface RegimeBias {
  /** Regime of the predicted state. */
  readonly regime: Regime | "all";
  readonly count: number;
  /** Mean of (measured - predicted) / predicted. */
  readonly bias: number;
  /** Standard deviation of the same; null with one point. */
  readonly scatter: number | null;
  /** 95 % confidence interval of the bias by Student's t; null with one point. */
  readonly low: number | null;
  readonly high: number | null;
}

/** Probability that the confidence intervals are for. */
const confidence = 0.95;

/**
 * Bias and scatter of relative residuals, one entry for every regime that has points, in rising order of Reynolds number,
 * and one for all, those without a named regime among them. Source: mean and its interval by Student's t, JCGM 100:2008, 4.2 and G.3.
 * @param residuals relative residuals with the regime of their prediction
 */
export function regimeBiases(
  residuals: readonly { readonly regime: Regime | null; readonly relative: number }[],
): RegimeBias[] {
  const of = (regime: RegimeBias["regime"], values: readonly number[]) =>
    values.length === 0 ? [] : [biasOf(regime, values)];
  return [
    ...regimes.flatMap((regime) =>
      of(
        regime,
        residuals.filter((one) => one.regime === regime).map(({ relative }) => relative),
      ),
    ),
    ...of(
      "all",
      residuals.map(({ relative }) => relative),
    ),
  ];
}

function biasOf(regime: RegimeBias["regime"], values: readonly number[]): RegimeBias {
  const count = values.length;
  const bias = mean(values);
  if (count === 1) return { regime, count, bias, scatter: null, low: null, high: null };
  const scatter = standardDeviation(values);
  const half = (coverageFactor(confidence, count - 1) * scatter) / Math.sqrt(count);
  return { regime, count, bias, scatter, low: bias - half, high: bias + half };
}
