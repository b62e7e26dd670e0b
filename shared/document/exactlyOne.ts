import type * as z from "zod";

/** Adds an issue unless exactly one of the keys is there; the issue stands at the second key found, or at the first. */
export function requireExactlyOne(
  record: Readonly<Record<string, unknown>>,
  keys: readonly string[],
  context: z.RefinementCtx,
): void {
  const found = keys.filter((key) => record[key] !== undefined);
  if (found.length === 1) return;
  context.addIssue({
    code: "custom",
    path: [found[1] ?? keys[0]],
    message: `exactly one of ${keys.slice(0, -1).join(", ")} and ${keys.at(-1)} must be given`,
    input: record,
  });
}

/** The same rule in JSON Schema. */
export function exactlyOneInSchema(keys: readonly string[]): { oneOf: { required: string[] }[] } {
  return { oneOf: keys.map((key) => ({ required: [key] })) };
}
