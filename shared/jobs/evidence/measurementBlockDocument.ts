import * as z from "zod";
import { exactlyOneInSchema, requireExactlyOne } from "../../document/exactlyOne";
import { fluidDocument } from "../../document/fluidDocument";
import { incidenceBounds, roughnessHeightBounds, roughnessRatioBounds, turbulenceBounds } from "../../document/limits";
import { evenPanelCount } from "../../document/panelCountDocument";
import { quantity, strictRecord, text } from "../../document/quantity";
import { sectionDocument } from "../../document/sectionDocument";
import { puckAttitudes, puckDocument } from "../puck/public";
import { largestBlockageRatio } from "./confinedDrag";
import { measuredBounds } from "./measuredColumns";
import { measuredTableDocument } from "./measuredTableDocument";
import { referenceAreas, referenceLengths } from "./reference";

export const measurementKinds = ["tunnelTest", "flowComputation", "publishedCurve"] as const;
export const modelEnds = ["endless", "endPlates", "free"] as const;
export const speedDirections = ["rising", "falling"] as const;

const mostSets = 20;
export const mostInlinePoints = 5000;

function choice<const Words extends readonly string[]>(description: string, words: Words) {
  return z.enum(words, { error: `it must be one of ${words.join(", ")}` }).describe(description);
}

function list<Item extends z.core.SomeType>(item: Item, most: number, what: string) {
  const rule = `it must be a list of 1 to ${most} ${what}`;
  return z.array(item, { error: rule }).min(1, rule).max(most, rule);
}

const point = strictRecord("a measured point", {
  reynoldsNumber: quantity("On the set's reference length", measuredBounds.reynoldsNumber).optional(),
  speedMetresPerSecond: quantity(
    "Speed, in place of the Reynolds number; needs a fluid",
    measuredBounds.speedMetresPerSecond,
  ).optional(),
  dragCoefficient: quantity("On the set's reference area", measuredBounds.dragCoefficient),
  standardUncertainty: quantity(
    "Standard uncertainty of the drag coefficient, k = 1",
    measuredBounds.standardUncertainty,
  ).optional(),
  expandedUncertainty: quantity(
    "Expanded uncertainty of the drag coefficient, k = 2",
    measuredBounds.expandedUncertainty,
  ).optional(),
  direction: choice("Whether the speed was rising or falling", speedDirections).optional(),
  strouhalNumber: quantity("f D / U on the width", measuredBounds.strouhalNumber).optional(),
  basePressureCoefficient: quantity("At the rear", measuredBounds.basePressureCoefficient).optional(),
  separationAngleDegrees: quantity("From the front", measuredBounds.separationAngleDegrees).optional(),
});

const sectionRule = "it must be a section, or the name of a section of the case";

const pointSources = ["points", "table", "fromTunnel"] as const;
const measuredDesigns = ["section", "puck"] as const;
const sectionKeys = ["incidenceDegrees", "panelCount", "lengthToWidth", "ends"] as const;

const set = strictRecord("a measurement set", {
  name: text("Name in results, one of its own", 100),
  kind: choice("What made the values", measurementKinds),
  source: text("Where the values come from: author, year, page; or test and date", 500),
  note: text("Remarks", 2000).optional(),
  section: z
    .union([sectionDocument, text("Name of a section of the case", 100)], { error: sectionRule })
    .optional()
    .describe("What was measured, without a sweep: a section, or the name of a section of the case"),
  puck: puckDocument
    .optional()
    .describe("What was measured, in place of a section: a puck, its Reynolds numbers on the diameter"),
  attitude: choice("How the puck was held; edgeOn when left out", puckAttitudes).optional(),
  incidenceDegrees: quantity("Incidence, positive nose up", incidenceBounds).optional(),
  panelCount: evenPanelCount.optional(),
  fluid: fluidDocument.optional(),
  referenceArea: choice(
    'What drag coefficients are on: "frontal", width across the stream x span (when left out), or "plan", length along it x span; of a puck the area seen along the stream, or edge-on its face',
    referenceAreas,
  ).optional(),
  referenceLength: choice(
    'What Reynolds numbers are on: "acrossStream", the width (when left out), or "alongStream"; of a puck the diameter across the stream',
    referenceLengths,
  ).optional(),
  direction: choice(
    "How the speed was changed, where points do not say it; both branches count when left out",
    speedDirections,
  ).optional(),
  turbulencePercent: quantity("Turbulence intensity of the stream, where known", turbulenceBounds).optional(),
  sandGrainRoughnessRatio: quantity("ks / width, where known", roughnessRatioBounds).optional(),
  sandGrainRoughnessMetres: quantity("ks, in place of its ratio", roughnessHeightBounds).optional(),
  blockageRatio: quantity("Model width / tunnel height; of a puck area / area of the test section", {
    from: 0,
    to: largestBlockageRatio,
    unit: "",
  }).optional(),
  blockageCorrected: z
    .boolean({ error: "it must be true or false" })
    .describe("True when the coefficients are corrected for blockage already; false when left out")
    .optional(),
  lengthToWidth: quantity("Length of the model across the stream / its width", {
    from: 0.1,
    to: 1000,
    unit: "",
  }).optional(),
  ends: choice('Ends of the model; "endless" when left out', modelEnds).optional(),
  points: list(point, mostInlinePoints, "points").optional().describe("The measured points, in any order"),
  table: measuredTableDocument.optional(),
  fromTunnel: z
    .literal(true, { error: "it must be true, or left out" })
    .describe("The points are those of the case's own tunnel test, reduced and corrected as its block says")
    .optional(),
})
  .superRefine((value, context) => {
    const refuse = (key: string, message: string) =>
      context.addIssue({ code: "custom", path: [key], message, input: value });
    requireExactlyOne(value, pointSources, context);
    requireExactlyOne(value, measuredDesigns, context);
    if (value.section !== undefined && value.attitude !== undefined) {
      refuse("attitude", "it is that of a puck; a section has incidenceDegrees");
    }
    if (value.puck !== undefined) {
      for (const key of sectionKeys) {
        if (value[key] !== undefined) refuse(key, "it holds for sections alone; leave it out for a puck");
      }
      if (value.attitude === "faceOn" && value.referenceArea === "plan") {
        refuse("referenceArea", "a puck held face-on shows its face: its frontal area is the only one");
      }
    }
    if (value.sandGrainRoughnessRatio !== undefined && value.sandGrainRoughnessMetres !== undefined) {
      const message = "at most one of sandGrainRoughnessRatio and sandGrainRoughnessMetres may be given";
      refuse("sandGrainRoughnessMetres", message);
    }
  })
  .meta({
    allOf: [pointSources, measuredDesigns].map(exactlyOneInSchema),
  });

/** Measurements to hold against the prediction. */
export const measurementBlockDocument = strictRecord("a measurements block", {
  sets: list(set, mostSets, "measurement sets").describe(
    "Measured or computed values, each with its design and set-up",
  ),
  likelyCauses: z
    .boolean({ error: "it must be true or false" })
    .describe("Whether to look for settings that would explain a disagreement, by solving again; true when left out")
    .optional(),
  carriedSet: text(
    "Name of the set whose offset is carried to the case's sections of the same family, as a labelled correction",
    100,
  ).optional(),
}).describe("Measurements held against the prediction");

export type MeasurementBlockDocument = z.infer<typeof measurementBlockDocument>;
export type MeasurementSetDocument = MeasurementBlockDocument["sets"][number];
