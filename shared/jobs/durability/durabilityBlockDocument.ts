import * as z from "zod";
import { quantity, strictRecord, text } from "../../document/quantity";
import { uncertainQuantity } from "../../document/uncertainRange";

export const mostImpacts = 20;
export const mostDraws = 20_000;

function list<Item extends z.core.SomeType>(item: Item, fewest: number, most: number, what: string) {
  const rule = `it must be a list of ${fewest} to ${most} ${what}`;
  return z.array(item, { error: rule }).min(fewest, rule).max(most, rule);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

const elasticMaterial = strictRecord("an elastic material", {
  name: text("Name, as pucks and impacts use it", 100),
  youngsModulusPascals: uncertainQuantity("Young's modulus at the speed of an impact", {
    above: 0,
    to: 1e13,
    unit: "Pa",
  }),
  poissonRatio: quantity("Poisson's ratio", { from: 0, to: 0.495, unit: "" }),
  source: text("Where the values come from", 500),
});

const contactKinds = ["edge", "rim", "face"] as const;
const media = ["air", "water"] as const;

const impact = strictRecord("an impact", {
  name: text("Name of the impact", 100),
  onto: text("Material of what is hit, by name: a ceramic tile, a wall of concrete, a stick of wood", 100),
  contact: z
    .enum(contactKinds, { error: 'it must be "edge", "rim" or "face"' })
    .describe("What hits: the rounded edge, the straight rim along its whole length, or a face flat on"),
  tiltDegrees: quantity("Angle between face and what is hit, for an edge; 45 when left out", {
    from: 1,
    to: 90,
    unit: "degrees",
  }).optional(),
  medium: z.enum(media, { error: 'it must be "air" or "water"' }).describe("Where it happens; water adds mass"),
  speedMetresPerSecond: uncertainQuantity("Speed", { above: 0, to: 50, unit: "m/s" }).optional(),
  dropHeightMetres: uncertainQuantity("Height of a fall from rest, in place of a speed", {
    above: 0,
    to: 50,
    unit: "m",
  }).optional(),
}).superRefine((one, context) => {
  const found = [one.speedMetresPerSecond, one.dropHeightMetres].filter((value) => value !== undefined).length;
  if (found !== 1) {
    const message = "exactly one of speedMetresPerSecond and dropHeightMetres must be given";
    context.addIssue({ code: "custom", path: ["speedMetresPerSecond"], message, input: one });
  }
  if (one.tiltDegrees !== undefined && one.contact !== "edge") {
    context.addIssue({ code: "custom", path: ["tiltDegrees"], message: 'it needs contact "edge"', input: one });
  }
});

const share = (what: string) => quantity(`Share of the sliding ${what}, on any scale`, { from: 0, to: 1000, unit: "" });

const wear = strictRecord("wear", {
  wearCoefficientCubicMetresPerNewtonMetre: uncertainQuantity(
    "Volume of coat worn off per load and sliding distance, measured or assumed; 1e-15 is 1e-6 mm3/(N m)",
    { above: 0, to: 1e-9, unit: "m3/(N m)" },
  ),
  slidingMetresPerHour: uncertainQuantity("Distance slid in an hour of play", { above: 0, to: 1e5, unit: "m" }),
  pressNewtons: uncertainQuantity("Force of the stick on top of the weight in water; 0 when left out", {
    from: 0,
    to: 1000,
    unit: "N",
  }).optional(),
  slidingShares: strictRecord("shares of sliding", {
    face: share("on a face"),
    rim: share("on the rim"),
    edge: share("on an edge"),
  })
    .refine(({ face, rim, edge }) => face + rim + edge > 0, "shares must not all be 0")
    .optional()
    .describe("Where the puck slides; a face alone when left out"),
  leastCoverMetres: quantity("Least coat over the core at which a puck is withdrawn; wantedMass's when left out", {
    from: 0,
    to: 1,
    unit: "m",
  }).optional(),
  playedHours: quantity("Hours of play after which the worn shape is given", { above: 0, to: 1e6, unit: "h" }),
});

/** How long the pucks of a case last: impacts and wear. */
export const durabilityBlockDocument = strictRecord("a durability block", {
  materials: list(elasticMaterial, 1, 50, "materials").optional().describe("The user's own elastic data"),
  impacts: list(impact, 0, mostImpacts, "impacts").optional().describe("Impacts that pucks must take"),
  wear: wear.optional().describe("Sliding wear of the coat by Archard's law"),
  sharpEdgeRadiusMetres: uncertainQuantity(
    "Radius of the corners of bevels, of free profiles and of edges sharper than it; 0.3 to 1 mm when left out",
    { above: 0, to: 0.1, unit: "m" },
  ).optional(),
  draws: whole("Draws of what nobody knows; 1000 when left out", 100, mostDraws).optional(),
  seed: whole("Equal seeds give equal results; 1 when left out", 0, 1_000_000).optional(),
}).describe("Durability of the case's pucks: impacts and sliding wear, as estimates with bands");

export type DurabilityBlockDocument = z.infer<typeof durabilityBlockDocument>;
