import { CHECKED_KNOWLEDGE, UNCHECKED_KNOWLEDGE } from "../../engine/trust/checkedLevel";
import { compareDraws, rankDraws } from "../../engine/trust/compareDraws";
import type { ErrorKnowledge } from "../../engine/trust/errorKnowledge";
import { learnErrors } from "../../engine/trust/learnErrors";
import { drawDrags } from "../../engine/trust/uncertainDrag";
import { measuredCurves } from "../evidence/public";
import type { CaseSoFar } from "../jobBlock";
import type { Comparison, RankedDesign } from "./comparison";
import type { StudiedDrag, Study, StudyCondition } from "./study";

/** Worlds that are drawn; probabilities are then good to 0.01. */
const drawCount = 4000;

/** What is known of the errors of sections that the engine was compared with, and of others. */
export interface StudyKnowledge {
  readonly checked: ErrorKnowledge;
  readonly unchecked: ErrorKnowledge;
  /** How many points of the case's own measurements are in it. */
  readonly pointCount: number;
}

/** What published values alone say. */
const publishedKnowledge: StudyKnowledge = {
  checked: CHECKED_KNOWLEDGE,
  unchecked: UNCHECKED_KNOWLEDGE,
  pointCount: 0,
};

/** What published values say, and the case's own measurements. */
export function knowledgeOfCase(before: CaseSoFar): StudyKnowledge {
  const curves = before.leftOf(measuredCurves) ?? [];
  const pointCount = curves.reduce((sum, { points }) => sum + points.length, 0);
  if (pointCount === 0) return publishedKnowledge;
  const { checked, unchecked } = publishedKnowledge;
  return { checked: learnErrors(checked, curves), unchecked: learnErrors(unchecked, curves), pointCount };
}

/** Designs are drawn jointly by what is known of the least known of them. */
export function knowledgeFor(drags: readonly StudiedDrag[], { checked, unchecked }: StudyKnowledge): ErrorKnowledge {
  return drags.every(({ isChecked }) => isChecked) ? checked : unchecked;
}

/** Every design against every baseline before it, in every condition. */
export function compareStudy(study: Study, knowledge: StudyKnowledge, seed: number): Comparison[] {
  return study.conditions.flatMap((condition) => compareCondition(study, condition, knowledge, seed));
}

function compareCondition(
  { designs, baselines }: Study,
  { condition, drags }: StudyCondition,
  knowledge: StudyKnowledge,
  seed: number,
): Comparison[] {
  const pairs = baselines.flatMap((second) =>
    designs.flatMap((_, first) =>
      first === second || (baselines.includes(first) && first < second) ? [] : [[first, second]],
    ),
  );
  const failure = drags.find((drag) => !drag.ok);
  const measuredPointCount = knowledge.pointCount;
  const named = ([first, second]: number[]) => ({
    first: designs[first],
    second: designs[second],
    condition,
    measuredPointCount,
  });
  if (failure?.ok === false) {
    return pairs.map((pair) => ({ ...named(pair), ...noComparison, problem: failure.problem.message }));
  }
  const found = drags.flatMap((drag) => (drag.ok ? [drag.value] : []));
  const { logDrag } = drawDrags(
    knowledgeFor(found, knowledge),
    found.map(({ drag }) => drag),
    drawCount,
    seed,
  );
  const ranking = designs.length < 3 ? null : rankedDesigns(designs, logDrag);
  return pairs.map((pair) => {
    const [first, second] = pair;
    return { ...named(pair), ...compareDraws(logDrag[first], logDrag[second]), ranking, problem: null };
  });
}

const noComparison = { changePercent: null, probabilityLess: null, decided: null, ranking: null } as const;

function rankedDesigns(designs: readonly string[], logDrag: readonly Float64Array[]): RankedDesign[] {
  const { probabilityBest, expectedRegretPercent } = rankDraws(logDrag);
  return designs.map((name, i) => ({
    name,
    probabilityBest: probabilityBest[i],
    expectedRegretPercent: expectedRegretPercent[i],
  }));
}
