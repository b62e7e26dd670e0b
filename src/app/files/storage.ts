import { problem, type Result, success } from "../../../shared/result";
import { tell } from "../store/notices";
import { keptDatabase } from "./keptDatabase";
import { tellOtherTabs } from "./otherTabs";
import { checkedCase, keptCase, type StoredCase } from "./storedCase";

const mostRecent = 10;

/** The kept cases of one kind, newest first. */
export interface KeptCases {
  readonly cases: readonly StoredCase[];
  /** Records that are damaged or from a later version of the page; they are left alone. */
  readonly unreadable: number;
}

/** Names of texts that could not be read: nothing is written over what may be there. */
const unread = new Set<string>();

export function savedCases(): Promise<Result<KeptCases>> {
  return readCases("saved");
}

export function recentCases(): Promise<Result<KeptCases>> {
  return readCases("recent");
}

/**
 * Saves a case under its file name in a record of its own. Says plainly when the browser refuses.
 * @returns when the case was saved that it replaces, ms since 1970; null when there was none
 */
export function saveCase(stored: StoredCase): Promise<Result<number | null>> {
  return write(async () => {
    const transaction = (await keptDatabase()).transaction("saved", "readwrite");
    const [before] = await Promise.all([
      transaction.store.get(stored.fileName),
      transaction.store.put(keptCase(stored)),
      transaction.done,
    ]);
    tellOtherTabs({ kind: "saved", fileName: stored.fileName });
    return checkedCase(before)?.at ?? null;
  });
}

export function removeSavedCase(fileName: string): Promise<Result<null>> {
  return write(async () => {
    await (await keptDatabase()).delete("saved", fileName);
    tellOtherTabs({ kind: "removed", fileName });
    return null;
  });
}

/** Keeps a case among those that were opened lately; the oldest go. */
export function rememberRecent(stored: StoredCase): Promise<Result<null>> {
  return write(async () => {
    const transaction = (await keptDatabase()).transaction("recent", "readwrite");
    const { store } = transaction;
    const all = async () => {
      await store.put(keptCase(stored));
      const cases = (await store.getAll()).flatMap((record: unknown) => checkedCase(record) ?? []);
      for (const old of cases.sort(newestFirst).slice(mostRecent)) await store.delete(old.fileName);
    };
    await Promise.all([all(), transaction.done]);
    return null;
  });
}

/**
 * A text that a view keeps for itself, under a name of its own; null when there is none. When it cannot be read, that is
 * said, and nothing is kept under the name in this visit: it would replace what may be there.
 */
export async function readKeptText(name: string): Promise<string | null> {
  try {
    const kept: unknown = await (await keptDatabase()).get("kept", textKey(name));
    return typeof kept === "string" ? kept : null;
  } catch (error) {
    if (typeof indexedDB !== "undefined") {
      unread.add(name);
      tell("warning", `${unreadable(error)} Reload to try again; until then this page keeps nothing over it.`);
    }
    return null;
  }
}

/** @returns whether it was kept */
export async function keepText(name: string, text: string): Promise<boolean> {
  if (unread.has(name)) return false;
  const kept = await write(async () => {
    await (await keptDatabase()).put("kept", text, textKey(name));
    tellOtherTabs({ kind: "text", name });
    return null;
  });
  return kept.ok;
}

function textKey(name: string): string {
  return `text-${name}`;
}

async function readCases(store: "saved" | "recent"): Promise<Result<KeptCases>> {
  try {
    const records = await (await keptDatabase()).getAll(store);
    const cases = records.flatMap((record: unknown) => checkedCase(record) ?? []);
    return success({ cases: cases.sort(newestFirst), unreadable: records.length - cases.length });
  } catch (error) {
    return problem("storage", `${unreadable(error)} None of it was changed.`);
  }
}

function newestFirst(one: StoredCase, other: StoredCase): number {
  return other.at - one.at;
}

async function write<T>(change: () => Promise<T>): Promise<Result<T>> {
  try {
    return success(await change());
  } catch (error) {
    const isFull = error instanceof DOMException && error.name === "QuotaExceededError";
    const message = isFull
      ? "The browser's storage is full: nothing more is kept here. Save the case as a file."
      : "The browser does not let this page keep data: your work is lost when the tab closes. Save the case as a file.";
    tell("warning", message);
    return problem("storage", message);
  }
}

function unreadable(error: unknown): string {
  const reason = error instanceof Error && error.message !== "" ? error.message : String(error);
  return `What is kept in this browser could not be read (${reason}).`;
}
