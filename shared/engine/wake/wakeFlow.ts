import { problem, type Result, success } from "../../result";
import { type SectionFlow, sourceVelocity } from "../flow/sectionFlow";
import { interpolateAtPosition } from "../geometry/arcPosition";
import { behindChord, fullLengthBehind, heightAt, widestBehindAt } from "../geometry/fullLength";
import { outflowStrengths } from "./outflow";

/** a + b k + c k^2 in the separation speed ratio k. */
export type Quadratic = readonly [number, number, number];

/**
 * All flows around a section that separate at two given points, one for each separation speed ratio k: the flow is
 * linear in the outflow and the circulation, so the surface velocity is `velocityAtRest + k velocityPerRatio`.
 */
export interface WakeFlow {
  /** Separation positions on the lower and upper side, in node steps from the nose, counter-clockwise. */
  readonly lower: number;
  readonly upper: number;
  /** Counter-clockwise surface velocity / U, shape [count]: at k = 0, and its change per unit of k. */
  readonly velocityAtRest: Float64Array;
  readonly velocityPerRatio: Float64Array;
  /** Outflow strengths / U for a = 1, m, shape [count]; multiply by the amplitude. */
  readonly outflow: Float64Array;
  /** Outflow amplitude a / U = amplitude[0] + k amplitude[1]. */
  readonly amplitude: readonly [number, number];
  /** Circulation / U, counter-clockwise, m, likewise. */
  readonly circulation: readonly [number, number];
  /** Displacement width of the wake, Q / (U D), likewise. */
  readonly wakeWidth: readonly [number, number];
  /** Distance across the stream between the two separation points / D. */
  readonly separationWidth: number;
  /** Full length of the section behind the separation points / D, see fullLength.ts. */
  readonly afterbodyLength: number;
  /** Extent of the section along the chord through the separation points / D: what the full length is full of. */
  readonly afterbodyHeight: number;
  /** Greatest height of the section at or behind the separation points / D. */
  readonly widestBehind: number;
  /** Height of the section / D, one separation width behind the separation points. */
  readonly heightBehind: number;
  /** Pressure drag and lift coefficients on D: the base at Cp = 1 - k^2, the rest at 1 - q^2. */
  readonly pressureDrag: Quadratic;
  readonly lift: Quadratic;
}

/**
 * Solves the wake-source flow for two separation points. The surface speed is k at both of them.
 * Sources: Parkinson & Jandali (1970), J. Fluid Mech. 40, 577; Bearman & Fackrell (1975), J. Fluid Mech. 72, 229.
 * @param lower position of separation on the lower side, node steps from the nose, in (0, count)
 * @param upper position on the upper side, in (lower, count)
 * @returns a problem "degenerate-wake" when no outflow and circulation give both points the same speed
 */
export function wakeFlow(flow: SectionFlow, lower: number, upper: number): Result<WakeFlow> {
  const { nodes, streamVelocity, circulationVelocity } = flow;
  const outflow = outflowStrengths(nodes, lower, upper);
  const sourced = sourceVelocity(flow, outflow);
  const streamLower = interpolateAtPosition(streamVelocity, lower);
  const sourceLower = interpolateAtPosition(sourced, lower);
  let amplitude: [number, number];
  let circulation: [number, number] = [0, 0];
  if (circulationVelocity === null) {
    amplitude = [-streamLower / sourceLower, 1 / sourceLower];
  } else {
    // q(lower) = k and q(upper) = -k: two equations for the circulation and the amplitude, for k = 0 and per unit of k.
    const streamUpper = interpolateAtPosition(streamVelocity, upper);
    const sourceUpper = interpolateAtPosition(sourced, upper);
    const circulationLower = interpolateAtPosition(circulationVelocity, lower);
    const circulationUpper = interpolateAtPosition(circulationVelocity, upper);
    const determinant = circulationLower * sourceUpper - circulationUpper * sourceLower;
    circulation = [
      (-streamLower * sourceUpper + streamUpper * sourceLower) / determinant,
      (sourceUpper + sourceLower) / determinant,
    ];
    amplitude = [
      (-circulationLower * streamUpper + circulationUpper * streamLower) / determinant,
      (-circulationLower - circulationUpper) / determinant,
    ];
  }
  if (![...amplitude, ...circulation].every(Number.isFinite)) {
    return problem(
      "degenerate-wake",
      `no wake between positions ${lower.toFixed(2)} and ${upper.toFixed(2)} gives both separation points one speed.`,
    );
  }
  return success(
    assembleWake(flow, { lower, upper, outflow, sourced, amplitude, circulation }, separationChord(flow, lower, upper)),
  );
}

/** The unknowns of a wake, found. */
interface SolvedWake extends Pick<WakeFlow, "lower" | "upper" | "outflow" | "amplitude" | "circulation"> {
  /** Surface velocity of the outflow for a = 1, shape [count]. */
  readonly sourced: Readonly<Float64Array>;
}

