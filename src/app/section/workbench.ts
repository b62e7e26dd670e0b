import { type Design, demoDesign } from "../../../shared/case/design";
import type { Problem } from "../../../shared/result";
import type { LiveCurves } from "../../../workers/solverApi";
import { amend, type History, record } from "../store/history";
import { Bench, type BenchState } from "../view/bench";
import { mostPins, type Pin, type Solved } from "./solved";

/** The design that is worked on and what is known of it. Plain data. */
export interface SectionBenchState extends BenchState<Design> {
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

class Workbench extends Bench<Design, SectionBenchState> {
  #dragStart: History<Design> | null = null;

  /** Starts a drag: everything until its end is one step of the history. */
  beginDrag(): void {
    this.#dragStart = this.value.history;
    this.patch({ dragging: true });
  }

  drag(change: Partial<Design>): void {
    const { history } = this.value;
    const next = { ...history.present, ...change };
    this.put(history === this.#dragStart ? record(history, next) : amend(history, next));
  }

  endDrag(): void {
    this.#dragStart = null;
    this.patch({ dragging: false });
  }
}

export const workbench = new Workbench(demoDesign, {
  solved: null,
  curves: null,
  problem: null,
  stale: true,
  curvesStale: true,
  solveCount: 0,
  pins: [],
  dragging: false,
});

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
