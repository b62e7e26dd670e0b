import * as z from "zod";
import { documentProblems } from "../../../document/documentProblems";
import { parseJson } from "../../../document/parseJson";
import { strictRecord, text } from "../../../document/quantity";
import type { Problem } from "../../../result";
import { type FigureKey, figureCatalogue, figureKeys } from "../body/figureCatalogue";

/** The version of the rules file's format, the value of its key "wakewrightRules". */
export const ruleSetVersion = 1;

const versionRule = `it must be ${ruleSetVersion}, the only version of the rules file so far`;
const dateRule = "it must be a date, year-month-day, for instance 2026-03-01";

function range(key: FigureKey) {
  const { label, unit } = figureCatalogue[key];
  const bound = z.number({ error: `it must be a number in ${unit}` });
  return strictRecord("a range", {
    from: bound.optional().describe(`Least ${label} allowed, ${unit}`),
    to: bound.optional().describe(`Greatest ${label} allowed, ${unit}`),
    note: text("Why, or how it is measured", 500).optional(),
  })
    .refine(({ from, to }) => from !== undefined || to !== undefined, "it must have from, to or both")
    .refine(({ from, to }) => from === undefined || to === undefined || from <= to, "from must not exceed to")
    .describe(`Allowed ${label}, ${unit}`);
}

const ranges = Object.fromEntries(figureKeys.map((key) => [key, range(key).optional()])) as Record<
  FigureKey,
  z.ZodOptional<ReturnType<typeof range>>
>;

/** A rules file: the single source of its type, of its reader and of its JSON Schema. */
export const ruleSetDocument = strictRecord("a rule set", {
  $schema: z.string({ error: "it must be text" }).optional().describe("Where the JSON Schema is, for editors"),
  wakewrightRules: z.literal(ruleSetVersion, { error: versionRule }).describe("Version of the format"),
  name: text("Whose rules they are, and which edition", 200),
  date: z.iso.date({ error: dateRule }).describe("Date of the edition, year-month-day"),
  invented: z.boolean({ error: "it must be true or false" }).describe("True for rules made up as an example"),
  note: text("Remarks", 5000).optional(),
  ranges: strictRecord("the ranges", ranges).describe("Allowed range of each figure that the rules limit"),
}).meta({
  title: "Wakewright rule set",
  description: "Allowed ranges of a puck's figures. SI units, named in the keys.",
});

export type RuleSet = z.infer<typeof ruleSetDocument>;

export type RuleSetReading =
  | { readonly ok: true; readonly value: RuleSet }
  | { readonly ok: false; readonly problem: Problem; readonly problems: readonly Problem[] };

/** Most characters of a rules file. */
const largestRuleSet = 200_000;

/** Reads a rules file; every fault is listed, the first one with the file's name in `problem`. */
export function readRuleSet(content: string, fileName: string): RuleSetReading {
  if (content.length > largestRuleSet) {
    const message = `the file has ${content.length} characters; a rules file must have at most ${largestRuleSet}`;
    return refused(fileName, [{ code: "size", message }]);
  }
  const json = parseJson(content);
  if (!json.ok) return refused(fileName, [json.problem]);
  const parsed = ruleSetDocument.safeParse(json.value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : refused(fileName, documentProblems(json.value, parsed.error));
}

/** The published JSON Schema of the rules file, as plain data. */
export function ruleSetJsonSchema(): Record<string, unknown> {
  return { ...z.toJSONSchema(ruleSetDocument) };
}

function refused(fileName: string, problems: readonly Problem[]): RuleSetReading {
  const [first] = problems;
  return { ok: false, problem: { ...first, message: `${fileName}: ${first.message}` }, problems };
}
