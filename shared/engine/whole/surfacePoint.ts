import { interpolationWeights } from "../../numerics/panelPolynomial";
import type { MeridianPanels } from "./meridianPanels";
import { type MeridianShape, panelPlaceAt } from "./meridianShape";
import type { SurfaceField } from "./surfaceField";

/** A point of the surface: panel, shares of its nodes, and the angle round the axis, rad. */
export interface SurfacePoint {
  readonly panel: number;
  readonly weights: Float64Array;
  readonly theta: number;
}

/** The point of the surface in a direction from the centre. */
export function surfacePoint(shape: MeridianShape, direction: readonly [number, number, number]): SurfacePoint {
  const [x, y, z] = direction;
  const { panels } = shape;
  const place = panelPlaceAt(shape, Math.atan2(z, Math.hypot(x, y)));
  const panel = Math.floor(place);
  const weights = new Float64Array(panels.order);
  interpolationWeights(panels.polynomial, 2 * (place - panel) - 1, weights);
  return { panel, weights, theta: Math.atan2(y, x) };
}

/** Value at a point of a quantity given at the nodes. */
export function nodeValueAt({ order }: MeridianPanels, values: Float64Array, { panel, weights }: SurfacePoint): number {
  let sum = 0;
  for (let k = 0; k < order; k++) sum += weights[k] * values[panel * order + k];
  return sum;
}

/** Velocity / U at a point: along the meridian and round the axis. */
export function velocityAt(
  panels: MeridianPanels,
  field: SurfaceField,
  point: SurfacePoint,
): readonly [number, number] {
  return [
    harmonicSum(panels, field.along, point, Math.cos(point.theta), 1, Math.cos(point.theta)),
    harmonicSum(panels, field.round, point, Math.cos(point.theta), 0, Math.sin(point.theta)),
  ];
}

/** Divergence of the surface velocity / U at a point, 1/m. */
export function divergenceAt(panels: MeridianPanels, field: SurfaceField, point: SurfacePoint): number {
  return harmonicSum(panels, field.divergence, point, Math.cos(point.theta), 1, Math.cos(point.theta));
}

/** Sum of f_m at the point times cos(m theta) or sin(m theta), by their recurrence from the values at m = 0 and 1. */
function harmonicSum(
  { order }: MeridianPanels,
  harmonics: readonly Float64Array[],
  { panel, weights }: SurfacePoint,
  cosTheta: number,
  zeroth: number,
  first: number,
): number {
  const start = panel * order;
  let total = 0;
  let before = zeroth;
  let here = first;
  for (let m = 0; m < harmonics.length; m++) {
    const turn = m === 0 ? zeroth : here;
    if (turn !== 0) {
      const values = harmonics[m];
      let sum = 0;
      for (let k = 0; k < order; k++) sum += weights[k] * values[start + k];
      total += sum * turn;
    }
    if (m > 0) {
      const next = 2 * cosTheta * here - before;
      before = here;
      here = next;
    }
  }
  return total;
}
