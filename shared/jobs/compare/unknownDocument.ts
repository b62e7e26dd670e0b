import * as z from "zod";
import {
  incidenceBounds,
  reynoldsBounds,
  roughnessHeightBounds,
  roughnessRatioBounds,
  speedBounds,
  turbulenceBounds,
} from "../../document/limits";
import { type Bounds, quantity, strictRecord } from "../../document/quantity";

/** Fewest and most equally likely samples of what is not known. */
const sampleBounds = { from: 2, to: 200 } as const;
const sampleRule = `it must be a whole number from ${sampleBounds.from} to ${sampleBounds.to}`;

function between(what: string, bounds: Bounds) {
  const end = quantity(what, bounds);
  return strictRecord("a range", { from: end, to: end })
    .superRefine(({ from, to }, context) => {
      if (to > from) return;
      context.addIssue({ code: "custom", path: ["to"], message: `it must be above "from", ${from}`, input: to });
    })
    .describe(`${what}: anything between two ends, not known`)
    .optional();
}

const share = (what: string) => between(`Share of play ${what}, on any scale`, { from: 0, to: 1000, unit: "" });
const plusMinus = (what: string) => quantity(`Plus and minus of ${what}`, { above: 0, to: 0.1, unit: "m" }).optional();

/** What is not known about the water, the wall and the designs, as ranges that are drawn once for all designs. */
export const unknownDocument = strictRecord("what is not known", {
  turbulencePercent: between("Turbulence intensity of the water", turbulenceBounds),
  sandGrainRoughnessMetres: between("Finish, equivalent sand-grain roughness", {
    ...roughnessHeightBounds,
    from: 1e-8,
  }),
  sandGrainRoughnessRatio: between("Finish, ks / width; sections alone", { ...roughnessRatioBounds, from: 1e-7 }),
  speedMetresPerSecond: between("Speed", speedBounds),
  reynoldsNumber: between("Reynolds number, in place of the speed; sections alone", reynoldsBounds),
  incidenceDegrees: between("Incidence; sections alone", incidenceBounds),
  orientationShares: strictRecord("shares of play as ranges", {
    upright: share("standing on its rim"),
    flat: share("lying flat"),
    faceOn: share("with its face to the water"),
  })
    .describe("Attitudes of play; pucks alone")
    .optional(),
  tolerances: strictRecord("making tolerances", {
    diameterMetres: plusMinus("a diameter"),
    lengthMetres: plusMinus("a length"),
    heightMetres: plusMinus("a height"),
    thicknessMetres: plusMinus("a thickness"),
    edgeRadiusMetres: plusMinus("an edge radius"),
  })
    .describe("Sizes as they may be made, each evenly within its tolerance; a design without the size leaves it out")
    .optional(),
  samples: z
    .int({ error: sampleRule })
    .gte(sampleBounds.from, sampleRule)
    .lte(sampleBounds.to, sampleRule)
    .describe("Into how many equally likely samples the ranges are cut, each solved for every design; 12 when left out")
    .optional(),
}).describe(
  "What is not known, as ranges: drawn with the engine's errors, once for all designs; finish evenly in its logarithm, all else evenly",
);

export type UnknownDocument = z.infer<typeof unknownDocument>;
