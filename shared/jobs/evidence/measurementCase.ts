import type { Contour } from "../../engine/geometry/contour";
import type { PlacedSection } from "../../engine/section/placedSection";
import type { HeldPuck } from "../puck/public";
import type { MeasurementSet } from "./measurement";

/** What was measured: a section across the stream, or a puck in one attitude. */
export type MeasuredDesign =
  | {
      readonly kind: "section";
      readonly placed: PlacedSection<Contour>;
    }
  | ({ readonly kind: "puck" } & HeldPuck);

/** A measurement set with its design, ready to be held against the engine. */
export interface CaseMeasurement {
  readonly set: MeasurementSet;
  readonly note: string | null;
  /** Name of the design in results. */
  readonly designName: string;
  readonly design: MeasuredDesign;
  /** What the set's own values were on. */
  readonly referenceText: string;
  /** What they were put on, as the prediction is. */
  readonly shownOn: string;
  /** True where the points are those of the case's tunnel test: the set has none until that is reduced. */
  readonly fromTunnel: boolean;
  /** Rows of its table that were passed over, in sentences. */
  readonly skipped: readonly string[];
}

/** The measurements of a case. */
export interface MeasurementCase {
  readonly measurements: readonly CaseMeasurement[];
  readonly findCauses: boolean;
  /** Name of the set whose offset is carried to the case's sections; null for none. */
  readonly carriedSet: string | null;
}
