import { TRUST_NUMBERS } from "../../engine/constants/trustNumbers";
import type { MeasuredCurve } from "../../engine/trust/learnErrors";
import type { Left } from "../jobBlock";
import type { SetComparison } from "./compareSet";
import type { MeasuredBody } from "./measuredBody";
import type { MeasurementSet } from "./measurement";

/** Measured drag of sections, for jobs that come after: what is known of the engine's errors is conditioned on it. */
export const measuredCurves: Left<readonly MeasuredCurve[]> = { what: "measured curves" };

/** Taken where a point states no uncertainty: that of a good measurement. */
const assumedScatter = TRUST_NUMBERS.measurementScatter.value;
/** No value is known better than this, in ln Cd (own choice: half a per cent, the best that balances give). */
const leastScatter = 0.005;

/**
 * What a compared set teaches: ln(measured / predicted as tested) on top of the engine's drag of the endless section in a
 * free stream, so that ends and walls are taken out as they were put in. null of a puck, and where nothing was compared.
 */
export function measuredCurve(
  { studied }: MeasuredBody,
  set: MeasurementSet,
  { settings, points }: SetComparison,
): MeasuredCurve | null {
  const found = points.filter(({ predicted }) => predicted !== null);
  if (studied === null || found.length === 0) return null;
  const solved = studied(
    settings,
    found.map(({ measured }) => measured.reynolds),
  );
  if (solved === null) return null;
  return {
    section: solved.section,
    condition: { reynolds: 1, ...solved.stream },
    knots: solved.knots,
    source: set.name,
    points: found.flatMap(({ measured, predicted }, i) => {
      const free = solved.freeDrag[i];
      if (free === null || predicted === null) return [];
      const { reynolds, dragCoefficient, standardUncertainty } = measured;
      const scatter = standardUncertainty === null ? assumedScatter : standardUncertainty / dragCoefficient;
      return [
        {
          logReynolds: Math.log(reynolds),
          logDrag: Math.log((free * dragCoefficient) / predicted.dragCoefficient),
          scatter: Math.max(leastScatter, scatter),
        },
      ];
    }),
  };
}
