import type { FluidSpec } from "../../engine/fluid/fluidSpec";
import { mean, squaresAbout } from "../../statistics/sample";
import { exactInput, type MeasurementModel, type UncertainInput } from "../../statistics/uncertainInput";
import { statedUncertainty } from "../../statistics/uncertaintyStatement";
import { type BlockageMethod, correctBlockage } from "./blockage";
import type { RunPoint } from "./runPoints";
import type { StatedKey, StatedUncertainties } from "./statedUncertainties";
import type { SupportDrag } from "./supportTare";
import type { TunnelBalance } from "./tunnelFacility";
import { fluidAtReading } from "./tunnelFluid";
import type { TunnelReference, TunnelShape } from "./tunnelShape";
import { zeroUncertaintyFactor } from "./zeroDrift";

/** What the measurement model of a point is made from. */
export interface PointSetting {
  readonly shape: TunnelShape;
  /** At the model's size. */
  readonly reference: TunnelReference;
  readonly fluidSpec: FluidSpec;
  readonly balance: TunnelBalance;
  readonly blockageRatio: number;
  readonly stated: StatedUncertainties;
  /** Standard deviation of one reading put together from all points, N, and its degrees of freedom; null to take each point's own. */
  readonly pooled: { readonly scatter: number; readonly degreesOfFreedom: number } | null;
}

/** A point's measurement model: drag coefficient and Reynolds number, corrected, as functions of the same inputs. */
export interface PointModel {
  readonly inputs: readonly UncertainInput[];
  readonly dragCoefficient: MeasurementModel;
  readonly reynolds: MeasurementModel;
}

/**
 * The measurement model of the mean of a point's repeats. Every error that repeats share (calibrations, stream, area) is
 * one input that no repeating takes away; the scatter of the repeats is another, with s / sqrt(n) and n - 1 degrees of
 * freedom (JCGM 100:2008, 4.2.3).
 *
 * Cd = { [ kB (A + dF m) - kB T ] / (kQ kA S) + r } kS, corrected for blockage; A mean of (F - F0) / q, dF error of force
 * in N, m mean of 1 / q, T drag area of the support, S reference area; each k a factor of value 1.
 */
