import { type Design, demoDesign } from "../../../shared/case/design";
import type { FluidProperties } from "../../../shared/engine/fluid/fluidSpec";
import type { LiveSolution } from "../../../shared/engine/section/solveLive";
import type { SectionState } from "../../../shared/engine/solution";
import type { Problem } from "../../../shared/result";
import type { LiveCurves } from "../../../workers/solverApi";
import { amend, type History, record, redo, startHistory, undo } from "./history";
import { Notifier } from "./notifier";
import { recordTyped } from "./typing";

/** A solved design: what was asked, in which fluid, and what came out. */
export interface Solved {
  readonly design: Design;
  readonly fluid: FluidProperties;
  readonly solution: LiveSolution;
}

/** A candidate that is kept for comparison. */
export interface Pin {
  readonly id: number;
  readonly name: string;
  readonly design: Design;
  /** null until it is solved, after it came from a link or from storage. */
  readonly solved: Solved | null;
  readonly curves: LiveCurves | null;
}

/** The design that is worked on and what is known of it. Plain data. */
export interface Workbench {
  readonly history: History<Design>;
  /** The last good solution; it stays while a newer one is computed or cannot be. */
  readonly solved: Solved | null;
  readonly curves: LiveCurves | null;
  /** Why the present design has no solution; null when all is well. */
  readonly problem: Problem | null;
  /** True while a newer solution is on its way or impossible. */
  readonly stale: boolean;
  readonly curvesStale: boolean;
  /** Complete solutions drawn since the page was opened. */
  readonly solveCount: number;
  readonly pins: readonly Pin[];
  /** True while a handle is held. */
  readonly dragging: boolean;
}

export function startWorkbench(design: Design): Workbench {
  return {
    history: startHistory(design),
    solved: null,
    curves: null,
    problem: null,
    stale: true,
    curvesStale: true,
    solveCount: 0,
    pins: [],
    dragging: false,
  };
}

export const workbench = new Notifier<Workbench>(startWorkbench(demoDesign));

/** The present design. */
export function presentDesign(): Design {
  return workbench.value.history.present;
}

/** Changes the design as one step of the history. */
export function changeDesign(change: Partial<Design>): void {
  const { history } = workbench.value;
  workbench.patch({ history: recordTyped(history, { ...history.present, ...change }) });
}

/** Shows another design as one step of the history; the design that the page starts with is no step to go back to. */
export function showDesign(design: Design): void {
  if (presentDesign() === demoDesign) workbench.value = startWorkbench(design);
  else changeDesign(design);
}

let dragStart: History<Design> | null = null;

/** Starts a drag: everything until its end is one step of the history. */
export function beginDrag(): void {
  dragStart = workbench.value.history;
  workbench.patch({ dragging: true });
}

export function dragDesign(change: Partial<Design>): void {
  const { history } = workbench.value;
  const next = { ...history.present, ...change };
  if (dragStart !== null && history === dragStart) {
    workbench.patch({ history: record(history, next) });
  } else {
    workbench.patch({ history: amend(history, next) });
  }
}

export function endDrag(): void {
  dragStart = null;
  workbench.patch({ dragging: false });
}

export function undoDesign(): void {
  workbench.patch({ history: undo(workbench.value.history) });
}

export function redoDesign(): void {
  workbench.patch({ history: redo(workbench.value.history) });
}

/** The state on the branch that a slowly rising speed sits on; null when nothing converged. */
export function risingState(solution: LiveSolution): SectionState | null {
  const { states, rising } = solution.outcome;
  return rising === null ? null : states[rising];
}

/** Pins beyond this would only hide each other. */
export const mostPins = 12;

/** Keeps the present design for comparison. */
export function pinPresent(): void {
  const { solved, curves, pins, stale, curvesStale } = workbench.value;
  if (solved === null || stale || pins.length >= mostPins) return;
  addPin(solved.design, solved, curvesStale ? null : curves);
}

/** Adds a candidate, named by the next letter and its section. */
export function addPin(design: Design, solved: Solved | null, curves: LiveCurves | null): void {
  const { pins } = workbench.value;
  const id = 1 + Math.max(0, ...pins.map((pin) => pin.id));
  const letter = String.fromCharCode(65 + ((id - 1) % 26));
  workbench.patch({ pins: [...pins, { id, name: `pin ${letter}`, design, solved, curves }] });
}

export function updatePin(id: number, change: Partial<Pin>): void {
  workbench.patch({ pins: workbench.value.pins.map((pin) => (pin.id === id ? { ...pin, ...change } : pin)) });
}

export function unpin(id: number): void {
  workbench.patch({ pins: workbench.value.pins.filter((pin) => pin.id !== id) });
}
