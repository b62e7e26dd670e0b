import type { Design } from "../../../shared/case/design";
import type { FluidProperties } from "../../../shared/engine/fluid/fluidSpec";
import type { LiveSolution } from "../../../shared/engine/section/solveLive";
import type { SectionState } from "../../../shared/engine/solution";
import type { LiveCurves } from "../../../workers/solverApi";

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

/** The state on the branch that a slowly rising speed sits on; null when nothing converged. */
export function risingState(solution: LiveSolution): SectionState | null {
  const { states, rising } = solution.outcome;
  return rising === null ? null : states[rising];
}

/** Pins beyond this would only hide each other. */
export const mostPins = 12;
