import { resolveFluid } from "../../../shared/engine/fluid/resolveFluid";
import type { PuckBlockDocument } from "../../../shared/jobs/puck/puckBlockDocument";
import type { PuckCase } from "../../../shared/jobs/puck/puckCase";
import { resolvePuckCase } from "../../../shared/jobs/puck/resolvePuckCase";
import type { TradeoffDocument } from "../../../shared/jobs/puck/tradeoffDocument";
import { degreesOf, percentOf } from "../../../shared/numerics/degreesAndPercent";
import { problem, type Result, success } from "../../../shared/result";
import { fittingTarget } from "./fittingTarget";
import { motionDocument } from "./motionInputs";
import type { PuckInputs, PuckMake, TradeoffInputs } from "./puckInputs";

/** The inputs as the puck block of a case file: candidate first among the candidates, then the others. */
export function puckBlock(inputs: PuckInputs, others: readonly PuckMake[]): PuckBlockDocument {
  const entry = ({ spec, sandGrainRoughness }: PuckMake) => ({
    puck: spec,
    sandGrainRoughnessMetres: sandGrainRoughness,
    keepCore: true,
  });
  const { play } = inputs;
  const massTarget = fittingTarget(inputs.candidate.spec, inputs.massTarget);
  return {
    baselines: [entry(inputs.baseline)],
    candidates: [inputs.candidate, ...others].map(entry),
    play: {
      orientationShares: play.shares,
      flatPlace: play.flatPlace,
      ...(play.flatPlace === "floor" && play.flatGap > 0 ? { flatGapMetres: play.flatGap } : {}),
      ...(play.sweptGaps.length === 0 ? {} : { sweptGapsMetres: [...play.sweptGaps] }),
      ...(play.indexSpeeds === null ? {} : { indexSpeedsMetresPerSecond: [...play.indexSpeeds] }),
      ...(play.tilts.length === 0 ? {} : { tiltDegrees: play.tilts.map(degreesOf) }),
      frictionCoefficient: play.frictionCoefficient,
      frictionSpread: play.frictionSpread,
    },
    ...(inputs.userMaterials.length > 0 ? { materials: inputs.userMaterials.map(asWritten) } : {}),
    ...(inputs.rules === null ? {} : { rules: inputs.rules }),
    making: { tolerances: inputs.tolerances, ...inputs.sampling },
    ...(massTarget === null ? {} : { wantedMass: massTarget }),
    motions: inputs.motions.map(motionDocument),
    ...solvingOf(play),
    tradeoff: tradeoffDocumentOf(inputs.tradeoff, inputs.candidate.spec.name),
  };
}

/** How sections are solved, as far as it differs from the engine's own way. */
function solvingOf({ sectionError, panelCount, chordRatios }: PuckInputs["play"]): Pick<PuckBlockDocument, "solving"> {
  if (sectionError === null && panelCount === null && chordRatios === null) return {};
  return {
    solving: {
      ...(sectionError === null ? {} : { sectionErrorPercent: percentOf(sectionError) }),
      ...(panelCount === null ? {} : { panelCount }),
      ...(chordRatios === null ? {} : { chordRatios: [...chordRatios] }),
    },
  };
}

function asWritten<T extends { readonly cautions: readonly string[] }>(material: T) {
  return { ...material, cautions: [...material.cautions] };
}

function tradeoffDocumentOf(tradeoff: TradeoffInputs, template: string): TradeoffDocument {
  const { method, levels, seed } = tradeoff;
  return {
    template,
    variables: tradeoff.variables.map(({ key, lowest, highest }) => ({
      dimension: key,
      from: lowest,
      to: highest,
      ...(method === "sweep" ? { levels } : {}),
    })),
    goals: tradeoff.goals.map(({ key, sense }) => ({ figure: key, sense })),
    method:
      method === "sweep"
        ? { kind: "sweep" }
        : method === "latinHypercube"
          ? { kind: "latinHypercube", points: tradeoff.points, seed }
          : {
              kind: "paretoSearch",
              populationSize: tradeoff.populationSize,
              generations: tradeoff.generations,
              seed,
            },
    madeOffMetres: tradeoff.madeOff,
  };
}

/**
 * The inputs checked and made ready to run: baseline, candidate, then the others. Motions that are slower than every
 * speed of the drag curves are covered by slower speeds at which sections are solved as well.
 */
export function puckCaseOf(inputs: PuckInputs, others: readonly PuckMake[]): Result<PuckCase> {
  const fluid = resolveFluid(inputs.play.fluid);
  if (!fluid.ok) return problem(fluid.problem.code, fluid.problem.message, `fluid.${fluid.problem.field ?? ""}`);
  const resolved = resolvePuckCase(puckBlock(inputs, others), {
    fluid: fluid.value,
    speeds: inputs.play.speeds,
    turbulenceIntensities: inputs.play.turbulenceIntensities,
    sandGrainRoughness: inputs.candidate.sandGrainRoughness,
  });
  if (resolved.ok) return success(resolved.value);
  const [first] = resolved.problems;
  return { ok: false, problem: first };
}
