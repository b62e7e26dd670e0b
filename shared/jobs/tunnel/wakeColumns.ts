import type { WantedColumns } from "../../tables/columnMapping";

/** Columns of a wake traverse. Pressures are over the static pressure of the free stream. */
export const wakeColumnKeys = ["positionMetres", "totalPressurePascals", "staticPressurePascals"] as const;
export type WakeColumnKey = (typeof wakeColumnKeys)[number];

export const wakeColumnWords: Readonly<Record<WakeColumnKey, string>> = {
  positionMetres: "Position across the stream",
  totalPressurePascals: "Total pressure over the stream's static pressure",
  staticPressurePascals: "Static pressure over the stream's static pressure",
};

export const wakeColumnQuantities: WantedColumns<WakeColumnKey> = {
  positionMetres: "length",
  totalPressurePascals: "pressure",
  staticPressurePascals: "pressure",
};
