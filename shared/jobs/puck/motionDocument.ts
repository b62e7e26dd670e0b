import * as z from "zod";
import { lengthBounds, speedBounds } from "../../document/limits";
import { kindRule, quantity, strictRecord, text } from "../../document/quantity";

const marksRule = "it must be a list of 1 to 20 distances, m";
const samplesRule = "it must be a whole number from 2 to 1000";

/** Keys that every motion may have. */
const common = {
  name: text("Name in results", 100).optional(),
  longestSeconds: quantity("Longest time that is followed", { above: 0, to: 600, unit: "s" }).optional(),
  markDistancesMetres: z
    .array(quantity("Distance", lengthBounds), { error: marksRule })
    .min(1, marksRule)
    .max(20, marksRule)
    .optional()
    .describe("Distances at which time and speed are wanted"),
  curveSamples: z
    .int({ error: samplesRule })
    .gte(2, samplesRule)
    .lte(1000, samplesRule)
    .optional()
    .describe("Points of the motion over time in the results; none when left out"),
};

const attitude = z
  .discriminatedUnion(
    "kind",
    [
      strictRecord("a puck that lies along its path", { kind: z.literal("edgeAlongPath") }),
      strictRecord("a puck held by its spin", {
        kind: z.literal("fixed"),
        pitchDegrees: quantity("Mid-plane over the horizontal, front up positive", {
          from: -90,
          to: 90,
          unit: "degrees",
        }),
      }),
    ],
    { error: kindRule("kind", "edgeAlongPath, fixed") },
  )
  .describe("How the puck lies while it flies");

/** A motion that a case asks for: a slide along the floor, a flick through the water, or a sink to the floor. */
export const motionDocument = z.discriminatedUnion(
  "kind",
  [
    strictRecord("a slide", {
      kind: z.literal("slide"),
      ...common,
      startSpeedMetresPerSecond: quantity("Speed at the start", speedBounds),
    }),
    strictRecord("a flick", {
      kind: z.literal("flick"),
      ...common,
      startSpeedMetresPerSecond: quantity("Speed at the start", speedBounds),
      elevationDegrees: quantity("Direction over the horizontal", { from: -90, to: 90, unit: "degrees" }),
      startHeightMetres: quantity("Height over the floor at the start", lengthBounds),
      waterDepthMetres: quantity("Depth of the water", lengthBounds),
      attitude,
    }),
    strictRecord("a sink", {
      kind: z.literal("sink"),
      ...common,
      attitude: z.enum(["faceOn", "edgeOn"], { error: 'it must be "faceOn" or "edgeOn"' }),
      depthMetres: quantity("Way to the floor", lengthBounds),
    }),
  ],
  { error: kindRule("kind", "slide, flick, sink") },
);

export type MotionDocument = z.infer<typeof motionDocument>;
