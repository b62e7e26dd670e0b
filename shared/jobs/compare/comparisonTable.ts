import { type TextColumn, textTable } from "../../tables/textTable";
import type { ComparedCondition, Comparison } from "./comparison";

const columns: readonly TextColumn<Comparison>[] = [
  { title: "condition", unit: "", isText: true, cell: ({ condition }) => conditionText(condition) },
  { title: "first", unit: "", isText: true, cell: ({ first }) => first },
  { title: "change", unit: "%", cell: ({ changePercent }) => signed(changePercent?.expected) },
  { title: "5 %", unit: "%", cell: ({ changePercent }) => signed(changePercent?.low) },
  { title: "95 %", unit: "%", cell: ({ changePercent }) => signed(changePercent?.high) },
  { title: "P less", unit: "", cell: ({ probabilityLess }) => probabilityLess?.toFixed(2) ?? "-" },
  { title: "", unit: "", isText: true, cell: ({ decided, problem }) => problem ?? decided ?? "-" },
];

/** The comparisons as text for people. */
export function comparisonTable(comparisons: readonly Comparison[]): string {
  if (comparisons.length === 0) return "Nothing to compare: the case has one section.";
  const [{ second, condition }] = comparisons;
  return [
    `Compared with ${second}: change of the ${condition.compared}, by the engine's errors against published values, in draws that all sections share.`,
    'Decided where the probability of less drag is 0.9 or more ("less") or 0.1 or less ("more").',
    ...textTable(columns, comparisons),
    ...rankingLines(comparisons),
  ].join("\n");
}

function rankingLines(comparisons: readonly Comparison[]): string[] {
  const seen = new Set<Comparison["ranking"]>();
  return comparisons.flatMap(({ condition, ranking }) => {
    if (ranking === null || seen.has(ranking)) return [];
    seen.add(ranking);
    const parts = [...ranking]
      .sort((a, b) => b.probabilityBest - a.probabilityBest)
      .map(
        ({ name, probabilityBest, expectedRegretPercent }) =>
          `${name} ${probabilityBest.toFixed(2)} (regret ${expectedRegretPercent.toFixed(1)} %)`,
      );
    return [`Least drag, ${conditionText(condition)}, with probability: ${parts.join(", ")}.`];
  });
}

function conditionText(condition: ComparedCondition): string {
  if (condition.conditionCount > 1) return `any of ${condition.conditionCount}`;
  const { speedMetresPerSecond: speed, reynolds, turbulencePercent: turbulence } = condition;
  const roughness =
    condition.sandGrainRoughnessMetres === null
      ? `ks/D ${short(condition.sandGrainRoughnessRatio)}`
      : `ks ${short(condition.sandGrainRoughnessMetres * 1e6)} µm`;
  return [
    speed === null ? `Re ${short(reynolds)}` : `${short(speed)} m/s`,
    roughness,
    `Tu ${short(turbulence)} %`,
  ].join(", ");
}

function short(value: number | null): string {
  return value === null ? "-" : String(Number(value.toPrecision(3)));
}

function signed(value: number | undefined): string {
  if (value === undefined) return "-";
  const text = value.toFixed(1);
  return value > 0 ? `+${text}` : text;
}
