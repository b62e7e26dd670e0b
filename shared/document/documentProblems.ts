import type * as z from "zod";
import type { Problem } from "../result";
import { quotedText, shownText } from "./shownText";

/** A place in a document: keys and list indices from the root. */
export type DocumentPath = readonly PropertyKey[];

/** Most problems that are written out; a long broken list would otherwise repeat itself thousands of times. */
const mostProblems = 200;

/** "sections[0].edgeRadiusMetres" for ["sections", 0, "edgeRadiusMetres"]. */
export function pathText(path: DocumentPath): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    const word = step === "" ? '""' : shownText(String(step));
    return text === "" ? word : `${text}.${word}`;
  }, "");
}

/** The value at a path; undefined where there is none. */
export function valueAt(document: unknown, path: DocumentPath): unknown {
  return path.reduce<unknown>((value, step) => {
    if (typeof value !== "object" || value === null) return undefined;
    return Object.getOwnPropertyDescriptor(value, step)?.value;
  }, document);
}

/** A value on one short line, for messages. Never walks into objects, which may be deep. */
export function valueText(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  if (typeof value === "string") return quotedText(value);
  return String(value);
}

/** What is wrong with a document that a schema of quantity.ts refused: one problem per fault, in the document's order. */
export function documentProblems(document: unknown, error: z.ZodError): Problem[] {
  const found = error.issues.slice(0, mostProblems).flatMap((issue) => issueProblems(document, issue, []));
  // One value can break several checks that state the same rule.
  return [...new Map(found.map((one) => [one.message, one])).values()].slice(0, mostProblems);
}

function issueProblems(document: unknown, issue: z.core.$ZodIssue, prefix: DocumentPath): Problem[] {
  const path = [...prefix, ...issue.path];
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => {
      const field = pathText([...path, key]);
      return { code: "unknown-key", message: `${field} is not a known key; ${issue.message}`, field };
    });
  }
  const value = valueAt(document, path);
  if (issue.code === "invalid_union") {
    const branch = closestBranch(issue, value);
    if (branch !== undefined) return branch.flatMap((inner) => issueProblems(document, inner, path));
  }
  const field = pathText(path);
  const place = field === "" ? "the document" : field;
  if (issue.code === "custom") return [{ code: "rule", message: `${place}: ${issue.message}`, field }];
  if (value === undefined) return [{ code: "missing-key", message: `${place} is missing; ${issue.message}`, field }];
  return [{ code: "value", message: `${place} is ${valueText(value)}; ${issue.message}`, field }];
}

/** The alternative of a union whose kind of value (number, list, object) was met, so that only what is inside is wrong. */
function closestBranch(issue: z.core.$ZodIssueInvalidUnion, value: unknown): z.core.$ZodIssue[] | undefined {
  if (value === undefined) return undefined;
  return issue.errors.find(
    (branch) =>
      branch.length > 0 &&
      branch.every(
        (inner) => inner.path.length > 0 || (inner.code !== "invalid_type" && inner.code !== "invalid_value"),
      ),
  );
}
