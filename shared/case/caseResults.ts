import type { FluidProperties } from "../engine/fluid/fluidSpec";
import type { ResultRow } from "../engine/section/resultRow";
import type { JobOutcomes } from "./jobBlocks";

/** The version of the results document, the value of its key "wakewrightResults". */
export const resultsVersion = 1;

/** Everything that a case yields, that of its jobs included: the JSON document of the command line. Plain data. */
export interface CaseResults extends JobOutcomes {
  readonly wakewrightResults: typeof resultsVersion;
  readonly title: string;
  readonly note: string | null;
  readonly generatedBy: string;
  readonly fluid: FluidProperties | null;
  /** What to keep in mind before anyone relies on a number. */
  readonly cautions: readonly string[];
  readonly results: readonly ResultRow[];
  /** What did not converge or could not be prepared, each once. */
  readonly problems: readonly string[];
}
