import type { WantedColumns } from "../../tables/columnMapping";

/** Columns of a tap table: where each tap is (an angle, or a point from the section's centroid) and its pressure or coefficient. */
export const tapColumnKeys = [
  "tap",
  "angleDegrees",
  "xMetres",
  "yMetres",
  "pressurePascals",
  "referencePressurePascals",
  "pressureCoefficient",
] as const;
export type TapColumnKey = (typeof tapColumnKeys)[number];

export const tapColumnWords: Readonly<Record<TapColumnKey, string>> = {
  tap: "Name of the tap",
  angleDegrees: "Angle from the front at the centroid, positive on the upper side",
  xMetres: "x from the centroid, along the stream",
  yMetres: "y from the centroid, upward",
  pressurePascals: "Pressure over the stream's static pressure",
  referencePressurePascals: "Reference pressure to take off, of the same row",
  pressureCoefficient: "Pressure coefficient",
};

export const tapColumnQuantities: WantedColumns<TapColumnKey> = {
  tap: null,
  angleDegrees: "angle",
  xMetres: "length",
  yMetres: "length",
  pressurePascals: "pressure",
  referencePressurePascals: "pressure",
  pressureCoefficient: "plain",
};
