import { columnUnits } from "./columnUnits";

/** A column's head taken apart: "Fd (N)" is a name "Fd" with the unit N, "theta_deg" a name "theta" in degrees. */
export interface ColumnHead {
  readonly name: string;
  /** Key of a unit, by its own or a common name; null where the head has none. */
  readonly unit: string | null;
}

/** Common ways to write the units of tables, small letters without spaces, stops and low lines; common practice, no source. */
const writtenUnits: Readonly<Record<string, string>> = {
  deg: "°",
  degs: "°",
  degree: "°",
  degrees: "°",
  radian: "rad",
  radians: "rad",
  mps: "m/s",
  "m/sec": "m/s",
  ms: "m/s",
  kmh: "km/h",
  kph: "km/h",
  fps: "ft/s",
  kt: "kn",
  kts: "kn",
  knots: "kn",
  pascal: "Pa",
  pascals: "Pa",
  mbars: "mbar",
  cmh2o: "cmH2O",
  cmwater: "cmH2O",
  cmofwater: "cmH2O",
  cmwg: "cmH2O",
  cmwc: "cmH2O",
  inh2o: "inH2O",
  inwater: "inH2O",
  inofwater: "inH2O",
  inchesofwater: "inH2O",
  incheswater: "inH2O",
  inwg: "inH2O",
  inwc: "inH2O",
  mmh2o: "mmH2O",
  mmwater: "mmH2O",
  mmofwater: "mmH2O",
  mmwg: "mmH2O",
  torr: "mmHg",
  degc: "°C",
  c: "°C",
  celsius: "°C",
  degf: "°F",
  f: "°F",
  kelvin: "K",
  percent: "%",
  pct: "%",
  newton: "N",
  newtons: "N",
  metres: "m",
  meters: "m",
  inch: "in",
  inches: "in",
  seconds: "s",
  sec: "s",
  minutes: "min",
  hours: "h",
};

const knownUnits = Object.values(columnUnits).flatMap((units) => Object.keys(units));

/** Units of one letter, and words that are names as often: behind a low line alone they are no unit. */
const ambiguous = new Set(["1", "C", "F", "c", "f", "S", "H", "h", "M", "ms", "MS"]);

/** The key of a unit as people write it; null when it is none. */
export function unitWritten(text: string): string | null {
  const trimmed = text.trim();
  const own = knownUnits.find((unit) => unit === trimmed);
  if (own !== undefined) return own;
  const plain = trimmed.toLowerCase().replace(/[\s._^-]/g, "");
  if (plain === "") return null;
  if (Object.hasOwn(writtenUnits, plain)) return writtenUnits[plain];
  return knownUnits.find((unit) => unit.toLowerCase() === plain) ?? null;
}

/** Takes a head apart: a unit in brackets, behind a comma or a stroke, or as its last part behind a low line or a space. */
export function columnHead(head: string): ColumnHead {
  const text = head.trim();
  const bracketed = /^([^()[\]]{0,200})[([]([^()[\]]{0,60})[)\]]\s*$/.exec(text);
  if (bracketed !== null) {
    const unit = unitWritten(bracketed[2]);
    if (unit !== null) return { name: bracketed[1].trim(), unit };
  }
  // A speed's own stroke stands inside its unit, so that the longest last part is tried first: "v m/s".
  for (const mark of [" ", "_", ",", "/"]) {
    const at = text.lastIndexOf(mark);
    if (at <= 0) continue;
    const last = text.slice(at + 1);
    const unit = ambiguous.has(last.trim()) ? null : unitWritten(last);
    if (unit !== null && unit !== "1") return { name: text.slice(0, at).replace(/[\s,]+$/, ""), unit };
  }
  return { name: text, unit: null };
}

/** Whether a row stands under the heads to say their units: no numbers, and one unit or more. */
export function isUnitsRow(cells: readonly string[]): boolean {
  const filled = cells.map(bare).filter((cell) => cell !== "");
  if (filled.some((cell) => /^[+-]?[.,]?\d/.test(cell))) return false;
  const units = filled.filter((cell) => unitWritten(cell) !== null);
  return units.length > 0 && filled.every((cell) => unitWritten(cell) !== null || cell === "-" || cell === "–");
}

/** The heads with the units of the row below put behind those that name none. */
export function withUnits(heads: readonly string[], units: readonly string[]): string[] {
  return heads.map((head, i) => {
    const unit = bare(units[i] ?? "");
    return unit === "" || unit === "-" || unit === "–" || columnHead(head).unit !== null ? head : `${head} (${unit})`;
  });
}

function bare(cell: string): string {
  return cell.trim().replace(/^[([]\s*|\s*[)\]]$/g, "");
}
