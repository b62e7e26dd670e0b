import { factorInPlace, type LuFactors, solveFactored } from "../../numerics/lu";
import { interpolationWeights } from "../../numerics/panelPolynomial";
import { type MeridianPanels, panelParameter } from "./meridianPanels";
import { ringKernels, setRingKernels } from "./ringKernels";

/**
 * The boundary integral of the potential about a body of revolution, one small system for each harmonic round the axis:
 * (1/2 I - K_m) phi_m = -S_m q_m, with q = d phi / d n and n out of the body (Green's third identity).
 * Sources: Hess & Smith (1967), Prog. Aeronaut. Sci. 8; Young & Martinsson (2010), arXiv 1002.2001.
 */
export interface HarmonicSystem {
  readonly panels: MeridianPanels;
  /** Highest harmonic. */
  readonly most: number;
  /** Factors of 1/2 I - K_m, one for each harmonic. */
  readonly factors: readonly LuFactors[];
  /** S_m, row-major, shape [count * count] each. */
  readonly sources: readonly Float64Array[];
  /** Distance of the lower pole from a floor across the axis, m; null without one. */
  readonly floorGap: number | null;
}

/** Halvings of a panel towards a node on it and towards one beside it: more loses digits of the distance. */
const OWN_HALVINGS = 14;
const NEAR_HALVINGS = 10;
/** A panel nearer to a node than this share of its own length is integrated by halvings. */
const NEAR_SHARE = 1;
/** Places at which the nearest point of a panel is looked for. */
const SEARCHED = 41;

/**
 * @param most     highest harmonic, 1 or more: 1 is enough without a wake
 * @param floorGap m, above 0: a floor across the axis below the lower pole, as the mirror image of the body in it
 */
export function harmonicSystem(panels: MeridianPanels, most: number, floorGap: number | null = null): HarmonicSystem {
  const { count, order, r, z, tangentR, tangentZ, ds } = panels;
  const sources = Array.from({ length: most + 1 }, () => new Float64Array(count * count));
  const doublets = Array.from({ length: most + 1 }, () => new Float64Array(count * count));
  const kernels = ringKernels(most);
  const add = (row: number, column: number, share: number): void => {
    const at = row * count + column;
    for (let m = 0; m <= most; m++) {
      sources[m][at] += share * kernels.source[m];
      doublets[m][at] += share * kernels.doublet[m];
    }
  };
  const floor = floorGap === null ? null : z[0] - poleDepth(panels) - floorGap;
  const weights = new Float64Array(order);
  const nodeShares = new Float64Array(order);
  for (let i = 0; i < count; i++) {
    for (let p = 0; p < panels.panels.length; p++) {
      for (const image of floor === null ? DIRECT : WITH_IMAGE) {
        const place = image ? 2 * floor! - z[i] : z[i];
        // The image of the body is met by mirroring the target: kernels depend on the distance alone.
        const split = splitPoint(panels, p, r[i], place, !image && Math.floor(i / order) === p ? i % order : -1);
        if (split === null) {
          for (let j = p * order; j < (p + 1) * order; j++) {
            setRingKernels(kernels, r[i], place, r[j], z[j], tangentZ[j], -tangentR[j]);
            add(i, j, ds[j]);
          }
          continue;
        }
        const panel = panels.panels[p];
        forEachCell(split.x, split.halvings, panels, (x, dx) => {
          const { r: ringR, z: ringZ, dr, dz } = panel.curve.at(panelParameter(panel, x));
          const speed = Math.hypot(dr, dz);
          if (!(Math.hypot(ringR - r[i], ringZ - place) > 0)) return;
          setRingKernels(kernels, r[i], place, ringR, ringZ, dz / speed, -dr / speed);
          const length = (speed * (panel.t2 - panel.t1) * dx) / 2;
          interpolationWeights(panels.polynomial, x, weights);
          for (let k = 0; k < order; k++) nodeShares[k] = weights[k] * length;
          for (let k = 0; k < order; k++) add(i, p * order + k, nodeShares[k]);
        });
      }
    }
  }
  const factors = doublets.map((matrix) => {
    for (let at = 0; at < matrix.length; at++) matrix[at] = -matrix[at];
    for (let i = 0; i < count; i++) matrix[i * count + i] += 0.5;
    return factorInPlace(matrix, count);
  });
  return { panels, most, factors, sources, floorGap };
}

const DIRECT = [false] as const;
const WITH_IMAGE = [false, true] as const;

/** Potential of harmonic m that a normal velocity q_m cos(m theta) of the surface makes on it, shape [count]. */
export function harmonicPotential(
  { factors, sources, panels: { count } }: HarmonicSystem,
  m: number,
  normalVelocity: Readonly<Float64Array>,
): Float64Array {
  const source = sources[m];
  const right = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let sum = 0;
    const row = i * count;
    for (let j = 0; j < count; j++) sum += source[row + j] * normalVelocity[j];
    right[i] = -sum;
  }
  return solveFactored(factors[m], right);
}

/** How far the first node lies above the lower pole, m. */
function poleDepth({ panels, z }: MeridianPanels): number {
  return z[0] - panels[0].curve.at(panels[0].t1).z;
}

/** Where a panel is to be halved towards for a target near to it; null where the plain rule will do. */
function splitPoint(
  { panels, order, r, z, polynomial }: MeridianPanels,
  p: number,
  targetR: number,
  targetZ: number,
  own: number,
): { readonly x: number; readonly halvings: number } | null {
  if (own >= 0) return { x: polynomial.abscissae[own], halvings: OWN_HALVINGS };
  let nearest = Number.POSITIVE_INFINITY;
  for (let j = p * order; j < (p + 1) * order; j++)
    nearest = Math.min(nearest, Math.hypot(r[j] - targetR, z[j] - targetZ));
  const panel = panels[p];
  if (nearest > NEAR_SHARE * panel.length) return null;
  let x = 0;
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; k < SEARCHED; k++) {
    const tried = -1 + (2 * k) / (SEARCHED - 1);
    const place = panel.curve.at(panelParameter(panel, tried));
    const distance = Math.hypot(place.r - targetR, place.z - targetZ);
    if (distance < best) {
      best = distance;
      x = tried;
    }
  }
  return { x, halvings: NEAR_HALVINGS };
}

/** Gauss points of the cells that a panel falls into when it is halved again and again towards x0. */
function forEachCell(
  x0: number,
  halvings: number,
  { polynomial, weights, order }: MeridianPanels,
  visit: (x: number, dx: number) => void,
): void {
  for (const side of [1, -1]) {
    const reach = side > 0 ? 1 - x0 : 1 + x0;
    if (!(reach > 0)) continue;
    for (let level = 0; level <= halvings; level++) {
      const outer = reach * 0.5 ** level;
      const inner = level === halvings ? 0 : outer / 2;
      const half = (outer - inner) / 2;
      for (let k = 0; k < order; k++) {
        visit(x0 + side * (inner + half * (polynomial.abscissae[k] + 1)), half * weights[k]);
      }
    }
  }
}
