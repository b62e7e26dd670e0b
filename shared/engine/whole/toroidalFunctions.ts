import { completeEllipticOfComplement } from "../../numerics/ellipticIntegrals";

/** Above this chi - 1 the upward recurrence loses digits and the downward one is taken. */
const NEAR = 0.02;
/** How far the downward recurrence starts above the wanted degree: e^(-2 eta steps) of the start is left, cosh eta = chi. */
const START_DECAY = 17;
const MOST_EXTRA = 90;

/**
 * Toroidal functions Q_{m-1/2}(chi) for m = 0 .. most: the potential of a ring whose strength goes as cos(m theta).
 * Q_{-1/2} and Q_{1/2} by complete elliptic integrals; then (2m+1) Q_{m+1/2} = 4 m chi Q_{m-1/2} - (2m-1) Q_{m-3/2},
 * upward near chi = 1, else downward from far above and scaled to Q_{-1/2} (Miller's algorithm).
 * Sources: Abramowitz & Stegun (1964), 8.5.3 and 8.13.1-8.13.11; Young & Martinsson (2010), arXiv 1002.2001, section 5.
 * @param excess chi - 1, above 0: from the distance of the rings, never by subtraction
 * @param out    receives Q_{m-1/2} at index m, shape [most + 1] or longer
 */
export function toroidalFunctions(excess: number, most: number, out: Float64Array): void {
  const chi = 1 + excess;
  const { K, E } = completeEllipticOfComplement(excess / (excess + 2));
  out[0] = Math.sqrt(2 / (chi + 1)) * K;
  if (most === 0) return;
  if (excess < NEAR) {
    out[1] = chi * out[0] - Math.sqrt(2 * (chi + 1)) * E;
    for (let m = 1; m < most; m++) out[m + 1] = (4 * m * chi * out[m] - (2 * m - 1) * out[m - 1]) / (2 * m + 1);
    return;
  }
  const eta = Math.log(chi + Math.sqrt(excess * (excess + 2)));
  const start = most + Math.min(MOST_EXTRA, Math.ceil(START_DECAY / eta) + 1);
  let above = 0;
  let here = Number.MIN_VALUE * 1e30;
  for (let m = start; m > 0; m--) {
    if (m <= most) out[m] = here;
    const below = (4 * m * chi * here - (2 * m + 1) * above) / (2 * m - 1);
    above = here;
    here = below;
    if (Math.abs(here) > 1e250) {
      here *= 1e-250;
      above *= 1e-250;
      for (let k = m; k <= most; k++) out[k] *= 1e-250;
    }
  }
  const scale = out[0] / here;
  for (let m = 1; m <= most; m++) out[m] *= scale;
}
