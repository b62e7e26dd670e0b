import * as z from "zod";
import type { UncertainRange } from "../statistics/uncertainRange";
import { type Bounds, boundsText, quantity, spacings, strictRecord } from "./quantity";

/** How an uncertain quantity stands in a file: a number where it is known, else {from, to, spacing}. */
export type UncertainRangeDocument = number | { from: number; to: number; spacing?: "linear" | "log" | undefined };

/** A number, or a range of which every value (or ratio) is as likely. */
export function uncertainQuantity(description: string, bounds: Bounds) {
  const end = quantity(description, bounds);
  const range = strictRecord("a range", {
    from: end,
    to: end,
    spacing: z
      .enum(spacings, { error: 'it must be "linear" or "log"' })
      .optional()
      .describe('Equal steps ("linear", the default) or equal ratios ("log") are as likely; log needs from above 0'),
  }).superRefine(({ from, to, spacing }, context) => {
    if (to < from) {
      context.addIssue({
        code: "custom",
        path: ["to"],
        message: `it is ${to}; it must be at least from, ${from}`,
        input: to,
      });
    }
    if (spacing === "log" && !(from > 0)) {
      context.addIssue({
        code: "custom",
        path: ["from"],
        message: `it is ${from}; it must be above 0 in a log range`,
        input: from,
      });
    }
  });
  const rule = `it must be a number ${boundsText(bounds)}, or a range {from, to, spacing} of such numbers`;
  return z
    .union([end, range], { error: rule })
    .describe(`${description}: a number where it is known, or a range of which every value is as likely`);
}

export function resolveRange(document: UncertainRangeDocument): UncertainRange {
  if (typeof document === "number") return { from: document, to: document, spacing: "linear" };
  return { from: document.from, to: document.to, spacing: document.spacing ?? "linear" };
}
