import type { NdArray } from "ndarray";
import { type Result, success } from "../../result";
import { type FullLengthTable, fullLengthTable } from "../geometry/fullLength";
import { referenceWidth } from "../geometry/referenceWidth";
import type { SectionNodes } from "../geometry/sectionNodes";
import { floorImageKernels } from "./floorImage";
import { type FloorPlane, floorPlane } from "./floorPlane";
import { flowBeneath } from "./flowBeneath";
import { QUIET_WAKE_SUCTION_SHARE, quietWakeSuctionShare } from "./quietWake";
import { sourceMatrix } from "./surfaceKernels";
import { type SurfaceOperator, surfaceOperator } from "./surfaceOperator";

/** The potential flow around one section at one incidence, in a stream of 1 m/s, ready for any sources and circulation. */
export interface SectionFlow {
  readonly nodes: SectionNodes;
  /** Angle of the stream direction to the x axis, rad: positive is nose up. */
  readonly incidence: number;
  /** Extent across the stream, m: the D of every coefficient and ratio. */
  readonly referenceWidth: number;
  /** Full length of the section behind any station along the stream. */
  readonly fullLength: FullLengthTable;
  readonly operator: SurfaceOperator;
  readonly sources: NdArray<Float64Array>;
  /**
   * Front stagnation point of the stream without circulation, node steps from the nose, in (-count/2, count/2]: where
   * both sides begin. Positions along the contour are whole turns beyond [0, count) where it is not near the nose.
   */
  readonly front: number;
  /** Counter-clockwise surface velocity of the stream alone without circulation, m/s, shape [count]. */
  readonly streamVelocity: Float64Array;
  /** Surface velocity of a unit circulation (1 m^2/s, counter-clockwise) without stream, 1/m; null in a symmetric flow. */
  readonly circulationVelocity: Float64Array | null;
  /** The floor below the section; null in an unbounded stream. */
  readonly floor: FloorPlane | null;
  /** Flow under a section on the floor, m^2/s, of the stream alone and of a unit circulation; null above a gap or without a floor. */
  readonly beneath: { readonly stream: number; readonly circulation: number } | null;
  /** Share of the vortex street's base suction that is left: 1, or less where a floor or splitter plate quietens the wake. */
  readonly wakeSuctionShare: number;
}

/**
 * Solves the flow without a wake and keeps what every wake of this section needs.
 * @param incidence angle of the stream direction to the x axis, rad, in [-pi, pi]
 * @param floorGapRatio gap / D to a floor below, see floorPlane.ts; no floor when left out
 * @param splitterPlate whether a long thin plate along the stream parts the wake; of no effect above a floor
 */
export function sectionFlow(
  nodes: SectionNodes,
  incidence: number,
  floorGapRatio?: number,
  splitterPlate = false,
): Result<SectionFlow> {
  if (floorGapRatio !== undefined) return flowOverFloor(nodes, incidence, floorGapRatio);
  const symmetric = nodes.mirrorSymmetric && incidence === 0;
  const operator = surfaceOperator(nodes, symmetric);
  if (!operator.ok) return operator;
  const streamVelocity = operator.value.solve(streamOnset(nodes, incidence), 0);
  const width = referenceWidth(nodes, incidence);
  return success({
    nodes,
    incidence,
    referenceWidth: width,
    fullLength: fullLengthTable(nodes, incidence, width),
    operator: operator.value,
    sources: sourceMatrix(nodes),
    front: symmetric ? 0 : frontPosition(streamVelocity),
    streamVelocity,
    circulationVelocity: symmetric ? null : operator.value.solve(new Float64Array(nodes.count), 1),
    floor: null,
    beneath: null,
    wakeSuctionShare: splitterPlate ? QUIET_WAKE_SUCTION_SHARE : 1,
  });
}

/** The same with the section's mirror image in the floor added to every kernel. It is never symmetric. */
function flowOverFloor(nodes: SectionNodes, incidence: number, floorGapRatio: number): Result<SectionFlow> {
  const width = referenceWidth(nodes, incidence);
  const floor = floorPlane(nodes, incidence, width, floorGapRatio);
  if (!floor.ok) return floor;
  const image = floorImageKernels(nodes, floor.value);
  const operator = surfaceOperator(nodes, false, image.vortices);
  if (!operator.ok) return operator;
  const sources = sourceMatrix(nodes);
  for (let i = 0; i < image.sources.length; i++) sources.data[i] += image.sources[i];
  const streamVelocity = operator.value.solve(streamOnset(nodes, incidence), 0);
  const circulationVelocity = operator.value.solve(new Float64Array(nodes.count), 1);
  return success({
    nodes,
    incidence,
    referenceWidth: width,
    fullLength: fullLengthTable(nodes, incidence, width),
    operator: operator.value,
    sources,
    front: frontPosition(streamVelocity),
    streamVelocity,
    circulationVelocity,
    floor: floor.value,
    beneath:
      floor.value.contact === null
        ? null
        : {
            stream: flowBeneath(nodes, floor.value, streamVelocity, null, 1),
            circulation: flowBeneath(nodes, floor.value, circulationVelocity, null, 0),
          },
    wakeSuctionShare: quietWakeSuctionShare(floorGapRatio),
  });
}

/** The place where the counter-clockwise surface velocity turns from negative to positive, node steps from the nose. */
function frontPosition(velocity: Readonly<Float64Array>): number {
  const count = velocity.length;
  const half = Math.floor(count / 2);
  for (let step = 0; step < count; step++) {
    // From the nose outwards, since rounding may turn the sign in a corner at rest elsewhere.
    const j = step % 2 === 0 ? step / 2 : -(step + 1) / 2;
    const a = velocity[((j % count) + count) % count];
    const b = velocity[(((j + 1) % count) + count) % count];
    if (a <= 0 && b > 0) return Math.max(-half, Math.min(half, j + a / (a - b)));
  }
  return 0;
}

/** Component of the unit stream along the counter-clockwise tangent at the nodes, shape [count]. */
function streamOnset(nodes: SectionNodes, incidence: number): Float64Array {
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  return nodes.tangentX.map((tx, m) => cosine * tx + sine * nodes.tangentY[m]);
}

/**
 * Surface velocity that sources on the contour cause, without stream and circulation.
 * @param strengths outflow speed * ds at the nodes, m^2/s, shape [count]
 * @returns counter-clockwise surface velocity, m/s, shape [count]
 */
export function sourceVelocity(flow: SectionFlow, strengths: Readonly<Float64Array>): Float64Array {
  const { count } = flow.nodes;
  const matrix = flow.sources.data;
  const onset = new Float64Array(count);
  let first = 0;
  let last = count - 1;
  while (first < last && strengths[first] === 0) first++;
  while (last > first && strengths[last] === 0) last--;
  // A folded operator reads one side of the onset only.
  const rows = flow.operator.folded ? count / 2 : count;
  // The image's sources act on nodes of either parity.
  const stride = flow.floor === null ? 2 : 1;
  for (let m = 0; m < rows; m++) {
    const row = m * count;
    let n = first + (stride === 1 ? 0 : (first + m + 1) % 2);
    // Two sums that do not wait for each other.
    let sum = 0;
    let other = 0;
    for (; n + stride <= last; n += 2 * stride) {
      sum += matrix[row + n] * strengths[n];
      other += matrix[row + n + stride] * strengths[n + stride];
    }
    if (n <= last) sum += matrix[row + n] * strengths[n];
    onset[m] = sum + other;
  }
  return flow.operator.solve(onset, 0);
}
