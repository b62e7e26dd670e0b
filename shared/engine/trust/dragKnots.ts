import { intervalAt, valueInTable } from "../../numerics/tableLookup";
import type { Regime } from "../solution";

/** The engine's drag of a section over ln Re in one stream, on one branch. Arrays have shape [knots]. */
export interface DragKnots {
  /** Rising. */
  readonly logReynolds: Readonly<Float64Array>;
  readonly logDrag: Readonly<Float64Array>;
  readonly regimes: readonly Regime[];
}

/** What the engine says at a Reynolds number: between knots of one regime by straight line, between two regimes a step half way. */
export function dragAt(knots: DragKnots, logReynolds: number): { readonly logDrag: number; readonly regime: Regime } {
  const { logReynolds: xs, logDrag, regimes } = knots;
  const last = xs.length - 1;
  if (last === 0 || logReynolds <= xs[0]) return { logDrag: logDrag[0], regime: regimes[0] };
  if (logReynolds >= xs[last]) return { logDrag: logDrag[last], regime: regimes[last] };
  const i = intervalAt(xs, logReynolds);
  if (regimes[i] === regimes[i + 1]) return { logDrag: valueInTable(xs, logDrag, logReynolds), regime: regimes[i] };
  const nearest = logReynolds - xs[i] <= xs[i + 1] - logReynolds ? i : i + 1;
  return { logDrag: logDrag[nearest], regime: regimes[nearest] };
}
