import { commonDraws } from "../../statistics/commonDraws";
import { randomDraws } from "../../statistics/randomDraws";
import { makingDraws, unitCostDraws } from "../cost/public";
import { type DurabilityJob, impactDraws, type SolvedCurves, wearDraws } from "../durability/public";
import type { FigureKey, PuckResult } from "../puck/public";
import { likingDraws } from "../trial/public";
import type { ChoiceCriterion, ChoiceJob } from "./choiceJob";
import { madeFigureDraws } from "./madeFigures";
import { type DragDraws, puckDragDraws } from "./puckDragDraws";

const figureOf: Partial<Record<ChoiceCriterion["key"], FigureKey>> = {
  mass: "massKilograms",
  momentOfInertia: "momentOfInertiaAxisKilogramSquareMetres",
  frontalArea: "frontalAreaEdgeOnSquareMetres",
};

/**
 * A reader of criteria: the values of every candidate in common draws, shape [candidates][draws], or why there are none.
 */
export function criterionReader(
  job: ChoiceJob,
  pucks: readonly PuckResult[],
): (criterion: ChoiceCriterion) => Float64Array[] | string {
  const { draws, seed, making } = job;
  const drag = puckDragDraws(pucks, draws, making.kinematicViscosity, randomDraws(seed));
  const common = commonDraws({ draws, seed });
  const curves: SolvedCurves = new Map();
  const durability: DurabilityJob | null = job.durability === null ? null : { ...job.durability, draws, seed };
  return (criterion) => {
    const figure = figureOf[criterion.key];
    if (figure !== undefined) {
      return pucks.map((puck, i) => madeFigureDraws(puck, figure, making, draws, randomDraws(seed + 1 + i)));
    }
    switch (criterion.key) {
      case "dragUpright":
        return drag("upright", criterion.speed);
      case "dragFlat":
        return drag("flat", criterion.speed);
      case "dragFaceOn":
        return drag("faceOn", criterion.speed);
      case "dragInPlay":
        return dragInPlay(drag, criterion.speed, making.shares);
      case "liking":
        return liking(job, pucks);
      case "cost": {
        const { cost } = job;
        if (cost === null) return "the case has no cost";
        return each(pucks, (puck) => {
          const making = makingDraws(puck, { ...cost, draws, seed }, common);
          return typeof making === "string" ? making : unitCostDraws(making, criterion.batchSize);
        });
      }
      case "durability": {
        const wear = durability?.wear ?? null;
        if (wear === null) return "the case has no wear";
        return each(
          pucks,
          (puck) => wearDraws(puck, wear, draws, common).hoursToLeastCover ?? `${puck.name} has no core to cover`,
        );
      }
      case "coatStrain":
      case "floorCare": {
        const setup = durability?.impacts.find(({ name }) => name === criterion.impact);
        if (durability === null || setup === undefined) return "the case has no such impact";
        return each(pucks, (puck) => {
          const found = impactDraws(puck, setup, durability, common, curves);
          if (typeof found === "string") return `${puck.name}: ${found}`;
          if (criterion.key === "floorCare") return found.peakPressure;
          return found.coatStrain?.map((share) => 100 * share) ?? `${puck.name} has no core under its coat`;
        });
      }
      default:
        throw new RangeError(`${criterion.key} is no criterion of a puck.`);
    }
  };
}

function each(
  pucks: readonly PuckResult[],
  read: (puck: PuckResult) => Float64Array | string,
): Float64Array[] | string {
  const found: Float64Array[] = [];
  for (const puck of pucks) {
    const own = read(puck);
    if (typeof own === "string") return own;
    found.push(own);
  }
  return found;
}

/** Drag areas weighted by the shares of play. */
function dragInPlay(drag: DragDraws, speed: number, shares: ChoiceJob["making"]["shares"]): Float64Array[] | string {
  let sum: Float64Array[] | null = null;
  for (const attitude of ["upright", "flat", "faceOn"] as const) {
    const own = drag(attitude, speed);
    if (typeof own === "string") return own;
    const before: Float64Array[] | null = sum;
    sum = own.map((column, i) => column.map((area, k) => shares[attitude] * area + (before?.[i][k] ?? 0)));
  }
  return sum ?? "no attitude is played";
}

function liking({ trial, draws, seed }: ChoiceJob, pucks: readonly PuckResult[]): Float64Array[] | string {
  const found = trial === null ? null : likingDraws(trial, draws, seed);
  return each(pucks, ({ name }) => found?.get(name) ?? `${name} has no scores in the trial`);
}
