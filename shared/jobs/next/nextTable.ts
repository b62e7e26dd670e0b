import { type TextColumn, textTable } from "../../tables/textTable";
import { conditionText } from "../compare/public";
import type { MeasurementWorth, NextResult } from "./nextResult";

const columns: readonly TextColumn<MeasurementWorth>[] = [
  { title: "measurement", unit: "", isText: true, cell: ({ name }) => name },
  { title: "s", unit: "%", cell: ({ standardUncertaintyPercent }) => short(standardUncertaintyPercent) },
  { title: "cost", unit: "", cell: ({ cost }) => short(cost) },
  { title: "regret falls", unit: "%", cell: ({ regretFallPercent }) => short(regretFallPercent) },
  { title: "per cost", unit: "%", cell: ({ regretFallPerCost }) => short(regretFallPerCost) },
  { title: "shows best", unit: "", cell: ({ decidesBestProbability }) => decidesBestProbability?.toFixed(2) ?? "-" },
  { title: "", unit: "", isText: true, cell: ({ sentence }) => sentence },
];

/** What to test next, as text for people. */
export function nextTable(result: NextResult): string {
  const { condition, ranking, choice, regretPercent, pairs, measurements } = result;
  if (condition === null || choice === null || regretPercent === null) return `What to test next: ${result.problem}.`;
  const open = pairs.filter(({ decided }) => decided === "not decided");
  const openText = open.map(
    ({ first, second, probabilityLess }) => `${first} against ${second} (P less ${probabilityLess.toFixed(2)})`,
  );
  return [
    `What to test next, for the least drag: ${conditionText(condition)}.`,
    `Without a further measurement: choose ${choice}; expected regret ${short(regretPercent)} % of the least drag.`,
    `Probability of the least drag: ${ranking.map(({ name, probabilityBest }) => `${name} ${probabilityBest.toFixed(2)}`).join(", ")}.`,
    open.length === 0 ? "Every pair is decided." : `Not decided: ${openText.join(", ")}.`,
    ...textTable(columns, measurements),
    `${result.draws} draws, ${result.simulations} simulated outcomes of each measurement, seed ${result.seed}.`,
  ].join("\n");
}

function short(value: number | null): string {
  return value === null ? "-" : String(Number(value.toPrecision(2)));
}
