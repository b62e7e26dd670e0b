import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import { fractionOf, radiansOf } from "../../numerics/degreesAndPercent";
import { type Problem, problem, type Result, success } from "../../result";
import { sizeCoreForMass } from "./body/coreSizing";
import { puckFigures } from "./body/puckFigures";
import { slidingFriction, wetTileFriction } from "./motion/slidingFriction";
import type { PuckBlockDocument } from "./puckBlockDocument";
import type { CasePuck, PuckCase, PuckPlay, PuckRole, PuckStream } from "./puckCase";
import { gapProblems, problemAt, referenceProblems, streamProblems } from "./puckProblems";

/** What the puck block takes from the rest of the case. */
export interface PuckSurroundings {
  readonly fluid: FluidProperties;
  /** m/s, rising. */
  readonly speeds: readonly number[];
  /** Fractions. */
  readonly turbulenceIntensities: readonly number[];
  /** Equivalent sand-grain roughness, m, where a puck names none. */
  readonly sandGrainRoughness: number;
}

type Entry = PuckBlockDocument["baselines"][number];

/** Values of keys that a case leaves out. */
const standard = { panelCount: 120, chordRatios: [0.7, 1], samples: 2000, seed: 1 };

/** Motions end slower than the slowest speed of the results: sections are solved down to these shares of it as well. */
const slowerShares = [0.25, 0.5];

/** The puck block ready to run, or everything that is wrong with it. Fields of problems begin with "puck". */
export function resolvePuckCase(
  block: PuckBlockDocument,
  around: PuckSurroundings,
): { readonly ok: true; readonly value: PuckCase } | { readonly ok: false; readonly problems: readonly Problem[] } {
  const stream = puckStream(block, around);
  const play = puckPlay(block, stream);
  const setting = { fluidDensity: around.fluid.density, userMaterials: block.materials ?? [] };
  const problems: Problem[] = play.ok ? [] : [play.problem];
  const pucks: CasePuck[] = [];
  const entries = (key: "baselines" | "candidates", role: PuckRole, list: readonly Entry[]) =>
    list.map((entry, i) => ({ entry, role, field: `puck.${key}[${i}]` }));
  const all = [
    ...entries("baselines", "baseline", block.baselines),
    ...entries("candidates", "candidate", block.candidates ?? []),
  ];
  for (const { entry, role, field } of all) {
    const name = entry.puck.name;
    if (pucks.some(({ spec }) => spec.name === name)) {
      problems.push(
        problemAt(`${field}.puck.name`, `"${name}" is the name of another puck; each needs its own`, "puck-name"),
      );
    }
    const sized = sizedPuck(entry, block, setting);
    if (!sized.ok) {
      problems.push(problemAt(`${field}.puck`, `${name}: ${sized.problem.message}`, sized.problem.code));
      continue;
    }
    const puck = {
      ...sized.value,
      role,
      sandGrainRoughness: entry.sandGrainRoughnessMetres ?? around.sandGrainRoughness,
      note: entry.note ?? null,
    };
    problems.push(...streamProblems(puck, stream, field), ...gapProblems(puck, block.play));
    pucks.push(puck);
  }
  problems.push(...referenceProblems(block));
  if (problems.length > 0 || !play.ok) return { ok: false, problems };
  const rules = block.rules ?? null;
  return {
    ok: true,
    value: {
      pucks,
      setting,
      stream,
      play: play.value,
      rules: typeof rules === "string" ? null : rules,
      unreadRules: typeof rules === "string" ? rules : null,
      tolerances: block.making?.tolerances ?? {},
      sampling: madeSampling(block),
      massTarget: block.wantedMass ?? null,
      motions: block.motions ?? [],
      tradeoff: block.tradeoff ?? null,
      handoff: block.handoff ?? {},
    },
  };
}

function sizedPuck(
  entry: Entry,
  { wantedMass }: PuckBlockDocument,
  setting: PuckCase["setting"],
): Result<Pick<CasePuck, "spec" | "figures">> {
  if (wantedMass === undefined || entry.keepCore === true) {
    const figures = puckFigures(entry.puck, setting);
    return figures.ok ? success({ spec: entry.puck, figures: figures.value }) : figures;
  }
  const { massKilograms, freeDimension, leastCoverMetres } = wantedMass;
  return sizeCoreForMass(entry.puck, setting, massKilograms, freeDimension, leastCoverMetres);
}

function puckStream(block: PuckBlockDocument, around: PuckSurroundings): PuckStream {
  const speeds = [...new Set(around.speeds)];
  const slower = (block.motions ?? []).length > 0 ? slowerShares.map((share) => share * speeds[0]) : [];
  const { solving } = block;
  return {
    fluid: around.fluid,
    speeds,
    solvedSpeeds: [...slower, ...speeds],
    turbulenceIntensities: [...new Set(around.turbulenceIntensities)],
    panelCount: solving?.panelCount ?? standard.panelCount,
    chordRatios: [...new Set(solving?.chordRatios ?? standard.chordRatios)].sort((a, b) => a - b),
    sectionError: solving?.sectionErrorPercent === undefined ? null : fractionOf(solving.sectionErrorPercent),
  };
}

function puckPlay({ play }: PuckBlockDocument, stream: PuckStream): Result<PuckPlay> {
  const { frictionCoefficient, frictionSpread } = play;
  if (frictionCoefficient === undefined && frictionSpread !== undefined) {
    return fault("puck.play.frictionSpread", "it needs a frictionCoefficient");
  }
  const friction =
    frictionCoefficient === undefined
      ? success(wetTileFriction)
      : slidingFriction(frictionCoefficient, frictionSpread ?? 0);
  if (!friction.ok) return fault("puck.play.frictionSpread", friction.problem.message);
  const isOnFloor = (play.flatPlace ?? "floor") === "floor";
  if (!isOnFloor && play.flatGapMetres !== undefined) {
    return fault("puck.play.flatGapMetres", 'it needs flatPlace "floor"');
  }
  const indexSpeeds = play.indexSpeedsMetresPerSecond ?? stream.speeds;
  const [slowest, fastest] = [stream.speeds[0], stream.speeds[stream.speeds.length - 1]];
  const beyond = indexSpeeds.find((speed) => !(speed >= slowest && speed <= fastest));
  if (beyond !== undefined) {
    return fault(
      "puck.play.indexSpeedsMetresPerSecond",
      `${beyond} m/s is not among the case's speeds; it must be from ${slowest} to ${fastest} m/s`,
    );
  }
  return success({
    shares: play.orientationShares,
    indexSpeeds,
    flatGap: isOnFloor ? (play.flatGapMetres ?? 0) : null,
    sweptGaps: [...new Set(play.sweptGapsMetres ?? [])].sort((a, b) => a - b),
    tilts: (play.tiltDegrees ?? []).map(radiansOf),
    friction: friction.value,
  });
}

function fault(field: string, message: string) {
  return problem("puck-play", `${field}: ${message}`, field);
}

function madeSampling({ making, rules }: PuckBlockDocument): PuckCase["sampling"] {
  if (making === undefined || rules === undefined) return null;
  const { sizes = "uniform", samples = standard.samples, seed = standard.seed } = making;
  return { sizes, samples, seed };
}
