import * as z from "zod";
import { expandSweep, type Sweep } from "../../../shared/document/expandSweep";
import { fluidDocument } from "../../../shared/document/fluidDocument";
import {
  largestCaseBytes,
  roughnessHeightBounds,
  speedBounds,
  turbulenceBounds,
} from "../../../shared/document/limits";
import { parseDocument } from "../../../shared/document/parseDocument";
import { parseJson } from "../../../shared/document/parseJson";
import { listOrRange, sweepable, text } from "../../../shared/document/quantity";
import { resolveFluid } from "../../../shared/engine/fluid/resolveFluid";
import { choiceBlockDocument } from "../../../shared/jobs/choice/choiceBlockDocument";
import { costBlockDocument } from "../../../shared/jobs/cost/costBlockDocument";
import { durabilityBlockDocument } from "../../../shared/jobs/durability/durabilityBlockDocument";
import { sizeCoreForMass } from "../../../shared/jobs/puck/body/coreSizing";
import { wetTileFriction } from "../../../shared/jobs/puck/motion/slidingFriction";
import { type PuckBlockDocument, puckBlockDocument } from "../../../shared/jobs/puck/puckBlockDocument";
import { trialBlockDocument } from "../../../shared/jobs/trial/trialBlockDocument";
import { fractionOf, percentOf, radiansOf } from "../../../shared/numerics/degreesAndPercent";
import type { CaseReading } from "../view/caseText";
import { chooseKeys } from "./chooseInputs";
import { demoPuck } from "./demoPuck";
import { motionInputs } from "./motionInputs";
import { puckBlock } from "./puckBlock";
import type { PuckInputs, PuckMake, TradeoffInputs } from "./puckInputs";

/** The puck view's part of a case: the inputs, further pucks, and a rules file that the case only names. */
export interface PuckCaseContent {
  readonly inputs: PuckInputs;
  readonly others: readonly PuckMake[];
  readonly rulesFile: string | null;
}

/** What the view takes from a case file; the other keys belong to the sections. */
const puckCaseDocument = z.looseObject({
  title: text("What the case is about", 200),
  fluid: fluidDocument,
  speedsMetresPerSecond: listOrRange("Speeds", speedBounds),
  turbulencePercents: sweepable("Turbulence intensities", turbulenceBounds),
  sandGrainRoughnessMetres: sweepable("Equivalent sand-grain roughness", roughnessHeightBounds).optional(),
  puck: puckBlockDocument,
  trial: trialBlockDocument.optional(),
  durability: durabilityBlockDocument.optional(),
  cost: costBlockDocument.optional(),
  choice: choiceBlockDocument.optional(),
});

/** The inputs and pins as a case, plain JSON data. */
export function puckCaseContent(inputs: PuckInputs, others: readonly PuckMake[]) {
  return {
    wakewrightCase: 1,
    title: inputs.title,
    fluid: inputs.play.fluid,
    speedsMetresPerSecond: inputs.play.speeds,
    sandGrainRoughnessMetres: [inputs.candidate.sandGrainRoughness],
    turbulencePercents: inputs.play.turbulenceIntensities.map(percentOf),
    puck: puckBlock(inputs, others),
    ...chooseKeys(inputs.choose),
  };
}

/** The inputs and pins as the text of a case file, which the command line runs as it is. */
export function puckCaseText(inputs: PuckInputs, others: readonly PuckMake[]): string {
  const { trial } = inputs.choose;
  const content = { ...puckCaseContent(inputs, others), ...(trial === null ? {} : { trial }) };
  return `${JSON.stringify(content, null, 2)}\n`;
}

/** True for the text of a case file that has a puck block, whatever else is right or wrong with it. */
export function hasPuckBlock(content: string): boolean {
  const json = content.length > largestCaseBytes ? null : parseJson(content);
  return json?.ok === true && typeof json.value === "object" && json.value !== null && "puck" in json.value;
}

