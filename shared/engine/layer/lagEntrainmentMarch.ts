import { plateFriction, roughFriction } from "../roughness/plateFriction";
import {
  entrainmentFriction,
  entrainmentOfStress,
  entrainmentShapeFactor,
  entrainmentShapeSlope,
  equilibriumEntrainment,
  equilibriumGradient,
  maximumStress,
  plateShapeFactor,
} from "./lagEntrainment";
import type { SideStations } from "./sideStations";

/** Where and how a turbulent layer starts. */
export interface TurbulentStart {
  /** Arc length from the stagnation point / D. */
  readonly arc: number;
  /** theta / D. */
  readonly momentumThickness: number;
  /** Largest shear stress / (rho Ue^2); null for a layer in equilibrium. */
  readonly stress: number | null;
}

/** What a march met. */
export interface TurbulentMarch {
  /** Arc / D where Cf fell to the detachment value; null when the layer reached the last station attached. */
  readonly separationArc: number | null;
  /** Distance / D beyond the last station at which Cf would reach the detachment value at its last rate of fall; 0 when separated. */
  readonly remainingArc: number;
}

/** Receives the layer step by step: arc / D, theta / D, H, Cf. */
export type StationSink = (arc: number, momentumThickness: number, shapeFactor: number, skinFriction: number) => void;

const LARGEST_STEP = 0.01;
const SHORTEST_STEP = 2e-4;
/** Largest change of H in a step: near separation H runs away, and the place where it does must not depend on the step. */
const LARGEST_SHAPE_CHANGE = 0.05;
const MOST_STEPS = 6000;
/** Rate of fall of Cf per D below which a layer is taken as far from separation. */
const SLOWEST_FALL = 1e-3;

/**
 * Marches a turbulent layer by the lag-entrainment method to the end of the stations or to separation, with the
 * midpoint rule and steps that follow the layer's own memory length.
 * Source: Green, Weeks & Brooman (1977), ARC R&M 3791: momentum, entrainment and shear-stress lag. Where streamlines
 * spread, theta falls with their spacing; the further effect of divergence on the stress is left out.
 * @param stations the side's edge speed; the march ends at its last station
 * @param reynolds U D / nu
 * @param roughnessRatio ks / D, 0 on a smooth wall
 * @param detachmentFriction Cf at which the layer counts as separated
 * @param sink called at the start and after every step, when the layer itself is wanted
 */
