import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import type { MeridianShape } from "./meridianShape";
import { cutDirection, type StreamGrid } from "./streamGrid";
import type { SeparationLine } from "./wholeWake";

/** Latitudes, as seen from the centre, of the places on both edges of a body where its faces end. */
export interface BodyEdges {
  /** Of the lower edge (below 0) and the upper one, rad. */
  readonly lower: number;
  readonly upper: number;
}

/** Which parts of a body the flow follows. */
export interface Wetting {
  /** The rim up to this azimuth from its front, rad; 0 where the flow leaves ahead of the rim. */
  readonly rim: number;
  readonly lowerFace: boolean;
  readonly upperFace: boolean;
}

/** The faces count up to where the edge has turned by 30 degrees: there its outward normal has this radial part. */
const EDGE_NORMAL = WHOLE_NUMBERS.edgeDeparture.value;

/** The edges of a body with faces; null where it has none, as on a sphere. */
export function bodyEdges(shape: MeridianShape): BodyEdges | null {
  const { panels, centre } = shape;
  const flat = panels.panels.some(({ curve }) => curve.turn === 0 && Math.abs(curve.at(0).dz) < 1e-9 * curve.length);
  if (!flat) return null;
  const { count, r, z, tangentZ } = panels;
  const latitudeAt = (i: number) => {
    const share = (EDGE_NORMAL - tangentZ[i]) / (tangentZ[i + 1] - tangentZ[i]);
    const between = (values: Float64Array) => values[i] + share * (values[i + 1] - values[i]);
    return Math.atan2(between(z) - centre, between(r));
  };
  let lower = 0;
  while (lower < count - 2 && tangentZ[lower + 1] < EDGE_NORMAL) lower++;
  let upper = count - 2;
  while (upper > 0 && tangentZ[upper] < EDGE_NORMAL) upper--;
  return { lower: latitudeAt(lower), upper: latitudeAt(upper) };
}

const LINE_POINTS = 121;
const SEARCHED = 181;
const HALVINGS = 14;
/** Lines are smoothed over this angle psi: 3 degrees. */
const SMOOTHING = Math.PI / 60;

/**
 * The line where the flow leaves what it follows: on each cut plane the first place, from the front point on, that is not
 * wetted. Behind faces that it follows the flow leaves at their rear edge, on the rim at an azimuth.
 */
export function separationLine({ tilt }: Pick<StreamGrid, "tilt">, edges: BodyEdges, wetting: Wetting): SeparationLine {
  const raw = new Float64Array(LINE_POINTS);
  for (let i = 0; i < LINE_POINTS; i++) {
    const psi = Math.PI * (i / (LINE_POINTS - 1) - 0.5);
    const isWet = (beta: number) => wetted(edges, wetting, cutDirection(psi, beta, tilt));
    // The front point itself may lie on a part that counts as left: the wake then begins a little behind it.
    let before = Math.PI / (SEARCHED - 1);
    let after = Math.PI;
    for (let k = 2; k < SEARCHED; k++) {
      const beta = (Math.PI * k) / (SEARCHED - 1);
      if (!isWet(beta)) {
        after = beta;
        break;
      }
      before = beta;
    }
    for (let halving = 0; halving < HALVINGS; halving++) {
      const middle = (before + after) / 2;
      if (isWet(middle)) before = middle;
      else after = middle;
    }
    raw[i] = before;
  }
  return smoothed(raw);
}

/** A line at one angle beta from the front point all round: of a sphere, or of a body met along its axis. */
export function roundLine(beta: number): SeparationLine {
  return new Float64Array(LINE_POINTS).fill(beta);
}

function wetted(
  { lower, upper }: BodyEdges,
  { rim, lowerFace, upperFace }: Wetting,
  [x, y, z]: readonly [number, number, number],
): boolean {
  const latitude = Math.atan2(z, Math.hypot(x, y));
  if (latitude > upper) return upperFace;
  if (latitude < lower) return lowerFace;
  return Math.atan2(Math.abs(y), -x) <= rim;
}

function smoothed(raw: Float64Array): SeparationLine {
  const step = Math.PI / (LINE_POINTS - 1);
  return raw.map((_, i) => {
    let [sum, total] = [0, 0];
    for (let j = 0; j < LINE_POINTS; j++) {
      const weight = Math.exp(-0.5 * (((i - j) * step) / SMOOTHING) ** 2);
      sum += weight * raw[j];
      total += weight;
    }
    return sum / total;
  });
}
