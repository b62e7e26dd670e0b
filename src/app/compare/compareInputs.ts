import type { SectionDocument } from "../../../shared/document/sectionDocument";
import type { MeasurementSetDocument } from "../../../shared/jobs/evidence/measurementBlockDocument";

/** A measurement set of the page: a section stands in the set itself, so that the set is whole. */
export type MeasuredSetInputs = Omit<MeasurementSetDocument, "section"> & {
  readonly section?: SectionDocument | undefined;
};

/** What the view works on, the part of a case file that is its own. Plain data. */
export interface CompareInputs {
  readonly title: string;
  readonly sets: readonly MeasuredSetInputs[];
  /** Name of the set whose offset is carried to the section view; null for none. */
  readonly carriedSet: string | null;
  /** Whether the command line looks for causes, where the case says it. */
  readonly likelyCauses?: boolean | undefined;
}

export const noMeasurements: CompareInputs = { title: "Measurements", sets: [], carriedSet: null };
