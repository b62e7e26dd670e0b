import type { CauseSuggestion } from "../../../shared/jobs/evidence/causeSteps";
import type { ComparisonRow } from "../../../shared/jobs/evidence/comparisonResult";
import type { Problem } from "../../../shared/result";
import type { MeasuredAnswer } from "../../../workers/measurementWork";
import { initialTask, type TaskState } from "../view/taskState";
import type { CompareInputs, MeasuredSetInputs } from "./compareInputs";

/** What is known of one set; it belongs to exactly the set that it was asked for. */
export interface SetAnswer {
  readonly answer: MeasuredAnswer | null;
  readonly problems: readonly Problem[];
  readonly search: TaskState<MeasuredSetInputs, readonly CauseSuggestion[]>;
  /** A cause that is shown beside the stated settings, with its points; null for none. */
  readonly shown: { readonly cause: CauseSuggestion; readonly rows: readonly ComparisonRow[] } | null;
}

export const noAnswer: SetAnswer = { answer: null, problems: [], search: initialTask, shown: null };

export type SetAnswers = ReadonlyMap<MeasuredSetInputs, SetAnswer>;

/** The set that is looked at: the chosen one, else the first. */
export function selectedSet({ sets }: CompareInputs, selected: string | null): MeasuredSetInputs | null {
  return sets.find(({ name }) => name === selected) ?? sets[0] ?? null;
}

export function answerOf(answers: SetAnswers, set: MeasuredSetInputs | null): SetAnswer {
  return (set === null ? undefined : answers.get(set)) ?? noAnswer;
}
