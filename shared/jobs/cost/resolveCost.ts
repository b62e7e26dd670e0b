import { resolveRange, type UncertainRangeDocument } from "../../document/uncertainRange";
import { fractionOf } from "../../numerics/degreesAndPercent";
import type { Problem } from "../../result";
import type { UncertainRange } from "../../statistics/uncertainRange";
import type { CaseSurroundings, JobResolution } from "../jobBlock";
import { puckBlock } from "../puck/public";
import type { CostBlockDocument } from "./costBlockDocument";
import type { CostJob } from "./costJob";

/** Values of keys that a case leaves out. */
const standard = { draws: 2000, seed: 1 };
const none: UncertainRange = { from: 0, to: 0, spacing: "linear" };

/** The cost block ready to run, or everything that is wrong with it. Fields of problems begin with "cost". */
export function resolveCost(
  block: CostBlockDocument,
  { documentOf }: Pick<CaseSurroundings, "documentOf">,
): JobResolution<CostJob> {
  const document = documentOf(puckBlock);
  if (document === undefined) {
    const message = "cost: it is that of the case's pucks; the case needs the key puck";
    return { ok: false, problems: [{ code: "cost", message, field: "cost" }] };
  }
  const pucks = [...document.baselines, ...(document.candidates ?? [])].map(({ puck }) => puck);
  const problems = [
    ...namesProblems(
      block,
      pucks.map(({ name }) => name),
    ),
    ...priceProblems(block, pucks),
  ];
  if (problems.length > 0) return { ok: false, problems };
  const { steps, tooling = [], parts = [] } = block;
  return {
    ok: true,
    value: {
      currency: block.currency,
      source: block.source,
      materials: block.materials.map(({ material, pricePerKilogram, wastePercent }) => ({
        material,
        perKilogram: resolveRange(pricePerKilogram),
        waste: wastePercent === undefined ? none : scaled(wastePercent, fractionOf(1)),
      })),
      parts: parts.map(({ name, pricePerPuck, pucks: own }) => ({
        name,
        pucks: own ?? null,
        perPuck: resolveRange(pricePerPuck),
      })),
      steps: steps.map(({ name, minutesPerPuck, setupMinutesPerBatch, ratePerHour, pucks: own }) => ({
        name,
        pucks: own ?? null,
        hoursPerPuck: scaled(minutesPerPuck, 1 / 60),
        setupHours: setupMinutesPerBatch === undefined ? none : scaled(setupMinutesPerBatch, 1 / 60),
        ratePerHour: resolveRange(ratePerHour),
      })),
      tools: tooling.map(({ name, price, pucksPerTool, pucks: own }) => ({
        name,
        pucks: own ?? null,
        price: resolveRange(price),
        life: pucksPerTool ?? Number.POSITIVE_INFINITY,
      })),
      accepted: block.acceptedPercent === undefined ? null : scaled(block.acceptedPercent, fractionOf(1)),
      batchSizes: [...new Set(block.batchSizes)].sort((a, b) => a - b),
      draws: block.draws ?? standard.draws,
      seed: block.seed ?? standard.seed,
      puckCount: pucks.length,
    },
  };
}

function scaled(document: UncertainRangeDocument, factor: number): UncertainRange {
  const { from, to, spacing } = resolveRange(document);
  return { from: from * factor, to: to * factor, spacing };
}

/** Names that stand twice in a list, and names of pucks that the case does not have. */
function namesProblems({ steps, tooling, parts, materials }: CostBlockDocument, names: readonly string[]): Problem[] {
  const lists = { steps, tooling: tooling ?? [], parts: parts ?? [] };
  const problems: Problem[] = [];
  const add = (field: string, message: string) =>
    problems.push({ code: "cost", message: `${field}: ${message}`, field });
  for (const [key, list] of Object.entries(lists)) {
    list.forEach(({ name, pucks }, i) => {
      if (list.findIndex((other) => other.name === name) < i) {
        add(`cost.${key}[${i}].name`, `"${name}" stands twice; each needs its own`);
      }
      const unknown = (pucks ?? []).findIndex((puck) => !names.includes(puck));
      if (unknown >= 0) {
        add(
          `cost.${key}[${i}].pucks[${unknown}]`,
          `no puck is called "${pucks?.[unknown]}"; the names are ${names.join(", ")}`,
        );
      }
    });
  }
  materials.forEach(({ material }, i) => {
    if (materials.findIndex((other) => other.material === material) < i) {
      add(`cost.materials[${i}].material`, `"${material}" stands twice; each needs one price`);
    }
  });
  return problems;
}

type PuckSpecs = readonly {
  readonly name: string;
  readonly coatMaterial: string;
  readonly core: { readonly kind: string; readonly material?: string };
}[];

/** Every material of a puck needs a price. */
function priceProblems({ materials }: CostBlockDocument, pucks: PuckSpecs): Problem[] {
  const needed = new Set(
    pucks.flatMap(({ coatMaterial, core }) =>
      core.material === undefined ? [coatMaterial] : [coatMaterial, core.material],
    ),
  );
  return [...needed]
    .filter((name) => !materials.some(({ material }) => material === name))
    .map((name) => ({
      code: "cost",
      message: `cost.materials: "${name}" has no price; give its pricePerKilogram, from 0`,
      field: "cost.materials",
    }));
}
