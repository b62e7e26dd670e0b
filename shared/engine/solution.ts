import type { Problem } from "../result";

/** How the layer on one side ends. */
export type SideState = "laminar separation" | "separation bubble" | "turbulent separation";

/** What turned a layer turbulent. */
export type TransitionCause = "natural" | "roughness" | "trip" | "separated shear layer";

/** Kind of separated flow, by how the layers of both sides end; named as on a circular cylinder. */
export type Regime = "subcritical" | "critical" | "supercritical" | "transcritical";

/** Boundary layer along one side, from the front stagnation point to separation. Arrays have shape [stations]. */
export interface LayerProfile {
  /** Arc length from the front stagnation point / D. */
  readonly arc: Float64Array;
  /** Surface speed / U. */
  readonly edgeSpeed: Float64Array;
  /** theta / D. */
  readonly momentumThickness: Float64Array;
  /** H = delta* / theta. */
  readonly shapeFactor: Float64Array;
  /** Skin friction on the local dynamic pressure, Cf = tau / (rho Ue^2 / 2). */
  readonly skinFriction: Float64Array;
  /** 0 laminar, 1 inside a bubble, 2 turbulent. */
  readonly layerKind: Uint8Array;
}

/** The layer of one side and how it ends. */
export interface SideSolution {
  /** How the layer ends. */
  readonly state: SideState;
  /** Arc length from the front stagnation point / D. */
  readonly separationArc: number;
  /** Angle at the section's centroid from the upstream direction, rad, in (0, pi] on both sides. */
  readonly separationAngle: number;
  /** Position of separation on the contour: arc length from the nose, counter-clockwise, m. */
  readonly separationContourArc: number;
  /** null when the layer stays laminar. */
  readonly transitionCause: TransitionCause | null;
  /** Arc / D from the stagnation point where transition ends the laminar layer; null when it stays laminar. */
  readonly transitionArc: number | null;
  /** Laminar separation and turbulent reattachment, arc / D, when there is a bubble. */
  readonly bubble: {
    /** Laminar separation, arc / D from the front stagnation point. */
    readonly separationArc: number;
    /** Turbulent reattachment, arc / D from the front stagnation point. */
    readonly reattachmentArc: number;
  } | null;
  /** The layer itself. */
  readonly layer: LayerProfile;
}

/** One steady state of the separated flow. Coefficients are on the reference width, per unit span. */
export interface SectionState {
  /** By the layers of both sides. */
  readonly regime: Regime;
  /** True when a section that is symmetric about the stream sheds differently on its two sides. */
  readonly oneSided: boolean;
  /**
   * True where a layer changes its kind just here, from separating ahead of this point to staying attached behind it:
   * the flow is held on that switch, as a mixture of the two in time.
   */
  readonly onSwitch: boolean;
  /**
   * True when the layers stay attached to the tail and close behind it, without a vortex street: drag is then the layers'
   * momentum defect carried into the wake, the base pressure that of the stream at the tail, the Strouhal number 0.
   */
  readonly attached: boolean;
  /**
   * False where the state is no answer to rely on: the layers do not separate where it says, a change of the Reynolds
   * number by a few parts in ten thousand would move it by more than 1 % of its drag, or the search does not come to it
   * again.
   */
  readonly settled: boolean;
  /**
   * Why it is not settled, null where it is: a layer leaves far from where the state says; the separation map does not
   * fall through the point; a slight change moves it; the search beside it finds other states.
   */
  readonly unsettledBy: "missed" | "unstable" | "wavers" | "not found again" | null;
  /** Lowest and highest drag coefficient that such a change was seen to give. */
  readonly dragCoefficientSeen: readonly [number, number];
  /** The side on the left of the stream. */
  readonly upper: SideSolution;
  /** The side on its right. */
  readonly lower: SideSolution;
  /** Surface speed / U on the separation streamlines, k = sqrt(1 - Cpb). */
  readonly separationSpeedRatio: number;
  /** Cpb, uniform behind the separation points. */
  readonly basePressureCoefficient: number;
  /** Lowest Cp on the surface. */
  readonly minimumPressureCoefficient: number;
  /** S = f D / U. */
  readonly strouhal: number;
  /** The share of the pressures in the drag coefficient. */
  readonly pressureDragCoefficient: number;
  /** The share of skin friction in the drag coefficient. */
  readonly frictionDragCoefficient: number;
  /** Cd = drag per span / (rho U^2 D / 2). */
  readonly dragCoefficient: number;
  /** Cl on the same width, positive upward. */
  readonly liftCoefficient: number;
  /** Displacement width of the wake / D. */
  readonly wakeWidth: number;
  /** Pressure coefficient at the section's nodes, shape [count], the base at its uniform value. */
  readonly pressureCoefficient: Float64Array;
  /** Counter-clockwise surface velocity / U at the nodes, shape [count], of the wake-source flow. */
  readonly surfaceVelocity: Float64Array;
  /** Outflow speed / U at the nodes, shape [count]; zero off the base. */
  readonly outflow: Float64Array;
  /**
   * The two flows that this state is the time mean of, where the layers that leave the front come back to long sides for
   * a part of the time; null of a flow that keeps its kind.
   */
  readonly intermittency: Intermittency | null;
}

/** A flow that goes to and fro between an open wake and layers that come back to the sides. */
export interface Intermittency {
  /** Share of the time for which the layers are back on the sides, in (0, 1]. */
  readonly reattachedShare: number;
  readonly open: SectionState;
  readonly reattached: SectionState;
}

/** Everything found for one condition: all steady states, and which of them a slow change of speed would sit on. */
export interface ConditionOutcome {
  /** From early to late separation. */
  readonly states: readonly SectionState[];
  /** Index into states for a slowly rising speed; null when nothing converged. */
  readonly rising: number | null;
  /** Index into states for a slowly falling speed; null when nothing converged. */
  readonly falling: number | null;
  /** Why a state is missing; null when all is well. */
  readonly problem: Problem | null;
}
