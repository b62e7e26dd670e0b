import type { Problem } from "../result";

/** How the layer on one side ends. */
export type SideState = "laminar separation" | "separation bubble" | "turbulent separation";

export type TransitionCause = "natural" | "roughness" | "trip" | "separated shear layer";

export type Regime = "subcritical" | "critical" | "supercritical" | "transcritical";

/** Boundary layer along one side, from the front stagnation point to separation. Arrays have shape [stations]. */
export interface LayerProfile {
  /** Arc length from the front stagnation point / D. */
  readonly arc: Float64Array;
  /** Surface speed / U. */
  readonly edgeSpeed: Float64Array;
  /** theta / D. */
  readonly momentumThickness: Float64Array;
  readonly shapeFactor: Float64Array;
  /** Skin friction on the local dynamic pressure, Cf = tau / (rho Ue^2 / 2). */
  readonly skinFriction: Float64Array;
  /** 0 laminar, 1 inside a bubble, 2 turbulent. */
  readonly layerKind: Uint8Array;
}

export interface SideSolution {
  readonly state: SideState;
  /** Arc length from the front stagnation point / D. */
  readonly separationArc: number;
  /** Angle at the section's centroid from the upstream direction, rad, in (0, pi] on both sides. */
  readonly separationAngle: number;
  /** Position of separation on the contour: arc length from the nose, counter-clockwise, m. */
  readonly separationContourArc: number;
  readonly transitionCause: TransitionCause | null;
  /** Arc / D from the stagnation point where transition ends the laminar layer; null when it stays laminar. */
  readonly transitionArc: number | null;
  /** Laminar separation and turbulent reattachment, arc / D, when there is a bubble. */
  readonly bubble: { readonly separationArc: number; readonly reattachmentArc: number } | null;
  readonly layer: LayerProfile;
}

/** One steady state of the separated flow. Coefficients are on the reference width, per unit span. */
export interface SectionState {
  readonly regime: Regime;
  /** True when a section that is symmetric about the stream sheds differently on its two sides. */
  readonly oneSided: boolean;
  /**
   * True where a layer changes its kind just here, from separating ahead of this point to staying attached behind it:
   * the flow is held on that switch, as a mixture of the two in time.
   */
  readonly onSwitch: boolean;
  readonly upper: SideSolution;
  readonly lower: SideSolution;
  /** Surface speed / U on the separation streamlines, k = sqrt(1 - Cpb). */
  readonly separationSpeedRatio: number;
  readonly basePressureCoefficient: number;
  readonly minimumPressureCoefficient: number;
  readonly strouhal: number;
  readonly pressureDragCoefficient: number;
  readonly frictionDragCoefficient: number;
  readonly dragCoefficient: number;
  readonly liftCoefficient: number;
  /** Displacement width of the wake / D. */
  readonly wakeWidth: number;
  /** Pressure coefficient at the section's nodes, shape [count], the base at its uniform value. */
  readonly pressureCoefficient: Float64Array;
  /** Counter-clockwise surface velocity / U at the nodes, shape [count], of the wake-source flow. */
  readonly surfaceVelocity: Float64Array;
  /** Outflow speed / U at the nodes, shape [count]; zero off the base. */
  readonly outflow: Float64Array;
}

/** Everything found for one condition: all steady states, and which of them a slow change of speed would sit on. */
export interface ConditionOutcome {
  readonly states: readonly SectionState[];
  /** Index into states for a slowly rising and a slowly falling speed; null when nothing converged. */
  readonly rising: number | null;
  readonly falling: number | null;
  /** Why a state is missing; null when all is well. */
  readonly problem: Problem | null;
}
