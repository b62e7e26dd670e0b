import { convert } from "convert";
import { degreesOf, radiansOf } from "../../../shared/numerics/degreesAndPercent";

/** What a number measures. Inside the page every quantity is in SI units, fractions and radians. */
export type QuantityKind = "length" | "speed" | "temperature" | "angle" | "fraction" | "number" | "pressure" | "mass";

export interface UnitChoice {
  readonly key: string;
  /** As printed at the field. */
  readonly symbol: string;
  readonly fromSi: (value: number) => number;
  readonly toSi: (value: number) => number;
}

function length(key: "mm" | "cm" | "m" | "in", symbol: string): UnitChoice {
  return {
    key,
    symbol,
    fromSi: (value) => convert(value, "m").to(key),
    toSi: (value) => convert(value, key).to("m"),
  };
}

/** A length unit over a time unit. */
function speed(
  key: string,
  symbol: string,
  distance: "m" | "km" | "ft" | "nautical mile",
  time: "s" | "h",
): UnitChoice {
  const metres = convert(1, distance).to("m");
  const seconds = convert(1, time).to("s");
  return {
    key,
    symbol,
    fromSi: (value) => (value * seconds) / metres,
    toSi: (value) => (value * metres) / seconds,
  };
}

function temperature(key: "C" | "F" | "K", symbol: string): UnitChoice {
  return {
    key,
    symbol,
    fromSi: (value) => convert(value, "C").to(key),
    toSi: (value) => convert(value, key).to("C"),
  };
}

function pressure(key: "Pa" | "kPa" | "bar", symbol: string): UnitChoice {
  return {
    key,
    symbol,
    fromSi: (value) => convert(value, "Pa").to(key),
    toSi: (value) => convert(value, key).to("Pa"),
  };
}

const plain = (key: string, symbol: string, scale: number): UnitChoice => ({
  key,
  symbol,
  fromSi: (value) => value * scale,
  toSi: (value) => value / scale,
});

/** The units a user can choose for each kind; the first one is the default. Temperatures are kept in degrees Celsius. */
export const unitChoices: Record<QuantityKind, readonly UnitChoice[]> = {
  length: [length("mm", "mm"), length("cm", "cm"), length("m", "m"), length("in", "in")],
  speed: [
    speed("m/s", "m/s", "m", "s"),
    speed("km/h", "km/h", "km", "h"),
    speed("kn", "kn", "nautical mile", "h"),
    speed("ft/s", "ft/s", "ft", "s"),
  ],
  temperature: [temperature("C", "°C"), temperature("F", "°F"), temperature("K", "K")],
  angle: [{ key: "deg", symbol: "°", fromSi: degreesOf, toSi: radiansOf }],
  fraction: [plain("%", "%", 100)],
  number: [plain("1", "", 1)],
  pressure: [pressure("kPa", "kPa"), pressure("bar", "bar"), pressure("Pa", "Pa")],
  mass: [plain("kg", "kg", 1)],
};

/** The user's unit for each kind, by key. */
export type UnitPreferences = Partial<Record<QuantityKind, string>>;

export function unitFor(kind: QuantityKind, preferences: UnitPreferences): UnitChoice {
  const choices = unitChoices[kind];
  return choices.find((choice) => choice.key === preferences[kind]) ?? choices[0];
}

/** A quantity as shown in a field: up to six digits, without the noise of the unit conversion. */
export function fieldText(value: number, unit: UnitChoice): string {
  return String(Number(unit.fromSi(value).toPrecision(6)));
}

/** A quantity as read in a sentence: "6 mm". */
export function quantityText(value: number, kind: QuantityKind, preferences: UnitPreferences, digits = 4): string {
  const unit = unitFor(kind, preferences);
  const number = String(Number(unit.fromSi(value).toPrecision(digits)));
  return unit.symbol === "" ? number : unit.symbol === "°" ? `${number}°` : `${number} ${unit.symbol}`;
}
