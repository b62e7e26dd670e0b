import { runCounts } from "../../../shared/jobs/tradeoff/tradeoffRun";
import { keepText, readKeptText } from "../files/storage";
import { tradeoffBench } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import { puckCaseText, readPuckCase } from "./puckCaseText";
import type { PuckSearchState } from "./tradeoffState";

const keptName = "puck-tradeoff";

/** Keeps a search that is not done in the browser, so that it goes on after a reload; null forgets it. */
export function keepSearch(state: PuckSearchState | null): void {
  if (state === null) {
    void keepText(keptName, "");
    return;
  }
  const { inputs, run, allowed, refused, reason, seconds } = state;
  const kept = { caseText: puckCaseText(inputs, []), run, allowed, refused, reason, seconds };
  void keepText(keptName, JSON.stringify(kept));
}

/** Shows a search that an earlier visit left, paused. One that can no longer be read is forgotten. */
export async function bringBackSearch(): Promise<void> {
  const text = await readKeptText(keptName);
  if (text === null || text === "" || tradeoffBench.value.status !== "idle") return;
  try {
    const { caseText, ...kept } = JSON.parse(text) as Omit<PuckSearchState, "inputs" | "theCase"> & {
      readonly caseText: string;
    };
    const reading = readPuckCase(caseText);
    if (!reading.ok) return;
    const theCase = puckCaseOf(reading.value.inputs, []);
    if (!theCase.ok) return;
    const search = { ...kept, inputs: reading.value.inputs, theCase: theCase.value };
    if (runCounts(search.run).done === 0) return;
    tradeoffBench.value = { status: "paused", search, workers: 0, problem: null };
  } catch {
    keepSearch(null);
  }
}
