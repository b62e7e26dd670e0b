import {
  keepText,
  readKeptText,
  rememberRecent,
  removeSavedCase,
  saveCase,
  savedCases,
} from "../../src/app/files/storage";
import { type AttackResult, Gathered } from "./attackResult";

/** What the page asks of the browser's storage; each of these is made to fail. */
const calls: readonly (readonly [object, string])[] = [
  [IDBFactory.prototype, "open"],
  [IDBDatabase.prototype, "transaction"],
  [IDBObjectStore.prototype, "get"],
  [IDBObjectStore.prototype, "getAll"],
  [IDBObjectStore.prototype, "put"],
  [IDBObjectStore.prototype, "delete"],
];

/** Lets the nth call from now on fail. @returns how many calls were made so far, and the way back to working storage */
function failAt(nth: number, name: string): { readonly made: () => number; readonly restore: () => void } {
  let made = 0;
  const restores = calls.map(([owner, method]) => {
    const original = Reflect.get(owner, method);
    Object.defineProperty(owner, method, {
      configurable: true,
      writable: true,
      value(this: unknown, ...args: unknown[]) {
        made++;
        if (made === nth) throw new DOMException("The storage fails on purpose.", name);
        return Reflect.apply(original, this, args);
      },
    });
    return () => Object.defineProperty(owner, method, { configurable: true, writable: true, value: original });
  });
  return {
    made: () => made,
    restore: () => {
      for (const back of restores) back();
    },
  };
}

const stored = (name: string, text: string) => ({ fileName: `${name}.json`, title: name, text, at: 1 });

/** Saved texts by name. */
async function kept(): Promise<Record<string, string>> {
  const saved = await savedCases();
  if (!saved.ok) throw new Error(saved.problem.message);
  return Object.fromEntries(saved.value.cases.map(({ title, text }) => [title, text]));
}

interface Change {
  readonly what: string;
  /** @returns whether the page says that it was done */
  readonly make: (round: string) => Promise<boolean>;
  /** Saved texts after it was done. */
  readonly after: (before: Readonly<Record<string, string>>, round: string) => Record<string, string>;
}

const changes: readonly Change[] = [
  {
    what: "save a new case",
    make: async (round) => (await saveCase(stored("new", round))).ok,
    after: (before, round) => ({ ...before, new: round }),
  },
  {
    what: "replace a case",
    make: async (round) => (await saveCase(stored("first", round))).ok,
    after: (before, round) => ({ ...before, first: round }),
  },
  {
    what: "remove a case",
    make: async () => (await removeSavedCase("second.json")).ok,
    after: ({ second: _, ...rest }) => rest,
  },
  {
    what: "remember an opened case",
    make: async (round) => (await rememberRecent(stored(`opened ${round}`, round))).ok,
    after: (before) => ({ ...before }),
  },
  {
    what: "read and keep a view's text",
    make: async (round) => {
      await readKeptText(round);
      return keepText(round, round);
    },
    after: (before) => ({ ...before }),
  },
];

/**
 * Makes the browser's storage fail at every call of every change in turn. What the page says was done must be there, what
 * it says was not must have changed nothing, and no other record may be touched.
 */
export async function stormStorage(): Promise<AttackResult> {
  const gathered = new Gathered();
  for (const name of ["UnknownError", "QuotaExceededError"]) {
    for (const change of changes) {
      for (let nth = 1, isPast = false; !isPast; nth++) {
        await removeSavedCase("new.json");
        for (const one of ["first", "second", "third"]) await saveCase(stored(one, `${one} as it was`));
        const before = await kept();
        const round = `${name} at call ${nth} of ${change.what}`;
        const failing = failAt(nth, name);
        const isDone = await change.make(round);
        failing.restore();
        isPast = failing.made() < nth;
        const wanted = JSON.stringify(sorted(isDone ? change.after(before, round) : before));
        const found = JSON.stringify(sorted(await kept()));
        const faults = wanted === found ? [] : [`${isDone ? "done" : "refused"}, but kept is ${found}`];
        if (isPast && !isDone) faults.push("refused though nothing failed");
        gathered.add(round, { kind: isDone ? "done" : "refused", faults });
      }
    }
  }
  return gathered.result;
}

function sorted(texts: Readonly<Record<string, string>>): [string, string][] {
  return Object.entries(texts).sort(([one], [other]) => (one < other ? -1 : 1));
}
