import { transfer } from "comlink";
import type { CaseResults } from "../shared/case/caseResults";
import { type CaseStep, caseSteps } from "../shared/case/caseSteps";
import { type CaseReading, readCase } from "../shared/case/readCase";
import type { ResultRow } from "../shared/case/resultRow";
import { caseToDesign, type DesignReading } from "../shared/design/caseToDesign";
import { liveDragCurve, liveRoughnessCurve, liveRow } from "../shared/live/liveCurves";
import type { LiveRequest } from "../shared/live/liveRequest";
import { type LiveShape, prepareLive } from "../shared/live/liveShape";
import { type LiveDetail, type LiveSolution, solveLive } from "../shared/live/solveLive";
import type { Problem, Result } from "../shared/result";
import { holdLifeline, type Lifeline } from "./lifeline";
import { transferables } from "./transferables";

/** A case that ran to its end, or why its file cannot be used. */
export type CaseAnswer =
  | { readonly ok: true; readonly value: CaseResults }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface LiveCurves {
  readonly overReynolds: readonly ResultRow[];
  readonly overRoughness: readonly ResultRow[];
}

/** What the solver's worker does for the page. Arguments and answers are plain data; failures are values. */
export interface SolverApi extends Lifeline {
  /** The design to start from when a case file is opened, or a message for each fault of the file. */
  readDesign(text: string, fileName: string): Promise<DesignReading>;
  /**
   * Runs a case file step by step.
   * @param onStep  called after every step; its promise is awaited, so a worker that is ended stops between steps
   */
  runCase(text: string, fileName: string, onStep: (step: CaseStep) => Promise<void>): Promise<CaseAnswer>;
  solveNow(request: LiveRequest, detail: LiveDetail): Promise<Result<LiveSolution>>;
  /** The figures of the rising branch alone, for sweeps. */
  solveRow(request: LiveRequest): Promise<Result<ResultRow>>;
  traceCurves(
    request: LiveRequest,
    reynoldsNumbers: readonly number[],
    roughnessRatios: readonly number[],
    withBands: boolean,
  ): Promise<Result<LiveCurves>>;
}

/** The solver with its own memory of the last prepared shape: dragging a speed or a roughness does not prepare it again. */
export function createSolver(): SolverApi {
  let lastKey = "";
  let lastShape: Result<LiveShape> | null = null;
  const shapeOf = (request: LiveRequest): Result<LiveShape> => {
    const key = JSON.stringify([request.section, request.incidence, request.floorGap, request.panelCount]);
    if (lastShape === null || key !== lastKey) {
      lastShape = prepareLive(request);
      lastKey = key;
    }
    return lastShape;
  };
  return {
    holdLifeline,
    async readDesign(text, fileName) {
      return caseToDesign(text, fileName);
    },
    async runCase(text, fileName, onStep) {
      const reading: CaseReading = readCase(text, fileName);
      if (!reading.ok) return { ok: false, problems: reading.problems };
      const steps = caseSteps(reading.value);
      for (;;) {
        const step = steps.next();
        if (step.done === true) return { ok: true, value: step.value };
        await onStep(step.value);
      }
    },
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
    async traceCurves(request, reynoldsNumbers, roughnessRatios, withBands) {
      const shape = shapeOf(request);
      if (!shape.ok) return shape;
      const overReynolds = liveDragCurve(shape.value, request, reynoldsNumbers, withBands);
      const overRoughness = liveRoughnessCurve(shape.value, request, roughnessRatios);
      return { ok: true, value: { overReynolds, overRoughness } };
    },
  };
}
