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
  if (comparisons.length === 0) return "Nothing to compare: the case has one design.";
  const [{ second, condition, measuredPointCount: count }] = comparisons;
  const learned = count === 0 ? "" : `, and by ${count === 1 ? "1 point" : `${count} points`} measured by yourself`;
  return [
    `Compared with ${second}: change of the ${condition.compared}, by the engine's errors against published values${learned}, in draws that all designs share.`,
    'Decided where the probability of less drag is 0.9 or more ("less") or 0.1 or less ("more").',
    ...textTable(columns, comparisons),
    ...rankingLines(comparisons),
  ].join("\n");
}

function rankingLines(comparisons: readonly Comparison[]): string[] {
  const seen = new Set<Comparison["ranking"]>();
  const overall = comparisons.filter(({ condition }) => condition.attitude === "play");
  // Pucks are ranked over all of play; of each attitude and speed the file has it.
  return (overall.length > 0 ? overall : comparisons).flatMap(({ condition, ranking }) => {
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

/** A condition in a few words. */
export function conditionText(condition: ComparedCondition): string {
  const parts = knownParts(condition);
  const unknown = condition.unknown.map((key) => inputNames[key] ?? key);
  return [...parts, ...(unknown.length === 0 ? [] : [`${unknown.join(", ")} not known`])].join(", ");
}

const inputNames: Readonly<Record<string, string>> = {
  turbulencePercent: "turbulence",
  sandGrainRoughnessMetres: "finish",
  sandGrainRoughnessRatio: "finish",
  speedMetresPerSecond: "speed",
  reynoldsNumber: "Re",
  incidenceDegrees: "incidence",
  orientationShares: "attitudes of play",
  tolerances: "sizes as made",
};

function knownParts(condition: ComparedCondition): string[] {
  const { attitude, speedMetresPerSecond: speed, reynolds, turbulencePercent: turbulence } = condition;
  if (attitude === "play") return ["over attitudes and speeds of play"];
  if (condition.conditionCount > 1) return [`any of ${condition.conditionCount}`];
  return [
    attitude,
    speed === null ? null : `${short(speed)} m/s`,
    reynolds === null ? null : `Re ${short(reynolds)}`,
    condition.sandGrainRoughnessMetres === null ? null : `ks ${short(condition.sandGrainRoughnessMetres * 1e6)} µm`,
    condition.sandGrainRoughnessRatio === null ? null : `ks/D ${short(condition.sandGrainRoughnessRatio)}`,
    turbulence === null ? null : `Tu ${short(turbulence)} %`,
  ].filter((part) => part !== null);
}

function short(value: number | null): string {
  return value === null ? "-" : String(Number(value.toPrecision(3)));
}

function signed(value: number | undefined): string {
  if (value === undefined) return "-";
  const text = value.toFixed(1);
  return value > 0 ? `+${text}` : text;
}
