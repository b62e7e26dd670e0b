import { convert } from "convert";
import { degreesOf } from "../numerics/degreesAndPercent";

/** What the numbers of a column measure. */
export type ColumnQuantity =
  | "speed"
  | "pressure"
  | "temperature"
  | "humidity"
  | "force"
  | "time"
  | "length"
  | "angle"
  | "plain";

/** N. A kilogram-force, by definition: 3rd General Conference on Weights and Measures (1901). */
const kilogramForce = 9.80665;

const factor = (scale: number) => (value: number) => value * scale;
const pressure = (unit: "hPa" | "kPa" | "mbar" | "bar" | "psi" | "torr" | "inHg") => (value: number) =>
  convert(value, unit).to("Pa");
const length = (unit: "mm" | "cm" | "in") => (value: number) => convert(value, unit).to("m");
const same = factor(1);

/** Units of a column by their keys, each with the way to the unit of the run table's own keys; the first is that unit. */
export const columnUnits = {
  speed: {
    "m/s": same,
    "km/h": factor(1 / 3.6),
    "ft/s": factor(0.3048),
    mph: factor(0.44704),
    kn: factor(1852 / 3600),
  },
  pressure: {
    Pa: same,
    hPa: pressure("hPa"),
    kPa: pressure("kPa"),
    mbar: pressure("mbar"),
    bar: pressure("bar"),
    psi: pressure("psi"),
    mmHg: pressure("torr"),
    inHg: pressure("inHg"),
    mmH2O: factor(kilogramForce),
    cmH2O: factor(10 * kilogramForce),
    inH2O: factor(25.4 * kilogramForce),
  },
  temperature: {
    "°C": same,
    K: (value: number) => convert(value, "K").to("C"),
    "°F": (value: number) => convert(value, "F").to("C"),
  },
  humidity: { "%": same, "0-1": factor(100) },
  force: {
    N: same,
    mN: factor(1e-3),
    kN: factor(1e3),
    gf: factor(kilogramForce / 1000),
    kgf: factor(kilogramForce),
    lbf: (value: number) => convert(value, "lbf").to("N"),
  },
  time: { min: same, s: factor(1 / 60), h: factor(60) },
  length: { m: same, mm: length("mm"), cm: length("cm"), in: length("in") },
  angle: { "°": same, rad: degreesOf },
  plain: { "1": same },
} as const satisfies Record<ColumnQuantity, Record<string, (value: number) => number>>;

/** Keys of the units that a quantity may have, its own first. */
export function unitsOf(quantity: ColumnQuantity): string[] {
  return Object.keys(columnUnits[quantity]);
}

/** The conversion from a unit; undefined for a unit that the quantity does not have. */
export function fromUnit(quantity: ColumnQuantity, unit: string): ((value: number) => number) | undefined {
  const units: Readonly<Record<string, (value: number) => number>> = columnUnits[quantity];
  return Object.hasOwn(units, unit) ? units[unit] : undefined;
}
