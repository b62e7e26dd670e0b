import type { Design } from "../../../shared/case/design";
import type { SectionTools } from "./sectionTools";
import type { SweepRange } from "./sweepInputs";

declare global {
  /** What the components of the section view ask of it. */
  interface PageEvents {
    /** The design as a person has changed it, as one step of the history. */
    "section-change": Partial<Design>;
    /** A handle is taken: all until it is let go is one step. */
    "section-drag-begin": undefined;
    "section-drag": Partial<Design>;
    "section-drag-end": undefined;
    /** Keeps the present design for comparison. */
    "section-pin": undefined;
    /** Id of the pin that is to go. */
    "section-unpin": number;
    "section-tools": Partial<SectionTools>;
    "section-measure": "angle" | "arc";
    /** Holds the handles inside the demonstration rules, or lets them go. */
    "section-rules": boolean;
    "section-sweep": { readonly design: Design; readonly ranges: readonly SweepRange[] };
    "section-sweep-control": "pause" | "resume" | "cancel";
    /** Runs the opened case, or cancels its run. */
    "section-case": "run" | "cancel";
  }
}
