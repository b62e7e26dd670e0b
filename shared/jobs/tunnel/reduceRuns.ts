import { type Result, success } from "../../result";
import { propagateFirstOrder } from "../../statistics/firstOrder";
import { firstOrderIsValidated, propagateDistributions } from "../../statistics/monteCarlo";
import { mean } from "../../statistics/sample";
import { type BlockageMethod, type BlockageRange, blockageMethods, blockageRange } from "./blockage";
import type { StatedCorrelation } from "./correlationFaults";
import { undrawableParts } from "./correlationNotes";
import { type PointSetting, pointModel } from "./pointBudget";
import { pooledScatter } from "./pooledScatter";
import type { CorrectedPoint, ReducedPoint, ReductionSetting, TunnelReduction } from "./reducedTest";
import { reductionNotes } from "./reductionNotes";
import { type RunPoint, sortRuns } from "./runPoints";
import type { RunReading } from "./runTable";
import { supportTare } from "./supportTare";

/** A test made ready to reduce point by point. */
export interface PreparedReduction {
  readonly points: readonly RunPoint[];
  readonly reduce: (point: RunPoint) => Result<ReducedPoint>;
  readonly finish: (points: readonly ReducedPoint[]) => TunnelReduction;
}

/**
 * Prepares the reduction of a test: drag coefficient and Reynolds number of every speed in both directions, zero drift
 * and support taken out, corrected for blockage, with uncertainty by JCGM 100:2008 and JCGM 101:2008.
 * @returns a problem when the fluid of a row cannot be had
 */
export function prepareReduction(
  readings: readonly RunReading[],
  setting: ReductionSetting,
): Result<PreparedReduction> {
  const sorted = sortRuns(readings, setting.fluidSpec);
  if (!sorted.ok) return sorted;
  const { model, tare } = sorted.value;
  const support = supportTare(tare, setting.balance.noise);
  const pointSetting: PointSetting = {
    ...setting,
    pooled: setting.repeatability === "pooled" ? pooledScatter(model) : null,
  };
  const ranges = Object.fromEntries(
    blockageMethods.map((method) => [method, blockageRange(method, setting.shape, setting.blockageRatio)]),
  ) as Record<BlockageMethod, BlockageRange>;
  return success({
    points: model,
    reduce: (point) => reducePoint(point, support, setting, pointSetting, ranges),
    finish: (points) => ({
      blockageRatio: setting.blockageRatio,
      correction: setting.correction,
      ranges,
      zeroCount: sorted.value.zeroCount,
      largestZeroStepNewtons: sorted.value.largestZeroStep,
      driftAlong: sorted.value.driftAlong,
      tareReadings: tare.reduce((sum, each) => sum + each.readings.length, 0),
      points,
      notes: reductionNotes(sorted.value, setting, pointSetting, ranges, points),
    }),
  });
}

function reducePoint(
  point: RunPoint,
  support: ReturnType<typeof supportTare>,
  setting: ReductionSetting,
  pointSetting: PointSetting,
  ranges: Readonly<Record<BlockageMethod, BlockageRange>>,
): Result<ReducedPoint> {
  const { readings } = point;
  const meanOf = (of: (each: (typeof readings)[number]) => number) => mean(readings.map(of));
  const dynamicPressure = meanOf((each) => each.dynamicPressure);
  const own = support === null ? null : support(dynamicPressure);
  const under = (method: BlockageMethod, stated: readonly StatedCorrelation[]) => {
    const model = pointModel(point, own, method, pointSetting);
    const correlations = stated.filter(
      ({ between, coefficient }) =>
        coefficient !== 0 && between.every((key) => model.inputs.some((input) => input.key === key)),
    );
    const drag = propagateFirstOrder(model.dragCoefficient, model.inputs, correlations, setting.coverage);
    return { ...model, correlations, drag };
  };
  const reported = under(setting.correction, setting.correlations);
  const { correlations, drag: firstOrder } = reported;
  if (!firstOrder.ok) return inPoint(point, firstOrder);
  const reynolds = propagateFirstOrder(reported.reynolds, reported.inputs, correlations, setting.coverage);
  if (!reynolds.ok) return inPoint(point, reynolds);
  const monteCarlo =
    setting.samples === 0 || undrawableParts(correlations, setting.stated).length > 0
      ? null
      : propagateDistributions(
          reported.dragCoefficient,
          reported.inputs,
          correlations,
          setting.samples,
          setting.seed,
          setting.coverage,
        );
  if (monteCarlo !== null && !monteCarlo.ok) return inPoint(point, monteCarlo);
  const corrections: CorrectedPoint[] = [];
  for (const method of blockageMethods) {
    if (ranges[method].isInRange === null) continue;
    const {
      inputs,
      reynolds: reynoldsOf,
      drag,
    } = method === setting.correction ? reported : under(method, correlations);
    if (!drag.ok) return inPoint(point, drag);
    corrections.push({
      method,
      reynolds: reynoldsOf(Float64Array.from(inputs, ({ value }) => value)),
      dragCoefficient: drag.value.value,
      expandedUncertainty: drag.value.expandedUncertainty,
    });
  }
  return success({
    direction: point.direction,
    nominalSpeedMetresPerSecond: point.nominalSpeed,
    repeats: readings.length,
    rows: readings.map(({ reading }) => reading.row),
    speedMetresPerSecond: meanOf((each) => each.speed),
    dynamicPressurePascals: dynamicPressure,
    kinematicViscositySquareMetresPerSecond: meanOf((each) => each.fluid.kinematicViscosity),
    densityKilogramsPerCubicMetre: meanOf((each) => each.fluid.density),
    netForceNewtons: meanOf((each) => each.dragArea * each.dynamicPressure) - (own?.dragArea ?? 0) * dynamicPressure,
    reynolds: reynolds.value.value,
    reynoldsExpandedUncertainty: reynolds.value.expandedUncertainty,
    dragCoefficient: firstOrder.value.value,
    firstOrder: firstOrder.value,
    monteCarlo: monteCarlo === null ? null : monteCarlo.value,
    isFirstOrderConfirmed: monteCarlo === null ? null : firstOrderIsValidated(firstOrder.value, monteCarlo.value),
    corrections,
  });
}

function inPoint<
  Failed extends { readonly ok: false; readonly problem: { readonly code: string; readonly message: string } },
>({ nominalSpeed, direction }: RunPoint, { problem: { code, message } }: Failed) {
  const place = `${Number(nominalSpeed.toPrecision(4))} m/s ${direction}`;
  return { ok: false, problem: { code, message: `${place}: ${message}` } } as const;
}
