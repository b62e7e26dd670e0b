import { createStore, get, set } from "idb-keyval";
import { tell } from "../store/notices";
import type { StoredCase } from "./storedCase";

const database = createStore("wakewright", "kept");
const mostRecent = 10;
const mostSaved = 200;

/** Reads one kept value; null when there is none or storage is blocked. */
async function read<T>(key: string): Promise<T | null> {
  try {
    return (await get<T>(key, database)) ?? null;
  } catch {
    return null;
  }
}

/** Keeps one value. Says plainly when the browser refuses. @returns whether it was kept */
async function keep(key: string, value: unknown): Promise<boolean> {
  try {
    await set(key, value, database);
    return true;
  } catch (error) {
    const full = error instanceof DOMException && error.name === "QuotaExceededError";
    tell(
      "warning",
      full
        ? "The browser's storage is full: nothing more is kept here. Save the case as a file."
        : "The browser does not let this page keep data: your work is lost when the tab closes. Save the case as a file.",
    );
    return false;
  }
}

export async function savedCases(): Promise<readonly StoredCase[]> {
  return (await read<StoredCase[]>("saved")) ?? [];
}

export async function recentCases(): Promise<readonly StoredCase[]> {
  return (await read<StoredCase[]>("recent")) ?? [];
}

/** Saves a case under its file name; one of the same name is replaced. @returns whether it was kept */
export async function saveCase(stored: StoredCase): Promise<boolean> {
  const others = (await savedCases()).filter((one) => one.fileName !== stored.fileName);
  return keep("saved", [stored, ...others].slice(0, mostSaved));
}

export async function removeSavedCase(fileName: string): Promise<void> {
  await keep(
    "saved",
    (await savedCases()).filter((one) => one.fileName !== fileName),
  );
}

export async function rememberRecent(stored: StoredCase): Promise<void> {
  const others = (await recentCases()).filter((one) => one.fileName !== stored.fileName);
  await keep("recent", [stored, ...others].slice(0, mostRecent));
}

/** Texts that a view keeps for itself, under a name of its own. */
export async function readKeptText(name: string): Promise<string | null> {
  const kept = await read<unknown>(`text-${name}`);
  return typeof kept === "string" ? kept : null;
}

export function keepText(name: string, text: string): Promise<boolean> {
  return keep(`text-${name}`, text);
}
