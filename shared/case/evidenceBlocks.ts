import type * as z from "zod";
import { measurementBlockDocument } from "../jobs/evidence/measurementBlockDocument";
import { trialBlockDocument } from "../jobs/trial/trialBlockDocument";
import { tunnelBlockDocument } from "../jobs/tunnel/tunnelBlockDocument";

/**
 * The blocks of a case file that stand by themselves, without sections, stream and walls: tests, trials and
 * measurements. Key in the file to its schema.
 */
export const evidenceBlocks = {
  tunnel: tunnelBlockDocument.optional(),
  trial: trialBlockDocument.optional(),
  measurements: measurementBlockDocument.optional(),
} satisfies Record<string, z.ZodType>;

export const evidenceKeys: readonly string[] = Object.keys(evidenceBlocks);
