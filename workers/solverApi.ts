import { transfer } from "comlink";
import { liveDragCurve, liveRoughnessCurve, liveRow, liveSketch } from "../shared/engine/section/liveCurves";
import { type PreparedShape, prepareShape } from "../shared/engine/section/prepareShape";
import type { ResultRow } from "../shared/engine/section/resultRow";
import type { SectionRequest } from "../shared/engine/section/sectionRequest";
import { type LiveDetail, type LiveSolution, solveLive } from "../shared/engine/section/solveLive";
import type { Result } from "../shared/result";
import { holdLifeline, type Lifeline } from "./lifeline";
import { transferables } from "./transferables";

export interface LiveCurves {
  readonly overReynolds: readonly ResultRow[];
  readonly overRoughness: readonly ResultRow[];
}

/** What the solver's worker does for the page. Arguments and answers are plain data; failures are values. */
export interface SolverApi extends Lifeline {
  solveNow(request: SectionRequest, detail: LiveDetail): Promise<Result<LiveSolution>>;
  /** The figures of the rising branch alone, for sweeps. */
  solveRow(request: SectionRequest): Promise<Result<ResultRow>>;
  /** The drag curve of a design on the move, by a few points. @param reynoldsNumbers rising */
  sketchCurve(request: SectionRequest, reynoldsNumbers: readonly number[]): Promise<Result<readonly ResultRow[]>>;
  traceCurves(
    request: SectionRequest,
    reynoldsNumbers: readonly number[],
    roughnessRatios: readonly number[],
    withBands: boolean,
  ): Promise<Result<LiveCurves>>;
}

/** The solver with its own memory of the last prepared shape: dragging a speed or a roughness does not prepare it again. */
export function createSolver(): SolverApi {
  let lastKey = "";
  let lastShape: Result<PreparedShape> | null = null;
  const shapeOf = (request: SectionRequest): Result<PreparedShape> => {
    const key = JSON.stringify([
      request.section,
      request.incidence,
      request.floorGap,
      request.panelCount,
      request.splitterPlate,
      request.layerMethod,
    ]);
    if (lastShape === null || key !== lastKey) {
      lastShape = prepareShape(request);
      lastKey = key;
    }
    return lastShape;
  };
  return {
    holdLifeline,
    async solveNow(request, detail) {
      const shape = shapeOf(request);
      if (!shape.ok) return shape;
      // The nodes stay here for the next solve, so the answer carries a copy of them.
      const solution = structuredClone(solveLive(shape.value, request, detail));
      return transfer({ ok: true, value: solution } as const, transferables(solution));
    },
    async solveRow(request) {
      const shape = shapeOf(request);
      return shape.ok ? { ok: true, value: liveRow(shape.value, request) } : shape;
    },
    async sketchCurve(request, reynoldsNumbers) {
      const shape = shapeOf(request);
      return shape.ok ? { ok: true, value: liveSketch(shape.value, request, reynoldsNumbers) } : shape;
    },
    async traceCurves(request, reynoldsNumbers, roughnessRatios, withBands) {
      const shape = shapeOf(request);
      if (!shape.ok) return shape;
      const overReynolds = liveDragCurve(shape.value, request, reynoldsNumbers, withBands);
      const overRoughness = liveRoughnessCurve(shape.value, request, roughnessRatios);
      return { ok: true, value: { overReynolds, overRoughness } };
    },
  };
}
