import * as z from "zod";
import { strictRecord, text } from "../../document/quantity";
import { unknownDocument } from "./unknownDocument";

export const conditionChoices = ["each", "any"] as const;

const conditionsRule = `it must be ${conditionChoices.map((choice) => `"${choice}"`).join(" or ")}`;
const seedRule = "it must be a whole number from 0 to 1000000";

/** The block of a case that compares its sections or pucks. */
export const compareBlockDocument = strictRecord("a comparison", {
  baseline: text(
    "Name of the section or puck that the others are compared with; a case with pucks has baselines of its own",
    200,
  ).optional(),
  conditions: z
    .enum(conditionChoices, { error: conditionsRule })
    .optional()
    .describe(
      'Sections alone: whether every condition of the case is compared by itself ("each", the default), or they are what the water may be like, each as likely, and unknown ("any")',
    ),
  unknown: unknownDocument.optional(),
  seed: z
    .int({ error: seedRule })
    .gte(0, seedRule)
    .lte(1_000_000, seedRule)
    .optional()
    .describe("Of the random draws; 1 when left out"),
});

export type CompareBlockDocument = z.infer<typeof compareBlockDocument>;
