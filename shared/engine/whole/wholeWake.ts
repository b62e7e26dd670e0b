import { factorInPlace, solveFactored } from "../../numerics/lu";
import { harmonicPotential } from "./harmonicSystem";
import { arcAlongCut, cutDirection, type StreamGrid } from "./streamGrid";
import { addPotential, type PotentialHarmonics, type SurfaceField, surfaceField } from "./surfaceField";
import { type SurfacePoint, surfacePoint, velocityAt } from "./surfacePoint";
import { streamPotential } from "./wholeFlow";

/** Where the flow leaves the body: beta from the front point at even angles psi from -pi/2 to pi/2, rad, shape [n]. */
export type SeparationLine = Readonly<Float64Array>;

/** A flow about a whole body that leaves it along a line. */
export interface WholeWake {
  readonly grid: StreamGrid;
  readonly line: SeparationLine;
  /** k = sqrt(1 - Cpb): speed / U on the line. */
  readonly speedRatio: number;
  readonly potential: PotentialHarmonics;
  readonly field: SurfaceField;
  /** Outflow amplitudes / U, shape [terms]. */
  readonly amplitudes: Float64Array;
  /** Lowest and highest speed on the line over k: how well the outflow meets it. */
  readonly fit: readonly [number, number];
  /** Distance ahead of the line along the cut (below 0 behind it: wetted is above 0), m, at the grid's points. */
  readonly ahead: Float64Array;
}

/** Points along the line at which the speed is to be k. */
const MATCHED = 19;
const DIRECTION_PASSES = 6;
/** Weight of small amplitudes in the least squares. */
const RIDGE = 1e-3;
export const standardTerms = 4;

/** What unit outflows behind a separation line do, whatever the base pressure. */
export interface WakeResponses {
  readonly grid: StreamGrid;
  readonly line: SeparationLine;
  readonly ahead: Float64Array;
  readonly stream: PotentialHarmonics;
  readonly responses: readonly PotentialHarmonics[];
  /** Velocity / U of the stream and of each outflow at the points of the line. */
  readonly velocities: PointVelocities;
}

/**
 * The wake of a body: on each cut plane through the stream axis the surface behind separation blows
 * a_0 sin^2(pi xi / 2) + sin^2(pi xi) (a_1 f_1(psi) + ...), xi the share of the way to the rear point, and the amplitudes
 * are such that the speed on the line is k, by least squares. f_j are cos 2j psi edge-on and sin psi, cos 2 psi, sin 3 psi
 * and so on at a tilt, the functions that are their own image in the plane of stream and axis. None is the same on all
 * cuts, so that a body met along its axis has the one outflow a_0.
 * Source of the idea: Parkinson & Jandali (1970), J. Fluid Mech. 40, 577, here on a body.
 * @param speedRatio above 0
 * @param terms      1 to 8
 */
export function wholeWake(
  grid: StreamGrid,
  line: SeparationLine,
  speedRatio: number,
  terms = standardTerms,
): WholeWake {
  return wakeOf(wakeResponses(grid, line, terms), speedRatio);
}

/** The costly part of {@link wholeWake}: one serves every base pressure. */
export function wakeResponses(grid: StreamGrid, line: SeparationLine, terms = standardTerms): WakeResponses {
  const { flow, tilt, shape } = grid;
  const { ahead, share } = alongCuts(grid, line);
  const functions = crossFunctions(terms, tilt !== 0);
  const stream = streamPotential(flow, tilt);
  const outflows = functions.map((cross, j) =>
    Float64Array.from(share, (xi, at) => {
      if (!(ahead[at] < 0)) return 0;
      return j === 0 ? Math.sin((Math.PI / 2) * xi) ** 2 : Math.sin(Math.PI * xi) ** 2 * cross(grid.cutAngle[at]);
    }),
  );
  const responses = outflows.map((outflow) => respond(grid, outflow));
  const points = Array.from({ length: MATCHED }, (_, i): SurfacePoint => {
    const lowest = tilt === 0 ? 0 : -Math.PI / 2;
    const psi = lowest + ((Math.PI / 2 - lowest) * i) / (MATCHED - 1);
    return surfacePoint(shape, cutDirection(psi, lineAt(line, psi), tilt));
  });
  const fields = [stream, ...responses].map((potential) => surfaceField(flow.panels, potential));
  const velocities = fields.map((field) => points.map((point) => velocityAt(flow.panels, field, point)));
  return { grid, line, ahead, stream, responses, velocities };
}

