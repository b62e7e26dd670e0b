import { reynoldsBounds, roughnessRatioBounds } from "../../document/limits";
import { checkGapRatio, SMALLEST_GAP_RATIO } from "../../engine/flow/floorPlane";
import type { Problem } from "../../result";
import type { PuckBlockDocument } from "./puckBlockDocument";
import type { CasePuck, PuckStream } from "./puckCase";

/** A problem at a key of the case, its message beginning with the key. */
export function problemAt(field: string, message: string, code: string): Problem {
  return { code, message: `${field}: ${message}`, field };
}

/** Reynolds number and roughness ratio of a puck's sections must stay in the engine's ranges. */
export function streamProblems(puck: CasePuck, stream: PuckStream, field: string): Problem[] {
  const { diameterMetres: d, thicknessMetres: t } = puck.spec;
  const slowest = (stream.solvedSpeeds[0] * t) / stream.fluid.kinematicViscosity;
  const fastest = (stream.speeds[stream.speeds.length - 1] * d) / stream.fluid.kinematicViscosity;
  const { from = 0, to } = reynoldsBounds;
  const problems: Problem[] = [];
  if (!(slowest >= from && fastest <= to)) {
    const message = `speeds give Reynolds numbers ${slowest.toPrecision(3)} (thickness) to ${fastest.toPrecision(3)} (diameter); both must be from ${from} to ${to}`;
    problems.push(problemAt(`${field}.puck`, message, "reynolds-range"));
  }
  const rim = puck.spec.rim.kind === "rough" ? puck.spec.rim.sandGrainRoughnessMetres : puck.sandGrainRoughness;
  const ratio = Math.max(puck.sandGrainRoughness / t, rim / d);
  if (!(ratio <= roughnessRatioBounds.to)) {
    const message = `its roughness is ${ratio.toPrecision(3)} of the thickness or diameter; it must be at most ${roughnessRatioBounds.to}`;
    problems.push(problemAt(field, message, "roughness-range"));
  }
  return problems;
}

/** Gaps that boundary layers would fill under this puck. */
export function gapProblems(
  { spec }: CasePuck,
  { flatGapMetres, sweptGapsMetres }: PuckBlockDocument["play"],
): Problem[] {
  const gaps = [
    ...(flatGapMetres === undefined ? [] : [{ field: "puck.play.flatGapMetres", gap: flatGapMetres }]),
    ...(sweptGapsMetres ?? []).map((gap, i) => ({ field: `puck.play.sweptGapsMetres[${i}]`, gap })),
  ];
  return gaps.flatMap(({ field, gap }) => {
    if (checkGapRatio(gap / spec.thicknessMetres) === null) return [];
    const least = Number((1000 * SMALLEST_GAP_RATIO * spec.thicknessMetres).toPrecision(3));
    const message = `${Number((1000 * gap).toPrecision(3))} mm is filled by boundary layers under "${spec.name}"; it must be 0 or at least ${least} mm`;
    return [problemAt(field, message, "floor-gap")];
  });
}

/** Names and ranges that point at something the case does not have. */
export function referenceProblems({ tradeoff, wantedMass, baselines, candidates }: PuckBlockDocument): Problem[] {
  if (tradeoff === undefined) return [];
  const problems: Problem[] = [];
  const names = [...baselines, ...(candidates ?? [])].map(({ puck }) => puck.name);
  if (tradeoff.template !== undefined && !names.includes(tradeoff.template)) {
    const message = `no puck has the name "${tradeoff.template}"; it must be one of ${names.join(", ")}`;
    problems.push(problemAt("puck.tradeoff.template", message, "puck-name"));
  }
  if (tradeoff.goals.some(({ figure }) => figure === "massErrorKilograms") && wantedMass === undefined) {
    problems.push(problemAt("puck.tradeoff.goals", "massErrorKilograms needs a wantedMass", "tradeoff"));
  }
  return problems;
}
