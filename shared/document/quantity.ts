import * as z from "zod";
import { isPrintable } from "./shownText";

/**
 * The building blocks of the case file. Every schema's error text is the rule that the value breaks ("it must be ..."),
 * so that a message can be made of the key, the value found and the rule.
 */

/** Most numbers in any one list or range of a case file. */
export const longestList = 2000;

/** A number's bounds for the schema and for people: "above" is exclusive, "from" inclusive. */
export interface Bounds {
  readonly above?: number;
  readonly from?: number;
  readonly to: number;
  /** Unit as printed behind the bounds, for instance "m" or "°C"; empty for a ratio. */
  readonly unit: string;
}

/** For messages, for instance "above 0 and at most 50 m". */
export function boundsText(bounds: Bounds): string {
  const lower = bounds.above === undefined ? `from ${bounds.from}` : `above ${bounds.above}`;
  const upper = bounds.above === undefined ? `to ${bounds.to}` : `and at most ${bounds.to}`;
  return `${lower} ${upper}${bounds.unit === "" ? "" : ` ${bounds.unit}`}`;
}

/** A finite number inside its bounds. */
export function quantity(description: string, bounds: Bounds) {
  const rule = `it must be a number ${boundsText(bounds)}`;
  const number = z.number({ error: rule });
  const lower = bounds.above === undefined ? number.gte(bounds.from ?? 0, rule) : number.gt(bounds.above, rule);
  return lower.lte(bounds.to, rule).describe(`${description}; ${boundsText(bounds)}`);
}

export const spacings = ["linear", "log"] as const;

function rangeOf(description: string, bounds: Bounds) {
  const end = quantity(description, bounds);
  const countRule = `it must be a whole number from 2 to ${longestList}`;
  return strictRecord("a range", {
    from: end,
    to: end,
    count: z
      .int({ error: countRule })
      .gte(2, countRule)
      .lte(longestList, countRule)
      .describe("How many values, both ends included"),
    spacing: z
      .enum(spacings, { error: 'it must be "linear" or "log"' })
      .optional()
      .describe('Equal steps ("linear", the default) or equal ratios ("log"); log needs both ends above 0'),
  })
    .superRefine((range, context) => {
      if (range.spacing !== "log") return;
      for (const key of ["from", "to"] as const) {
        if (range[key] > 0) continue;
        context.addIssue({ code: "custom", path: [key], message: "it must be above 0 in a log range", input: range });
      }
    })
    .meta({
      if: { properties: { spacing: { const: "log" } }, required: ["spacing"] },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema, never awaited
      then: { properties: { from: { exclusiveMinimum: 0 }, to: { exclusiveMinimum: 0 } } },
    });
}

function listOf(description: string, bounds: Bounds) {
  const item = quantity(description, bounds);
  const rule = `it must be a list of 1 to ${longestList} numbers ${boundsText(bounds)}`;
  return z.array(item, { error: rule }).min(1, rule).max(longestList, rule);
}

/** The rule of a list or a range, for messages. */
export function listOrRangeRule(bounds: Bounds): string {
  return `it must be a list of numbers, or a range {from, to, count, spacing}, ${boundsText(bounds)}`;
}

/** A list of numbers, or a range {from, to, count, spacing}. */
export function listOrRange(description: string, bounds: Bounds) {
  return z
    .union([listOf(description, bounds), rangeOf(description, bounds)], {
      error: listOrRangeRule(bounds),
    })
    .describe(`${description}: a list or a range, rising or not`);
}

/** One number, or several as a list or a range. */
export function sweepable(description: string, bounds: Bounds) {
  return z
    .union([quantity(description, bounds), listOf(description, bounds), rangeOf(description, bounds)], {
      error: `it must be a number ${boundsText(bounds)}, or a list or a range {from, to, count, spacing} of such numbers`,
    })
    .describe(`${description}: a number, or a list or a range of numbers to sweep`);
}

/** An object with exactly these keys; the rule names the known ones when another is found. */
export function strictRecord<Shape extends z.core.$ZodLooseShape>(what: string, shape: Shape) {
  const known = Object.keys(shape).join(", ");
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? `the keys of ${what} are ${known}`
        : `it must be ${what}: an object with the keys ${known}`,
  });
}

/** Text of 1 to `longest` characters, of which none acts on a terminal; lines may be broken. */
export function text(description: string, longest: number) {
  const rule = `it must be text of 1 to ${longest} characters`;
  return z
    .string({ error: rule })
    .min(1, rule)
    .max(longest, rule)
    .refine(isPrintable, "it must be text without control characters")
    .describe(description);
}

/** The rule of a union of objects told apart by one key: at that key, or at the whole when it is no object. */
export function kindRule(key: string, kinds: string) {
  return (issue: z.core.$ZodRawIssue): string =>
    issue.code === "invalid_union"
      ? `it must be one of ${kinds}`
      : `it must be an object with a ${key}, one of ${kinds}`;
}