/** Puts a wake's flow together from its parts and integrates its pressures. */
export function assembleWake(flow: SectionFlow, solved: SolvedWake, chord: Pick<WakeFlow, ChordKey>): WakeFlow {
  const { streamVelocity, circulationVelocity, referenceWidth } = flow;
  const { lower, upper, outflow, sourced, amplitude, circulation } = solved;
  const count = flow.nodes.count;
  const velocityAtRest = new Float64Array(count);
  const velocityPerRatio = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const around = circulationVelocity === null ? 0 : circulationVelocity[i];
    velocityAtRest[i] = streamVelocity[i] + amplitude[0] * sourced[i] + circulation[0] * around;
    velocityPerRatio[i] = amplitude[1] * sourced[i] + circulation[1] * around;
  }
  let total = 0;
  for (let i = 0; i < count; i++) total += outflow[i];
  return {
    lower,
    upper,
    velocityAtRest,
    velocityPerRatio,
    outflow,
    amplitude,
    circulation,
    wakeWidth: [(amplitude[0] * total) / referenceWidth, (amplitude[1] * total) / referenceWidth],
    ...chord,
    ...pressureForces(flow, lower, upper, velocityAtRest, velocityPerRatio),
  };
}

type ChordKey = "separationWidth" | "afterbodyLength" | "afterbodyHeight" | "widestBehind" | "heightBehind";

/** Extent of the separation points across the stream, and full length and greatest height of the section behind their mean, all / D. */
function separationChord(flow: SectionFlow, lower: number, upper: number): Pick<WakeFlow, ChordKey> {
  const { nodes, incidence, referenceWidth, fullLength } = flow;
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  const [lowerX, upperX] = [lower, upper].map((p) => interpolateAtPosition(nodes.x, p));
  const [lowerY, upperY] = [lower, upper].map((p) => interpolateAtPosition(nodes.y, p));
  const across = cosine * (upperY - lowerY) - sine * (upperX - lowerX);
  const along = (cosine * (lowerX + upperX) + sine * (lowerY + upperY)) / 2;
  // A floor leads the wake along itself, however the chord of the separation points leans.
  const behind =
    flow.operator.folded || flow.floor !== null
      ? { fullLength: fullLengthBehind(fullLength, along), extent: referenceWidth }
      : behindChord(nodes, [lowerX, lowerY], [upperX, upperY]);
  return {
    separationWidth: Math.abs(across) / referenceWidth,
    afterbodyLength: behind.fullLength / referenceWidth,
    afterbodyHeight: behind.extent / referenceWidth,
    widestBehind: Math.max(Math.abs(across), widestBehindAt(fullLength, along)) / referenceWidth,
    heightBehind: heightAt(fullLength, along + Math.abs(across)) / referenceWidth,
  };
}

/**
 * Integrals of (Cp - Cpb) = k^2 - q^2 over the wetted contour. It vanishes at separation, so the trapezoidal sum is cut
 * there with a partial step; the uniform base pressure itself adds nothing around a closed contour.
 */
function pressureForces(
  flow: SectionFlow,
  lower: number,
  upper: number,
  atRest: Float64Array,
  perRatio: Float64Array,
): { pressureDrag: Quadratic; lift: Quadratic } {
  const { nodes, incidence, referenceWidth } = flow;
  const { count, tangentX, tangentY, ds } = nodes;
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  const first = Math.ceil(upper);
  const last = Math.floor(lower) + count;
  const drag = [0, 0, 0];
  const lift = [0, 0, 0];
  for (let j = first; j <= last; j++) {
    const i = ((j % count) + count) % count;
    let weight = ds[i] / referenceWidth;
    if (j === first) weight *= (1 + first - upper) / 2;
    if (j === last) weight *= (1 + lower + count - last) / 2;
    const along = -weight * (tangentY[i] * cosine - tangentX[i] * sine);
    const across = -weight * (-tangentY[i] * sine - tangentX[i] * cosine);
    const terms = [-atRest[i] * atRest[i], -2 * atRest[i] * perRatio[i], 1 - perRatio[i] * perRatio[i]];
    for (let power = 0; power < 3; power++) {
      drag[power] += along * terms[power];
      lift[power] += across * terms[power];
    }
  }
  return { pressureDrag: [drag[0], drag[1], drag[2]], lift: [lift[0], lift[1], lift[2]] };
}

/** Value of a quadratic in k. */
export function quadraticAt(q: Quadratic, k: number): number {
  return q[0] + k * (q[1] + k * q[2]);
}

/** Counter-clockwise surface velocity / U at the nodes for a separation speed ratio, shape [count]. */
export function surfaceVelocity(wake: WakeFlow, k: number): Float64Array {
  return wake.velocityAtRest.map((atRest, i) => atRest + k * wake.velocityPerRatio[i]);
}
