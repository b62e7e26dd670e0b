import type { SectionSpec } from "../geometry/sectionSpec";

/** One section in one stream, as it is worked on: everything in SI units and radians. Plain data. */
export interface LiveRequest {
  readonly section: SectionSpec;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap between the section's lowest point and a floor along the stream, m: 0 when it lies on it, null without a floor. */
  readonly floorGap: number | null;
  /** Even. */
  readonly panelCount: number;
  /** m/s */
  readonly speed: number;
  /** rho, kg/m^3 */
  readonly density: number;
  /** nu, m^2/s */
  readonly kinematicViscosity: number;
  /** Fraction. */
  readonly turbulenceIntensity: number;
  /** ks, m */
  readonly sandGrainRoughness: number;
  readonly trips: readonly LiveTrip[];
}

export interface LiveTrip {
  readonly side: "upper" | "lower";
  /** Arc length from the nose, m. */
  readonly arc: number;
  /** m */
  readonly height: number;
}
