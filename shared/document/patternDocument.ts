import * as z from "zod";
import { equivalentRoughness } from "../engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import { roughnessHeightBounds } from "./limits";
import { quantity, strictRecord } from "./quantity";

const kindRule = "it must be one of grooves, ridges, dimples";
const sizeBounds = { above: 0, to: roughnessHeightBounds.to, unit: "m" };

/** A regular pattern of the surface in a case file, in place of its sand-grain roughness. */
export const patternDocument = strictRecord("a surface pattern", {
  kind: z.enum(["grooves", "ridges", "dimples"], { error: kindRule }).describe("Kind of the pattern"),
  depthMetres: quantity("Depth of grooves and dimples, height of ridges", sizeBounds),
  widthMetres: quantity("Width of a groove or ridge, diameter of a dimple", sizeBounds),
  pitchMetres: quantity("From the middle of one to the middle of the next", sizeBounds),
})
  .superRefine((document, context) => {
    const estimate = equivalentRoughness(patternOf(document));
    if (estimate.ok) return;
    const { message, field } = estimate.problem;
    context.addIssue({ code: "custom", path: [`${field}Metres`], message, input: document });
  })
  .describe("A regular pattern, whose equivalent sand-grain roughness is estimated from the statistics of its heights");

export type PatternDocument = z.infer<typeof patternDocument>;

export function patternOf({ kind, depthMetres, widthMetres, pitchMetres }: PatternDocument): SurfacePattern {
  return { kind, depth: depthMetres, width: widthMetres, pitch: pitchMetres };
}

export function patternToDocument({ kind, depth, width, pitch }: SurfacePattern): PatternDocument {
  return { kind, depthMetres: depth, widthMetres: width, pitchMetres: pitch };
}
