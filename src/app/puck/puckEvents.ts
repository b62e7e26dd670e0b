import type { HandoffRequest } from "../../../shared/jobs/handoff/handoffFile";
import type { PuckCase } from "../../../shared/jobs/puck/puckCase";
import type { MemberRequest } from "./puckAnswers";
import type { PuckInputs, PuckMake } from "./puckInputs";

declare global {
  /** What the components of the puck view ask of it. */
  interface PageEvents {
    /** The inputs as a person has changed them. */
    "puck-change": Partial<PuckInputs>;
    /** Keeps a puck for comparison, or works on it while the candidate is kept. */
    "puck-pin": PuckMake;
    "puck-work-on": PuckMake;
    /** Id of the pin that is to go, or that is to change places with the candidate. */
    "puck-unpin": number;
    "puck-swap": number;
    /** The candidate is to be the baseline. */
    "puck-baseline": undefined;
    /** Sizes the core for the wanted mass; counts made pucks inside the rules. */
    "puck-job": "size" | "count";
    "puck-member": MemberRequest;
    /** Starts or ends the choice between the pucks, or opens its demonstration. */
    "puck-choose": "start" | "cancel" | "demo";
    "puck-search": "start" | "pause" | "resume" | "cancel";
    "puck-handoff": {
      readonly settings: PuckCase["handoff"];
      readonly request: HandoffRequest;
      /** How the wanted file's name ends. */
      readonly ending: string;
      readonly mediaType: string;
    };
    /** Saves the view's case as a file. */
    "puck-save": undefined;
  }
}
