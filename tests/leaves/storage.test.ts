import { expect, test } from "vitest";
import { followOtherTabs } from "../../src/app/files/otherTabs";
import { keepText, readKeptText, removeSavedCase, saveCase, savedCases } from "../../src/app/files/storage";
import { stormStorage } from "../attack/storageStorm";

/** The page as it was before cases had records of their own: two lists under a key each. */
function keepAsVersionOne(): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open("wakewright", 1);
    opening.onerror = () => reject(opening.error);
    opening.onupgradeneeded = () => opening.result.createObjectStore("kept");
    opening.onsuccess = () => {
      const transaction = opening.result.transaction("kept", "readwrite");
      const old = { fileName: "old.json", title: "old", text: "{}", at: 5 };
      transaction.objectStore("kept").put([old, { fileName: 7 }], "saved");
      transaction.objectStore("kept").put("a design", "text-section");
      transaction.oncomplete = () => {
        opening.result.close();
        resolve();
      };
    };
  });
}

async function titles(): Promise<string[]> {
  const saved = await savedCases();
  if (!saved.ok) throw new Error(saved.problem.message);
  return saved.value.cases.map(({ title }) => title);
}

test("cases that an earlier version of the page kept in one list are there as records, texts of views as they were", async () => {
  await keepAsVersionOne();
  expect(await titles()).toEqual(["old"]);
  expect(await readKeptText("section")).toBe("a design");
  await removeSavedCase("old.json");
});

test("storage that fails at any call loses and mixes nothing, and what the page says was kept is kept", async () => {
  const { tried, kinds, faults } = await stormStorage();
  expect(faults).toEqual([]);
  expect(tried).toBeGreaterThan(20);
  expect(kinds.refused).toBeGreaterThan(10);
  expect(kinds.done).toBeGreaterThan(5);
});

test("a failed read is not an empty list, and nothing is kept over a text that could not be read", async () => {
  await saveCase({ fileName: "one.json", title: "one", text: "{}", at: 1 });
  await keepText("some-view", "what was there");
  const { get, getAll } = IDBObjectStore.prototype;
  const fail = () => {
    throw new DOMException("The disk is away.", "UnknownError");
  };
  Object.assign(IDBObjectStore.prototype, { get: fail, getAll: fail });
  const saved = await savedCases();
  expect(await readKeptText("some-view")).toBe(null);
  Object.assign(IDBObjectStore.prototype, { get, getAll });
  expect(saved).toMatchObject({ ok: false, problem: { message: expect.stringContaining("The disk is away") } });
  expect(await keepText("some-view", "something else")).toBe(false);
  expect(await readKeptText("some-view")).toBe("what was there");
});

test("another tab is told of a saved case, and two that save at once keep both", async () => {
  const other = new BroadcastChannel("wakewright-kept");
  const told = new Promise((resolve) => {
    other.onmessage = ({ data }) => resolve(data);
  });
  const save = (name: string) => saveCase({ fileName: `${name}.json`, title: name, text: "{}", at: 2 });
  await Promise.all([save("left"), save("right")]);
  expect(await told).toEqual({ kind: "saved", fileName: "left.json" });
  expect(await titles()).toEqual(expect.arrayContaining(["left", "right"]));
  const heard = new Promise((resolve) => followOtherTabs(resolve));
  other.postMessage({ kind: "removed", fileName: "left.json" });
  expect(await heard).toEqual({ kind: "removed", fileName: "left.json" });
  other.close();
});
