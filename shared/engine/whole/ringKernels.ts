import { toroidalFunctions } from "./toroidalFunctions";

/** Kernels of rings on one target, harmonic by harmonic; reused from call to call. Shapes [most + 1]. */
export interface RingKernels {
  readonly most: number;
  /** G_m r': potential of a ring source of strength cos(m theta). */
  readonly source: Float64Array;
  /** dG_m/dn' r': potential of a ring of doublets along the normal n'. */
  readonly doublet: Float64Array;
  readonly toroidal: Float64Array;
}

/** @param most highest harmonic, 0 or more */
export function ringKernels(most: number): RingKernels {
  return {
    most,
    source: new Float64Array(most + 1),
    doublet: new Float64Array(most + 1),
    toroidal: new Float64Array(most + 2),
  };
}

/**
 * Sets the kernels of a ring at (r', z') with normal (nr, nz) on a target at (r, z), both off the axis:
 * G_m = Q_{m-1/2}(chi) / (2 pi sqrt(r r')), chi = 1 + ((r - r')^2 + (z - z')^2) / (2 r r').
 * Sources: Hess (1975), Comput. Methods Appl. Mech. Eng. 5, 297; Young & Martinsson (2010), arXiv 1002.2001, section 5.
 */
export function setRingKernels(
  kernels: RingKernels,
  r: number,
  z: number,
  ringR: number,
  ringZ: number,
  nr: number,
  nz: number,
): void {
  const { most, source, doublet, toroidal } = kernels;
  const dr = r - ringR;
  const dz = z - ringZ;
  const excess = (dr * dr + dz * dz) / (2 * r * ringR);
  toroidalFunctions(excess, most + 1, toroidal);
  const chi = 1 + excess;
  const factor = 1 / (2 * Math.PI * Math.sqrt(r * ringR));
  const chiAlongNormal = (nr * (ringR * ringR - r * r - dz * dz)) / (2 * r * ringR * ringR) - (nz * dz) / (r * ringR);
  const slopeFactor = (factor * ringR * chiAlongNormal) / (excess * (chi + 1));
  const spread = (factor * nr) / 2;
  source[0] = toroidal[0] * factor * ringR;
  doublet[0] = -0.5 * (chi * toroidal[0] - toroidal[1]) * slopeFactor - toroidal[0] * spread;
  for (let m = 1; m <= most; m++) {
    source[m] = toroidal[m] * factor * ringR;
    doublet[m] = (m - 0.5) * (chi * toroidal[m] - toroidal[m - 1]) * slopeFactor - toroidal[m] * spread;
  }
}
