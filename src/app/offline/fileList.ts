/** The files of one build of the page, as the build lists them for the service worker. */
export interface FileList {
  /** A word for the contents of all files: equal builds have equal words. */
  readonly build: string;
  /** SHA-256 of the page's document, in hexadecimal. */
  readonly document: string;
  /** SHA-256 of every other file, by its path from the document. */
  readonly files: Readonly<Record<string, string>>;
}

/** Beside the document. */
export const fileListName = "offline-files.json";

/** The name under which the document itself says which build it is of. */
export const buildMetaName = "wakewright-build";

/** A list as a server gave it, or null when it is none: a server may answer with a page instead. */
export function checkedFileList(value: unknown): FileList | null {
  if (typeof value !== "object" || value === null) return null;
  const { build, document, files } = value as Partial<Record<keyof FileList, unknown>>;
  if (typeof build !== "string" || typeof document !== "string") return null;
  if (typeof files !== "object" || files === null || Array.isArray(files)) return null;
  if (!Object.values(files).every((hash) => typeof hash === "string")) return null;
  return { build, document, files: files as Record<string, string> };
}

/** The build that a document says it is of; null when it says none. */
export function buildOf(html: string): string | null {
  return new RegExp(`<meta name="${buildMetaName}" content="([0-9a-f]+)"`).exec(html)?.[1] ?? null;
}
