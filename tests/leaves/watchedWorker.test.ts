import { expect, test } from "vitest";
import { WatchedWorker } from "../../src/app/view/watchedWorker";
import type { Lifeline } from "../../workers/lifeline";

test("a worker whose program is missing is told once, as one that could not be started again", async () => {
  const told: boolean[] = [];
  let starts = 0;
  const worker = new WatchedWorker<Lifeline>(
    () => {
      starts++;
      return new Worker("/no-such-program.js", { type: "module" });
    },
    (_, isStartedAgain) => told.push(isStartedAgain),
  );
  const deadline = Date.now() + 15_000;
  while (told.length === 0 && Date.now() < deadline) await new Promise((resolve) => setTimeout(resolve, 50));
  expect(told).toEqual([false]);
  expect(starts).toBe(3);
  expect(await worker.call((remote) => remote.holdLifeline("one"))).toMatchObject({ kind: "crashed" });
});
