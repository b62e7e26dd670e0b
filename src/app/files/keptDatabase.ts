import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import { tell } from "../store/notices";
import { checkedCase, type KeptCase, keptCase } from "./storedCase";

/** What the browser keeps: a record a case, and texts of the views under names of their own. */
interface KeptSchema extends DBSchema {
  saved: { key: string; value: KeptCase };
  recent: { key: string; value: KeptCase };
  kept: { key: string; value: unknown };
}

export type KeptDatabase = IDBPDatabase<KeptSchema>;

/** 1: lists of cases under one key each. 2: a record a case. */
const databaseVersion = 2;

let opened: Promise<KeptDatabase> | null = null;

/** The database, opened when it is first needed; an opening that failed is tried again next time. Rejects when it is blocked. */
export function keptDatabase(): Promise<KeptDatabase> {
  opened ??= open().catch((error: unknown) => {
    opened = null;
    throw error;
  });
  return opened;
}

async function open(): Promise<KeptDatabase> {
  const database = await openDB<KeptSchema>("wakewright", databaseVersion, {
    upgrade: (fresh, oldVersion, _, transaction) => upgrade(fresh, oldVersion, transaction),
    blocking: (_current, _blocked, event) => {
      // A newer version of the page, in another tab, waits for this one to let go.
      (event.target as IDBDatabase).close();
      opened = null;
      tell("warning", "A newer version of this page is open in another tab: reload, so that both keep data alike.");
    },
    terminated: () => {
      opened = null;
    },
  });
  return database;
}

type Upgrade = IDBPTransaction<KeptSchema, ("saved" | "recent" | "kept")[], "versionchange">;

/** Everything happens in the one transaction of the upgrade: it is done whole, or not at all. */
async function upgrade(database: KeptDatabase, oldVersion: number, transaction: Upgrade): Promise<void> {
  if (oldVersion < 1) database.createObjectStore("kept");
  if (oldVersion >= databaseVersion) return;
  for (const name of ["saved", "recent"] as const) {
    const store = database.createObjectStore(name, { keyPath: "fileName" });
    if (oldVersion < 1) continue;
    const lists = transaction.objectStore("kept");
    const list: unknown = await lists.get(name);
    if (!Array.isArray(list)) continue;
    const cases = list.map((one) => checkedCase({ version: 1, ...one }));
    for (const one of cases) if (one !== null) await store.put(keptCase(one));
    // What could not be read stays where it was.
    if (cases.every((one) => one !== null)) await lists.delete(name);
  }
}
