/** The columns of a run table: of the sheet to fill in and of what is read back. Keys carry their units. */
export const runColumnKeys = [
  "run",
  "kind",
  "direction",
  "aimSpeedMetresPerSecond",
  "repeat",
  "timeMinutes",
  "speedMetresPerSecond",
  "dynamicPressurePascals",
  "temperatureCelsius",
  "staticPressurePascals",
  "relativeHumidityPercent",
  "forceNewtons",
  "incidenceDegrees",
  "remark",
] as const;
export type RunColumnKey = (typeof runColumnKeys)[number];

export const runColumnWords: Readonly<Record<RunColumnKey, string>> = {
  run: "Run",
  kind: "Kind: zero, tare or model",
  direction: "Direction of speed: rising or falling",
  aimSpeedMetresPerSecond: "Speed aimed at",
  repeat: "Repeat",
  timeMinutes: "Time",
  speedMetresPerSecond: "Speed",
  dynamicPressurePascals: "Dynamic pressure",
  temperatureCelsius: "Temperature",
  staticPressurePascals: "Static pressure (absolute)",
  relativeHumidityPercent: "Relative humidity",
  forceNewtons: "Force along the stream",
  incidenceDegrees: "Incidence, nose up",
  remark: "Remark",
};
