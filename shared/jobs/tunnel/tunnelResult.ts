import type { DragBand } from "../../engine/trust/dragInterval";
import type { TunnelPlan } from "./plannedTest";
import type { PredictedDrag } from "./predictedDrag";
import type { TapSurvey } from "./pressureTaps";
import type { ReducedPoint, TunnelReduction } from "./reducedTest";
import type { Similarity } from "./similarity";
import type { TunnelShape } from "./tunnelShape";
import type { WakeSurveyResult } from "./wakeSurvey";

/** A reduced point beside the prediction in the tunnel's turbulence, in the same direction of speed. */
export interface TunnelPoint extends ReducedPoint {
  /** null outside the predicted range or without a prediction. */
  readonly predictedDragCoefficient: DragBand | null;
}

/** Everything that a tunnel block yields. Plain data; null where the block asks for nothing or it failed. */
export interface TunnelResult {
  readonly model: string;
  readonly shape: TunnelShape["kind"];
  readonly facility: string;
  /** What Reynolds numbers and coefficients are on, at the model's size. */
  readonly referenceLength: string;
  readonly referenceLengthMetres: number;
  readonly referenceArea: string;
  readonly referenceAreaSquareMetres: number;
  readonly similarity: Similarity;
  /** At the turbulence of full size, then at that of the tunnel; empty when nothing could be solved. */
  readonly predictions: readonly PredictedDrag[];
  readonly plan: TunnelPlan | null;
  readonly reduction: (Omit<TunnelReduction, "points"> & { readonly points: readonly TunnelPoint[] }) | null;
  readonly wakeSurvey: WakeSurveyResult | null;
  readonly pressureTaps: TapSurvey | null;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly problems: readonly string[];
}
