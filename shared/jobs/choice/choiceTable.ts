import { type TextColumn, textTable } from "../../tables/textTable";
import type { ChoiceCandidate, ChoiceResult, DecidingCriterion } from "./choiceResult";
import { criterionCatalogue } from "./criteria";

const percent = (share: number) => (100 * share).toFixed(0);
const short = (value: number) => String(Number(value.toPrecision(3)));

/** The cautions, the decision in a sentence, then the evidence. */
export function choiceTable(result: ChoiceResult): string {
  const { candidates, criteria, decides, sentence, notes, cautions, draws } = result;
  return [
    "",
    "CHOICE",
    ...cautions.map((caution) => `Caution: ${caution}`),
    sentence,
    ...(decides === null ? [] : [decides.sentence]),
    ...(candidates.length === 0 ? [] : ["", ...textTable(candidateColumns(result), candidates)]),
    ...candidates.flatMap(({ name, dominatedBy }) =>
      dominatedBy.map(
        (by) =>
          `${name} is no better than ${by.name} in any criterion by the means (${percent(by.probability)} of 100 draws).`,
      ),
    ),
    ...(criteria.length === 0
      ? []
      : [
          "",
          "WEIGHTS, per cent, and those under which each candidate is first (5 % to 95 %)",
          ...textTable(weightColumns(result), criteria),
        ]),
    ...(decides === null
      ? []
      : [
          "",
          `WHAT DECIDES between ${decides.first} and ${decides.second}`,
          ...textTable(decidingColumns, decides.criteria),
        ]),
    "",
    ...notes,
    ...(candidates.length === 0 ? [] : [`${draws} draws.`]),
    "",
  ].join("\n");
}

function candidateColumns({ criteria }: ChoiceResult): TextColumn<ChoiceCandidate>[] {
  return [
    { title: "candidate", unit: "", isText: true, cell: ({ name }) => name },
    { title: "first", unit: "of 100", cell: ({ probabilityFirst }) => percent(probabilityFirst) },
    {
      title: "if weighed its way",
      unit: "of 100",
      cell: ({ confidence }) => (confidence === null ? "-" : percent(confidence)),
    },
    ...criteria.map(({ name, key, unit }, j): TextColumn<ChoiceCandidate> => {
      const { shownFactor, shownUnit } = criterionCatalogue[key];
      return {
        title: name,
        unit: key === "cost" ? unit : shownUnit,
        cell: ({ criteria: own }) =>
          `${short(own[j].expected * shownFactor)} (${short(own[j].low * shownFactor)}-${short(own[j].high * shownFactor)})`,
      };
    }),
  ];
}

type CriterionRow = ChoiceResult["criteria"][number];

function weightColumns({ candidates, criteria }: ChoiceResult): TextColumn<CriterionRow>[] {
  return [
    { title: "criterion", unit: "", isText: true, cell: ({ name }) => name },
    { title: "allowed", unit: "%", cell: ({ weight }) => `${percent(weight.low)}-${percent(weight.high)}` },
    ...candidates.map(
      ({ name, winningWeights }): TextColumn<CriterionRow> => ({
        title: name,
        unit: "%",
        cell: (criterion) => {
          const own = winningWeights?.[criteria.indexOf(criterion)];
          return own === undefined ? "-" : `${percent(own.expected)} (${percent(own.low)}-${percent(own.high)})`;
        },
      }),
    ),
  ];
}

const decidingColumns: readonly TextColumn<DecidingCriterion>[] = [
  { title: "criterion", unit: "", isText: true, cell: ({ criterion }) => criterion },
  {
    title: "for the first",
    unit: "value",
    cell: ({ contribution: { expected, low, high } }) => `${short(expected)} (${short(low)} to ${short(high)})`,
  },
  { title: "of what is open", unit: "%", cell: ({ varianceSharePercent }) => varianceSharePercent.toFixed(0) },
  {
    title: "turns at weight",
    unit: "%",
    cell: ({ turningWeight }) => (turningWeight === null ? "-" : percent(turningWeight)),
  },
];
