/** Where measured values come from. */
export type MeasurementKind = "tunnelTest" | "flowComputation" | "publishedCurve";

/** How the speed was being changed when a point was taken: at a drag crisis the two directions can differ. */
export type SpeedDirection = "rising" | "falling";

/** How a model's ends were: walls or end plates stand for an endless body, free ends relieve the pressure. */
export type ModelEnds = "endless" | "endPlates" | "free";

/** One measured or computed point, whatever made it. */
export interface MeasuredPoint {
  /** On the section's extent across the stream. */
  readonly reynolds: number;
  /** On frontal width x span. */
  readonly dragCoefficient: number;
  /** Standard uncertainty (k = 1) of the drag coefficient; null where none was stated. */
  readonly standardUncertainty: number | null;
  /** null where the set's own direction holds. */
  readonly direction: SpeedDirection | null;
  readonly strouhal: number | null;
  readonly basePressureCoefficient: number | null;
  /** Angle from the front, the mean of both sides, degrees. */
  readonly separationAngleDegrees: number | null;
}

/** What is known of the stream, the wall and the mounting. null: not stated. */
export interface MeasuredConditions {
  /** Fraction. */
  readonly turbulenceIntensity: number | null;
  /** Equivalent sand-grain roughness ks / D. */
  readonly sandGrainRoughnessRatio: number | null;
  /** Model width / tunnel height. */
  readonly blockageRatio: number | null;
  /** True when the coefficients are already corrected for blockage. */
  readonly blockageCorrected: boolean;
  /** Length of the model across the stream / its width. */
  readonly lengthToWidth: number | null;
  readonly ends: ModelEnds;
}

/** Measured values that belong together: one model, one set-up. */
export interface MeasurementSet {
  readonly name: string;
  readonly kind: MeasurementKind;
  /** Author, year, page or test number, in the user's words. */
  readonly source: string;
  /** Direction of speed of the points that name none; null when unknown. */
  readonly direction: SpeedDirection | null;
  readonly conditions: MeasuredConditions;
  /** In the order in which they were given. */
  readonly points: readonly MeasuredPoint[];
}

/** A point of which only Reynolds number and drag coefficient are known. */
export function bareMeasuredPoint(
  reynolds: number,
  dragCoefficient: number,
  standardUncertainty: number | null = null,
): MeasuredPoint {
  return {
    reynolds,
    dragCoefficient,
    standardUncertainty,
    direction: null,
    strouhal: null,
    basePressureCoefficient: null,
    separationAngleDegrees: null,
  };
}
