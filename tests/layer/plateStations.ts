import { marchLaminar } from "../../shared/engine/layer/laminarLayer";
import type { SideStations } from "../../shared/engine/layer/sideStations";

/** theta^2 U / (nu x) and H32 of the Blasius (1908) layer. */
const BLASIUS_THICKNESS = 0.66411 ** 2;
const BLASIUS_ENERGY_SHAPE = 1.5726;

/** Stations of a flat plate of unit length in a unit stream: no pressure gradient, Blasius's laminar layer. */
export function plateStations(count = 401): SideStations {
  const arc = Float64Array.from({ length: count }, (_, i) => i / (count - 1));
  const speed = new Float64Array(count).fill(1);
  const gradient = new Float64Array(count);
  const laminar = marchLaminar(arc, speed, gradient, 1, BLASIUS_THICKNESS * arc[1], BLASIUS_ENERGY_SHAPE);
  const curvature = new Float64Array(count);
  return { count, arc, position: arc.map((_, i) => i), speed, gradient, curvature, spacing: null, laminar };
}

/** Value at x of a table of rising abscissae, linear between its rows. */
export function valueAt(x: number, abscissae: ArrayLike<number>, values: ArrayLike<number>): number {
  let i = 1;
  while (i < abscissae.length - 1 && abscissae[i] < x) i++;
  const share = (x - abscissae[i - 1]) / (abscissae[i] - abscissae[i - 1]);
  return values[i - 1] + share * (values[i] - values[i - 1]);
}
