import type { Problem, Result } from "../../result";
import type { TunnelPlan } from "./plannedTest";
import { type PredictedDrag, predictDrag, predictedAt } from "./predictedDrag";
import { predictPressure } from "./predictedPressure";
import { surveyTaps, type TapSurvey } from "./pressureTaps";
import { prepareReduction } from "./reduceRuns";
import { planRuns } from "./runPlan";
import { equalReynoldsSpeedRatio, type Similarity, similarity } from "./similarity";
import type { TunnelCase } from "./tunnelCase";
import { reductionCaution, tunnelCautions } from "./tunnelCautions";
import type { TunnelPoint, TunnelResult } from "./tunnelResult";
import { wakeDrag } from "./wakeSurvey";

/** One step of a tunnel block done. */
export interface TunnelStep {
  readonly done: number;
  readonly total: number;
  readonly label: string;
}

/** Points of the prediction over the range of Reynolds numbers. */
const predictedPoints = 15;
/** How far the prediction goes beyond what is tested, as a factor. */
const margin = 1.15;

/** How many steps the block takes; the runs count as one here. */
export function tunnelStepCount({ runs, wake, taps }: TunnelCase): number {
  return 2 + [runs, wake, taps].filter((part) => part !== null).length;
}

/**
 * Works a tunnel block out: the prediction, similarity and plan, the readings point by point, and the surveys. One step
 * per `next()`; several may have the same count.
 * @param predict how drag is predicted; for callers that keep earlier answers
 */
export function* tunnelSteps(theCase: TunnelCase, predict = predictDrag): Generator<TunnelStep, TunnelResult> {
  const { model, facility, fullScale, reference, runs, wake, taps } = theCase;
  const total = tunnelStepCount(theCase);
  const problems: string[] = [];
  const keep = <T>(what: string, result: Result<T>): T | null => {
    if (result.ok) return result.value;
    problems.push(problemText(what, result.problem));
    return null;
  };
  let done = 0;
  const predictions =
    keep("prediction", predict(model, predictedReynolds(theCase), turbulenceIntensities(theCase))) ?? [];
  const inTunnel = predictions.at(-1) ?? null;
  yield { done: ++done, total, label: `predicted ${model.shape.name}` };

  const similar = similarity(model, fullScale, facility, predictions[0] ?? null, inTunnel);
  const plan = keep("plan", planFor(theCase, similar, inTunnel));
  yield { done: ++done, total, label: "planned the test" };

  let reduction: TunnelResult["reduction"] = null;
  const notes: string[] = [...(inTunnel?.notes ?? [])];
  if (runs !== null) {
    notes.push(...runs.notes);
    const prepared = keep("reduction", prepareReduction(runs.readings, runs.setting));
    if (prepared !== null) {
      const points: TunnelPoint[] = [];
      for (const point of prepared.points) {
        const reduced = keep("reduction", prepared.reduce(point));
        if (reduced === null) continue;
        const predicted = inTunnel === null ? null : predictedAt(inTunnel, reduced.reynolds, reduced.direction);
        points.push({ ...reduced, predictedDragCoefficient: predicted });
        yield { done, total, label: `reduced ${points.length} of ${prepared.points.length} points` };
      }
      reduction = { ...prepared.finish(points), points };
    }
    yield { done: ++done, total, label: "reduced the runs" };
  }
  const coverage = runs?.setting.coverage;
  const survey =
    wake === null ? null : keep("wake survey", wakeDrag(wake.traverse, reference.length, wake.uncertainty, coverage));
  if (wake !== null) yield { done: ++done, total, label: "integrated the wake" };
  let tapSurvey: TapSurvey | null = null;
  if (taps !== null && model.shape.kind === "section") {
    const predicted = keep(
      "predicted pressures",
      predictPressure(model, taps.reynolds, facility.turbulenceIntensity, taps.direction),
    );
    const { contour, width } = model.shape;
    tapSurvey = keep(
      "pressure taps",
      surveyTaps(
        taps.taps,
        contour,
        width,
        taps.tapUncertainty,
        taps.dynamicPressureShare,
        predicted,
        coverage,
        taps.isMirrored,
      ),
    );
    notes.push(...taps.notes);
    yield { done: ++done, total, label: "compared the taps" };
  }
  notes.push(
    ...theCase.unreadTables.map(
      (path) => `The table ${path} was not at hand here; give its rows in the case, or open the file.`,
    ),
  );
  return {
    model: model.shape.name,
    shape: model.shape.kind,
    facility: theCase.facilityName ?? facility.fluid.name,
    referenceLength: reference.lengthName,
    referenceLengthMetres: reference.length,
    referenceArea: reference.areaName,
    referenceAreaSquareMetres: reference.area,
    similarity: similar,
    predictions,
    plan,
    reduction,
    wakeSurvey: survey,
    pressureTaps: tapSurvey,
    notes: [...new Set(notes)],
    cautions: [...tunnelCautions, reductionCaution],
    problems,
  };
}

