import type * as z from "zod";
import { choiceBlock } from "../jobs/choice/public";
import { compareBlock } from "../jobs/compare/public";
import { costBlock } from "../jobs/cost/public";
import { durabilityBlock } from "../jobs/durability/public";
import { measurementBlock } from "../jobs/evidence/public";
import type { JobBlock } from "../jobs/jobBlock";
import { nextBlock } from "../jobs/next/public";
import { puckBlock } from "../jobs/puck/public";
import { trialBlock } from "../jobs/trial/public";
import { tunnelBlock } from "../jobs/tunnel/public";

/** The jobs of a case, in the order in which they are read, run and written: a job comes after those that it builds on. */
const registered = [
  puckBlock,
  tunnelBlock,
  trialBlock,
  measurementBlock,
  compareBlock,
  nextBlock,
  durabilityBlock,
  costBlock,
  choiceBlock,
] as const;

/** The same for code that treats all jobs alike. */
export const jobBlocks: readonly JobBlock<string, string, CsvOption, unknown, unknown, unknown>[] = registered;

type Block = (typeof registered)[number];

/** Options of the command line for the CSV of one job. */
export type CsvOption = Block["csv"]["option"];

/** The schema of every job's block, by its key in the case file. */
export type BlockSchemas = { readonly [B in Block as B["key"]]: z.ZodOptional<z.ZodType<DocumentOf<B>>> };

/** The job of every block, by its key; null where the case has none. */
export type CaseJobs = { readonly [B in Block as B["key"]]: JobOf<B> | null };

/** What the jobs of a case yield; left out where the case has none. */
export type JobOutcomes = { readonly [B in Block as B["resultKey"]]?: OutcomeOf<B> };

type DocumentOf<B> =
  B extends JobBlock<string, string, string, infer Document, infer _Job, infer _Outcome> ? Document : never;
type JobOf<B> = B extends JobBlock<string, string, string, infer _Document, infer Job, infer _Outcome> ? Job : never;
type OutcomeOf<B> =
  B extends JobBlock<string, string, string, infer _Document, infer _Job, infer Outcome> ? Outcome : never;

export const blockSchemas = Object.fromEntries(
  jobBlocks.map(({ key, schema }) => [key, schema.optional()]),
) as unknown as BlockSchemas;

/** The block of a job in a document; undefined where there is none. */
export function blockIn<Document>(
  document: object,
  block: { readonly key: string; readonly schema: z.ZodType<Document> },
): Document | undefined {
  return (document as Readonly<Record<string, Document | undefined>>)[block.key];
}
