import type { DragBand } from "../../engine/trust/dragInterval";
import { type Result, success } from "../../result";
import {
  comparePucks,
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  judgePuck,
  meanIndex,
  ownTolerances,
  type PuckCase,
  type PuckComparison,
  type PuckFigures,
  type PuckJudgement,
  type PuckSpec,
  puckCautions,
  puckFigures,
  withDimension,
} from "../puck/public";
import { type FigureSensitivity, puckSensitivity } from "./sensitivity";
import type { TradeoffSearch } from "./tradeoffSearch";

/** What the drag index does when one dimension is made wrong; the core keeps its size. */
export interface DragSensitivity {
  readonly dimension: DimensionKey;
  readonly nominalMetres: number;
  /** Change of the index's expected value per metre, between the two wrong sizes; null where one of them has none. */
  readonly slope: number | null;
  /** null where that puck cannot be made or its flow not be solved. */
  readonly madeSmaller: DragBand | null;
  readonly madeLarger: DragBand | null;
}

/** One member of the front in full. */
export interface TradeoffMember {
  readonly name: string;
  /** Values of the free dimensions and of the goals, in the case's order. */
  readonly variables: readonly number[];
  readonly goals: readonly number[];
  readonly puck: PuckSpec;
  readonly figures: PuckFigures;
  readonly rules: PuckJudgement | null;
  readonly comparison: PuckComparison;
  readonly madeOffMetres: number;
  readonly sensitivities: readonly FigureSensitivity[];
  readonly dragSensitivities: readonly DragSensitivity[];
  readonly cautions: readonly string[];
}

/** Dimensions of the inside, which the water does not feel. */
const inner: readonly DimensionKey[] = [
  "coreDiameterMetres",
  "coreThicknessMetres",
  "coreOuterDiameterMetres",
  "coreInnerDiameterMetres",
  "coreHeightMetres",
  "coatThicknessMetres",
];

/** Works out a member of the front: figures, rules, verdict against the first baseline, and what wrong making does. */
export function tradeoffMember(
  theCase: PuckCase,
  search: TradeoffSearch,
  point: { readonly name: string; readonly variables: readonly number[]; readonly goals: readonly number[] },
  madeOff: number,
): Result<TradeoffMember> {
  const candidate = search.candidate(point.variables);
  if (!candidate.ok) return candidate;
  const spec = { ...candidate.value.spec, name: point.name };
  const { figures } = candidate.value;
  const drags = search.dragsOf(spec, figures);
  if (!drags.ok) return drags;
  const baseline = { name: search.baseline.spec.name, drags: search.baselineDrags };
  const comparison = comparePucks(point.name, drags.value, baseline, theCase);
  if (!comparison.ok) return comparison;
  const design = { spec, setting: theCase.setting };
  const rules =
    theCase.rules === null
      ? null
      : judgePuck(design, theCase.rules, ownTolerances({ spec }, theCase), theCase.sampling);
  if (rules?.ok === false) return rules;
  const sensitivities = puckSensitivity(design, madeOff);
  if (!sensitivities.ok) return sensitivities;
  return success({
    ...point,
    puck: spec,
    figures,
    rules: rules === null ? null : rules.value,
    comparison: comparison.value,
    madeOffMetres: madeOff,
    sensitivities: sensitivities.value,
    dragSensitivities: dragSensitivities(theCase, search, spec, madeOff),
    cautions: puckCautions(spec, theCase.setting.userMaterials ?? []),
  });
}

function dragSensitivities(
  theCase: PuckCase,
  search: TradeoffSearch,
  spec: PuckSpec,
  madeOff: number,
): DragSensitivity[] {
  return dimensionKeys.flatMap((dimension) => {
    const nominal = dimensionOf(spec, dimension);
    if (nominal === null || inner.includes(dimension)) return [];
    const indexAt = (size: number): DragBand | null => {
      const changed = withDimension(spec, dimension, size);
      const figures = puckFigures(changed, theCase.setting);
      if (!figures.ok) return null;
      const drags = search.dragsOf(changed, figures.value);
      if (!drags.ok) return null;
      const index = meanIndex(drags.value, search.baselineDrags, theCase);
      return index.ok ? index.value.index : null;
    };
    const madeSmaller = indexAt(nominal - madeOff);
    const madeLarger = indexAt(nominal + madeOff);
    const slope =
      madeSmaller === null || madeLarger === null ? null : (madeLarger.expected - madeSmaller.expected) / (2 * madeOff);
    return [{ dimension, nominalMetres: nominal, slope, madeSmaller, madeLarger }];
  });
}
