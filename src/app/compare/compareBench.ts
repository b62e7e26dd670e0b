import type { CauseSuggestion } from "../../../shared/jobs/evidence/causeSteps";
import type { ComparisonRow } from "../../../shared/jobs/evidence/comparisonResult";
import type { Problem } from "../../../shared/result";
import type { MeasuredAnswer } from "../../../workers/measurementWork";
import { freeName } from "../store/freeName";
import { type History, redo, startHistory, undo } from "../store/history";
import { Notifier } from "../store/notifier";
import { recordTyped } from "../store/typing";
import { type CompareInputs, type MeasuredSetInputs, noMeasurements } from "./compareInputs";

/** A search for causes. */
export type CauseSearch =
  | { readonly status: "running"; readonly done: number; readonly total: number; readonly label: string }
  | { readonly status: "done"; readonly causes: readonly CauseSuggestion[] }
  | { readonly status: "cancelled" | "failed"; readonly message: string };

/** What is known of one set; it belongs to exactly the set that it was asked for. */
export interface SetAnswer {
  readonly answer: MeasuredAnswer | null;
  readonly problems: readonly Problem[];
  readonly search: CauseSearch | null;
  /** A cause that is shown beside the stated settings, with its points; null for none. */
  readonly shown: { readonly cause: CauseSuggestion; readonly rows: readonly ComparisonRow[] } | null;
}

export const noAnswer: SetAnswer = { answer: null, problems: [], search: null, shown: null };

export interface CompareBench {
  readonly history: History<CompareInputs>;
  /** Name of the set that is looked at. */
  readonly selected: string | null;
  readonly answers: ReadonlyMap<MeasuredSetInputs, SetAnswer>;
}

export const compareBench = new Notifier<CompareBench>({
  history: startHistory(noMeasurements),
  selected: null,
  answers: new Map(),
});

export function presentComparison(): CompareInputs {
  return compareBench.value.history.present;
}

/** The set that is looked at: the chosen one, else the first. */
export function selectedSet({
  history,
  selected,
}: Pick<CompareBench, "history" | "selected">): MeasuredSetInputs | null {
  const { sets } = history.present;
  return sets.find(({ name }) => name === selected) ?? sets[0] ?? null;
}

export function answerOf({ answers }: Pick<CompareBench, "answers">, set: MeasuredSetInputs | null): SetAnswer {
  return (set === null ? undefined : answers.get(set)) ?? noAnswer;
}

/** Changes the inputs as one step of the history. */
export function changeComparison(change: Partial<CompareInputs>): void {
  const { history } = compareBench.value;
  compareBench.patch({ history: recordTyped(history, { ...history.present, ...change }) });
}

/** Adds a set under a name that no other has, and looks at it. */
export function addSet(set: MeasuredSetInputs): void {
  const { sets } = presentComparison();
  const name = freeName(
    set.name,
    sets.map((one) => one.name),
  );
  changeComparison({ sets: [...sets, { ...set, name }] });
  compareBench.patch({ selected: name });
}

/** Replaces a set; a new name follows to the carried offset and to what is looked at. */
export function replaceSet(old: MeasuredSetInputs, next: MeasuredSetInputs): void {
  const { sets, carriedSet } = presentComparison();
  const isSelected = selectedSet(compareBench.value) === old;
  changeComparison({
    sets: sets.map((set) => (set === old ? next : set)),
    carriedSet: carriedSet === old.name ? next.name : carriedSet,
  });
  if (isSelected) compareBench.patch({ selected: next.name });
}

export function removeSet(old: MeasuredSetInputs): void {
  const { sets, carriedSet } = presentComparison();
  changeComparison({
    sets: sets.filter((set) => set !== old),
    carriedSet: carriedSet === old.name ? null : carriedSet,
  });
}

export function updateAnswer(set: MeasuredSetInputs, change: Partial<SetAnswer>): void {
  const answers = new Map(compareBench.value.answers);
  answers.set(set, { ...(answers.get(set) ?? noAnswer), ...change });
  compareBench.patch({ answers });
}

export function undoComparison(): void {
  compareBench.patch({ history: undo(compareBench.value.history) });
}

export function redoComparison(): void {
  compareBench.patch({ history: redo(compareBench.value.history) });
}