/** Reads the puck view's part of a case file; every fault is listed. */
export function readPuckCase(content: string): CaseReading<PuckCaseContent> {
  const parsed = parseDocument(content, puckCaseDocument);
  if (!parsed.ok) return parsed;
  const { title, fluid, puck: block } = parsed.value;
  const [firstFinish = demoPuck.candidate.sandGrainRoughness] = valuesOf(parsed.value.sandGrainRoughnessMetres ?? []);
  const make = (entry: PuckBlockDocument["baselines"][number]): PuckMake => ({
    spec: sizedSpec(entry, block, fluid),
    sandGrainRoughness: entry.sandGrainRoughnessMetres ?? firstFinish,
  });
  const [baseline, ...otherBaselines] = block.baselines.map(make);
  const [candidate, ...others] = (block.candidates ?? []).map(make);
  const { play } = block;
  const inputs: PuckInputs = {
    title,
    baseline,
    candidate: candidate ?? { ...baseline, spec: { ...baseline.spec, name: "Candidate" } },
    userMaterials: block.materials ?? [],
    play: {
      fluid,
      speeds: rising(expandSweep(parsed.value.speedsMetresPerSecond)),
      turbulenceIntensities: rising(valuesOf(parsed.value.turbulencePercents)).map(fractionOf),
      shares: play.orientationShares,
      flatPlace: play.flatPlace ?? "floor",
      flatGap: play.flatGapMetres ?? 0,
      sweptGaps: play.sweptGapsMetres ?? [],
      indexSpeeds: play.indexSpeedsMetresPerSecond ?? null,
      tilts: (play.tiltDegrees ?? []).map(radiansOf),
      frictionCoefficient: play.frictionCoefficient ?? wetTileFriction.expected,
      frictionSpread:
        play.frictionSpread ??
        (play.frictionCoefficient === undefined ? wetTileFriction.expected - wetTileFriction.low : 0),
      sectionError:
        block.solving?.sectionErrorPercent === undefined ? null : fractionOf(block.solving.sectionErrorPercent),
      panelCount: block.solving?.panelCount ?? null,
      chordRatios: block.solving?.chordRatios ?? null,
    },
    choose: {
      trial: parsed.value.trial ?? null,
      durability: parsed.value.durability ?? null,
      cost: parsed.value.cost ?? null,
      choice: parsed.value.choice ?? null,
    },
    rules: block.rules === undefined || typeof block.rules === "string" ? null : block.rules,
    tolerances: block.making?.tolerances ?? {},
    sampling: {
      sizes: block.making?.sizes ?? demoPuck.sampling.sizes,
      samples: block.making?.samples ?? demoPuck.sampling.samples,
      seed: block.making?.seed ?? demoPuck.sampling.seed,
    },
    massTarget: block.wantedMass ?? demoPuck.massTarget,
    motions: block.motions === undefined ? demoPuck.motions : motionInputs(block.motions),
    tradeoff: tradeoffInputs(block),
  };
  const rulesFile = typeof block.rules === "string" ? block.rules : null;
  return { ok: true, value: { inputs, others: [...others, ...otherBaselines], rulesFile } };
}

/** The puck with its core sized where the case wants a mass; as written where that cannot be. */
function sizedSpec(
  { puck, keepCore }: PuckBlockDocument["baselines"][number],
  { wantedMass, materials }: PuckBlockDocument,
  fluid: PuckInputs["play"]["fluid"],
) {
  const properties = resolveFluid(fluid);
  if (wantedMass === undefined || keepCore === true || !properties.ok) return puck;
  const setting = { fluidDensity: properties.value.density, userMaterials: materials ?? [] };
  const { massKilograms, freeDimension, leastCoverMetres } = wantedMass;
  const sized = sizeCoreForMass(puck, setting, massKilograms, freeDimension, leastCoverMetres);
  return sized.ok ? sized.value.spec : puck;
}

function tradeoffInputs({ tradeoff, rules }: PuckBlockDocument): TradeoffInputs {
  if (tradeoff === undefined) return demoPuck.tradeoff;
  const ranges: Readonly<Record<string, { readonly from?: number; readonly to?: number } | undefined>> =
    rules === undefined || typeof rules === "string" ? {} : rules.ranges;
  const { method } = tradeoff;
  return {
    variables: tradeoff.variables.flatMap(({ dimension, from, to }) => {
      const lowest = from ?? ranges[dimension]?.from;
      const highest = to ?? ranges[dimension]?.to;
      return lowest === undefined || highest === undefined ? [] : [{ key: dimension, lowest, highest }];
    }),
    goals: tradeoff.goals.map(({ figure, sense }) => ({ key: figure, sense })),
    method: method.kind,
    populationSize: method.kind === "paretoSearch" ? method.populationSize : demoPuck.tradeoff.populationSize,
    generations: method.kind === "paretoSearch" ? method.generations : demoPuck.tradeoff.generations,
    points: method.kind === "latinHypercube" ? method.points : demoPuck.tradeoff.points,
    levels: tradeoff.variables[0].levels ?? demoPuck.tradeoff.levels,
    seed: method.kind === "sweep" ? demoPuck.tradeoff.seed : method.seed,
    madeOff: tradeoff.madeOffMetres ?? demoPuck.tradeoff.madeOff,
  };
}

function rising(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function valuesOf(values: number | Sweep): number[] {
  return typeof values === "number" ? [values] : expandSweep(values);
}
