import type { Regime } from "../../engine/solution";
import type { Applicability } from "../../engine/trust/applicability";
import type { PuckApplicability } from "../puck/public";
import type { RegimeFactor } from "./carriedCorrection";
import type { CauseSuggestion } from "./causeSteps";
import type { MeasurementKind, SpeedDirection } from "./measurement";
import type { MeasuredDesign } from "./measurementCase";
import type { RegimeBias } from "./regimeBias";

/** One measured point against the prediction; keys are those of the JSON and CSV output. null: not there. */
export interface ComparisonRow {
  readonly set: string;
  readonly reynolds: number;
  readonly direction: SpeedDirection | null;
  readonly measuredDragCoefficient: number;
  /** k = 2, about 95 %; null where no uncertainty was stated. */
  readonly measuredExpandedUncertainty: number | null;
  readonly predictedDragCoefficient: number | null;
  /** 90 % band. */
  readonly predictedLow: number | null;
  readonly predictedHigh: number | null;
  readonly regime: Regime | null;
  /** Measured - predicted. */
  readonly residual: number | null;
  /** Over the predicted one, %. */
  readonly residualPercent: number | null;
  readonly normalisedError: number | null;
  readonly exceedsBothBands: boolean | null;
  readonly measuredStrouhal: number | null;
  readonly predictedStrouhal: number | null;
  readonly measuredBasePressureCoefficient: number | null;
  readonly predictedBasePressureCoefficient: number | null;
  readonly measuredSeparationAngleDegrees: number | null;
  readonly predictedSeparationAngleDegrees: number | null;
  readonly applicability: Applicability | PuckApplicability | null;
  readonly applicabilityReason: string | null;
}

/** What the prediction was made with. */
export interface ComparedSettings {
  readonly turbulencePercent: number;
  readonly sandGrainRoughnessRatio: number;
  /** Length / width of a body with two free ends; null for an endless one. */
  readonly lengthToWidth: number | null;
  /** Model width / tunnel height whose effect is in the values; 0 for none. */
  readonly blockageRatio: number;
}

/** A measurement set against the prediction. Plain data. */
export interface SetResult {
  readonly name: string;
  readonly kind: MeasurementKind;
  readonly source: string;
  readonly note: string | null;
  /** Name of what was measured. */
  readonly section: string;
  readonly design: MeasuredDesign["kind"];
  /** m, of a puck its diameter; null where the design could not be solved. */
  readonly referenceWidth: number | null;
  /** What the source's values are on, and what all are shown on. */
  readonly referenceText: string;
  readonly shownOn: string;
  readonly settings: ComparedSettings;
  /** What had to be assumed, and rows that were passed over. */
  readonly remarks: readonly string[];
  readonly rows: readonly ComparisonRow[];
  readonly biases: readonly RegimeBias[];
  readonly comparedCount: number;
  readonly exceedingCount: number;
  readonly beyondOneCount: number;
  /** The outcome in one sentence. */
  readonly verdict: string;
  /** Ranked; empty where there is nothing to explain or none were looked for. */
  readonly causes: readonly CauseSuggestion[];
  /** Measured / predicted by regime, certain enough to be carried; empty where none is. */
  readonly factors: readonly RegimeFactor[];
  /** Why regimes have no factor. */
  readonly factorsLeftOut: readonly string[];
  /** Why the design could not be solved; null when all is well. */
  readonly problem: string | null;
}

/** One result of the case with a measured offset carried to it, or the reason why it is not. */
export interface CarriedRow {
  readonly section: string;
  readonly incidenceDegrees: number;
  readonly reynolds: number;
  readonly branch: "rising" | "falling";
  readonly sandGrainRoughnessRatio: number;
  readonly turbulencePercent: number;
  readonly dragCoefficient: number;
  readonly correctedDragCoefficient: number | null;
  readonly correctedLow: number | null;
  readonly correctedHigh: number | null;
  /** The label of the correction, or why there is none. */
  readonly label: string;
}

/** Prediction against measurement: what a measurements block yields. */
export interface ComparisonResult {
  readonly sets: readonly SetResult[];
  /** Empty where no offset is carried. */
  readonly carried: readonly CarriedRow[];
  /** To be kept in mind with every part of it. */
  readonly cautions: readonly string[];
}
