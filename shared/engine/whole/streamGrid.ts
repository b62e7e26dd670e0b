import type { MeridianShape } from "./meridianShape";
import { locateInTable } from "./meridianShape";
import type { WholeFlow } from "./wholeFlow";

/**
 * The surface as a stream at a tilt meets it: points at the meridian's nodes and at even angles theta from 0 (downstream)
 * to pi, the other half being the mirror image. Point (i, j) stands at index i * columns + j.
 */
export interface StreamGrid {
  readonly flow: WholeFlow;
  readonly shape: MeridianShape;
  readonly tilt: number;
  readonly columns: number;
  readonly theta: Float64Array;
  /** cos(m theta_j) and sin(m theta_j) at index m * columns + j. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  /** Area that a point stands for, both halves, m^2. */
  readonly area: Float64Array;
  /** Downstream part of the outward normal. */
  readonly normalDownstream: Float64Array;
  /** Angle psi of the cut plane through the stream axis and the point, from -pi/2 (lower face) to pi/2, rad. */
  readonly cutAngle: Float64Array;
  /** Arc length along the cut from the front point, m, and that of the whole cut. */
  readonly cutArc: Float64Array;
  readonly cutLength: Float64Array;
  /** Shadow area across the stream, m^2. */
  readonly frontalArea: number;
  readonly cuts: CutTable;
}

/** Arc lengths along cut planes, over even angles psi and beta (from the front point as seen from the centre). */
export interface CutTable {
  readonly psiCount: number;
  readonly betaCount: number;
  /** m, at index psi * betaCount + beta. */
  readonly arc: Float64Array;
}

const COLUMNS = 97;
const PSI_COUNT = 61;
const BETA_COUNT = 361;

/** @param tilt rad, 0 to pi / 2 */
export function streamGrid(flow: WholeFlow, shape: MeridianShape, tilt: number): StreamGrid {
  const { count, r, z, tangentR, tangentZ, ds } = flow.panels;
  const columns = COLUMNS;
  const theta = Float64Array.from({ length: columns }, (_, j) => (Math.PI * j) / (columns - 1));
  const most = flow.system.most;
  const cos = new Float64Array((most + 1) * columns);
  const sin = new Float64Array((most + 1) * columns);
  for (let m = 0; m <= most; m++) {
    for (let j = 0; j < columns; j++) {
      cos[m * columns + j] = Math.cos(m * theta[j]);
      sin[m * columns + j] = Math.sin(m * theta[j]);
    }
  }
  const cuts = cutTable(shape, tilt);
  const size = count * columns;
  const column = () => new Float64Array(size);
  const [area, normalDownstream, cutAngle, cutArc, cutLength] = [column(), column(), column(), column(), column()];
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  let frontalArea = 0;
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < columns; j++) {
      const at = i * columns + j;
      const width = (Math.PI / (columns - 1)) * (j === 0 || j === columns - 1 ? 0.5 : 1);
      area[at] = 2 * r[i] * ds[i] * width;
      const c = cos[columns + j];
      normalDownstream[at] = tangentZ[i] * c * ct - tangentR[i] * st;
      frontalArea += Math.max(0, normalDownstream[at]) * area[at];
      const { psi, beta } = cutCoordinates(r[i] * c, r[i] * sin[columns + j], z[i] - shape.centre, ct, st);
      cutAngle[at] = psi;
      cutArc[at] = arcAlongCut(cuts, psi, beta);
      cutLength[at] = arcAlongCut(cuts, psi, Math.PI);
    }
  }
  return {
    flow,
    shape,
    tilt,
    columns,
    theta,
    cos,
    sin,
    area,
    normalDownstream,
    cutAngle,
    cutArc,
    cutLength,
    frontalArea,
    cuts,
  };
}

/** Angles of a point about the stream axis through the centre: psi of its cut plane, beta from the front. */
export function cutCoordinates(
  x: number,
  y: number,
  z: number,
  cosTilt: number,
  sinTilt: number,
): { readonly psi: number; readonly beta: number } {
  const downstream = x * cosTilt + z * sinTilt;
  const up = z * cosTilt - x * sinTilt;
  return { psi: Math.atan2(up, Math.abs(y)), beta: Math.atan2(Math.hypot(y, up), -downstream) };
}

/** Direction from the centre of the point of a cut at beta; y is 0 or more. */
export function cutDirection(psi: number, beta: number, tilt: number): readonly [number, number, number] {
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  const downstream = -Math.cos(beta);
  const y = Math.sin(beta) * Math.cos(psi);
  const up = Math.sin(beta) * Math.sin(psi);
  return [downstream * ct - up * st, y, downstream * st + up * ct];
}

/** Arc length along a cut from the front point to beta, m; linear in the table. */
export function arcAlongCut({ psiCount, betaCount, arc }: CutTable, psi: number, beta: number): number {
  const p = Math.min(psiCount - 1.000001, Math.max(0, (psi / Math.PI + 0.5) * (psiCount - 1)));
  const b = Math.min(betaCount - 1.000001, Math.max(0, (beta / Math.PI) * (betaCount - 1)));
  const [i, k] = [Math.floor(p), Math.floor(b)];
  const [u, v] = [p - i, b - k];
  const at = i * betaCount + k;
  return (
    (1 - u) * ((1 - v) * arc[at] + v * arc[at + 1]) + u * ((1 - v) * arc[at + betaCount] + v * arc[at + betaCount + 1])
  );
}

function cutTable(shape: MeridianShape, tilt: number): CutTable {
  const arc = new Float64Array(PSI_COUNT * BETA_COUNT);
  for (let i = 0; i < PSI_COUNT; i++) {
    const psi = Math.PI * (i / (PSI_COUNT - 1) - 0.5);
    let before: readonly [number, number, number] | null = null;
    let length = 0;
    for (let k = 0; k < BETA_COUNT; k++) {
      const [x, y, z] = cutDirection(psi, (Math.PI * k) / (BETA_COUNT - 1), tilt);
      const distance = locateInTable(shape, Math.atan2(z, Math.hypot(x, y)));
      const here = [x * distance, y * distance, z * distance] as const;
      if (before !== null) length += Math.hypot(here[0] - before[0], here[1] - before[1], here[2] - before[2]);
      arc[i * BETA_COUNT + k] = length;
      before = here;
    }
  }
  return { psiCount: PSI_COUNT, betaCount: BETA_COUNT, arc };
}
