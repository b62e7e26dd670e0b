import type { FluidSpec } from "../../engine/fluid/fluidSpec";
import type { FirstOrderUncertainty } from "../../statistics/firstOrder";
import type { MonteCarloUncertainty } from "../../statistics/monteCarlo";
import type { BlockageMethod, BlockageRange } from "./blockage";
import type { StatedCorrelation } from "./correlationFaults";
import type { SpeedDirection } from "./predictedDrag";
import type { StatedUncertainties } from "./statedUncertainties";
import type { TunnelBalance } from "./tunnelFacility";
import type { TunnelReference, TunnelShape } from "./tunnelShape";

/** How a test is reduced. */
export interface ReductionSetting {
  readonly shape: TunnelShape;
  /** At the model's size. */
  readonly reference: TunnelReference;
  readonly fluidSpec: FluidSpec;
  readonly balance: TunnelBalance;
  readonly blockageRatio: number;
  /** The correction that the results are reported with. */
  readonly correction: BlockageMethod;
  readonly stated: StatedUncertainties;
  readonly correlations: readonly StatedCorrelation[];
  /** "perPoint": each point's own scatter; "pooled": one scatter of force for all points. */
  readonly repeatability: "perPoint" | "pooled";
  readonly coverage: number;
  readonly samples: number;
  readonly seed: number;
}

/** One correction of one point. */
export interface CorrectedPoint {
  readonly method: BlockageMethod;
  readonly reynolds: number;
  readonly dragCoefficient: number;
  readonly expandedUncertainty: number;
}

/** One speed in one direction, reduced. Coefficients are on the named reference area. */
export interface ReducedPoint {
  readonly direction: SpeedDirection;
  readonly nominalSpeedMetresPerSecond: number;
  readonly repeats: number;
  readonly rows: readonly number[];
  readonly speedMetresPerSecond: number;
  readonly dynamicPressurePascals: number;
  readonly kinematicViscositySquareMetresPerSecond: number;
  readonly densityKilogramsPerCubicMetre: number;
  /** Force less zero and support. */
  readonly netForceNewtons: number;
  readonly reynolds: number;
  readonly reynoldsExpandedUncertainty: number;
  readonly dragCoefficient: number;
  readonly firstOrder: FirstOrderUncertainty;
  readonly monteCarlo: MonteCarloUncertainty | null;
  /** Whether the Monte Carlo interval confirms the first-order one (JCGM 101:2008, clause 8); null without one. */
  readonly isFirstOrderConfirmed: boolean | null;
  /** All methods that have a meaning here, the reported one among them. */
  readonly corrections: readonly CorrectedPoint[];
}

export interface TunnelReduction {
  readonly blockageRatio: number;
  readonly correction: BlockageMethod;
  readonly ranges: Readonly<Record<BlockageMethod, BlockageRange>>;
  readonly zeroCount: number;
  readonly largestZeroStepNewtons: number;
  readonly driftAlong: "time" | "order";
  readonly tareReadings: number;
  /** Rising first, each by rising speed. */
  readonly points: readonly ReducedPoint[];
  readonly notes: readonly string[];
}
