import type { PlanSettings } from "./plannedTest";
import type { SpeedDirection } from "./predictedDrag";
import type { TapReading } from "./pressureTaps";
import type { ReductionSetting } from "./reducedTest";
import type { RunReading } from "./runTable";
import type { FullScaleFlow } from "./similarity";
import type { TunnelFacility } from "./tunnelFacility";
import type { TunnelModel, TunnelReference } from "./tunnelShape";
import type { TraverseUncertainty, WakeTraverse } from "./wakeSurvey";

/** What is planned by; speeds that are null follow from equal Reynolds numbers. */
export type PlanWishes = Omit<PlanSettings, "slowestSpeed" | "fastestSpeed">;

export interface TapSetting {
  readonly taps: readonly TapReading[];
  /** What was done to the rows, in sentences. */
  readonly notes: readonly string[];
  /** Whether the other half of the section has the same pressures. */
  readonly isMirrored: boolean;
  readonly reynolds: number;
  readonly direction: SpeedDirection;
  /** Standard uncertainty of one coefficient. */
  readonly tapUncertainty: number;
  /** Fraction. */
  readonly dynamicPressureShare: number;
}

/** A tunnel block, read and checked. */
export interface TunnelCase {
  readonly facilityName: string | null;
  readonly model: TunnelModel;
  /** At the model's size. */
  readonly reference: TunnelReference;
  readonly fullScale: FullScaleFlow;
  readonly facility: TunnelFacility;
  readonly plan: PlanWishes;
  /** null without a run table. */
  readonly runs: {
    readonly readings: readonly RunReading[];
    readonly setting: ReductionSetting;
    readonly notes: readonly string[];
  } | null;
  readonly wake: { readonly traverse: WakeTraverse; readonly uncertainty: TraverseUncertainty } | null;
  readonly taps: TapSetting | null;
  /** Tables that the case only names and that were not put in place here. */
  readonly unreadTables: readonly string[];
}
