import * as z from "zod";
import { exactlyOneInSchema, requireExactlyOne } from "../../../document/exactlyOne";
import { type Bounds, quantity, strictRecord, text } from "../../../document/quantity";
import type { Material } from "./materials";
import type { PuckSpec } from "./puckSpec";

/** How a puck stands in a file: the same keys as PuckSpec, strict, every error text the rule that was broken. */

const lengthBounds: Bounds = { above: 0, to: 10, unit: "m" };
const insetBounds: Bounds = { from: 0, to: 10, unit: "m" };
const heightBounds: Bounds = { from: -10, to: 10, unit: "m" };

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

function kinds<const Options extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]]>(
  what: string,
  options: Options,
) {
  return z.discriminatedUnion("kind", options, { error: `it must be ${what} of a known kind` });
}

const profileRule = "it must be a list of 2 to 500 pairs [inset from the rim, inset from the face], m";

const edgeRadiusKeys = ["edgeRadiusMetres", "radiusMetres"] as const;

interface RoundedEdge {
  readonly kind: "radius";
  readonly edgeRadiusMetres: number;
}

/**
 * Files of earlier releases say radiusMetres; it is read as edgeRadiusMetres, the name that it has everywhere else. The
 * type is what comes out: with exactly one of both keys given, edgeRadiusMetres is always there.
 */
const roundedEdgeDocument = strictRecord("a rounded edge", {
  kind: z.literal("radius"),
  edgeRadiusMetres: quantity("Radius", insetBounds).optional(),
  radiusMetres: quantity("Earlier name of edgeRadiusMetres", insetBounds).meta({ deprecated: true }).optional(),
})
  .superRefine((edge, context) => requireExactlyOne(edge, edgeRadiusKeys, context))
  .meta({ allOf: [exactlyOneInSchema(edgeRadiusKeys)] })
  .overwrite(({ kind, edgeRadiusMetres, radiusMetres }) => ({
    kind,
    edgeRadiusMetres: edgeRadiusMetres ?? radiusMetres,
  })) as z.ZodType<RoundedEdge, RoundedEdge> & z.core.$ZodTypeDiscriminable;

const edgeDocument = kinds("an edge", [
  roundedEdgeDocument,
  strictRecord("a bevelled edge", {
    kind: z.literal("bevel"),
    radialMetres: quantity("Inset along the face", insetBounds),
    axialMetres: quantity("Inset along the rim", insetBounds),
  }),
  strictRecord("an edge profile", {
    kind: z.literal("profile"),
    points: z
      .array(z.tuple([quantity("Inset from the rim", insetBounds), quantity("Inset from the face", insetBounds)]), {
        error: profileRule,
      })
      .min(2, profileRule)
      .max(500, profileRule)
      .describe("From the face (inset 0 from it) to the rim"),
  }),
]);

const side = z.enum(["top", "bottom", "both"], { error: "it must be top, bottom or both" });

const faceDocument = kinds("a face", [
  strictRecord("a flat face", { kind: z.literal("flat") }),
  strictRecord("a recess", {
    kind: z.literal("recess"),
    side,
    diameterMetres: quantity("Diameter", lengthBounds),
    depthMetres: quantity("Depth", lengthBounds),
  }),
  strictRecord("radial grooves", {
    kind: z.literal("radialGrooves"),
    side,
    number: whole("Number of grooves", 3, 360),
    widthMetres: quantity("Width", lengthBounds),
    depthMetres: quantity("Depth", lengthBounds),
    innerRadiusMetres: quantity("Radius where they begin", lengthBounds),
    outerRadiusMetres: quantity("Radius where they end", lengthBounds),
  }),
]);

const rimDocument = kinds("a rim", [
  strictRecord("a plain rim", { kind: z.literal("plain") }),
  strictRecord("a rough rim", {
    kind: z.literal("rough"),
    sandGrainRoughnessMetres: quantity("Equivalent sand-grain roughness", insetBounds),
  }),
  strictRecord("axial grooves", {
    kind: z.literal("axialGrooves"),
    number: whole("Number of grooves", 3, 720),
    widthMetres: quantity("Width", lengthBounds),
    depthMetres: quantity("Depth", lengthBounds),
  }),
  strictRecord("ring grooves", {
    kind: z.literal("ringGrooves"),
    number: whole("Number of rings", 1, 100),
    widthMetres: quantity("Width", lengthBounds),
    depthMetres: quantity("Depth", lengthBounds),
  }),
]);

const material = text("Material, by name", 100);

const coreDocument = kinds("a core", [
  strictRecord("no core", { kind: z.literal("none") }),
  strictRecord("a disc core", {
    kind: z.literal("disc"),
    material,
    diameterMetres: quantity("Diameter", lengthBounds),
    thicknessMetres: quantity("Thickness", lengthBounds),
    edgeRadiusMetres: quantity("Edge radius", insetBounds).optional(),
    heightMetres: quantity("Height of its middle above the puck's", heightBounds).optional(),
  }),
  strictRecord("a ring core", {
    kind: z.literal("ring"),
    material,
    outerDiameterMetres: quantity("Outer diameter", lengthBounds),
    innerDiameterMetres: quantity("Inner diameter", lengthBounds),
    thicknessMetres: quantity("Thickness", lengthBounds),
    heightMetres: quantity("Height of its middle above the puck's", heightBounds).optional(),
  }),
  strictRecord("a core under its coat", {
    kind: z.literal("underCoat"),
    material,
    coatThicknessMetres: quantity("Thickness of the coat", lengthBounds),
  }),
]);

/** A puck in a file. */
export const puckDocument: z.ZodType<PuckSpec> = strictRecord("a puck", {
  name: text("Name of the puck", 200),
  diameterMetres: quantity("Diameter", lengthBounds),
  thicknessMetres: quantity("Thickness over all", lengthBounds),
  edge: edgeDocument.describe("How face and rim meet"),
  face: faceDocument.describe("Recess or pattern of the faces"),
  rim: rimDocument.describe("Texture of the straight rim"),
  core: coreDocument.describe("Heavy core"),
  coatMaterial: text("Material of all that is not core, by name", 100),
});

/** A user's own material in a file. */
export const materialDocument: z.ZodType<Material> = strictRecord("a material", {
  name: text("Name", 100),
  density: quantity("Density", { above: 0, to: 29999, unit: "kg/m3" }),
  lowestDensity: quantity("Lowest density sold under the name", { above: 0, to: 29999, unit: "kg/m3" }),
  highestDensity: quantity("Highest density sold under the name", { above: 0, to: 29999, unit: "kg/m3" }),
  source: text("Where the density comes from", 500),
  cautions: z.array(text("Caution", 1000), { error: "it must be a list of cautions" }).max(20),
});
