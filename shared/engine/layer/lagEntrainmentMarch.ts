import { findRoot } from "../../numerics/rootFinder";
import { plateFriction } from "../roughness/plateFriction";
import { CornerHold, cornerSharpness } from "./cornerSharpness";
import { EdgeSpeed } from "./edgeSpeed";
import { entrainmentFriction, entrainmentOfStress, equilibriumEntrainment, plateShapeFactor } from "./lagEntrainment";
import { LagEntrainmentPoint } from "./lagEntrainmentPoint";
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
  /** Thickness of the layer / D and the wall's sharpness, see cornerSharpness.ts, at separation or the last station. */
  readonly thickness: number;
  readonly sharpness: number;
  /** theta / D there. */
  readonly momentumThickness: number;
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
  const { arc, count } = stations;
  const end = arc[count - 1];
  const edge = new EdgeSpeed(stations);
  let s = start.arc;
  let theta = start.momentumThickness;
  let Ue = edge.at(s);
  const startFriction = plateFriction(Ue * theta * reynolds, Ue * roughnessRatio * reynolds);
  let H = plateShapeFactor(startFriction);
  let CE =
    start.stress === null
      ? equilibriumEntrainment(H, entrainmentFriction(H, H, startFriction))
      : entrainmentOfStress(start.stress, startFriction);
  const layer = new LagEntrainmentPoint(reynolds, roughnessRatio * reynolds, startFriction);
  let fall = 0;
  layer.Ue = Ue;
  layer.theta = theta;
  layer.H = H;
  layer.CE = CE;
  layer.spread = edge.spread;
  layer.find();
  const corner = new CornerHold(theta);
  let margin = layer.Cf - detachmentFriction;
  sink?.(s, theta, H, layer.Cf);
  for (let step = 0; step < MOST_STEPS && s < end - 1e-12; step++) {
    if (!(margin > 0)) return marchEnd(s, 0, edge, corner, theta);
    const h = Math.min(
      end - s,
      LARGEST_STEP,
      Math.max(0.7 * theta, (0.8 * theta) / Math.max(layer.relaxation, 0.004)),
      Math.max(SHORTEST_STEP, LARGEST_SHAPE_CHANGE / Math.abs(layer.HFree + layer.HPerGradient * edge.gradient())),
    );
    const previousFriction = layer.Cf;
    const previousMargin = margin;
    const previousBending = corner.bending;
    const stepStart = s;
    const middleSpeed = edge.at(s + 0.5 * h);
    const nextSpeed = edge.at(s + h);
    // The mean gradient of the step keeps theta in step with the edge speed where the gradient itself peaks between stations.
    const stepGradient = (nextSpeed - Ue) / h;
    layer.Ue = middleSpeed;
    layer.theta = theta + 0.5 * h * (layer.thetaFree + layer.thetaPerGradient * stepGradient);
    layer.H = Math.max(1.05, H + 0.5 * h * (layer.HFree + layer.HPerGradient * stepGradient));
    layer.CE = Math.max(-0.009, CE + 0.5 * h * (layer.CEFree + layer.CEPerGradient * stepGradient));
    layer.spread = edge.spread;
    layer.find();
    theta += h * (layer.thetaFree + layer.thetaPerGradient * stepGradient);
    H = Math.max(1.05, H + h * (layer.HFree + layer.HPerGradient * stepGradient));
    CE = Math.max(-0.009, CE + h * (layer.CEFree + layer.CEPerGradient * stepGradient));
    s += h;
    Ue = nextSpeed;
    layer.Ue = Ue;
    layer.theta = theta;
    layer.H = H;
    layer.CE = CE;
    layer.find();
    const { Cf } = layer;
    corner.follow(theta, edge.bend(), h);
    margin = Cf - detachmentFriction * (1 + corner.bending);
    if (!(margin > 0)) {
      const share = separationShare(
        stations,
        detachmentFriction,
        stepStart,
        h,
        previousFriction,
        Cf,
        previousBending,
        corner,
      );
      const separationArc = stepStart + h * share;
      sink?.(separationArc, theta, H, detachmentFriction);
      return marchEnd(separationArc, 0, edge, corner, theta);
    }
    fall = (previousMargin - margin) / (s - stepStart);
    sink?.(s, theta, H, Cf);
  }
  return marchEnd(null, margin / Math.max(fall, SLOWEST_FALL), edge, corner, theta);
}

function marchEnd(
  separationArc: number | null,
  remainingArc: number,
  edge: EdgeSpeed,
  { thickness }: CornerHold,
  momentumThickness: number,
): TurbulentMarch {
  const sharpness = cornerSharpness(edge.bendAhead(), thickness);
  return { separationArc, remainingArc, thickness, sharpness, momentumThickness };
}

/** Share of a step at which a layer leaves the wall: its friction is linear over the step, the wall may begin to bend in it. */
function separationShare(
  { arc, curvature, count }: SideStations,
  detachmentFriction: number,
  start: number,
  step: number,
  frictionBefore: number,
  frictionAfter: number,
  bendingBefore: number,
  { thickness }: CornerHold,
): number {
  let cell = count - 2;
  const margin = (share: number): number => {
    const s = start + share * step;
    while (cell > 0 && arc[cell] > s) cell--;
    while (cell < count - 2 && arc[cell + 1] < s) cell++;
    const weight = (s - arc[cell]) / (arc[cell + 1] - arc[cell]);
    const bend = curvature[cell] + weight * (curvature[cell + 1] - curvature[cell]);
    const bending = bendingBefore + (cornerSharpness(bend, thickness) * share * step) / thickness;
    return frictionBefore + share * (frictionAfter - frictionBefore) - detachmentFriction * (1 + bending);
  };
  if (!(margin(1) <= 0)) return 1;
  return margin(0) > 0 ? findRoot(margin, 0, 1, { tolerance: 1e-6 }) : 0;
}
