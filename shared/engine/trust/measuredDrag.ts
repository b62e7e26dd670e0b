import { regimes } from "./bandTable";
import { type ErrorParameters, sourceDeviation } from "./errorCovariance";
import type { UncertainDrag } from "./uncertainDrag";

/**
 * What a tunnel or tank would show of a design: its drag with what the whole facility is off by, which all designs that
 * are measured there share. The bias has its own size in each regime; biases of two regimes are correlated as levels are.
 * @param facility name; equal names share the bias
 */
export function measuredDrag(
  { parts, streamCount, sharedErrors, evaluate }: UncertainDrag,
  facility: string,
  parameters: ErrorParameters,
): UncertainDrag {
  const common = `facility ${facility}`;
  const own = (regime: string) => `${common}, ${regime}`;
  const { regimeCorrelation } = parameters;
  return {
    parts,
    streamCount,
    sharedErrors: [...sharedErrors, common, ...regimes.map(own)],
    evaluate: (world) => {
      const regime = world.regime(0);
      const bias =
        Math.sqrt(regimeCorrelation) * world.shared(common) +
        Math.sqrt(1 - regimeCorrelation) * world.shared(own(regime));
      return evaluate(world) * Math.exp(sourceDeviation(regime, parameters) * bias);
    },
  };
}
