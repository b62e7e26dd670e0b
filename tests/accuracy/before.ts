import { readFileSync } from "node:fs";
import type { PublishedSource } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import { predictAll } from "./predictAll";
import type { AnswerOf } from "./sectionDrags";
import { allTargets } from "./targets";

/** The answers of an earlier engine to the quantities of this ruler. */
export interface StoredAnswers {
  /** The day that the answers were computed on. */
  readonly date: string;
  /** Which engine gave them. */
  readonly engine: string;
  /** By quantityKey; null where the engine had no answer. */
  readonly values: Readonly<Record<string, number | null>>;
}

/** What tells a quantity from every other. */
export function quantityKey(quantity: Quantity): string {
  const flat = (value: unknown): unknown[] =>
    typeof value === "object" && value !== null ? Object.values(value).flatMap(flat) : [value];
  return flat(quantity).join(" ");
}

export function readStoredAnswers(): StoredAnswers {
  return JSON.parse(readFileSync(new URL("before.json", import.meta.url), "utf8"));
}

/** The stored answers as a function; a quantity that came to the ruler later has none. */
export function storedAnswerOf({ values }: StoredAnswers): AnswerOf {
  return (quantity) => values[quantityKey(quantity)] ?? null;
}

/** The text of before.json for the engine as it is now. */
export function storedAnswersText(engine: string, sources: readonly PublishedSource[]): string {
  const published = sources.flatMap(({ values }) => values.map(({ quantity }) => quantity));
  const quantities = [...published, ...allTargets().flatMap((target) => target.quantities)];
  const answers = predictAll(quantities);
  const values: Record<string, number | null> = {};
  quantities.forEach((quantity, i) => {
    const { value } = answers[i];
    values[quantityKey(quantity)] = value;
  });
  const stored: StoredAnswers = { date: new Date().toISOString().slice(0, 10), engine, values };
  return `${JSON.stringify(stored, null, 1)}\n`;
}
