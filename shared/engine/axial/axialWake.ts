import { type AxialFlow, axialSourceSpeed } from "./axialFlow";
import type { AxialNodes } from "./axialNodes";

/** The flow along the axis of a body of revolution that separates all round at one station. */
export interface AxialWake {
  /** Arc length from the front point to separation, m. */
  readonly separationArc: number;
  /** Surface speed downstream / U, shape [count]; behind separation without meaning. */
  readonly speed: Float64Array;
  /** Drag of the pressures on the face area pi D^2 / 4, the base at Cp = 1 - k^2. */
  readonly pressureDrag: number;
}

/**
 * Wake of a body of revolution with a given base pressure: the surface behind separation blows, as in the plane flow of
 * wakeFlow.ts, with a sin^2 over the way to the rear point, and a is such that the speed at separation is k.
 * Source of the idea: Parkinson & Jandali (1970), J. Fluid Mech. 40, 577, here with rings.
 * @param separationArc m, beyond the first panel's middle and ahead of the last one's
 * @param speedRatio    k = sqrt(1 - Cpb), above 0
 */
export function axialWake(flow: AxialFlow, separationArc: number, speedRatio: number): AxialWake {
  const { nodes, streamSpeed } = flow;
  const { count, arc, r, tangentR, ds } = nodes;
  if (!(separationArc > arc[0] && separationArc < arc[count - 1])) {
    throw new RangeError(`separation is at ${separationArc} m; it must lie between ${arc[0]} and ${arc[count - 1]} m.`);
  }
  const sourced = axialSourceSpeed(flow, outflow(nodes, separationArc));
  const amplitude = (speedRatio - speedAt(nodes, streamSpeed, separationArc)) / speedAt(nodes, sourced, separationArc);
  const speed = streamSpeed.map((own, i) => own + amplitude * sourced[i]);
  let force = 0;
  let widest = 0;
  for (let i = 0; i < count; i++) {
    widest = Math.max(widest, r[i]);
    // The panel that separation cuts counts as far as it is wetted.
    const wetted = Math.min(1, Math.max(0, (separationArc - arc[i]) / ds[i] + 0.5));
    force += wetted * (speedRatio ** 2 - speed[i] ** 2) * tangentR[i] * 2 * Math.PI * r[i] * ds[i];
  }
  return { separationArc, speed, pressureDrag: force / (Math.PI * widest * widest) };
}

/** Outflow speed of each panel at unit amplitude: the mean over it of sin^2, 0 at separation and 1 at the rear point. */
function outflow({ count, arc, ds, length }: AxialNodes, separationArc: number): Float64Array {
  const base = length - separationArc;
  const emitted = (s: number) => {
    const share = (s - separationArc) / base;
    return base * (share / 2 - Math.sin(Math.PI * share) / (2 * Math.PI));
  };
  const strengths = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const end = arc[i] + ds[i] / 2;
    if (end <= separationArc) continue;
    strengths[i] = (emitted(end) - emitted(Math.max(separationArc, arc[i] - ds[i] / 2))) / ds[i];
  }
  return strengths;
}

/** Value at an arc length, linear between the middles of panels. */
export function speedAt({ count, arc }: AxialNodes, values: Readonly<Float64Array>, at: number): number {
  let i = 1;
  while (i < count - 1 && arc[i] < at) i++;
  const share = (at - arc[i - 1]) / (arc[i] - arc[i - 1]);
  return values[i - 1] + share * (values[i] - values[i - 1]);
}
