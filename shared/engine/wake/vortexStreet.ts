import { findRoot } from "../../numerics/rootFinder";
import { valueInTable } from "../../numerics/tableLookup";
import { WAKE_NUMBERS } from "../constants/wakeNumbers";

/**
 * Far-wake drag relation of a Karman vortex street: Cd S as a function of k, the speed / U on the separation
 * streamlines, for every bluff body. With u the street's speed lag / U and h = row distance / vortex spacing,
 *
 *     Cd S = (4/pi)(1-u) u^2 [coth^2(pi h) + (1/u - 2) pi h coth(pi h)]      (von Karman 1911-12)
 *     h minimises the bracket at fixed u                                       (Kronauer 1964)
 *     h (1-u) / k = 0.181                                                      (Bearman 1967, J. Fluid Mech. 28, 625)
 *
 * As Bearman (1967) combined them; the Strouhal number is S = (1-u) D / spacing.
 */

/** Bearman's (1967) universal Strouhal number on the street's width and the separation speed. */
const BEARMAN_STROUHAL = WAKE_NUMBERS.bearmanStrouhal.value;

/**
 * Bracket of the street's drag that Kronauer's condition minimises over the spacing ratio h at a fixed speed lag u.
 * @param lag u / U, in (0, 0.5)
 * @param spacingRatio h = row distance / spacing of the vortices in a row, above 0
 */
export function streetDragBracket(lag: number, spacingRatio: number): number {
  const p = Math.PI * spacingRatio;
  const coth = 1 / Math.tanh(p);
  return coth * coth + (1 / lag - 2) * p * coth;
}

/** Drag of a street per unit of its vortex spacing, Cd D / spacing (von Karman 1911-12). Arguments as {@link streetDragBracket}. */
export function streetDrag(lag: number, spacingRatio: number): number {
  return (4 / Math.PI) * lag * lag * streetDragBracket(lag, spacingRatio);
}

/**
 * Spacing ratio h of Kronauer's condition at a speed lag, from (1 - 2u)(sinh p cosh p - p) = 2 u coth p, p = pi h.
 * @param lag u / U, in (0, 0.45]
 */
export function kronauerSpacingRatio(lag: number): number {
  const slope = (p: number) => (1 - 2 * lag) * (Math.sinh(p) * Math.cosh(p) - p) - (2 * lag) / Math.tanh(p);
  return findRoot(slope, 1e-3, 6) / Math.PI;
}

/** F(k) = Cd S on a grid of the separation speed ratio k; plain data, made once by {@link vortexStreetTable}. */
export interface VortexStreetTable {
  /** k, increasing, shape [n]. */
  readonly speedRatio: Float64Array;
  /** Cd S, shape [n]. */
  readonly dragTimesStrouhal: Float64Array;
}

/** Tabulates F(k) at 440 speed lags from 0.002 to 0.46, which spans k from 0.49 to about 2. */
export function vortexStreetTable(): VortexStreetTable {
  const count = 440;
  const speedRatio = new Float64Array(count);
  const dragTimesStrouhal = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const lag = 0.002 + (0.458 * i) / (count - 1);
    const h = kronauerSpacingRatio(lag);
    speedRatio[i] = (h * (1 - lag)) / BEARMAN_STROUHAL;
    dragTimesStrouhal[i] = (1 - lag) * streetDrag(lag, h);
  }
  return { speedRatio, dragTimesStrouhal };
}

/** F(k) = Cd S by linear interpolation; NaN outside the table's range of k. */
export function dragTimesStrouhalAt(table: VortexStreetTable, k: number): number {
  const { speedRatio, dragTimesStrouhal } = table;
  const last = speedRatio.length - 1;
  if (!(k >= speedRatio[0] && k <= speedRatio[last])) return Number.NaN;
  return valueInTable(speedRatio, dragTimesStrouhal, k);
}
