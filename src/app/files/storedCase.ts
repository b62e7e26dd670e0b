/** A case that was saved in this browser, or opened not long ago. */
export interface StoredCase {
  readonly fileName: string;
  readonly title: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** A case as the browser keeps it. */
export interface KeptCase extends StoredCase {
  /** Of the record, not of the case file. */
  readonly version: 1;
}

export function keptCase({ fileName, title, text, at }: StoredCase): KeptCase {
  return { version: 1, fileName, title, text, at };
}

/** A record as the browser gave it, or null when it is damaged or from a later version of the page. */
export function checkedCase(record: unknown): StoredCase | null {
  if (typeof record !== "object" || record === null) return null;
  const { version, fileName, title, text, at } = record as Partial<Record<keyof KeptCase, unknown>>;
  if (version !== 1 || typeof fileName !== "string" || typeof title !== "string") return null;
  if (typeof text !== "string" || typeof at !== "number") return null;
  return { fileName, title, text, at };
}
