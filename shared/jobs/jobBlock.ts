import type * as z from "zod";
import type { SectionDocument } from "../document/sectionDocument";
import type { FluidProperties } from "../engine/fluid/fluidSpec";
import type { Contour } from "../engine/geometry/contour";
import type { PlacedSection } from "../engine/section/placedSection";
import type { ResultRow } from "../engine/section/resultRow";
import type { Stream } from "../engine/section/stream";
import type { Problem } from "../result";

/**
 * One job that a case file may ask for: a block of the file, how it is read, run and written. `shared/case` knows jobs
 * only by this and walks its list of them; a job is made by {@link jobBlock}.
 */
export interface JobBlock<
  Key extends string,
  ResultKey extends string,
  CsvOption extends string,
  Document,
  Job,
  Outcome,
> {
  /** Of the block in the case file and of the job in the case that was read. */
  readonly key: Key;
  /** Of what it yields in the results. */
  readonly resultKey: ResultKey;
  /** What a case with it is called in messages, for instance "a tunnel test". */
  readonly what: string;
  readonly schema: z.ZodType<Document>;
  /** Set by a job that brings sections to solve. */
  readonly solves?: SolvedSections<Document>;
  /** The job ready to run, or everything that is wrong with its block; fields of problems begin with the block's key. */
  resolve(document: Document, around: CaseSurroundings): JobResolution<Job>;
  /** The block that stands where the case has none, for a job that goes without saying; undefined for no job. */
  implied?(around: CaseSurroundings): Document | undefined;
  /** Keys of the jobs whose outcome it needs where it runs by itself. */
  readonly after?: readonly string[];
  /** How many steps the job takes. */
  stepCount(job: Job): number;
  /** Runs the job one step per `next()`; several steps may have the same count. */
  steps(job: Job, before: CaseSoFar): Generator<JobStep, Outcome>;
  /** The outcome as text for people. */
  table(outcome: Outcome): string;
  readonly csv: JobCsv<CsvOption, Outcome>;
  /** What went wrong, each with its place. */
  problems(outcome: Outcome): readonly string[];
  /** False where a part could not be had, so that the command line says so by its exit status. */
  isComplete(outcome: Outcome): boolean;
  /** Cautions that hold for the whole case. */
  cautions?(outcome: Outcome): readonly string[];
  /** Drag of named bodies over that of the first one, for jobs that come after. */
  drags?(outcome: Outcome): ReadonlyMap<string, number>;
}

export interface JobCsv<CsvOption extends string, Outcome> {
  /** Of the command line, without its dashes. */
  readonly option: CsvOption;
  write(outcome: Outcome): string;
}

/** Sections that a job brings to a case that names none. */
export interface SolvedSections<Document> {
  /** Keys of the case that such a case must have. */
  readonly needs: readonly string[];
  sections(document: Document): readonly CaseSection[];
}

/** A section of a case and where it stands in the file. */
export interface CaseSection {
  readonly section: SectionDocument;
  /** For messages, for instance "sections[0]". */
  readonly field: string;
  /** Equivalent sand-grain roughness of its own, m; null where it meets those of the case. */
  readonly sandGrainRoughness: number | null;
}

export type JobResolution<Job> =
  | { readonly ok: true; readonly value: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** One step of a job done, counted from its first. */
export interface JobStep {
  readonly done: number;
  readonly label: string;
}

/** What a job may take from the rest of its case file. */
export interface CaseSurroundings {
  readonly fluid: FluidProperties | null;
  /** m/s, rising; none where the stream goes by Reynolds number. */
  readonly speeds: readonly number[];
  /** Fractions. */
  readonly turbulenceIntensities: readonly number[];
  /** Equivalent, m; none where walls are given over the reference width. */
  readonly sandGrainRoughnesses: readonly number[];
  readonly sections: readonly SectionDocument[];
  /** The block of another job; undefined where the case has none. */
  documentOf<Document>(block: { readonly key: string; readonly schema: z.ZodType<Document> }): Document | undefined;
  /** A job that comes before in the list, ready to run; undefined where the case has none. */
  jobOf<Job>(block: { readonly key: string; stepCount(job: Job): number }): Job | undefined;
}

/** What was worked out before a job. */
export interface CaseSoFar {
  readonly rows: readonly ResultRow[];
  readonly shapes: readonly SolvedShape[];
  /** Every section in its streams of one wall and turbulence, in the order of the rows. */
  sweeps(): readonly SolvedSweep[];
  /** Drag of named bodies over that of the first one. */
  readonly drags: ReadonlyMap<string, number>;
  /** Leaves to jobs that come after what is no part of the results, so that they need not solve it again. */
  leave<Value>(left: Left<Value>, value: Value): void;
  /** What a job that came before has left; undefined where none did. */
  leftOf<Value>(left: Left<Value>): Value | undefined;
  /** The outcome of a job that comes before in the list; undefined where the case has none. */
  outcomeOf<Outcome>(block: { readonly resultKey: string; table(outcome: Outcome): string }): Outcome | undefined;
}

/** A kind of thing that a job may leave; the object itself is what it is found by. */
export interface Left<Value> {
  readonly what: string;
  /** Never set: it carries the type of the value. */
  readonly value?: Value;
}

/** A section and the streams that it met, in rising order of Reynolds number and alike otherwise. */
export interface SolvedSweep {
  readonly shape: PlacedSection<Contour> & { readonly name: string };
  readonly streams: readonly Stream[];
}

/** A section of the case that has rows in the results. */
export interface SolvedShape {
  readonly name: string;
  readonly section: Contour;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGap: number | null;
}

/** A job, with its types taken from what is given. */
export function jobBlock<
  const Key extends string,
  const ResultKey extends string,
  const CsvOption extends string,
  Document,
  Job,
  Outcome,
>(
  block: JobBlock<Key, ResultKey, CsvOption, Document, Job, Outcome>,
): JobBlock<Key, ResultKey, CsvOption, Document, Job, Outcome> {
  return block;
}
