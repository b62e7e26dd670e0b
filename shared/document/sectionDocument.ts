import * as z from "zod";
import { largestBulge } from "../engine/geometry/outlineSides";
import { lengthBounds } from "./limits";
import { kindRule, strictRecord, sweepable, text } from "./quantity";

/** Most points of an imported contour, and most metres that a point may lie from the origin. */
const mostPoints = 2000;
const farthestPoint = 100;

/** One definition in the JSON Schema, with a description of its own at every use. */
const anyLength = sweepable("Length", lengthBounds).meta({ id: "length" });

function length(description: string) {
  return anyLength.describe(description);
}

const coordinateRule = `it must be a number from ${-farthestPoint} to ${farthestPoint} m`;
const coordinate = z
  .number({ error: coordinateRule })
  .gte(-farthestPoint, coordinateRule)
  .lte(farthestPoint, coordinateRule);
const pointRule = "it must be a point [x, y]";
const pointsRule = `it must be a list of 8 to ${mostPoints} points [x, y]`;

const point = z.tuple([coordinate, coordinate], { error: pointRule });
const sidesRule = `it must be a list of 2 to ${mostPoints} sides {fromMetres, bulge or controlsMetres}`;
const bulgeRule = `it must be a number from ${-largestBulge} to ${largestBulge}`;
const controlsRule = "it must be a list of two points [x, y]";

const side = strictRecord("a side", {
  fromMetres: point.describe("Start [x, y], x along the stream, y upward"),
  bulge: z
    .number({ error: bulgeRule })
    .gte(-largestBulge, bulgeRule)
    .lte(largestBulge, bulgeRule)
    .optional()
    .describe("Tangent of a quarter of the angle that a circular arc turns, positive to the left; straight without"),
  controlsMetres: z
    .tuple([point, point], { error: controlsRule })
    .optional()
    .describe("The two inner control points of a cubic curve; not together with bulge"),
}).refine(({ bulge, controlsMetres }) => bulge === undefined || controlsMetres === undefined, {
  error: "it must have a bulge or controlsMetres, not both",
});

/** The words that a key may have; the rule lists them. */
function choice<const Words extends readonly string[]>(description: string, words: Words) {
  return z.enum(words, { error: `it must be ${words.map((word) => `"${word}"`).join(" or ")}` }).describe(description);
}

const name = text("Name in results; without it the section is named by its dimensions", 100).optional();
const alongStream = length("Over all along the stream");
const acrossStream = length("Over all across the stream");
const cornerRadiusMetres = length("Radius of the corners");

const floorGapMetres = sweepable(
  "Gap between the lowest point and a floor along the stream: 0 when the section lies on it, else 2 % of the height or more; no floor when left out",
  { from: 0, to: 100, unit: "m" },
)
  .meta({ id: "floorGap" })
  .optional();

const families = [
  strictRecord("a circle", { family: z.literal("circle"), name, diameterMetres: length("Diameter"), floorGapMetres }),
  strictRecord("an ellipse", {
    family: z.literal("ellipse"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    floorGapMetres,
  }),
  strictRecord("a rounded rectangle", {
    family: z.literal("roundedRectangle"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    edgeRadiusMetres: length("Radius of the four edges, 1 % to 50 % of the smaller of length and height"),
    floorGapMetres,
  }),
  strictRecord("a superellipse", {
    family: z.literal("superellipse"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    exponent: sweepable("Exponent, 2 for the ellipse", { from: 2, to: 20, unit: "" }),
    floorGapMetres,
  }),
  strictRecord("a stadium", {
    family: z.literal("stadium"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    floorGapMetres,
  }),
  strictRecord("a bevelled rectangle", {
    family: z.literal("bevelledRectangle"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    bevelLengthMetres: length("Leg of the bevel along the stream, at most half the length"),
    bevelHeightMetres: length("Leg of the bevel across the stream, at most half the height"),
    cornerRadiusMetres,
    floorGapMetres,
  }),
  strictRecord("a D-shape", {
    family: z.literal("dShape"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    noseLengthMetres: length("Semi-axis of the half ellipse along the stream; half the height for a semicircle"),
    cornerRadiusMetres,
    flatSide: choice("The end that is flat", ["front", "rear"]),
    floorGapMetres,
  }),
  strictRecord("a rounded polygon", {
    family: z.literal("roundedPolygon"),
    name,
    sides: z
      .int({ error: "it must be a whole number from 3 to 24" })
      .gte(3, "it must be a whole number from 3 to 24")
      .lte(24, "it must be a whole number from 3 to 24")
      .describe("Number of sides, 3 to 24"),
    inscribedDiameterMetres: length("Diameter of the circle that touches all sides from inside"),
    cornerRadiusMetres,
    facing: choice("What the stream meets first", ["flat", "corner"]),
    floorGapMetres,
  }),
  strictRecord("a rounded triangle", {
    family: z.literal("roundedTriangle"),
    name,
    lengthMetres: alongStream,
    heightMetres: acrossStream,
    cornerRadiusMetres,
    apex: choice("Whether the apex points against the stream or down it", ["forward", "rearward"]),
    floorGapMetres,
  }),
  strictRecord("an outline", {
    family: z.literal("outline"),
    name,
    sides: z
      .array(side, { error: sidesRule })
      .min(2, sidesRule)
      .max(mostPoints, sidesRule)
      .describe("Sides in order, in either direction; each ends where the next one starts"),
    cornerRadiusMetres: cornerRadiusMetres
      .optional()
      .describe("Radius of the corners; 1 % of the smaller of length and height when left out, which is the least"),
    floorGapMetres,
  }),
  strictRecord("a free contour", {
    family: z.literal("freeContour"),
    name,
    pointsMetres: z
      .array(point, { error: pointsRule })
      .min(8, pointsRule)
      .max(mostPoints, pointsRule)
      .describe("Points [x, y] along the contour in either direction, x along the stream, y upward"),
    floorGapMetres,
  }),
] as const;

const familyNames = families.map((family) => family.shape.family.value).join(", ");

/** A section of a case file: a family and its dimensions, at most one of which is swept. */
export const sectionDocument = z
  .discriminatedUnion("family", families, { error: kindRule("family", familyNames) })
  .describe("A section; lengths in metres, along and across the stream at zero incidence");

export type SectionDocument = z.infer<typeof sectionDocument>;
