import type { RandomDraws } from "../../statistics/randomDraws";
import {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  type FigureKey,
  type PuckResult,
  puckFigures,
  withDimension,
} from "../puck/public";
import type { ChoiceMaking } from "./choiceJob";

/** Spread of a normal size over its tolerance, which lies at three standard deviations; uniform ones reach to its ends. */
const normalSpread = 1 / 3;

/**
 * A figure of a puck as it is made, in every draw: its slopes by every dimension with a tolerance, times sizes drawn
 * within them. Good where the figure is nearly straight over a tolerance, as mass, inertia and areas are.
 */
export function madeFigureDraws(
  { puck, figures }: PuckResult,
  figure: FigureKey,
  { tolerances, sizes, fluidDensity, userMaterials }: ChoiceMaking,
  draws: number,
  random: RandomDraws,
): Float64Array {
  const nominal = figures[figure] ?? Number.NaN;
  const at = (key: DimensionKey, value: number): number => {
    const found = puckFigures(withDimension(puck, key, value), { fluidDensity, userMaterials });
    return found.ok ? (found.value[figure] ?? nominal) : nominal;
  };
  const half = dimensionKeys.flatMap((key) => {
    const tolerance = tolerances[key] ?? 0;
    const own = dimensionOf(puck, key);
    return own === null || tolerance === 0 ? [] : [(at(key, own + tolerance) - at(key, own - tolerance)) / 2];
  });
  return Float64Array.from({ length: draws }, () =>
    half.reduce(
      (sum, reach) => sum + reach * (sizes === "normal" ? normalSpread * random.normal() : 2 * random.uniform() - 1),
      nominal,
    ),
  );
}
