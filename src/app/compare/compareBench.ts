import { freeName } from "../store/freeName";
import { Bench, type BenchState } from "../view/bench";
import { type CompareInputs, type MeasuredSetInputs, noMeasurements } from "./compareInputs";
import { noAnswer, type SetAnswer, type SetAnswers, selectedSet } from "./setAnswer";

/** What the view of measurements works on and what is known of it. */
export interface CompareState extends BenchState<CompareInputs> {
  /** Name of the set that is looked at. */
  readonly selected: string | null;
  readonly answers: SetAnswers;
}

export const compareBench = new Bench<CompareInputs, CompareState>(noMeasurements, {
  selected: null,
  answers: new Map(),
});

/** Adds a set under a name that no other has, and looks at it. */
export function addSet(set: MeasuredSetInputs): void {
  const { sets } = compareBench.present;
  const name = freeName(
    set.name,
    sets.map((one) => one.name),
  );
  compareBench.change({ sets: [...sets, { ...set, name }] });
  compareBench.patch({ selected: name });
}

/** Replaces a set; a new name follows to the carried offset and to what is looked at. */
export function replaceSet(old: MeasuredSetInputs, next: MeasuredSetInputs): void {
  const { sets, carriedSet } = compareBench.present;
  const isSelected = selectedSet(compareBench.present, compareBench.value.selected) === old;
  compareBench.change({
    sets: sets.map((set) => (set === old ? next : set)),
    carriedSet: carriedSet === old.name ? next.name : carriedSet,
  });
  if (isSelected) compareBench.patch({ selected: next.name });
}

export function removeSet(old: MeasuredSetInputs): void {
  const { sets, carriedSet } = compareBench.present;
  compareBench.change({
    sets: sets.filter((set) => set !== old),
    carriedSet: carriedSet === old.name ? null : carriedSet,
  });
}

export function updateAnswer(set: MeasuredSetInputs, change: Partial<SetAnswer>): void {
  const answers = new Map(compareBench.value.answers);
  answers.set(set, { ...(answers.get(set) ?? noAnswer), ...change });
  compareBench.patch({ answers });
}
