import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { LiveSolution } from "../../../shared/engine/section/solveLive";

/** The wall and the stream of the tour, which its sliders change. */
export interface TourStream {
  readonly sandGrainRoughnessRatio: number;
  readonly turbulenceIntensity: number;
}

/** What the tour shows. */
export interface TourState {
  readonly stream: TourStream;
  /** Index of the stop. */
  readonly stop: number;
  /** The drag curve in this stream; empty until it is traced. */
  readonly curve: readonly ResultRow[];
  /** The flow at each stop; null until it is solved. */
  readonly flows: readonly (LiveSolution | null)[];
}
