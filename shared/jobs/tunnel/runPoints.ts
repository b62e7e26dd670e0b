import type { FluidProperties, FluidSpec } from "../../engine/fluid/fluidSpec";
import { type Problem, type Result, success } from "../../result";
import { mean } from "../../statistics/sample";
import type { SpeedDirection } from "./predictedDrag";
import type { RunReading } from "./runTable";
import { fluidAtReading } from "./tunnelFluid";
import { type ZeroAtReading, zeroDrift } from "./zeroDrift";

/** A reading with its fluid, its dynamic pressure and its zero. */
export interface WindReading {
  readonly reading: RunReading;
  readonly fluid: FluidProperties;
  /** m/s. */
  readonly speed: number;
  /** Pa. */
  readonly dynamicPressure: number;
  readonly zero: ZeroAtReading;
  /** Force less zero over dynamic pressure, m^2. */
  readonly dragArea: number;
}

/** Repeats of one speed in one direction. */
export interface RunPoint {
  readonly direction: SpeedDirection;
  /** m/s: aimed at, or the mean. */
  readonly nominalSpeed: number;
  readonly readings: readonly WindReading[];
}

/** A test sorted into points. */
export interface SortedRuns {
  readonly model: readonly RunPoint[];
  readonly tare: readonly RunPoint[];
  readonly zeroCount: number;
  readonly largestZeroStep: number;
  readonly driftAlong: "time" | "order";
}

/** Speeds without an aim that are closer than this are repeats of one. A choice, no source. */
const sameSpeedShare = 0.03;

/**
 * Takes out the zeros, gives every reading its fluid and dynamic pressure (as read, else from the speed and the density),
 * and gathers repeats: equal aims, or speeds within 3 % of each other, in one direction.
 */
export function sortRuns(readings: readonly RunReading[], fluidSpec: FluidSpec): Result<SortedRuns> {
  const drift = zeroDrift(readings);
  const wind: WindReading[] = [];
  for (const reading of readings) {
    if (reading.kind === "zero") continue;
    const found = fluidAtReading(fluidSpec, reading);
    if (!found.ok) return inRow(reading.row, found.problem);
    const fluid = found.value;
    const dynamicPressure = reading.dynamicPressure || 0.5 * fluid.density * (reading.speed ?? 0) ** 2;
    const zero = drift.at(reading);
    wind.push({
      reading,
      fluid,
      speed: reading.speed || Math.sqrt((2 * dynamicPressure) / fluid.density),
      dynamicPressure,
      zero,
      dragArea: (reading.force - zero.force) / dynamicPressure,
    });
  }
  const of = (kind: RunReading["kind"]) => wind.filter(({ reading }) => reading.kind === kind);
  return success({
    model: gathered(of("model")),
    // The support has no crisis of its own: its two directions are one.
    tare: gathered(of("tare").map((each) => ({ ...each, reading: { ...each.reading, direction: "rising" as const } }))),
    zeroCount: drift.count,
    largestZeroStep: drift.largestStep,
    driftAlong: drift.along,
  });
}

function inRow(row: number, { code, message }: Problem): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: { code, message: `row ${row}: ${message}` } };
}

function gathered(readings: readonly WindReading[]): RunPoint[] {
  const points: RunPoint[] = [];
  for (const direction of ["rising", "falling"] as const) {
    const own = readings
      .filter(({ reading }) => reading.direction === direction)
      .map((each) => ({ each, nominal: each.reading.aimSpeed ?? each.speed }))
      .sort((a, b) => a.nominal - b.nominal);
    let group: typeof own = [];
    const close = () => {
      if (group.length === 0) return;
      const nominalSpeed = mean(group.map(({ nominal }) => nominal));
      const inOrder = group.map(({ each }) => each).sort((a, b) => a.reading.row - b.reading.row);
      points.push({ direction, nominalSpeed, readings: inOrder });
      group = [];
    };
    for (const next of own) {
      const [first] = group;
      const isAimed =
        first !== undefined && first.each.reading.aimSpeed !== null && next.each.reading.aimSpeed !== null;
      const isSame =
        first !== undefined &&
        (isAimed ? next.nominal === first.nominal : next.nominal <= first.nominal * (1 + sameSpeedShare));
      if (!isSame) close();
      group.push(next);
    }
    close();
  }
  return points;
}
