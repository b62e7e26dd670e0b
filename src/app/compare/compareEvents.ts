import type { CauseSuggestion } from "../../../shared/jobs/evidence/causeSteps";
import type { MeasuredSetInputs } from "./compareInputs";
import type { ImportDraft } from "./importDraft";

declare global {
  /** What the components of the view of measurements ask of it. */
  interface PageEvents {
    "compare-add": MeasuredSetInputs;
    "compare-replace": { readonly old: MeasuredSetInputs; readonly next: MeasuredSetInputs };
    "compare-remove": MeasuredSetInputs;
    /** Name of the set that is to be looked at. */
    "compare-select": string;
    "compare-demo": undefined;
    "compare-draft": ImportDraft;
    /** Looks for settings that would explain a set's disagreement. */
    "compare-search": MeasuredSetInputs;
    "compare-stop": undefined;
    /** Lays a cause over the plots; null takes it away. */
    "compare-cause": { readonly set: MeasuredSetInputs; readonly cause: CauseSuggestion | null };
    /** Name of the set whose offset is carried; null for none. */
    "compare-carry": string | null;
  }
}
