import type { CaseApi } from "../../../workers/caseApi";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import type { OutlineApi } from "../../../workers/outlineApi";
import type { PuckApi } from "../../../workers/puckApi";
import type { SolverApi } from "../../../workers/solverApi";
import { tell } from "../store/notices";
import { WatchedWorker } from "./watchedWorker";

// The bundler finds a worker's program only where its address stands in the call.

/** @param name of what stops, for the message after a crash; null where the caller says it */
export function solverWorker(name: string | null): WatchedWorker<SolverApi> {
  return watched(
    () => new Worker(new URL("../../../workers/solver.worker.ts", import.meta.url), { type: "module" }),
    name,
  );
}

/** Works on pucks. */
export function puckWorker(name: string | null): WatchedWorker<PuckApi> {
  return watched(
    () => new Worker(new URL("../../../workers/puck.worker.ts", import.meta.url), { type: "module" }),
    name,
  );
}

/** Works on tests, trials and measurements. */
export function evidenceWorker(name: string | null): WatchedWorker<EvidenceApi> {
  return watched(
    () => new Worker(new URL("../../../workers/evidence.worker.ts", import.meta.url), { type: "module" }),
    name,
  );
}

/** Reads and runs case files. */
export function caseWorker(name: string | null): WatchedWorker<CaseApi> {
  return watched(
    () => new Worker(new URL("../../../workers/case.worker.ts", import.meta.url), { type: "module" }),
    name,
  );
}

/** Reads outlines from files. */
export function outlineWorker(name: string | null): WatchedWorker<OutlineApi> {
  return watched(
    () => new Worker(new URL("../../../workers/outline.worker.ts", import.meta.url), { type: "module" }),
    name,
  );
}

const again = " and was started again. Nothing was lost.";
const notAgain =
  " and could not be started again: nothing new can be computed. What is on the page stays; save it, then reload.";

function watched<Api extends SolverApi | PuckApi | EvidenceApi | CaseApi | OutlineApi>(
  spawn: () => Worker,
  name: string | null,
): WatchedWorker<Api> {
  return new WatchedWorker<Api>(spawn, (reason, isStartedAgain) => {
    if (name !== null) tell("warning", `${name} stopped (${reason})${isStartedAgain ? again : notAgain}`);
  });
}
