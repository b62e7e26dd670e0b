import type { Problem } from "../../../shared/result";
import { record, startHistory } from "../store/history";
import { compareBench, presentComparison } from "./compareBench";
import { readCompareCase } from "./compareCaseText";
import { type CompareInputs, noMeasurements } from "./compareInputs";

/** Shows the measurements of a case file as one step of the history. @returns what is wrong; empty when they are shown */
export async function openCompareCase(_fileName: string, text: string): Promise<readonly Problem[]> {
  const reading = readCompareCase(text);
  if (!reading.ok) return reading.problems;
  showComparison(reading.value);
  return [];
}

/** The empty start is no step to go back to. */
export function showComparison(inputs: CompareInputs): void {
  const isFirst = presentComparison() === noMeasurements;
  const { history } = compareBench.value;
  compareBench.patch({ history: isFirst ? startHistory(inputs) : record(history, inputs), selected: null });
}
