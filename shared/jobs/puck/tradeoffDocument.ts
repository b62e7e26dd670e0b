import * as z from "zod";
import { kindRule, quantity, strictRecord, text } from "../../document/quantity";
import { figureKeys } from "./body/figureCatalogue";
import { dimensionKeys } from "./body/puckDimension";

/** Most evaluations of one trade-off; each solves sections, so this is hours of work. */
export const mostTradeoffPoints = 20_000;

const sizeBounds = { from: 0, to: 10, unit: "m" };
const countRule = `it must be a whole number from 1 to ${mostTradeoffPoints}`;
const levelsRule = "it must be a whole number from 1 to 1000";
const populationRule = "it must be an even whole number from 4 to 2000";
const generationsRule = "it must be a whole number from 1 to 10000";
const seedRule = "it must be a whole number from -2147483648 to 2147483647";

/** The figures that a trade-off may make small or large. */
export const goalKeys = ["dragIndex", "massErrorKilograms", ...figureKeys] as const;

const variable = strictRecord("a free dimension", {
  dimension: z.enum(dimensionKeys, { error: `it must be one of ${dimensionKeys.join(", ")}` }),
  from: quantity("Least value; the rules' own when left out", sizeBounds).optional(),
  to: quantity("Greatest value; the rules' own when left out", sizeBounds).optional(),
  levels: z
    .int({ error: levelsRule })
    .gte(1, levelsRule)
    .lte(1000, levelsRule)
    .optional()
    .describe("Values of it in a sweep, both ends included; 3 when left out"),
});

const goal = strictRecord("a goal", {
  figure: z.enum(goalKeys, { error: `it must be one of ${goalKeys.join(", ")}` }),
  sense: z.enum(["least", "most"], { error: 'it must be "least" or "most"' }),
});

const seed = z
  .int({ error: seedRule })
  .gte(-2147483648, seedRule)
  .lte(2147483647, seedRule)
  .describe("Equal seeds give equal results");

const method = z.discriminatedUnion(
  "kind",
  [
    strictRecord("a sweep", { kind: z.literal("sweep") }),
    strictRecord("a Latin hypercube", {
      kind: z.literal("latinHypercube"),
      points: z.int({ error: countRule }).gte(1, countRule).lte(mostTradeoffPoints, countRule),
      seed,
    }),
    strictRecord("a Pareto search", {
      kind: z.literal("paretoSearch"),
      populationSize: z
        .int({ error: populationRule })
        .gte(4, populationRule)
        .lte(2000, populationRule)
        .multipleOf(2, populationRule),
      generations: z.int({ error: generationsRule }).gte(1, generationsRule).lte(10_000, generationsRule),
      seed,
    }),
  ],
  { error: kindRule("kind", "sweep, latinHypercube, paretoSearch") },
);

const variablesRule = "it must be a list of 1 to 10 free dimensions";
const goalsRule = "it must be a list of 1 to 8 goals";
const reportedRule = "it must be a whole number from 1 to 100";

/** A search over free dimensions of a puck. */
export const tradeoffDocument = strictRecord("a trade-off", {
  template: text("Name of the puck whose free dimensions vary; the first baseline when left out", 200).optional(),
  variables: z.array(variable, { error: variablesRule }).min(1, variablesRule).max(10, variablesRule),
  goals: z.array(goal, { error: goalsRule }).min(1, goalsRule).max(8, goalsRule),
  method,
  reportedMembers: z
    .int({ error: reportedRule })
    .gte(1, reportedRule)
    .lte(100, reportedRule)
    .optional()
    .describe("Most members of the front that are reported in full, spread along it; 5 when left out"),
  madeOffMetres: quantity("How far each dimension is taken to be made wrong; 0.0005 when left out", {
    above: 0,
    to: 0.1,
    unit: "m",
  }).optional(),
});

export type TradeoffDocument = z.infer<typeof tradeoffDocument>;
