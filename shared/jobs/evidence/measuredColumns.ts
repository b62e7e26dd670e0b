import type { Bounds } from "../../document/quantity";
import { columnHead } from "../../tables/columnHead";
import type { ColumnMapping, WantedColumns } from "../../tables/columnMapping";
import { unitsOf } from "../../tables/columnUnits";

/** The columns of a table of measured points, by their own names. */
export const measuredColumnKeys = [
  "reynoldsNumber",
  "speedMetresPerSecond",
  "dragCoefficient",
  "standardUncertainty",
  "standardUncertaintyPercent",
  "expandedUncertainty",
  "expandedUncertaintyPercent",
  "direction",
  "strouhalNumber",
  "basePressureCoefficient",
  "separationAngleDegrees",
  "incidenceDegrees",
] as const;

export type MeasuredColumnKey = (typeof measuredColumnKeys)[number];

/** For people. Uncertainties are of the drag coefficient. */
export const measuredColumnWords: Readonly<Record<MeasuredColumnKey, string>> = {
  reynoldsNumber: "Reynolds number",
  speedMetresPerSecond: "Speed (in place of the Reynolds number)",
  dragCoefficient: "Drag coefficient",
  standardUncertainty: "Standard uncertainty (k = 1)",
  standardUncertaintyPercent: "Standard uncertainty, % of Cd",
  expandedUncertainty: "Expanded uncertainty (k = 2)",
  expandedUncertaintyPercent: "Expanded uncertainty, % of Cd",
  direction: "Direction of speed: rising or falling",
  strouhalNumber: "Strouhal number",
  basePressureCoefficient: "Base pressure coefficient",
  separationAngleDegrees: "Separation angle from the front",
  incidenceDegrees: "Incidence, nose up",
};

/** What each column measures; null for words. */
export const measuredColumnQuantities: WantedColumns<MeasuredColumnKey> = {
  reynoldsNumber: "plain",
  speedMetresPerSecond: "speed",
  dragCoefficient: "plain",
  standardUncertainty: "plain",
  standardUncertaintyPercent: "plain",
  expandedUncertainty: "plain",
  expandedUncertaintyPercent: "plain",
  direction: null,
  strouhalNumber: "plain",
  basePressureCoefficient: "plain",
  separationAngleDegrees: "angle",
  incidenceDegrees: "angle",
};

const uncertainty: Bounds = { from: 0, to: 10, unit: "" };
const percentOfDrag: Bounds = { from: 0, to: 100, unit: "%" };

/** What the numbers must lie in. */
export const measuredBounds = {
  reynoldsNumber: { from: 1e3, to: 1e8, unit: "" },
  speedMetresPerSecond: { above: 0, to: 1000, unit: "m/s" },
  dragCoefficient: { above: 0, to: 10, unit: "" },
  standardUncertainty: uncertainty,
  standardUncertaintyPercent: percentOfDrag,
  expandedUncertainty: uncertainty,
  expandedUncertaintyPercent: percentOfDrag,
  strouhalNumber: { above: 0, to: 2, unit: "" },
  basePressureCoefficient: { from: -10, to: 1, unit: "" },
  separationAngleDegrees: { from: 0, to: 180, unit: "degrees" },
  incidenceDegrees: { from: -180, to: 180, unit: "degrees" },
} as const satisfies Record<Exclude<MeasuredColumnKey, "direction">, Bounds>;

/** Names that people give such columns: small letters and digits only, without a unit. */
const commonNames: Readonly<Record<MeasuredColumnKey, readonly string[]>> = {
  reynoldsNumber: ["re", "reynolds"],
  speedMetresPerSecond: ["speed", "velocity", "u", "v"],
  dragCoefficient: ["cd", "cx"],
  standardUncertainty: ["ucd", "sigma", "stddev"],
  standardUncertaintyPercent: [],
  expandedUncertainty: ["u95", "uncertainty"],
  expandedUncertaintyPercent: [],
  direction: ["sweep", "branch"],
  strouhalNumber: ["st", "s", "sr", "strouhal"],
  basePressureCoefficient: ["cpb", "cpbase", "basepressure"],
  separationAngleDegrees: ["separation", "separationangle", "thetas"],
  incidenceDegrees: ["incidence", "alpha", "aoa", "angleofattack", "angleofincidence"],
};

/** A first mapping by the headings, for the user to confirm; a unit in a heading is read: "U (km/h)", "theta_deg". */
export function guessMeasuredMapping(columns: readonly string[]): ColumnMapping<MeasuredColumnKey> {
  const mapping: Partial<Record<MeasuredColumnKey, { column: string; unit?: string }>> = {};
  for (const column of columns) {
    const { name, unit } = columnHead(column);
    const own = plainName(column);
    const plain = plainName(name);
    const isCalled = (one: MeasuredColumnKey) =>
      one.toLowerCase() === own ||
      commonNames[one].includes(own) ||
      one.toLowerCase() === plain ||
      commonNames[one].includes(plain);
    const key = measuredColumnKeys.find(isCalled);
    if (key === undefined || mapping[key] !== undefined) continue;
    const quantity = measuredColumnQuantities[key];
    const has = unit !== null && quantity !== null && unitsOf(quantity).includes(unit);
    mapping[key] = has ? { column, unit } : { column };
  }
  return mapping;
}

function plainName(head: string): string {
  return head.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
}
