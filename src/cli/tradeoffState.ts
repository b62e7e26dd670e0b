import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import * as z from "zod";
import { generatedBy } from "../../shared/document/generatedBy";
import { parseJson } from "../../shared/document/parseJson";
import type { DesignSpace } from "../../shared/jobs/tradeoff/designSpace";
import type { TradeoffRun } from "../../shared/jobs/tradeoff/tradeoffRun";
import { problem, type Result, success } from "../../shared/result";
import { caseFileText } from "./caseFile";
import { beginOutputFile } from "./outputFile";

const stateVersion = 2;

const numbers = z.array(z.number());
const evaluation = z.strictObject({
  variables: numbers,
  goals: numbers,
  violation: z.number().min(0),
  reason: z.string().nullable(),
});
const space = z.strictObject({
  variables: z.array(z.strictObject({ key: z.string(), lowest: z.number(), highest: z.number() })),
  goals: z.array(z.strictObject({ key: z.string(), sense: z.enum(["least", "most"]) })),
});
const points = z
  .strictObject({ space, points: z.array(numbers), evaluations: z.array(evaluation.nullable()) })
  .refine((run) => run.points.length === run.evaluations.length);
const run: z.ZodType<TradeoffRun> = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("points"), points }),
  z.strictObject({
    kind: z.literal("paretoSearch"),
    generations: z.int(),
    search: z.strictObject({
      settings: z.strictObject({ populationSize: z.int(), seed: z.int() }),
      generation: z.int(),
      population: z.array(evaluation),
      front: z.array(evaluation),
      offspring: points,
      random: z.array(z.int()).length(4),
    }),
  }),
]);
const search = z.strictObject({ case: z.string(), run });
const stateDocument = z.union([
  z.strictObject({ wakewrightTradeoffState: z.literal(stateVersion), searches: z.array(search) }),
  // Version 1 held one search.
  search
    .extend({ wakewrightTradeoffState: z.literal(1) })
    .transform(({ case: fingerprint, run }) => ({ searches: [{ case: fingerprint, run }] })),
]);

/** Tells cases apart, so that a state is never carried on with another case or another version of the program. */
export function caseFingerprint(document: unknown): string {
  return createHash("sha256")
    .update(JSON.stringify([generatedBy, document]))
    .digest("hex");
}

/**
 * The saved runs by the fingerprint of their case; none where there is no file yet.
 * @param expected the design space of every case that is searched, by its fingerprint
 */
export function readState(
  path: string,
  shownName: string,
  expected: ReadonlyMap<string, DesignSpace>,
): Result<ReadonlyMap<string, TradeoffRun>> {
  if (!existsSync(path)) return success(new Map());
  const text = caseFileText(path, shownName, "the state of a trade-off", 500_000_000);
  if (!text.ok) return problem("state", `--resume ${text.problem.message}`);
  const refuse = (reason: string) =>
    problem("state", `--resume ${shownName}: ${reason}; name another file, or remove this one to begin anew`);
  const json = parseJson(text.value);
  const parsed = stateDocument.safeParse(json.ok ? json.value : null);
  if (!parsed.success) return refuse("is not the state of a trade-off");
  const runs = new Map<string, TradeoffRun>();
  for (const { case: fingerprint, run: saved } of parsed.data.searches) {
    const space = expected.get(fingerprint);
    if (space === undefined) return refuse("belongs to another case or another version of the program");
    const own = saved.kind === "points" ? saved.points.space : saved.search.offspring.space;
    if (JSON.stringify(own) !== JSON.stringify(space)) return refuse("has another design space");
    runs.set(fingerprint, saved);
  }
  return success(runs);
}

/** Writes the runs by the fingerprint of their case; the file is replaced as a whole. */
export function writeState(
  path: string,
  shownName: string,
  runs: ReadonlyMap<string, TradeoffRun>,
  forbidden: readonly string[],
): Result<null> {
  const file = beginOutputFile(path, shownName, forbidden, "--resume");
  if (!file.ok) return file;
  const searches = [...runs].map(([fingerprint, current]) => ({ case: fingerprint, run: current }));
  return file.value.commit(`${JSON.stringify({ wakewrightTradeoffState: stateVersion, searches })}\n`);
}
