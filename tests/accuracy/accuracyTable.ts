import type { BandTable } from "../../shared/engine/trust/bandTable";
import { CHECKED_ERRORS } from "../../shared/engine/trust/checkedErrors";
import type { LevelDatum } from "../../shared/engine/trust/levelProcess";
import type { PublishedSource } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import { type AccuracyRow, accuracyRow } from "./accuracyRow";
import { bandPoints, crisisErrors } from "./bandPoints";
import { readStoredAnswers, storedAnswerOf } from "./before";
import { type Coverage, coverages, statedBand } from "./coverage";
import { type Disagreement, disagreements } from "./disagreement";
import { fitBands } from "./fitBands";
import { type LeftOutBand, leaveOneSourceOut } from "./leaveOneSourceOut";
import { compareTunnels, type TunnelComparison, tunnelPoints } from "./otherTunnels";
import { predictAll } from "./predictAll";
import { notPredicted, type Prediction, predicted } from "./prediction";
import { type RulerFigures, rulerFigures } from "./rulerFigures";
import { splitForConstants } from "./sourceSplit";
import { type ErrorSummary, summarise } from "./summary";
import { type JudgedTarget, judgeTarget } from "./target";
import { allTargets } from "./targets";
import { judgeTrust, type TrustJudgement } from "./trustJudgement";
import { levelData, trustPoints } from "./trustPoints";

/** Everything that the accuracy report says. */
export interface AccuracyTable {
  /** The figures that sum the comparison up, of this engine and of the one whose answers are stored. */
  readonly figures: RulerFigures;
  readonly before: RulerFigures;
  readonly targets: readonly JudgedTarget[];
  readonly targetsBefore: readonly JudgedTarget[];
  readonly summaries: readonly ErrorSummary[];
  readonly disagreements: readonly Disagreement[];
  readonly leftOutBands: readonly LeftOutBand[];
  /** The stated bands, fitted here; shared/engine/trust/checkedBands.ts holds the ones in use. */
  readonly bands: BandTable;
  /** The error model judged on experiments that were left out, and what it is conditioned on. */
  readonly trust: Omit<TrustJudgement, "expected">;
  readonly expectedTunnels: readonly TunnelComparison[];
  readonly levelData: readonly LevelDatum[];
  readonly coverage: readonly Coverage[];
  readonly rows: readonly AccuracyRow[];
}

/** Runs the engine over the sources and the targets. */
export function accuracyTable(sources: readonly PublishedSource[], progress?: (text: string) => void): AccuracyTable {
  const entries = sources.flatMap((source) => source.values.map((value) => ({ source, value })));
  const targets = allTargets();
  const quantities = [...entries.map(({ value }) => value.quantity), ...targets.flatMap((target) => target.quantities)];
  const predictions = predictAll(quantities, { progress });
  const byQuantity = new Map<Quantity, Prediction>(quantities.map((quantity, i) => [quantity, predictions[i]]));
  const predictionOf = (quantity: Quantity) => byQuantity.get(quantity);
  const storedValue = storedAnswerOf(readStoredAnswers());
  const storedPrediction = (quantity: Quantity) => {
    const value = storedValue(quantity);
    return value === null ? notPredicted("no stored answer") : predicted(value);
  };
  const parts = splitForConstants(sources);
  const points = bandPoints(sources, predictionOf);
  const crises = crisisErrors(sources, predictionOf);
  const bands = fitBands(points, crises);
  const trusted = trustPoints(sources, predictionOf);
  const level = levelData(trusted);
  const { expected, ...trust } = judgeTrust(sources, trusted, level, crises, CHECKED_ERRORS.parameters);
  const stated = new Map(points.map((point) => [point.value, statedBand(point, bands)]));
  const rows = entries.map(({ source, value }, i) =>
    accuracyRow(source, value, parts.get(value) ?? null, predictions[i], stated.get(value) ?? null),
  );
  return {
    figures: rulerFigures(sources, (quantity) => predictionOf(quantity)?.value ?? null),
    before: rulerFigures(sources, storedValue),
    targets: targets.map((target) =>
      judgeTarget(
        target,
        target.quantities.map((quantity) => byQuantity.get(quantity)!),
      ),
    ),
    targetsBefore: targets.map((target) => judgeTarget(target, target.quantities.map(storedPrediction))),
    summaries: summarise(rows),
    disagreements: disagreements(sources, predictionOf),
    leftOutBands: leaveOneSourceOut(rows),
    bands,
    trust,
    expectedTunnels: compareTunnels(tunnelPoints(sources), (quantity) => expected.get(quantity) ?? null),
    levelData: level,
    coverage: coverages(rows),
    rows,
  };
}