/** Works a tunnel block out at once. */
export function runTunnel(theCase: TunnelCase): TunnelResult {
  const steps = tunnelSteps(theCase);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

function problemText(what: string, { message }: Problem): string {
  return `${what}: ${message}`;
}

/** Turbulence at full size, then in the tunnel. */
function turbulenceIntensities({ fullScale, facility }: TunnelCase): number[] {
  return [fullScale.turbulenceIntensity, facility.turbulenceIntensity];
}

/** Reynolds numbers, on the reference length, that cover full size, tunnel, plan and readings. */
function predictedReynolds({ model, fullScale, facility, reference, plan, runs }: TunnelCase): number[] {
  const tunnelPerSpeed = reference.length / facility.fluid.kinematicViscosity;
  const fullPerSpeed = reference.length / model.scale / fullScale.fluid.kinematicViscosity;
  const speeds = (runs?.readings ?? []).flatMap((reading) =>
    reading.kind !== "model"
      ? []
      : [reading.speed || Math.sqrt((2 * (reading.dynamicPressure ?? 0)) / facility.fluid.density)],
  );
  const covered = [
    ...fullScale.speeds.map((speed) => speed * fullPerSpeed),
    ...[...speeds, ...(plan.speeds ?? [])].map((speed) => speed * tunnelPerSpeed),
  ].filter((each) => each > 0);
  const lowest = Math.max(1e3, covered.reduce((least, each) => Math.min(least, each)) / margin);
  const highest = Math.min(1e8, covered.reduce((most, each) => Math.max(most, each)) * margin);
  return Array.from({ length: predictedPoints }, (_, i) => lowest * (highest / lowest) ** (i / (predictedPoints - 1)));
}

/** A plan over the speeds that equal Reynolds numbers ask for and the tunnel has. */
function planFor(
  { facility, fullScale, model, reference, plan }: TunnelCase,
  { rows }: Similarity,
  prediction: PredictedDrag | null,
): Result<TunnelPlan> {
  const reached = rows.map(({ tunnelSpeedMetresPerSecond }) => tunnelSpeedMetresPerSecond);
  const ratio = equalReynoldsSpeedRatio(
    facility.fluid.kinematicViscosity,
    fullScale.fluid.kinematicViscosity,
    model.scale,
  );
  let slowest = Math.min(...reached);
  let fastest = Math.max(...reached);
  if (!(fastest > slowest)) {
    slowest = Math.max(facility.slowestSpeed, Math.min(slowest / 1.5, fullScale.speeds[0] * ratio));
    fastest = Math.min(facility.fastestSpeed, fastest * 1.5);
  }
  if (plan.speeds === null && !(fastest > slowest)) {
    return {
      ok: false,
      problem: {
        code: "plan",
        message: `the tunnel has no range of speeds here (${slowest.toPrecision(3)} m/s); name speeds, or another scale`,
      },
    };
  }
  return {
    ok: true,
    value: planRuns({ ...plan, slowestSpeed: slowest, fastestSpeed: fastest }, facility, reference, prediction),
  };
}
