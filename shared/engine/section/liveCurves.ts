import type { FlowCondition } from "../condition";
import type { ConditionOutcome } from "../solution";
import { traceDragCurve } from "../solve/dragCurve";
import { solveCondition } from "../solve/solveCondition";
import { curveBands } from "../trust/curveBands";
import type { JudgedDragBand } from "../trust/dragBand";
import { liveCondition } from "./liveCondition";
import type { LiveRequest } from "./liveRequest";
import type { LiveShape } from "./liveShape";
import { branchRow, type ResultRow } from "./resultRow";

/**
 * Rows of the request's section over Reynolds numbers, everything else as in the request.
 * @param reynoldsNumbers  rising
 * @param withBands  bands take as long again as the curve itself
 */
export function liveDragCurve(
  shape: LiveShape,
  request: LiveRequest,
  reynoldsNumbers: readonly number[],
  withBands = true,
): ResultRow[] {
  const base = liveCondition(request, shape.width);
  const conditions = reynoldsNumbers.map((reynolds): FlowCondition => ({ ...base, reynolds }));
  const outcomes = traceDragCurve(shape.prepared, conditions);
  const bands = withBands ? curveBands(shape.prepared, conditions, outcomes) : outcomes.map(() => []);
  return outcomes.flatMap((outcome, i) => rows(shape, request, conditions[i], outcome, bands[i]));
}

/**
 * Rows of the request's section over relative roughness, everything else as in the request. Without bands, which would
 * take two more solutions for every row.
 */
export function liveRoughnessCurve(shape: LiveShape, request: LiveRequest, ratios: readonly number[]): ResultRow[] {
  const base = liveCondition(request, shape.width);
  return ratios.flatMap((sandGrainRoughnessRatio) => {
    const condition = { ...base, sandGrainRoughnessRatio };
    return rows(shape, request, condition, solveCondition(shape.prepared, condition), []).slice(0, 1);
  });
}

/** The row of the request itself on the rising branch. */
export function liveRow(shape: LiveShape, request: LiveRequest): ResultRow {
  const condition = liveCondition(request, shape.width);
  const outcome = solveCondition(shape.prepared, condition);
  const [bands] = curveBands(shape.prepared, [condition], [outcome]);
  return rows(shape, request, condition, outcome, bands)[0];
}

/** The rising branch, and the falling one where it differs. */
function rows(
  shape: LiveShape,
  request: LiveRequest,
  condition: FlowCondition,
  outcome: ConditionOutcome,
  bands: readonly JudgedDragBand[],
): ResultRow[] {
  const about = {
    section: shape.nodes.name,
    sweep: null,
    incidenceDegrees: (request.incidence * 180) / Math.PI,
    floorGapMetres: request.floorGap,
    reynolds: condition.reynolds,
    speed: (condition.reynolds * request.kinematicViscosity) / shape.width,
    density: request.density,
    sandGrainRoughnessRatio: condition.sandGrainRoughnessRatio,
    turbulencePercent: condition.turbulenceIntensity * 100,
    referenceWidth: shape.width,
    panelCount: shape.nodes.count,
  };
  const rising = branchRow(about, outcome, "rising", bands);
  return outcome.rising === outcome.falling ? [rising] : [rising, branchRow(about, outcome, "falling", bands)];
}
