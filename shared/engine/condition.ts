/** The stream that a section meets. All ratios are on the reference width D, the section's extent across the stream. */
export interface FlowCondition {
  /** Re = U D / nu. */
  readonly reynolds: number;
  /** Equivalent sand-grain roughness ks / D. */
  readonly sandGrainRoughnessRatio: number;
  /** Free-stream turbulence intensity, a fraction (0.001 is 0.1 %). */
  readonly turbulenceIntensity: number;
  /** None when left out. */
  readonly trips?: readonly Trip[];
  /**
   * Whether layers that leave the front for good are taken to come back to the side as a long bubble. Set by the solver
   * itself, which looks for both flows.
   */
  readonly longBubbles?: boolean;
}

/** A wire, step or ridge that forces transition. It is fixed to the body. */
export interface Trip {
  /** The side it is on, at zero incidence. */
  readonly side: "upper" | "lower";
  /** Arc length from the section's nose / D, above 0. */
  readonly arcRatio: number;
  /** Height / D, above 0. */
  readonly heightRatio: number;
}
