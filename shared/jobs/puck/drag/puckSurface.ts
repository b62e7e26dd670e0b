import { smallestRadiusRatio } from "../../../engine/geometry/dimensionChecks";
import type { PuckSpec } from "../body/puckSpec";
import type { CasePuck } from "../puckCase";

export const grooveNote =
  "Grooves are not solved: drag is given between that of the plain finish and that of a wall with sand grains as high as the grooves are deep, the expected value half-way; an assumption without a source.";
export const sharpEdgeNote = `An edge radius below ${100 * smallestRadiusRatio} % of the thickness is solved at that: such corners count as sharp.`;
export const recessNote =
  "The recess is not solved edge-on: nothing published was found for it. The expected value leaves it out; the upper end of the band adds its downstream wall, depth x diameter, at the stream's full dynamic pressure: an allowance without a source.";
/** Roughnesses of the plain wall and of what grooves could amount to, m, smaller first; one where there are no grooves. */
export type Roughnesses = readonly number[];

export function rimRoughness({ spec, sandGrainRoughness }: Pick<CasePuck, "spec" | "sandGrainRoughness">): Roughnesses {
  if (spec.rim.kind === "rough") return [spec.rim.sandGrainRoughnessMetres];
  // Rings lie along the flow round the rim: they are no obstacle to it.
  return spec.rim.kind === "axialGrooves"
    ? [sandGrainRoughness, Math.max(sandGrainRoughness, spec.rim.depthMetres)]
    : [sandGrainRoughness];
}

export function faceRoughness({
  spec,
  sandGrainRoughness,
}: Pick<CasePuck, "spec" | "sandGrainRoughness">): Roughnesses {
  return spec.face.kind === "radialGrooves"
    ? [sandGrainRoughness, Math.max(sandGrainRoughness, spec.face.depthMetres)]
    : [sandGrainRoughness];
}

/** What is assumed of edges, grooves and recesses in the sections. */
export function surfaceNotes({ edge, face, rim, thicknessMetres: t }: PuckSpec): string[] {
  const notes: string[] = [];
  if (edge.kind === "radius" && edge.edgeRadiusMetres < smallestRadiusRatio * t) notes.push(sharpEdgeNote);
  if (face.kind === "radialGrooves" || rim.kind === "axialGrooves") notes.push(grooveNote);
  if (face.kind === "recess") notes.push(recessNote);
  return notes;
}