export function marchTurbulent(
  stations: SideStations,
  reynolds: number,
  roughnessRatio: number,
  start: TurbulentStart,
  detachmentFriction: number,
  sink?: StationSink,
): TurbulentMarch {
  const { arc, speed, gradient, spacing, count } = stations;
  const end = arc[count - 1];
  let s = start.arc;
  let theta = start.momentumThickness;
  let cell = 0;
  while (cell < count - 2 && arc[cell + 1] <= s) cell++;
  let weight = (s - arc[cell]) / (arc[cell + 1] - arc[cell]);
  const startSpeed = speed[cell] + weight * (speed[cell + 1] - speed[cell]);
  const startFriction = plateFriction(startSpeed * theta * reynolds, startSpeed * roughnessRatio * reynolds);
  let H = plateShapeFactor(startFriction);
  let CE =
    start.stress === null
      ? equilibriumEntrainment(H, entrainmentFriction(H, H, startFriction))
      : entrainmentOfStress(start.stress, startFriction);

  // Slopes at the current point, kept in scalars: this is the innermost loop of a drag curve. Each is a part without
  // pressure gradient plus a part in proportion to dUe/ds.
  let thetaFree = 0;
  let thetaPerGradient = 0;
  let HFree = 0;
  let HPerGradient = 0;
  let CEFree = 0;
  let CEPerGradient = 0;
  let relaxation = 0;
  let Cf = 0;
  let Cf0 = startFriction;
  const roughnessReynolds = roughnessRatio * reynolds;
  const spreadAt = (i: number): number =>
    spacing === null ? 0 : Math.log(spacing[i + 1] / spacing[i]) / (arc[i + 1] - arc[i]);
  let spread = spreadAt(cell);
  const evaluate = (Ue: number, t: number, h: number, e: number): void => {
    Cf0 = roughFriction(Ue * t * reynolds, Ue * roughnessReynolds, Cf0);
    Cf = entrainmentFriction(h, plateShapeFactor(Cf0), Cf0);
    const wallFriction = Math.max(0, Cf);
    const perSpeed = t / Ue;
    const H1 = entrainmentShapeFactor(h);
    const equilibriumP = equilibriumGradient(h, wallFriction);
    const stress = Math.max(1e-9, maximumStress(e, Cf0));
    const equilibriumStress = Math.max(1e-9, maximumStress(H1 * (wallFriction / 2 - (h + 1) * equilibriumP), Cf0));
    const HScale = 1 / (entrainmentShapeSlope(h) * t);
    relaxation = (0.02 * e + e * e + (0.8 * Cf0) / 3) / (0.01 + e);
    thetaFree = wallFriction / 2 - t * spread;
    thetaPerGradient = -(h + 2) * perSpeed;
    HFree = (e - (H1 * wallFriction) / 2) * HScale;
    HPerGradient = H1 * (h + 1) * perSpeed * HScale;
    CEFree = (relaxation * ((2.8 / (h + H1)) * (Math.sqrt(equilibriumStress) - Math.sqrt(stress)) + equilibriumP)) / t;
    CEPerGradient = -relaxation / Ue;
  };
  const speedAt = (position: number): number => {
    const before = cell;
    while (cell < count - 2 && arc[cell + 1] <= position) cell++;
    if (cell !== before) spread = spreadAt(cell);
    weight = (position - arc[cell]) / (arc[cell + 1] - arc[cell]);
    return speed[cell] + weight * (speed[cell + 1] - speed[cell]);
  };

  let fall = 0;
  let Ue = startSpeed;
  evaluate(Ue, theta, H, CE);
  sink?.(s, theta, H, Cf);
  for (let step = 0; step < MOST_STEPS && s < end - 1e-12; step++) {
    if (!(Cf > detachmentFriction)) return { separationArc: s, remainingArc: 0 };
    const localGradient = gradient[cell] + weight * (gradient[cell + 1] - gradient[cell]);
    const h = Math.min(
      end - s,
      LARGEST_STEP,
      Math.max(0.7 * theta, (0.8 * theta) / Math.max(relaxation, 0.004)),
      Math.max(SHORTEST_STEP, LARGEST_SHAPE_CHANGE / Math.abs(HFree + HPerGradient * localGradient)),
    );
    const previousFriction = Cf;
    const stepStart = s;
    const middleSpeed = speedAt(s + 0.5 * h);
    const nextSpeed = speedAt(s + h);
    // The mean gradient of the step keeps theta in step with the edge speed where the gradient itself peaks between stations.
    const stepGradient = (nextSpeed - Ue) / h;
    const halfTheta = theta + 0.5 * h * (thetaFree + thetaPerGradient * stepGradient);
    const halfH = Math.max(1.05, H + 0.5 * h * (HFree + HPerGradient * stepGradient));
    const halfCE = Math.max(-0.009, CE + 0.5 * h * (CEFree + CEPerGradient * stepGradient));
    evaluate(middleSpeed, halfTheta, halfH, halfCE);
    theta += h * (thetaFree + thetaPerGradient * stepGradient);
    H = Math.max(1.05, H + h * (HFree + HPerGradient * stepGradient));
    CE = Math.max(-0.009, CE + h * (CEFree + CEPerGradient * stepGradient));
    s += h;
    Ue = nextSpeed;
    evaluate(Ue, theta, H, CE);
    if (!(Cf > detachmentFriction)) {
      const crossing = (previousFriction - detachmentFriction) / (previousFriction - Cf);
      const separationArc = Number.isFinite(crossing) ? s - h * (1 - crossing) : s;
      sink?.(separationArc, theta, H, detachmentFriction);
      return { separationArc, remainingArc: 0 };
    }
    fall = (previousFriction - Cf) / (s - stepStart);
    sink?.(s, theta, H, Cf);
  }
  return { separationArc: null, remainingArc: (Cf - detachmentFriction) / Math.max(fall, SLOWEST_FALL) };
}
