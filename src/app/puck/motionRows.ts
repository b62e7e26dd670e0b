import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import { quantityText, type UnitPreferences } from "../units/units";

/** One figure of a motion over all pucks, as the table prints it. */
export interface MotionRow {
  readonly label: string;
  /** By puck. */
  readonly cells: readonly string[];
}

const figureTexts: Readonly<Record<string, { readonly label: string; readonly kind: "length" | "speed" | "time" }>> = {
  distanceMetres: { label: "distance to rest", kind: "length" },
  rangeMetres: { label: "range", kind: "length" },
  greatestHeightMetres: { label: "greatest height", kind: "length" },
  timeSeconds: { label: "time", kind: "time" },
  endSpeedMetresPerSecond: { label: "speed at the end", kind: "speed" },
  terminalSpeedMetresPerSecond: { label: "terminal speed", kind: "speed" },
};

const endings: Readonly<Record<string, string>> = {
  rest: "at rest",
  floor: "on the floor",
  surface: "at the surface",
  time: "still moving when the longest time was over",
};

type ThreeWay = { readonly low: number; readonly expected: number; readonly high: number } | null;

export function motionRows(
  pucks: readonly Pick<PuckResult, "motions">[],
  name: string,
  turbulencePercent: number,
  units: UnitPreferences,
): MotionRow[] {
  const own = pucks.map(({ motions }) =>
    motions.find((one) => one.name === name && one.turbulencePercent === turbulencePercent),
  );
  const first = own.find((one) => one !== undefined);
  if (first === undefined) return [];
  const shown = (band: ThreeWay, kind: "length" | "speed" | "time") => {
    if (band === null || !Number.isFinite(band.expected)) return "not in every run";
    const text = (value: number) =>
      kind === "time" ? `${Number(value.toPrecision(3))} s` : quantityText(value, kind, units, 3);
    return `${text(band.expected)} (${text(band.low)} to ${text(band.high)})`;
  };
  const rows: MotionRow[] = Object.keys(first.figures).map((key) => ({
    label: figureTexts[key]?.label ?? key,
    cells: own.map((one) => shown(one?.figures[key] ?? null, figureTexts[key]?.kind ?? "time")),
  }));
  first.marks.forEach(({ distanceMetres }, i) => {
    const at = quantityText(distanceMetres, "length", units);
    rows.push(
      { label: `time at ${at}`, cells: own.map((one) => shown(one?.marks[i]?.timeSeconds ?? null, "time")) },
      { label: `speed at ${at}`, cells: own.map((one) => shown(one?.marks[i]?.speedMetresPerSecond ?? null, "speed")) },
    );
  });
  rows.push({ label: "ends", cells: own.map((one) => (one === undefined ? "–" : (endings[one.ended] ?? one.ended))) });
  return rows;
}
