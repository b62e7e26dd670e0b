import { unwrappedArc } from "../geometry/arcPosition";
import type { SectionNodes } from "../geometry/sectionNodes";

/**
 * Strengths of the surface sources that stand for the near wake: between the separation points the section blows with
 * v_n = a sin^2(pi xi), xi from 0 to 1 along the base. Here a = 1 m/s.
 *
 * The square makes the outflow start with zero slope, so that the pressure gradient stays finite at separation; a plain
 * sine has a logarithmic gradient there, and the laminar separation point then depends on the panel size.
 * Each node gets the outflow of its own cell (half a step to either side) as an exact integral, so that the strengths
 * change smoothly while a separation point moves between two nodes.
 * Source of the idea: Parkinson & Jandali (1970), J. Fluid Mech. 40, 577; Bearman & Fackrell (1975), J. Fluid Mech. 72, 229.
 * @param lower position of separation on the lower side, in node steps from the nose, counter-clockwise
 * @param upper position on the upper side, above `lower`; the base lies between the two
 * @param startShare xi at `lower`: 0, or 1/2 when this is the upper half of a base and its mirror image
 * @returns outflow speed * ds at the nodes, m^2/s, shape [count]
 */
export function outflowStrengths(nodes: SectionNodes, lower: number, upper: number, startShare = 0): Float64Array {
  const { count } = nodes;
  const strengths = new Float64Array(count);
  const start = unwrappedArc(nodes, lower);
  const length = unwrappedArc(nodes, upper) - start;
  if (!(length > 0))
    throw new RangeError(`the base runs from position ${lower} to ${upper}; the second must be larger.`);
  const first = Math.floor(lower + 0.5);
  const last = Math.floor(upper + 0.5);
  const whole = length / (1 - startShare);
  const emittedUpTo = (xi: number) => whole * (xi / 2 - Math.sin(2 * Math.PI * xi) / (4 * Math.PI));
  let before = emittedUpTo(startShare);
  for (let j = first; j <= last; j++) {
    const edge = Math.min(j + 0.5, upper);
    const xi = edge === upper ? 1 : startShare + (unwrappedArc(nodes, edge) - start) / whole;
    const emitted = emittedUpTo(xi);
    strengths[((j % count) + count) % count] += emitted - before;
    before = emitted;
  }
  return strengths;
}
