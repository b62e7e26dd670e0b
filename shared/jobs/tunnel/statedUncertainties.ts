import type { UncertaintyStatement } from "../../statistics/uncertaintyStatement";

/** The parts of a test's uncertainty that a person states; each unit stands in the key. */
export const statedKeys = [
  "balanceCalibrationPercent",
  "zeroNewtons",
  "dynamicPressurePercent",
  "speedPercent",
  "streamCalibrationPercent",
  "temperatureCelsius",
  "staticPressurePascals",
  "relativeHumidityPercent",
  "referenceAreaPercent",
  "referenceLengthPercent",
  "supportInterferencePercent",
  "blockagePercent",
  "otherPercent",
] as const;
export type StatedKey = (typeof statedKeys)[number];

export type StatedUncertainties = Readonly<Partial<Record<StatedKey, UncertaintyStatement>>>;

/** What each part is, for people. */
export const statedWords: Readonly<Record<StatedKey, string>> = {
  balanceCalibrationPercent: "Balance: calibration factor, % of the force",
  zeroNewtons: "Balance: zero beyond the readings taken, N",
  dynamicPressurePercent: "Dynamic pressure as read, %",
  speedPercent: "Speed as read, %",
  streamCalibrationPercent: "Stream at the model against the probe, % of the dynamic pressure",
  temperatureCelsius: "Temperature, °C",
  staticPressurePascals: "Static pressure, Pa",
  relativeHumidityPercent: "Relative humidity, points of %",
  referenceAreaPercent: "Reference area, %",
  referenceLengthPercent: "Reference length, %",
  supportInterferencePercent: "Interference of the support, % of the drag",
  blockagePercent: "Blockage correction, % of the correction itself",
  otherPercent: "Anything else, % of the drag",
};

/** A part by name alone, without its unit. */
export function statedName(key: StatedKey): string {
  return statedWords[key].split(",")[0];
}
