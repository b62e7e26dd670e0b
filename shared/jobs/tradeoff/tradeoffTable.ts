import { type TextColumn, textTable } from "../../tables/textTable";
import { type DimensionKey, dimensionTable, type FigureKey, figureCatalogue, type RuleVerdict } from "../puck/public";
import type { PuckGoalKey } from "./puckEvaluation";
import type { TradeoffMember } from "./tradeoffMember";
import type { TradeoffResults } from "./tradeoffResults";

/** A trade-off as text for people; the verdicts come last. */
export function tradeoffTable(results: TradeoffResults): string {
  const { members, goals, variables } = results;
  return [
    results.title,
    ...(results.note === null ? [] : [results.note]),
    ...results.cautions.map((caution) => `Caution: ${caution}`),
    "",
    `${methodText(results)}: ${results.evaluated} pucks from "${results.template}", drag over that of "${results.baseline.name}"; ${results.front.length} on the front, ${members.length} in full.`,
    `Free: ${variables.map(({ key, lowest, highest }) => `${dimensionTable[key].label} ${mm(lowest)} to ${mm(highest)} mm`).join("; ")}.`,
    "",
    ...textTable(memberColumns(results), members),
    ...members.flatMap((member) =>
      memberLines(
        member,
        goals.map(({ key }) => key),
      ),
    ),
    "",
    "VERDICTS, averaged over turbulences and index speeds",
    ...members.map(({ comparison }) => comparison.overall.sentence),
    ...results.problems.map((problem) => `FAILED: ${problem}`),
    results.verdict,
    "",
  ].join("\n");
}

function methodText({ method }: TradeoffResults): string {
  switch (method.kind) {
    case "sweep":
      return "Sweep";
    case "latinHypercube":
      return `Latin hypercube, seed ${method.seed}`;
    case "paretoSearch":
      return `Pareto search, ${method.generations} generations of ${method.populationSize}, seed ${method.seed}`;
  }
}

function memberColumns({ variables, goals }: TradeoffResults): TextColumn<TradeoffMember>[] {
  return [
    { title: "member", unit: "", isText: true, cell: ({ name }) => name },
    ...variables.map(({ key }, i) => ({
      title: dimensionTable[key].label,
      unit: "mm",
      cell: (member: TradeoffMember) => mm(member.variables[i]),
    })),
    ...goals.map(({ key, sense }, i) => ({
      title: `${goalLabel(key)} (${sense})`,
      unit: goalUnit(key),
      cell: (member: TradeoffMember) => String(Number((member.goals[i] * goalFactor(key)).toPrecision(5))),
    })),
    { title: "mass", unit: "kg", cell: ({ figures }) => figures.massKilograms.toFixed(3) },
    {
      title: "rules",
      unit: "",
      isText: true,
      cell: ({ rules }) => (rules === null ? "-" : verdictWords[rules.verdict]),
    },
  ];
}

const verdictWords: Readonly<Record<RuleVerdict, string>> = {
  pass: "inside",
  fail: "OUTSIDE",
  onlyIfMadeBetter: "if made better",
  notDetermined: "not determined",
};

function memberLines(member: TradeoffMember, goals: readonly PuckGoalKey[]): string[] {
  const off = mm(member.madeOffMetres);
  const drag = member.dragSensitivities.map(({ dimension, nominalMetres, madeSmaller, madeLarger, slope }) => ({
    dimension,
    figure: "drag index",
    nominal: mm(nominalMetres),
    slope: slope === null ? "-" : perMillimetre(slope),
    smaller: madeSmaller === null ? "no result" : madeSmaller.expected.toFixed(3),
    larger: madeLarger === null ? "no result" : madeLarger.expected.toFixed(3),
  }));
  const shown: readonly string[] = [...new Set(["massKilograms", ...goals])];
  const other = member.sensitivities
    .filter(({ figure }) => shown.includes(figure))
    .map(({ dimension, figure, slope, madeSmaller, madeLarger }) => {
      const key = figure as FigureKey;
      const { label, shownUnit, shownFactor } = figureCatalogue[key];
      const text = (value: number | null) =>
        value === null ? "cannot be made" : String(Number((value * shownFactor).toPrecision(5)));
      return {
        dimension,
        figure: `${label}, ${shownUnit}`,
        nominal: mm(sizeOf(member, dimension)),
        slope: perMillimetre(slope * shownFactor),
        smaller: text(madeSmaller),
        larger: text(madeLarger),
      };
    });
  const columns: TextColumn<(typeof drag)[number]>[] = [
    { title: "dimension", unit: "", isText: true, cell: ({ dimension }) => dimensionTable[dimension].label },
    { title: "size", unit: "mm", cell: ({ nominal }) => nominal },
    { title: "figure", unit: "", isText: true, cell: ({ figure }) => figure },
    { title: "change", unit: "per mm", cell: ({ slope }) => slope },
    { title: `${off} mm too small`, unit: "", cell: ({ smaller }) => smaller },
    { title: `${off} mm too large`, unit: "", cell: ({ larger }) => larger },
  ];
  const rules = (member.rules?.rules ?? [])
    .filter(({ verdict }) => verdict !== "pass")
    .map(({ message }) => `  ${message}`);
  return [
    "",
    `${member.name}: made ${off} mm off, the core as drawn`,
    ...textTable(columns, [...drag, ...other]),
    ...rules,
  ];
}

function sizeOf(member: TradeoffMember, dimension: DimensionKey): number {
  return dimensionTable[dimension].get(member.puck) ?? Number.NaN;
}

function goalLabel(key: PuckGoalKey): string {
  if (key === "dragIndex") return "drag index";
  return key === "massErrorKilograms" ? "mass error" : figureCatalogue[key].label;
}

function goalUnit(key: PuckGoalKey): string {
  if (key === "dragIndex") return "";
  return key === "massErrorKilograms" ? "kg" : figureCatalogue[key].shownUnit;
}

function goalFactor(key: PuckGoalKey): number {
  return key === "dragIndex" || key === "massErrorKilograms" ? 1 : figureCatalogue[key].shownFactor;
}

function perMillimetre(perMetre: number): string {
  return String(Number((perMetre / 1000).toPrecision(3)));
}

function mm(metres: number): string {
  return String(Number((1000 * metres).toPrecision(5)));
}
