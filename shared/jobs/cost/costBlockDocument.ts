import * as z from "zod";
import { strictRecord, text } from "../../document/quantity";
import { uncertainQuantity } from "../../document/uncertainRange";

export const mostBatches = 50;

function list<Item extends z.core.SomeType>(item: Item, fewest: number, most: number, what: string) {
  const rule = `it must be a list of ${fewest} to ${most} ${what}`;
  return z.array(item, { error: rule }).min(fewest, rule).max(most, rule);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

const money = { from: 0, to: 1e9, unit: "" };
const onlyFor = list(text("Name of a puck", 200), 1, 200, "names of pucks")
  .optional()
  .describe("Pucks that it is for; all when left out");

const material = strictRecord("a material with its price", {
  material: text("Name of a core's or coat's material, as the pucks have it", 100),
  pricePerKilogram: uncertainQuantity("Price of a kilogram, in the currency", money),
  wastePercent: uncertainQuantity("Part of what is bought that never becomes puck; 0 when left out", {
    from: 0,
    to: 95,
    unit: "%",
  }).optional(),
});

const step = strictRecord("a process step", {
  name: text("Name", 100),
  minutesPerPuck: uncertainQuantity("Working time of one puck", { from: 0, to: 1e5, unit: "min" }),
  setupMinutesPerBatch: uncertainQuantity("Time to set it up, once a batch; 0 when left out", {
    from: 0,
    to: 1e6,
    unit: "min",
  }).optional(),
  ratePerHour: uncertainQuantity("Cost of an hour of people and machine, in the currency", money),
  pucks: onlyFor,
});

const part = strictRecord("a bought part", {
  name: text("Name", 100),
  pricePerPuck: uncertainQuantity("Price of what one puck takes, in the currency", money),
  pucks: onlyFor,
});

const tool = strictRecord("a tool", {
  name: text("Name", 100),
  price: uncertainQuantity("Price, in the currency", money),
  pucksPerTool: whole("Pucks that one tool makes before it is worn; any number when left out", 1, 1e9).optional(),
  pucks: onlyFor,
});

/** What the pucks of a case cost to make. */
export const costBlockDocument = strictRecord("a cost block", {
  currency: text("What all prices are in, for instance EUR", 20),
  source: text("Where the numbers come from, for instance a quotation and its date, or that they are invented", 500),
  materials: list(material, 1, 50, "materials"),
  parts: list(part, 1, 50, "parts").optional(),
  steps: list(step, 1, 50, "process steps"),
  tooling: list(tool, 1, 50, "tools").optional(),
  acceptedPercent: uncertainQuantity(
    "Made pucks that are accepted; when left out, those inside the rules by the pucks' own making (rules, making)",
    { above: 0, to: 100, unit: "%" },
  ).optional(),
  batchSizes: list(whole("Accepted pucks of a batch", 1, 1_000_000), 1, mostBatches, "batch sizes").describe(
    "Accepted pucks that tooling and setting up are spread over",
  ),
  draws: whole("Draws of what is given as a range; 2000 when left out", 100, 20_000).optional(),
  seed: whole("Equal seeds give equal results; 1 when left out", 0, 1_000_000).optional(),
}).describe("Cost of the case's pucks over the size of a batch, by the user's own numbers");

export type CostBlockDocument = z.infer<typeof costBlockDocument>;
