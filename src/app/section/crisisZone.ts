import type { ResultRow } from "../../../shared/engine/section/resultRow";

/** Speeds that hold the drag crisis in nine of ten cases, and its median, m/s. */
export interface CrisisZone {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** Where a rising and where a falling speed meets the crisis; null where there is none on the curve. */
export interface CrisisZones {
  readonly rising: CrisisZone | null;
  readonly falling: CrisisZone | null;
}

export const noZones: CrisisZones = { rising: null, falling: null };

type ZoneRow = Pick<
  ResultRow,
  | "branch"
  | "speedMetresPerSecond"
  | "crisisSpeedLowMetresPerSecond"
  | "crisisSpeedMidMetresPerSecond"
  | "crisisSpeedHighMetresPerSecond"
>;

/** The crisis of a drag curve: every row knows the one near it, and the row next to it knows it best. */
export function crisisZones(rows: readonly ZoneRow[]): CrisisZones {
  const of = (branch: ResultRow["branch"]): CrisisZone | null => {
    let best: CrisisZone | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const row of rows) {
      const [low, mid, high, speed] = [
        row.crisisSpeedLowMetresPerSecond,
        row.crisisSpeedMidMetresPerSecond,
        row.crisisSpeedHighMetresPerSecond,
        row.speedMetresPerSecond,
      ];
      if (row.branch !== branch || low === null || mid === null || high === null || speed === null) continue;
      const away = Math.abs(Math.log(speed / mid));
      if (away >= least) continue;
      least = away;
      best = { low, mid, high };
    }
    return best;
  };
  return { rising: of("rising"), falling: of("falling") };
}

/** How far a speed is from the crisis, as all views tell it: to the nearer edge of the nine-in-ten zone. */
export type CrisisMargin =
  | { readonly kind: "past"; readonly by: number }
  | { readonly kind: "short"; readonly by: number }
  | { readonly kind: "inside" };

export function crisisMargin(speed: number, { low, high }: Pick<CrisisZone, "low" | "high">): CrisisMargin {
  if (speed > high) return { kind: "past", by: speed - high };
  if (speed < low) return { kind: "short", by: low - speed };
  return { kind: "inside" };
}

/** Expected drag next to the crisis zone on either side; null where no row is near. */
export function dragBesideZone(
  rows: readonly (ZoneRow & Pick<ResultRow, "dragCoefficientExpected">)[],
  { rising: zone }: CrisisZones,
): { readonly before: number | null; readonly past: number | null } {
  if (zone === null) return { before: null, past: null };
  let [before, past]: (number | null)[] = [null, null];
  for (const { branch, speedMetresPerSecond: speed, dragCoefficientExpected: drag } of rows) {
    if (branch !== "rising" || speed === null || drag === null) continue;
    if (speed <= zone.low) before = drag;
    else if (speed >= zone.high && past === null) past = drag;
  }
  return { before, past };
}
