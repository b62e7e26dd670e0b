import type { CaseResults } from "../../../shared/case/caseResults";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { Problem } from "../../../shared/result";

export type CaseRunStatus = "idle" | "running" | "done" | "cancelled" | "failed";

/** The case file that is open and how far it has been run. Rows of a run that was cancelled stay. */
export interface CaseRun {
  readonly fileName: string;
  readonly title: string;
  readonly text: string;
  readonly status: CaseRunStatus;
  readonly done: number;
  readonly total: number;
  /** What was done last. */
  readonly label: string;
  readonly rows: readonly ResultRow[];
  readonly results: CaseResults | null;
  readonly problems: readonly Problem[];
}

export const noCase: CaseRun = {
  fileName: "",
  title: "",
  text: "",
  status: "idle",
  done: 0,
  total: 0,
  label: "",
  rows: [],
  results: null,
  problems: [],
};
