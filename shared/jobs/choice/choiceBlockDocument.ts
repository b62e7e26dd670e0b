import * as z from "zod";
import { speedBounds } from "../../document/limits";
import { quantity, strictRecord, text } from "../../document/quantity";
import { uncertainQuantity } from "../../document/uncertainRange";
import { criterionKeys } from "./criteria";

function list<Item extends z.core.SomeType>(item: Item, fewest: number, most: number, what: string) {
  const rule = `it must be a list of ${fewest} to ${most} ${what}`;
  return z.array(item, { error: rule }).min(fewest, rule).max(most, rule);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

const any = { from: -1e12, to: 1e12, unit: "" };

const criterion = strictRecord("a criterion", {
  criterion: z.enum(criterionKeys, { error: `it must be one of ${criterionKeys.join(", ")}` }),
  name: text("What it is called; what it is when left out", 100).optional(),
  swing: uncertainQuantity(
    "How much going from worst to best on this criterion is worth, beside 100 for the greatest such swing; given for every criterion or for none (then all weights are as likely)",
    { from: 0, to: 100, unit: "" },
  ).optional(),
  sense: z
    .enum(["least", "most", "near"], { error: 'it must be "least", "most" or "near"' })
    .optional()
    .describe('What is better; "near" goes with target. Mass and moment of inertia need it'),
  target: quantity("Value that is best, for sense near, in the criterion's unit", any).optional(),
  worst: quantity(
    "Value 0 of the swing, in the criterion's unit; that of the worst candidate when left out",
    any,
  ).optional(),
  best: quantity(
    "Value 1 of the swing, in the criterion's unit; that of the best candidate when left out",
    any,
  ).optional(),
  scale: z
    .enum(["linear", "log"], { error: 'it must be "linear" or "log"' })
    .optional()
    .describe("Whether equal steps or equal ratios are worth the same; log for durability when left out, else linear"),
  speedMetresPerSecond: quantity("Speed of a drag; the middle one of the case when left out", speedBounds).optional(),
  batchSize: whole("Batch of a cost; the case's first when left out", 1, 1_000_000).optional(),
  impact: text("Name of the impact, for coatStrain and floorCare; the first when left out", 100).optional(),
});

/** A choice between the pucks of a case. */
export const choiceBlockDocument = strictRecord("a choice", {
  candidates: list(text("Name of a puck", 200), 2, 100, "names of pucks")
    .optional()
    .describe("Pucks to choose from; all of the case when left out"),
  criteria: list(criterion, 1, 12, "criteria"),
  draws: whole("Draws of weights and of everything that is not known; 4000 when left out", 500, 50_000).optional(),
  seed: whole("Equal seeds give equal results; 1 when left out", 0, 1_000_000).optional(),
}).describe("Choice between pucks: which is first under which weights, with all uncertainty");

export type ChoiceBlockDocument = z.infer<typeof choiceBlockDocument>;
