import * as z from "zod";
import { caseVersion } from "../document/caseVersion";
import { exactlyOneInSchema, requireExactlyOne } from "../document/exactlyOne";
import { fluidDocument } from "../document/fluidDocument";
import { incidenceBounds, mostSections, turbulenceBounds } from "../document/limits";
import { evenPanelCount } from "../document/panelCountDocument";
import { listOrRangeRule, strictRecord, sweepable, text } from "../document/quantity";
import { sectionDocument } from "../document/sectionDocument";
import { workingPointDocument } from "../document/workingPointDocument";
import { flowKeys } from "./flowDocument";
import { blockIn, blockSchemas, jobBlocks } from "./jobBlocks";

export const branchChoices = ["rising", "falling", "both", "whereDifferent"] as const;

const versionRule = `it must be ${caseVersion}, the only version of the case file so far`;
const turbulenceRule = `it is missing; ${listOrRangeRule(turbulenceBounds)}`;
const branchRule = `it must be one of ${branchChoices.join(", ")}`;
const sectionsRule = `it must be a list of 1 to ${mostSections} sections`;

const blockKeys = jobBlocks.map(({ key }) => key);
/** Jobs that bring sections, which makes the case one that is solved. */
const solvingBlocks = jobBlocks.flatMap(({ key, what, solves }) =>
  solves === undefined ? [] : [{ key, what, ...solves }],
);

const exclusiveKeys = [
  ["reynoldsNumbers", "speedsMetresPerSecond"],
  ["sandGrainRoughnessRatios", "sandGrainRoughnessMetres", "surfacePattern"],
] as const;

/** What a case that is solved must have, in JSON Schema. */
const solvedInSchema = { required: ["turbulencePercents"], allOf: exclusiveKeys.map(exactlyOneInSchema) };

/** A case file, the single source of its type, of its reader and of its JSON Schema. */
export const caseDocument = strictRecord("a case", {
  $schema: z.string({ error: "it must be text" }).optional().describe("Where the JSON Schema is, for editors"),
  wakewrightCase: z.literal(caseVersion, { error: versionRule }).describe("Version of the format"),
  title: text("What the case is about, one line", 200),
  note: text("Remarks: sources, cautions, what to look at", 5000).optional(),
  sections: z
    .array(sectionDocument, { error: sectionsRule })
    .min(1, sectionsRule)
    .max(mostSections, sectionsRule)
    .optional()
    .describe("The sections, each of which meets every condition below; those of its pucks when a case names none"),
  panelCount: evenPanelCount.optional(),
  incidenceDegrees: sweepable("Incidence, positive nose up", incidenceBounds).optional(),
  fluid: fluidDocument.optional(),
  ...flowKeys,
  workingPoint: workingPointDocument.optional(),
  branches: z
    .enum(branchChoices, { error: branchRule })
    .optional()
    .describe(
      'Where several steady states exist: the one that a slowly rising or falling speed sits on, "both" as two results for every condition, or "whereDifferent" (the default), rising and, where it differs, falling',
    ),
  ...blockSchemas,
})
  .superRefine((document, context) => {
    const solving = solvingBlocks.filter(({ key }) => Object.hasOwn(document, key));
    const isSolved = document.sections !== undefined || solving.length > 0;
    if (!isSolved && jobBlocks.every((block) => blockIn(document, block) === undefined)) {
      context.addIssue({
        code: "custom",
        path: ["sections"],
        message: `it is missing; ${sectionsRule}, or the case must have one of ${blockKeys.join(", ")}`,
        input: document,
      });
    }
    // A job has sizes of its own: it may need a stream by speed, and a finish in metres.
    for (const { what, needs } of solving) {
      for (const key of needs) requireKey(document, key, `a case with ${what} needs it`, context);
    }
    for (const keys of exclusiveKeys) {
      const given = keys.filter((key) => document[key] !== undefined);
      if (isSolved || given.length > 1) requireExactlyOne(document, keys, context);
    }
    if (isSolved) requireKey(document, "turbulencePercents", turbulenceRule, context);
    if (document.speedsMetresPerSecond !== undefined) {
      requireKey(document, "fluid", "a case with speedsMetresPerSecond needs a fluid", context);
    }
  })
  .meta({
    title: "Wakewright case",
    description:
      "Sections, a stream and walls, pucks, tests and trials for the command line and the page. SI units, named in the keys.",
    anyOf: ["sections", ...blockKeys].map((key) => ({ required: [key] })),
    dependentSchemas: Object.fromEntries(
      ["sections", ...solvingBlocks.map(({ key }) => key)].map((key) => [key, solvedInSchema]),
    ),
    dependentRequired: {
      speedsMetresPerSecond: ["fluid"],
      ...Object.fromEntries(solvingBlocks.map(({ key, needs }) => [key, [...needs]])),
    },
  });

export type CaseDocument = z.infer<typeof caseDocument>;

function requireKey(
  document: Readonly<Record<string, unknown>>,
  key: string,
  message: string,
  context: z.RefinementCtx,
): void {
  if (document[key] === undefined) context.addIssue({ code: "custom", path: [key], message, input: document });
}

/** The published JSON Schema (draft 2020-12) of the case file, as plain data. */
export function caseJsonSchema(): Record<string, unknown> {
  return { ...z.toJSONSchema(caseDocument) };
}
