import { type PublishedSource, scatterRange } from "../published/publishedValue";
import type { Quantity, SectionQuantity } from "../published/quantity";
import { groupBy } from "./groupBy";
import type { Prediction } from "./prediction";
import { sectionLabel } from "./preparedSections";
import { compact, kindTexts } from "./quantityText";

/** Values of several sources for one quantity at nearly one condition; the band they span, each with its scatter, is the target. */
export interface Disagreement {
  readonly quantity: Quantity["kind"];
  readonly condition: string;
  readonly sources: readonly string[];
  readonly lowest: number;
  readonly highest: number;
  /** Lowest and highest of the engine's values at those conditions. */
  readonly predictedLowest: number;
  readonly predictedHighest: number;
  readonly inside: boolean;
}

/** Reynolds numbers nearer than a sixth of a decade count as one condition. */
const binsPerDecade = 6;

/** Every condition that at least two sources give values of, with the engine's answers there. */
export function disagreements(
  sources: readonly PublishedSource[],
  predictionOf: (quantity: Quantity) => Prediction | undefined,
): Disagreement[] {
  const entries = sources.flatMap(({ name, values }) =>
    values.flatMap((value) => {
      const { quantity } = value;
      if (!("section" in quantity) || value.shownOnly !== undefined) return [];
      return [{ name, quantity, value, prediction: predictionOf(quantity)?.value ?? null }];
    }),
  );
  return [...groupBy(entries, ({ quantity }) => binOf(quantity)).values()].flatMap((members) => {
    const names = [...new Set(members.map(({ name }) => name))];
    const predicted = members.flatMap(({ prediction }) => (prediction === null ? [] : [prediction]));
    if (names.length < 2 || predicted.length === 0) return [];
    const lowest = Math.min(...members.map(({ value }) => scatterRange(value)[0]));
    const highest = Math.max(...members.map(({ value }) => scatterRange(value)[1]));
    return [
      {
        quantity: members[0].quantity.kind,
        condition: binText(members.map(({ quantity }) => quantity)),
        sources: names,
        lowest,
        highest,
        predictedLowest: Math.min(...predicted),
        predictedHighest: Math.max(...predicted),
        inside: predicted.every((value) => value >= lowest && value <= highest),
      },
    ];
  });
}

function reynoldsOf(quantity: SectionQuantity): number {
  return "reynolds" in quantity ? quantity.reynolds : Math.sqrt(quantity.reynoldsFrom * quantity.reynoldsTo);
}

function binOf(quantity: SectionQuantity): string {
  return [
    kindTexts[quantity.kind].label,
    sectionLabel(quantity.section),
    quantity.sandGrainRoughnessRatio,
    quantity.turbulenceIntensity < 0.0075 ? "quiet" : quantity.turbulenceIntensity,
    "angleDegrees" in quantity ? quantity.angleDegrees : "",
    Math.round(Math.log10(reynoldsOf(quantity)) * binsPerDecade),
  ].join("|");
}

function binText(quantities: readonly SectionQuantity[]): string {
  const reynolds = quantities.map(reynoldsOf);
  const from = compact(Math.min(...reynolds));
  const to = compact(Math.max(...reynolds));
  const { section, sandGrainRoughnessRatio } = quantities[0];
  const span = from === to ? from : `${from} to ${to}`;
  return `${sectionLabel(section)}, Re ${span}, ks/D ${compact(sandGrainRoughnessRatio)}`;
}
