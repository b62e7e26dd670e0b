import type { Problem } from "../../../shared/result";
import { showTrial } from "./trialBench";
import { readTrialCase } from "./trialCaseText";

/** Shows the trial of a case file as one step of the history. @returns what is wrong; empty when it is shown */
export async function openTrialCase(_fileName: string, text: string): Promise<readonly Problem[]> {
  const reading = readTrialCase(text);
  if (!reading.ok) return reading.problems;
  showTrial(reading.value);
  return [];
}
