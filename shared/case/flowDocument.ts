import * as z from "zod";
import { exactlyOneInSchema, requireExactlyOne } from "../document/exactlyOne";
import {
  lengthBounds,
  reynoldsBounds,
  roughnessHeightBounds,
  roughnessRatioBounds,
  speedBounds,
  turbulenceBounds,
} from "../document/limits";
import { patternDocument } from "../document/patternDocument";
import { listOrRange, quantity, strictRecord } from "../document/quantity";
import { layerMethodNames } from "../engine/layer/layerMethodName";
import type { StreamTrip } from "../engine/section/stream";

const layerRule = `it must be one of ${layerMethodNames.join(", ")}`;
const sideRule = 'it must be "upper" or "lower"';

/** A trip in a case file: position and height in metres, or each as a ratio to the reference width. */
export const tripDocument = strictRecord("a trip", {
  side: z.enum(["upper", "lower"], { error: sideRule }).describe("The side of the section that carries the trip"),
  arcMetres: quantity("Arc length from the section's nose to the trip", lengthBounds).optional(),
  arcRatio: quantity("Arc length from the nose / reference width", { above: 0, to: 50, unit: "" }).optional(),
  heightMetres: quantity("Height of the trip", lengthBounds).optional(),
  heightRatio: quantity("Height / reference width", { above: 0, to: 0.1, unit: "" }).optional(),
})
  .superRefine((trip, context) => {
    requireExactlyOne(trip, ["arcMetres", "arcRatio"], context);
    requireExactlyOne(trip, ["heightMetres", "heightRatio"], context);
  })
  .meta({
    allOf: [exactlyOneInSchema(["arcMetres", "arcRatio"]), exactlyOneInSchema(["heightMetres", "heightRatio"])],
  });

/** A trip as the engine has it. */
export function tripOf(trip: z.infer<typeof tripDocument>): StreamTrip {
  const { side, arcMetres, arcRatio = 0, heightMetres, heightRatio = 0 } = trip;
  return {
    side,
    ...(arcMetres === undefined ? { arcRatio } : { arc: arcMetres }),
    ...(heightMetres === undefined ? { heightRatio } : { height: heightMetres }),
  };
}

/** The keys of a case file that set the stream and the wall. */
export const flowKeys = {
  speedsMetresPerSecond: listOrRange("Stream speeds", speedBounds).optional(),
  reynoldsNumbers: listOrRange(
    "Reynolds numbers, speed x reference width / kinematic viscosity",
    reynoldsBounds,
  ).optional(),
  sandGrainRoughnessRatios: listOrRange(
    "Equivalent sand-grain roughness / reference width, ks/D",
    roughnessRatioBounds,
  ).optional(),
  sandGrainRoughnessMetres: listOrRange("Equivalent sand-grain roughness ks", roughnessHeightBounds).optional(),
  surfacePattern: patternDocument.optional(),
  turbulencePercents: listOrRange("Turbulence intensity of the stream", turbulenceBounds).optional(),
  trips: z
    .array(tripDocument, { error: "it must be a list of trips" })
    .max(20, "it must be a list of at most 20 trips")
    .optional()
    .describe("Wires, steps or ridges that force transition, on every section of the case"),
  layerMethod: z
    .enum(layerMethodNames, { error: layerRule })
    .optional()
    .describe(
      'How the boundary layers of the sections are worked out: "integral" (the default), which the drag was calibrated and checked with, or "textbook" for comparison: Thwaites, Michel and Head, smooth walls in a quiet stream',
    ),
};
