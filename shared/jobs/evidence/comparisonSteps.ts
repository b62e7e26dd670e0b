import { type PreparedShape, prepareShape } from "../../engine/section/prepareShape";
import type { ResultRow } from "../../engine/section/resultRow";
import type { MeasuredCurve } from "../../engine/trust/learnErrors";
import { problem, type Result } from "../../result";
import type { SolvedShape } from "../jobBlock";
import { type CauseSuggestion, causeCaution, causeSteps } from "./causeSteps";
import { compareSet } from "./compareSet";
import type { CarriedRow, ComparisonResult, SetResult } from "./comparisonResult";
import { statedSettings } from "./flowSettings";
import { type TunnelPoints, withTunnelPoints } from "./fromTunnel";
import { learnedRows } from "./learnedRows";
import { type MeasuredBody, measuredSection } from "./measuredBody";
import { measuredCorrection } from "./measuredCorrection";
import { measuredCurve } from "./measuredCurves";
import { measuredPuck } from "./measuredPuck";
import type { MeasurementSet } from "./measurement";
import type { CaseMeasurement, MeasuredDesign, MeasurementCase } from "./measurementCase";
import { comparedSetResult, failedSetResult } from "./setResult";

/** One step of a comparison done. */
export interface ComparisonStep {
  readonly done: number;
  readonly total: number;
  readonly label: string;
}

/** Parts that the progress of one set counts: solved, compared, and its causes in as many parts as there are causes. */
const partsOfSet = 10;
const partsBeforeCauses = 2;

/** How many steps comparisonSteps counts. */
export function comparisonStepCount({ measurements }: MeasurementCase): number {
  return measurements.length * partsOfSet;
}

/** Said with every carried correction. */
const carriedCaution =
  "What a measurement teaches of designs that were not measured is the joint model's: near designs move and narrow, far ones hardly. It is given beside the engine's own result, never in its place.";

/**
 * Holds every set of a case against the engine, one part per `next()`.
 * @param results of the case's own sections, which an offset may be carried to
 * @param shapes  the sections that they are of
 * @param onCurve called with what each set teaches of the engine's errors
 * @param tunnel  the reduced test of the case, for sets that take its points; null without one
 */
export function* comparisonSteps(
  theCase: MeasurementCase,
  results: readonly ResultRow[],
  shapes: readonly SolvedShape[],
  tunnel: TunnelPoints | null = null,
  onCurve: (curve: MeasuredCurve) => void = () => {},
): Generator<ComparisonStep, ComparisonResult> {
  const total = comparisonStepCount(theCase);
  const sets: SetResult[] = [];
  let carried: CarriedRow[] = [];
  for (const [i, stated] of theCase.measurements.entries()) {
    const measurement = tunnel === null ? stated : withTunnelPoints(stated, tunnel);
    const { set } = measurement;
    const step = (part: number, label: string): ComparisonStep => ({ done: i * partsOfSet + part, total, label });
    const prepared = set.points.length === 0 ? noPoints : prepareMeasured(measurement);
    yield step(1, `prepared ${measurement.designName}`);
    if (!prepared.ok) {
      sets.push(failedSetResult(measurement, prepared.problem.message));
      yield step(partsOfSet, `could not compare ${set.name}`);
      continue;
    }
    const comparison = compareSet(prepared.value, set);
    yield step(partsBeforeCauses, `compared ${set.name}`);
    let causes: CauseSuggestion[] = [];
    if (theCase.findCauses) {
      const search = causeSteps(prepared.value, set, comparison);
      for (;;) {
        const trial = search.next();
        if (trial.done === true) {
          causes = trial.value;
          break;
        }
        const share = (partsOfSet - partsBeforeCauses) * (trial.value.done / trial.value.total);
        yield step(partsBeforeCauses + Math.floor(share), `${set.name}: ${trial.value.label}`);
      }
    }
    const curve = measuredCurve(prepared.value, set, comparison);
    if (curve !== null) onCurve(curve);
    const correction = measuredCorrection(set, comparison, prepared.value.description);
    if (set.name === theCase.carriedSet) {
      carried = learnedRows(
        results,
        shapes,
        curve,
        `"${set.name}" is not of a section; only sections learn from a set.`,
      );
    }
    sets.push(
      comparedSetResult(
        measurement,
        prepared.value.width,
        comparison,
        causes,
        correction.ok ? correction.value : { factors: [], leftOut: [correction.problem.message] },
      ),
    );
    yield step(partsOfSet, `done with ${set.name}`);
  }
  const cautions = [
    ...(sets.some(({ causes }) => causes.length > 0) ? [causeCaution] : []),
    ...(theCase.carriedSet === null ? [] : [carriedCaution]),
  ];
  return { sets, carried, cautions };
}

const noPoints = problem("no-points", "the tunnel test of the case yielded no points to compare");

/** Solves the design of a measurement as far as it does not depend on the stream. */
export function prepareMeasured({ set, design }: CaseMeasurement): Result<MeasuredBody> {
  if (design.kind === "puck") return measuredPuck(design);
  const shape = preparedShape(set, design);
  return shape.ok ? { ok: true, value: measuredSection(shape.value) } : shape;
}

function preparedShape(
  set: MeasurementSet,
  { placed }: Extract<MeasuredDesign, { kind: "section" }>,
): Result<PreparedShape> {
  const { turbulenceIntensity, sandGrainRoughnessRatio } = statedSettings(set.conditions);
  const slowest = Math.min(...set.points.map(({ reynolds }) => reynolds));
  return prepareShape(placed, { reynolds: slowest, turbulenceIntensity, sandGrainRoughnessRatio });
}
