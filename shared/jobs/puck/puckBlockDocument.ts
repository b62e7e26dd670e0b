import * as z from "zod";
import { lengthBounds, roughnessHeightBounds, speedBounds, turbulenceBounds } from "../../document/limits";
import { quantity, strictRecord, text } from "../../document/quantity";
import { dimensionKeys } from "./body/puckDimension";
import { materialDocument, puckDocument } from "./body/puckDocument";
import { motionDocument } from "./motionDocument";
import { ruleSetDocument } from "./rules/ruleSet";
import { tradeoffDocument } from "./tradeoffDocument";

export const mostBaselines = 5;
export const mostCandidates = 100;

function list<Item extends z.core.SomeType>(item: Item, fewest: number, most: number, what: string) {
  const rule = `it must be a list of ${fewest} to ${most} ${what}`;
  return z.array(item, { error: rule }).min(fewest, rule).max(most, rule);
}

function flag(description: string) {
  return z.boolean({ error: "it must be true or false" }).describe(description);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

const entry = strictRecord("a puck of the case", {
  puck: puckDocument,
  sandGrainRoughnessMetres: quantity(
    "Finish of the faces and of a plain rim, equivalent sand-grain roughness; the case's first one when left out",
    roughnessHeightBounds,
  ).optional(),
  keepCore: flag("True when the core stays as it is although the case wants a mass").optional(),
  note: text("Remarks", 1000).optional(),
});

const share = (what: string) => quantity(`Share of play ${what}, on any scale`, { from: 0, to: 1000, unit: "" });

const gap = quantity("Gap to the floor", { from: 0, to: 10, unit: "m" });

const play = strictRecord("the conditions of play", {
  orientationShares: strictRecord("shares of play", {
    upright: share("standing on its rim"),
    flat: share("lying flat, edge-on to the water"),
    faceOn: share("with its face to the water"),
  }).refine(({ upright, flat, faceOn }) => upright + flat + faceOn > 0, "shares must not all be 0"),
  indexSpeedsMetresPerSecond: list(quantity("Speed", speedBounds), 1, 50, "speeds, m/s")
    .optional()
    .describe("Speeds over which the orientation-weighted index is averaged; the case's own when left out"),
  flatPlace: z
    .enum(["floor", "openWater"], { error: 'it must be "floor" or "openWater"' })
    .optional()
    .describe("Where the puck lies flat: on the pool floor (when left out), or in open water"),
  flatGapMetres: gap
    .optional()
    .describe("Gap between the floor and a puck that lies flat: 0 (when left out), or at least 2 % of its thickness"),
  sweptGapsMetres: list(gap, 1, 20, "gaps, m")
    .optional()
    .describe("Gaps to the floor to report as well: each 0, or at least 2 % of a puck's thickness"),
  tiltDegrees: list(quantity("Tilt", { from: 0, to: 90, unit: "degrees" }), 1, 20, "tilts, degrees")
    .optional()
    .describe("Tilts between edge-on (0) and face-on (90) to report as well"),
  frictionCoefficient: quantity("Sliding friction / weight in water", { from: 0, to: 2, unit: "" }).optional(),
  frictionSpread: quantity("Half the width of its band", { from: 0, to: 2, unit: "" }).optional(),
});

const tolerance = quantity("Plus and minus", { from: 0, to: 0.1, unit: "m" }).optional();
const tolerances = Object.fromEntries(dimensionKeys.map((key) => [key, tolerance])) as Record<
  (typeof dimensionKeys)[number],
  typeof tolerance
>;

const making = strictRecord("the making", {
  tolerances: strictRecord("making tolerances", tolerances).describe(
    "Plus and minus of each dimension, m; a puck without the dimension leaves it out",
  ),
  samples: whole("Pucks made at random, to count how many are inside the rules", 1, 100_000).optional(),
  seed: whole("Equal seeds give equal results", -2147483648, 2147483647).optional(),
  sizes: z
    .enum(["uniform", "normal"], { error: 'it must be "uniform" or "normal"' })
    .optional()
    .describe("How made sizes lie inside their tolerance; uniform when left out"),
});

const wantedMass = strictRecord("a wanted mass", {
  massKilograms: quantity("Mass", { above: 0, to: 1000, unit: "kg" }),
  freeDimension: z
    .enum(["diameter", "thickness", "innerDiameter", "coatThickness"], {
      error: 'it must be "diameter", "thickness", "innerDiameter" or "coatThickness"',
    })
    .describe("The dimension of the core that is sized"),
  leastCoverMetres: quantity("Least material over the core", lengthBounds),
});

const solving = strictRecord("the solving of a puck's sections", {
  panelCount: whole("Panels of each section, even", 40, 800)
    .multipleOf(2, "it must be a whole number from 40 to 800, and even")
    .optional(),
  chordRatios: list(quantity("Chord / diameter", { from: 0.4, to: 1, unit: "" }), 1, 10, "chords / diameter, rising")
    .optional()
    .describe("Strips at which the profile is solved, rising"),
  sectionErrorPercent: quantity(
    "Error of a solved section's drag; when left out, the 90 % band by the engine's errors against published values",
    {
      from: 0,
      to: 90,
      unit: "%",
    },
  ).optional(),
});

const dateRule = "it must be a date, year-month-day, for instance 2026-03-01";

const handoff = strictRecord("a hand-off", {
  speedMetresPerSecond: quantity("Speed of the brief", speedBounds).optional(),
  turbulencePercent: quantity("Turbulence of the brief", turbulenceBounds).optional(),
  wantedYPlus: quantity("y+ of the first cell", { above: 0, to: 1000, unit: "" }).optional(),
  deviationMetres: quantity("Greatest distance of the exported solid from the puck", {
    above: 0,
    to: 0.01,
    unit: "m",
  }).optional(),
  date: z.iso.date({ error: dateRule }).optional().describe("Day on the drawing; the day of making when left out"),
  notes: list(text("Note", 300), 1, 20, "notes").optional().describe("Notes on the drawing"),
});

/** The pucks of a case: what they are, how they are played, judged, made, moved, searched and handed on. */
export const puckBlockDocument = strictRecord("a puck block", {
  baselines: list(entry, 1, mostBaselines, "pucks").describe("What candidates are compared with"),
  candidates: list(entry, 0, mostCandidates, "pucks").optional().describe("Pucks to judge"),
  play,
  materials: list(materialDocument, 1, 50, "materials").optional().describe("The user's own materials"),
  rules: z
    .union([ruleSetDocument, text("Path of a rules file, from the case file's folder", 500)], {
      error: "it must be a rule set, or the path of a rules file",
    })
    .optional()
    .describe("The rules that pucks are judged by: the rule set itself, or the path of its file from the case file"),
  making: making.optional(),
  wantedMass: wantedMass.optional().describe("Every core is sized for this mass"),
  motions: list(motionDocument, 1, 20, "motions").optional().describe("Motions to follow"),
  solving: solving.optional(),
  tradeoff: tradeoffDocument.optional(),
  handoff: handoff.optional(),
}).describe("Pucks: bodies of revolution with a core and a coat");

export type PuckBlockDocument = z.infer<typeof puckBlockDocument>;
