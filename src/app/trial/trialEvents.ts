import type { TrialInputs } from "./trialInputs";

declare global {
  /** What the components of the trial view ask of it. */
  interface PageEvents {
    /** The inputs as a person has changed them, checked. */
    "trial-change": Partial<TrialInputs>;
    /** Shows another trial. */
    "trial-show": TrialInputs;
    "trial-demo": undefined;
    /** What was typed into a cell of scores, right or wrong. */
    "trial-score": { readonly key: string; readonly typed: string };
    /** Id of the activity that is looked at. */
    "trial-activity": number;
    /** Text of a table of scores to be imported; empty clears it. */
    "trial-import": string;
    "trial-simulate": undefined;
    "trial-stop": undefined;
  }
}