export function pointModel(
  point: RunPoint,
  support: SupportDrag | null,
  method: BlockageMethod,
  setting: PointSetting,
): PointModel {
  const { readings } = point;
  const { stated, reference, balance, blockageRatio } = setting;
  const n = readings.length;
  const dragArea = mean(readings.map((each) => each.dragArea));
  const inverse = mean(readings.map(({ dynamicPressure }) => 1 / dynamicPressure));
  const reynolds = mean(readings.map(({ speed, fluid }) => (speed * reference.length) / fluid.kinematicViscosity));
  const inputs: UncertainInput[] = [];
  const place = (input: UncertainInput) => inputs.push(input) - 1;
  const statedInput = (key: StatedKey, name: string, value: number, scale: number) => {
    const statement = stated[key];
    return place({
      ...exactInput(key, name, value),
      ...(statement === undefined ? {} : statedUncertainty(statement, scale)),
    });
  };

  const repeat = place(repeatability(point, dragArea, inverse, setting));
  const calibration = statedInput("balanceCalibrationPercent", "balance calibration", 1, 0.01);
  const resolution = place({
    ...exactInput("balanceResolution", "balance resolution", 0),
    ...statedUncertainty({ plusMinus: balance.resolution / 2, kind: "rectangular" }),
  });
  const zero = place(zeroReadings(point, setting));
  const zeroBeyond = statedInput("zeroNewtons", "zero beyond the readings", 0, 1);
  const tare = place({
    ...exactInput("supportTare", "drag of the support", support?.dragArea ?? 0),
    ...(support === null
      ? {}
      : {
          standardUncertainty: support.standardUncertainty,
          degreesOfFreedom: support.degreesOfFreedom,
          distribution: Number.isFinite(support.degreesOfFreedom) ? ("studentT" as const) : ("normal" as const),
        }),
  });
  const interference = statedInput("supportInterferencePercent", "interference of the support", 1, 0.01);
  const isPressureRead = readings.every(({ reading }) => Boolean(reading.dynamicPressure));
  const reading = isPressureRead
    ? statedInput("dynamicPressurePercent", "dynamic pressure", 1, 0.01)
    : statedInput("speedPercent", "speed", 1, 0.01);
  const stream = statedInput("streamCalibrationPercent", "stream at the model", 1, 0.01);
  const fluid = fluidInputs(point, setting);
  const temperature = statedInput("temperatureCelsius", "temperature", fluid.temperature, 1);
  const pressure = fluid.isAir ? statedInput("staticPressurePascals", "static pressure", fluid.staticPressure, 1) : -1;
  const humidity =
    fluid.isAir && fluid.humidity !== null ? statedInput("relativeHumidityPercent", "humidity", fluid.humidity, 1) : -1;
  const area = statedInput("referenceAreaPercent", "reference area", 1, 0.01);
  const length = statedInput("referenceLengthPercent", "reference length", 1, 0.01);
  const blockage = method === "none" ? -1 : statedInput("blockagePercent", "blockage correction", 1, 0.01);
  const other = statedInput("otherPercent", "other", 1, 0.01);

  /** Density and kinematic viscosity over those of the best values. */
  const ratios = (x: Readonly<Float64Array>) => {
    const moved = fluid.at(
      x[temperature],
      pressure < 0 ? fluid.staticPressure : x[pressure],
      humidity < 0 ? fluid.humidity : x[humidity],
    );
    return { density: moved.density / fluid.best.density, viscosity: moved.viscosity / fluid.best.viscosity };
  };
  /** True dynamic pressure over the one that was used. */
  const pressureRatio = (x: Readonly<Float64Array>, density: number) =>
    x[stream] * (isPressureRead ? x[reading] : density * x[reading] * Math.abs(x[reading]));
  const raw = (x: Readonly<Float64Array>, density: number) => {
    const forceError = x[resolution] + x[zero] + x[zeroBeyond];
    const net = x[calibration] * (dragArea - forceError * inverse - x[tare]);
    return (net / (pressureRatio(x, density) * x[area] * reference.area) + x[repeat]) * x[interference] * x[other];
  };
  const corrected = (x: Readonly<Float64Array>, density: number) =>
    correctBlockage(method, setting.shape, raw(x, density), blockageRatio, blockage < 0 ? 1 : x[blockage]);
  return {
    inputs,
    dragCoefficient: (x) => corrected(x, ratios(x).density).dragCoefficient,
    reynolds: (x) => {
      const { density, viscosity } = ratios(x);
      // The speed follows from the dynamic pressure where that was read, and is the reading itself where it was not.
      const speed = isPressureRead
        ? Math.sqrt((x[reading] * x[stream]) / density)
        : x[reading] * Math.sqrt(Math.abs(x[stream]));
      return (reynolds * speed * x[length] * corrected(x, density).speedRatio) / viscosity;
    },
  };

  function repeatability(
    { readings: repeats }: RunPoint,
    best: number,
    perForce: number,
    { pooled }: PointSetting,
  ): UncertainInput {
    const base = exactInput("repeatability", n > 1 ? `scatter of ${n} repeats` : "noise of one reading", 0);
    const toCoefficient = 1 / reference.area;
    if (pooled !== null) {
      const scatter = (pooled.scatter * perForce * toCoefficient) / Math.sqrt(n);
      return {
        ...base,
        standardUncertainty: scatter,
        degreesOfFreedom: pooled.degreesOfFreedom,
        distribution: "studentT",
      };
    }
    if (n === 1) {
      return { ...base, standardUncertainty: (balance.noise ?? 0) * perForce * toCoefficient };
    }
    const squares = squaresAbout(
      repeats.map((each) => each.dragArea),
      best,
    );
    const scatter = Math.sqrt(squares / (n - 1) / n) * toCoefficient;
    return { ...base, standardUncertainty: scatter, degreesOfFreedom: n - 1, distribution: "studentT" };
  }
}

/** The error of the mean zero, N; known from the noise of one reading. */
function zeroReadings({ readings }: RunPoint, { balance, pooled }: PointSetting): UncertainInput {
  const base = exactInput("zeroReadings", "zero readings", 0);
  const noise = balance.noise ?? pooled?.scatter ?? null;
  if (noise === null || readings.every(({ zero }) => zero.weights.length === 0)) return base;
  const inverse = mean(readings.map(({ dynamicPressure }) => 1 / dynamicPressure));
  const factor = zeroUncertaintyFactor(
    readings.map(({ zero }) => zero),
    readings.map(({ dynamicPressure }) => 1 / (dynamicPressure * readings.length * inverse)),
  );
  return { ...base, standardUncertainty: noise * factor };
}

/** The fluid of a point around the means of its readings. */
function fluidInputs({ readings }: RunPoint, { fluidSpec }: PointSetting) {
  const spec = fluidSpec;
  const own = (of: (each: (typeof readings)[number]["reading"]) => number | null, otherwise: number) =>
    mean(readings.map(({ reading }) => of(reading) ?? otherwise));
  const temperature = own((each) => each.temperature, "temperatureCelsius" in spec ? spec.temperatureCelsius : 0);
  const staticPressure = own((each) => each.staticPressure, spec.kind === "dryAir" ? spec.pressurePascals : 0);
  const humidity = readings.every(({ reading }) => reading.humidity !== null) ? own((each) => each.humidity, 0) : null;
  const at = (t: number, p: number, h: number | null) => {
    const found = fluidAtReading(spec, { temperature: t, staticPressure: p, humidity: h });
    return found.ok
      ? { density: found.value.density, viscosity: found.value.kinematicViscosity }
      : { density: Number.NaN, viscosity: Number.NaN };
  };
  return {
    isAir: spec.kind === "dryAir",
    temperature,
    staticPressure,
    humidity,
    at,
    best: at(temperature, staticPressure, humidity),
  };
}
