import { csvRows } from "../../tables/csvRows";
import type { ChoiceResult } from "./choiceResult";

/** One line per candidate and criterion, the likeliest first one at the top. */
export function choiceCsv({ candidates, criteria }: ChoiceResult): string {
  return csvRows(
    candidates.flatMap(({ name, probabilityFirst, confidence, winningWeights, dominatedBy, criteria: own }) =>
      own.map(({ criterion, unit, low, expected, high, value }, j) => ({
        candidate: name,
        probabilityFirst,
        confidence,
        dominatedBy: dominatedBy.map((by) => by.name).join("; "),
        criterion,
        unit,
        low,
        expected,
        high,
        valueExpected: value.expected,
        weightAllowedLow: criteria[j].weight.low,
        weightAllowedHigh: criteria[j].weight.high,
        winningWeightLow: winningWeights?.[j].low ?? null,
        winningWeightExpected: winningWeights?.[j].expected ?? null,
        winningWeightHigh: winningWeights?.[j].high ?? null,
      })),
    ),
  );
}
