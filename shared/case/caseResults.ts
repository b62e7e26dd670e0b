import type { FluidProperties } from "../engine/fluid/fluidSpec";
import type { ResultRow } from "../engine/section/resultRow";
import type { ComparisonResult } from "../jobs/evidence/comparisonResult";
import type { PuckResult } from "../jobs/puck/puckcase/puckResult";
import type { TrialResult } from "../jobs/trial/trialResult";
import type { TunnelResult } from "../jobs/tunnel/tunnelResult";

/** The version of the results document, the value of its key "wakewrightResults". */
export const resultsVersion = 1;

/** Everything that a case yields: the JSON document of the command line. Plain data. */
export interface CaseResults {
  readonly wakewrightResults: typeof resultsVersion;
  readonly title: string;
  readonly note: string | null;
  readonly generatedBy: string;
  readonly fluid: FluidProperties | null;
  /** What to keep in mind before anyone relies on a number. */
  readonly cautions: readonly string[];
  readonly results: readonly ResultRow[];
  /** One for every puck of the case, baselines first; left out of a case without pucks. */
  readonly pucks?: readonly PuckResult[];
  /** Prediction against measurement; left out of a case without measurements. */
  readonly comparison?: ComparisonResult;
  /** The tunnel test: similarity, plan, reduced runs; left out of a case without one. */
  readonly tunnel?: TunnelResult;
  /** The player trial: plan, rankings and what they show; left out of a case without one. */
  readonly trial?: TrialResult;
  /** What did not converge or could not be prepared, each once. */
  readonly problems: readonly string[];
}
