import * as z from "zod";
import { fluidDocument } from "../../document/fluidDocument";
import { reynoldsBounds, speedBounds, turbulenceBounds } from "../../document/limits";
import { kindRule, quantity, strictRecord, text } from "../../document/quantity";
import { attitudes } from "../puck/public";

export const mostMeasurements = 50;
const simulationBounds = { from: 50, to: 5000 } as const;
const simulationRule = `it must be a whole number from ${simulationBounds.from} to ${simulationBounds.to}`;

const common = {
  name: text("Name in results; made of what it is when left out", 100).optional(),
  cost: quantity("What it costs, in any unit that all share; 1 when left out", {
    above: 0,
    to: 1e9,
    unit: "",
  }).optional(),
};

const attitude = z
  .enum(attitudes, { error: `it must be one of ${attitudes.join(", ")}` })
  .describe("How a puck is held; upright when left out. Sections have none")
  .optional();

const run = {
  ...common,
  designs: z
    .array(text("Name of a section or puck of the case", 200), { error: designsRule() })
    .min(1, designsRule())
    .max(10, designsRule())
    .describe("What is measured, one run each in the same set-up, so that what the set-up is off by is in all of them"),
  attitude,
  speedMetresPerSecond: quantity("Speed of the run", speedBounds).optional(),
  reynoldsNumber: quantity("In place of the speed; sections alone", reynoldsBounds).optional(),
  standardUncertaintyPercent: quantity("Standard uncertainty of the drag, k = 1, over the drag", {
    above: 0,
    to: 100,
    unit: "%",
  }),
  facility: text(
    "The tunnel or tank; runs in one share what it is off by. When left out each measurement has its own",
    100,
  ).optional(),
};

function designsRule(): string {
  return "it must be a list of 1 to 10 names";
}

/** One measurement that might be made. */
export const possibleMeasurement = z
  .discriminatedUnion(
    "kind",
    [
      strictRecord("a tunnel run", {
        kind: z.literal("tunnel"),
        ...run,
        fluid: fluidDocument.optional().describe("Of the tunnel; the case's own when left out"),
        turbulencePercent: quantity("Turbulence of the tunnel", turbulenceBounds),
      }),
      strictRecord("a towing run", { kind: z.literal("towing"), ...run }),
      strictRecord("a measurement of the turbulence", {
        kind: z.literal("turbulence"),
        ...common,
        standardUncertaintyPercent: quantity("Standard uncertainty of the intensity, k = 1, in points of per cent", {
          above: 0,
          to: 20,
          unit: "%",
        }),
      }),
    ],
    { error: kindRule("kind", "tunnel, towing, turbulence") },
  )
  .describe('A run in a tunnel, a towing run in the water of the case ("towing"), or the turbulence of that water');

/** The block of a case that asks what to test next. */
export const nextBlockDocument = strictRecord("what to test next", {
  measurements: z
    .array(possibleMeasurement, { error: measurementsRule() })
    .min(1, measurementsRule())
    .max(mostMeasurements, measurementsRule())
    .optional()
    .describe("What could be measured; one towing run of each design beside its baseline when left out"),
  speedMetresPerSecond: quantity(
    "Speed that the choice is for, one of the case; all conditions together when left out",
    speedBounds,
  ).optional(),
  attitude: attitude.describe("Attitude that the choice of a puck is for; all, by their shares of play, when left out"),
  simulations: z
    .int({ error: simulationRule })
    .gte(simulationBounds.from, simulationRule)
    .lte(simulationBounds.to, simulationRule)
    .optional()
    .describe("How many outcomes of each measurement are simulated; 400 when left out"),
}).describe("Which measurement would help the choice most: value of information over the draws of the comparison");

function measurementsRule(): string {
  return `it must be a list of 1 to ${mostMeasurements} measurements`;
}

export type NextBlockDocument = z.infer<typeof nextBlockDocument>;
export type PossibleMeasurement = z.infer<typeof possibleMeasurement>;