/** The wake of a base pressure from the responses of its line. @param speedRatio k = sqrt(1 - Cpb), above 0 */
export function wakeOf(
  { grid, line, ahead, stream, responses, velocities }: WakeResponses,
  speedRatio: number,
): WholeWake {
  const amplitudes = matchSpeed(velocities, speedRatio);
  const speeds = velocities[0].map((_, i) => Math.hypot(...combined(velocities, amplitudes, i)));
  const potential = responses.reduce((sum, response, j) => addPotential(sum, response, amplitudes[j]), stream);
  return {
    grid,
    line,
    speedRatio,
    potential,
    field: surfaceField(grid.flow.panels, potential),
    amplitudes,
    fit: [Math.min(...speeds) / speedRatio, Math.max(...speeds) / speedRatio],
    ahead,
  };
}

/** beta of a line at psi, linear between its points. */
export function lineAt(line: SeparationLine, psi: number): number {
  const place = Math.min(line.length - 1.000001, Math.max(0, (psi / Math.PI + 0.5) * (line.length - 1)));
  const i = Math.floor(place);
  return line[i] + (place - i) * (line[i + 1] - line[i]);
}

/** Distance of the grid's points ahead of the line along their cuts, and the share of the way behind it to the rear point. */
function alongCuts(grid: StreamGrid, line: SeparationLine): { ahead: Float64Array; share: Float64Array } {
  const { cutAngle, cutArc, cutLength, cuts } = grid;
  const ahead = new Float64Array(cutArc.length);
  const share = new Float64Array(cutArc.length);
  for (let at = 0; at < cutArc.length; at++) {
    const separation = arcAlongCut(cuts, cutAngle[at], lineAt(line, cutAngle[at]));
    ahead[at] = separation - cutArc[at];
    share[at] = Math.min(1, Math.max(0, -ahead[at] / (cutLength[at] - separation)));
  }
  return { ahead, share };
}

function crossFunctions(terms: number, tilted: boolean): ((psi: number) => number)[] {
  return Array.from({ length: terms }, (_, j) => {
    if (j === 0) return () => 1;
    if (!tilted) return (psi: number) => Math.cos(2 * j * psi);
    const order = j;
    return order % 2 === 1 ? (psi: number) => Math.sin(order * psi) : (psi: number) => Math.cos(order * psi);
  });
}

/** Potential that an outflow over the surface makes, harmonic by harmonic (trapezoidal rule in theta). */
function respond({ flow, columns, cos }: StreamGrid, outflow: Float64Array): PotentialHarmonics {
  const { count } = flow.panels;
  return Array.from({ length: flow.system.most + 1 }, (_, m) => {
    const normal = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      let sum = 0;
      for (let j = 0; j < columns; j++) {
        const width = j === 0 || j === columns - 1 ? 0.5 : 1;
        sum += width * outflow[i * columns + j] * cos[m * columns + j];
      }
      normal[i] = (sum * (m === 0 ? 1 : 2)) / (columns - 1);
    }
    return harmonicPotential(flow.system, m, normal);
  });
}

type PointVelocities = readonly (readonly (readonly [number, number])[])[];

function combined(velocities: PointVelocities, amplitudes: Float64Array, point: number): [number, number] {
  let [along, round] = velocities[0][point];
  for (let j = 0; j < amplitudes.length; j++) {
    along += amplitudes[j] * velocities[j + 1][point][0];
    round += amplitudes[j] * velocities[j + 1][point][1];
  }
  return [along, round];
}

/** Amplitudes for which the speed at the points is k: least squares in the direction of the flow, taken anew each pass. */
function matchSpeed(velocities: PointVelocities, speedRatio: number): Float64Array {
  const terms = velocities.length - 1;
  let amplitudes = new Float64Array(terms);
  for (let pass = 0; pass < DIRECTION_PASSES; pass++) {
    const matrix = new Float64Array(terms * terms);
    const right = new Float64Array(terms);
    for (let j = 0; j < terms; j++) matrix[j * terms + j] = RIDGE * RIDGE;
    for (let i = 0; i < velocities[0].length; i++) {
      const [along, round] = combined(velocities, amplitudes, i);
      const speed = Math.hypot(along, round);
      const inFlow = velocities.map((each) => (each[i][0] * along + each[i][1] * round) / speed);
      for (let j = 0; j < terms; j++) {
        right[j] += inFlow[j + 1] * (speedRatio - inFlow[0]);
        for (let l = 0; l < terms; l++) matrix[j * terms + l] += inFlow[j + 1] * inFlow[l + 1];
      }
    }
    amplitudes = solveFactored(factorInPlace(matrix, terms), right) as Float64Array<ArrayBuffer>;
  }
  return amplitudes;
}
