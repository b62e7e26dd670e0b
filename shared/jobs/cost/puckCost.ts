import type { CommonDraws } from "../../statistics/commonDraws";
import { drawnBand } from "../../statistics/drawnBand";
import type { PuckResult } from "../puck/public";
import type { CostJob } from "./costJob";
import type { BatchCost, PuckCost } from "./costResult";
import { costParts, type Making, materialCost, totalOf, type UnitCost, unitCost } from "./unitCost";

/** What making one puck takes in every draw, or why that is not known. */
export function makingDraws(result: PuckResult, job: CostJob, common: CommonDraws): Making[] | string {
  const accepted = acceptedShare(result, job);
  if (typeof accepted === "string") return accepted;
  const { name, puck, figures } = result;
  const isFor = ({ pucks }: { readonly pucks: readonly string[] | null }) => pucks === null || pucks.includes(name);
  const masses = [
    { material: puck.coatMaterial, mass: figures.massKilograms - figures.coreMassKilograms },
    ...(puck.core.kind === "none" ? [] : [{ material: puck.core.material, mass: figures.coreMassKilograms }]),
  ];
  const parts = job.parts.filter(isFor);
  const steps = job.steps.filter(isFor);
  const tools = job.tools.filter(isFor);
  return Array.from({ length: job.draws }, (_, k) => {
    const materials = masses.reduce((sum, { material, mass }) => {
      const price = job.materials.find((one) => one.material === material);
      if (price === undefined) throw new RangeError(`${material} has no price.`);
      const perKilogram = common.value(`price of ${material}`, price.perKilogram, k);
      return sum + materialCost(mass, perKilogram, common.value(`waste of ${material}`, price.waste, k));
    }, 0);
    const bought = parts.reduce((sum, part) => sum + common.value(`part ${part.name}`, part.perPuck, k), 0);
    const rated = steps.map((step) => ({
      rate: common.value(`rate of ${step.name}`, step.ratePerHour, k),
      hours: common.value(`time of ${step.name}`, step.hoursPerPuck, k),
      setup: common.value(`setup of ${step.name}`, step.setupHours, k),
    }));
    return {
      material: materials + bought,
      labour: rated.reduce((sum, { rate, hours }) => sum + rate * hours, 0),
      setup: rated.reduce((sum, { rate, setup }) => sum + rate * setup, 0),
      tools: tools.map((tool) => ({ price: common.value(`tool ${tool.name}`, tool.price, k), life: tool.life })),
      accepted: accepted(common, k),
    };
  });
}

/** Unit cost of a batch in every draw, shape [draws]. */
export function unitCostDraws(making: readonly Making[], batch: number): Float64Array {
  return Float64Array.from(making, (one) => totalOf(unitCost(one, batch)));
}

/**
 * Fraction of made pucks that are accepted: what the case states, else that of the pucks' own making with its sampling
 * error (normal, as the counts are large), else all.
 */
function acceptedShare(
  { name, rules }: PuckResult,
  job: CostJob,
): ((common: CommonDraws, k: number) => number) | string {
  const stated = job.accepted;
  if (stated !== null) return (common, k) => common.value("accepted", stated, k);
  const made = rules?.made ?? null;
  if (made === null) return () => 1;
  const { inside, samples, share } = made;
  if (inside === 0) return `none of ${samples} made pucks is inside the rules: no price makes an accepted one`;
  const error = Math.sqrt((share * (1 - share)) / samples);
  return (common, k) => Math.min(1, Math.max(1 / samples, share + error * common.normal(`accepted of ${name}`, k)));
}

export function puckCost(result: PuckResult, job: CostJob, common: CommonDraws): PuckCost {
  const { name, figures, rules } = result;
  const making = makingDraws(result, job, common);
  const made = rules?.made ?? null;
  const base = {
    name,
    coreMassKilograms: figures.coreMassKilograms,
    coatMassKilograms: figures.massKilograms - figures.coreMassKilograms,
    acceptedFrom:
      job.accepted !== null
        ? ("the case" as const)
        : made !== null
          ? ("the pucks' making" as const)
          : ("nothing: all are taken as accepted" as const),
  };
  if (typeof making === "string") return { ...base, acceptedPercent: null, batches: [], problem: making };
  return {
    ...base,
    acceptedPercent: drawnBand(making.map(({ accepted }) => 100 * accepted)),
    batches: job.batchSizes.map((batchSize) => batchCost(making, batchSize)),
    problem: null,
  };
}

function batchCost(making: readonly Making[], batchSize: number): BatchCost {
  const costs = making.map((one) => unitCost(one, batchSize));
  const unit = drawnBand(costs.map(totalOf));
  const share = (part: keyof UnitCost) =>
    unit.expected > 0 ? (100 * costs.reduce((sum, cost) => sum + cost[part], 0)) / costs.length / unit.expected : 0;
  const sharesPercent = Object.fromEntries(costParts.map((part) => [part, share(part)])) as Record<
    keyof UnitCost,
    number
  >;
  return { batchSize, unitCost: unit, sharesPercent };
}
