import type { ChoiceResult } from "../../../shared/jobs/choice/choiceResult";
import { criterionCatalogue } from "../../../shared/jobs/choice/criteria";
import type { CostResult } from "../../../shared/jobs/cost/costResult";
import type { DurabilityResult } from "../../../shared/jobs/durability/durabilityResult";
import type { DrawnBand } from "../../../shared/statistics/drawnBand";

/** A table for people: titles, then rows of cells. */
export interface ShownTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const short = (value: number) => String(Number(value.toPrecision(3)));
const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

/** "12 (8 to 20)", in another unit. */
export function bandWords(band: DrawnBand | null, factor = 1): string {
  if (band === null) return "–";
  return `${short(band.expected * factor)} (${short(band.low * factor)} to ${short(band.high * factor)})`;
}

/** Who is first how often, and every criterion with its band. */
export function candidateTable({ candidates, criteria }: ChoiceResult): ShownTable {
  return {
    title: "Candidates",
    columns: [
      "Candidate",
      "First",
      "First if weighed its way",
      ...criteria.map(({ name, key, unit }) => {
        const shown = key === "cost" ? unit : criterionCatalogue[key].shownUnit;
        return shown === "" ? name : `${name}, ${shown}`;
      }),
    ],
    rows: candidates.map(({ name, probabilityFirst, confidence, criteria: own }) => [
      name,
      percent(probabilityFirst),
      confidence === null ? "never first" : percent(confidence),
      ...criteria.map(({ key }, j) => bandWords(own[j], criterionCatalogue[key].shownFactor)),
    ]),
  };
}

/** The weights under which each candidate is first. */
export function weightTable({ candidates, criteria }: ChoiceResult): ShownTable {
  return {
    title: "Weights, per cent, under which each candidate is first",
    columns: ["Criterion", "Allowed", ...candidates.map(({ name }) => name)],
    rows: criteria.map(({ name, weight }, j) => [
      name,
      `${short(100 * weight.low)} to ${short(100 * weight.high)}`,
      ...candidates.map(({ winningWeights }) => bandWords(winningWeights?.[j] ?? null, 100)),
    ]),
  };
}

/** What speaks for the likeliest candidate against the second one; null without a choice. */
export function decidingTable({ decides }: ChoiceResult): ShownTable | null {
  if (decides === null) return null;
  return {
    title: `What decides between ${decides.first} and ${decides.second}`,
    columns: ["Criterion", "For the first, value", "Of what is open", "Turns at weight"],
    rows: decides.criteria.map(({ criterion, contribution, varianceSharePercent, turningWeight }) => [
      criterion,
      bandWords(contribution),
      `${varianceSharePercent.toFixed(0)} %`,
      turningWeight === null ? "never" : percent(turningWeight),
    ]),
  };
}

/** Dominated candidates, in sentences. */
export function dominatedWords({ candidates }: ChoiceResult): string[] {
  return candidates.flatMap(({ name, dominatedBy }) =>
    dominatedBy.map(
      (by) =>
        `${name} is no better than ${by.name} in any criterion by the means (in ${percent(by.probability)} of the draws).`,
    ),
  );
}

export function durabilityTables({ pucks }: DurabilityResult): ShownTable[] {
  const impacts = [...new Set(pucks.flatMap((puck) => puck.impacts.map(({ name }) => name)))];
  const wears = pucks.flatMap(({ name, wear }) => (wear === null ? [] : [{ name, wear }]));
  return [
    ...impacts.map((title) => ({
      title: `Impact: ${title}`,
      columns: ["Puck", "Energy, J", "Peak force, kN", "On the surface, MPa", "Coat squeezed, %", "Contact, ms"],
      rows: pucks.flatMap(({ name, impacts: own }) =>
        own
          .filter((impact) => impact.name === title)
          .map((impact) =>
            impact.problem === null
              ? [
                  name,
                  bandWords(impact.energyJoules),
                  bandWords(impact.peakForceNewtons, 1e-3),
                  bandWords(impact.peakPressurePascals, 1e-6),
                  bandWords(impact.coatStrainPercent),
                  bandWords(impact.contactTimeSeconds, 1e3),
                ]
              : [name, impact.problem, "", "", "", ""],
          ),
      ),
    })),
    ...(wears.length === 0
      ? []
      : [
          {
            title: "Wear",
            columns: ["Puck", "Off a face, um/h", "Hours to least cover", "Worn diameter, mm", "Worn edge, mm", "Drag"],
            rows: wears.map(({ name, wear }) => {
              const change = wear.worn?.dragAreaChangePercent ?? null;
              return [
                name,
                bandWords(wear.faceMetresPerHour, 1e6),
                bandWords(wear.hoursToLeastCover),
                bandWords(wear.worn?.diameterMetres ?? null, 1e3),
                bandWords(wear.worn?.edgeRadiusMetres ?? null, 1e3),
                change === null ? "–" : `${change > 0 ? "+" : ""}${change.toFixed(1)} %`,
              ];
            }),
          },
        ]),
  ];
}

/** Cost of every puck at every batch, with the shares of its parts. */
export function costShareTable({ pucks, currency }: CostResult): ShownTable {
  return {
    title: "Cost and its parts",
    columns: [
      "Puck",
      "Accepted",
      "Batch",
      `A puck, ${currency}`,
      "Material",
      "Labour",
      "Scrap",
      "Setting up",
      "Tooling",
    ],
    rows: pucks.flatMap(({ name, acceptedPercent, batches, problem }) =>
      problem === null
        ? batches.map(({ batchSize, unitCost, sharesPercent: share }) => [
            name,
            acceptedPercent === null ? "–" : `${acceptedPercent.expected.toFixed(0)} %`,
            String(batchSize),
            bandWords(unitCost),
            ...[share.material, share.labour, share.scrap, share.setup, share.tooling].map(
              (part) => `${part.toFixed(0)} %`,
            ),
          ])
        : [[name, problem, "", "", "", "", "", "", ""]],
    ),
  };
}
