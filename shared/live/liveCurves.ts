import { branchRow, type ResultRow } from "../case/resultRow";
import type { FlowCondition } from "../solve/condition";
import { traceDragCurve } from "../solve/dragCurve";
import type { ConditionOutcome } from "../solve/solution";
import { solveCondition } from "../solve/solveCondition";
import { liveCondition } from "./liveCondition";
import type { LiveRequest } from "./liveRequest";
import type { LiveShape } from "./liveShape";

/**
 * Rows of the request's section over Reynolds numbers, everything else as in the request.
 * @param reynoldsNumbers  rising
 */
export function liveDragCurve(shape: LiveShape, request: LiveRequest, reynoldsNumbers: readonly number[]): ResultRow[] {
  const base = liveCondition(request, shape.width);
  const conditions = reynoldsNumbers.map((reynolds): FlowCondition => ({ ...base, reynolds }));
  return traceDragCurve(shape.prepared, conditions).flatMap((outcome, i) =>
    rows(shape, request, conditions[i], outcome),
  );
}

/** Rows of the request's section over relative roughness, everything else as in the request. */
export function liveRoughnessCurve(shape: LiveShape, request: LiveRequest, ratios: readonly number[]): ResultRow[] {
  const base = liveCondition(request, shape.width);
  return ratios.flatMap((sandGrainRoughnessRatio) => {
    const condition = { ...base, sandGrainRoughnessRatio };
    return rows(shape, request, condition, solveCondition(shape.prepared, condition)).slice(0, 1);
  });
}

/** The row of the request itself on the rising branch. */
export function liveRow(shape: LiveShape, request: LiveRequest): ResultRow {
  const condition = liveCondition(request, shape.width);
  return rows(shape, request, condition, solveCondition(shape.prepared, condition))[0];
}

/** The rising branch, and the falling one where it differs. */
function rows(
  shape: LiveShape,
  request: LiveRequest,
  condition: FlowCondition,
  outcome: ConditionOutcome,
): ResultRow[] {
  const about = {
    section: shape.nodes.name,
    sweep: null,
    incidenceDegrees: (request.incidence * 180) / Math.PI,
    reynolds: condition.reynolds,
    speed: (condition.reynolds * request.kinematicViscosity) / shape.width,
    density: request.density,
    sandGrainRoughnessRatio: condition.sandGrainRoughnessRatio,
    turbulencePercent: condition.turbulenceIntensity * 100,
    referenceWidth: shape.width,
    panelCount: shape.nodes.count,
  };
  const rising = branchRow(about, outcome, "rising");
  return outcome.rising === outcome.falling ? [rising] : [rising, branchRow(about, outcome, "falling")];
}
