import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { CallOutcome, WatchedWorker } from "../../src/app/view/watchedWorker";
import { type PoolProgress, poolSize, WorkerPool } from "../../src/app/view/workerPool";
import type { Lifeline } from "../../workers/lifeline";

test("a pool has one worker fewer than the cores and at least one", () => {
  expect([1, 2, 8].map(poolSize)).toEqual([1, 1, 7]);
});

beforeEach(() => vi.stubGlobal("navigator", { hardwareConcurrency: 3 }));
afterEach(() => vi.unstubAllGlobals());

const settled = () => new Promise((resolve) => setTimeout(resolve));

/** A pool over the numbers 0 to count - 1, whose answers are given by hand. */
function pool(count: number, mostWorkers?: number) {
  const answers: ((outcome: CallOutcome<number>) => void)[] = [];
  const recorded: number[] = [];
  const shown: PoolProgress[] = [];
  let next = 0;
  let closed = 0;
  const worker = { close: () => closed++ } as unknown as WatchedWorker<Lifeline>;
  const run = new WorkerPool<Lifeline, number, number>({
    newWorker: () => worker,
    ...(mostWorkers === undefined ? {} : { mostWorkers }),
    isFinished: () => recorded.length === count,
    take: () => (next < count ? next++ : undefined),
    ask: () => new Promise((resolve) => answers.push(resolve)),
    record: (job) => {
      recorded.push(job);
      return false;
    },
    show: (progress) => shown.push(progress),
  });
  const answerAll = async () => {
    for (const answer of answers.splice(0)) answer({ kind: "done", value: 0 });
    await settled();
  };
  return { run, answers, recorded, shown, answerAll, closed: () => closed };
}

test("jobs are handed out in turn to every worker, each once, and the end is told when the last is answered", async () => {
  const { answers, recorded, shown, answerAll, closed } = pool(5);
  expect(answers).toHaveLength(2);
  for (let i = 0; i < 3; i++) await answerAll();
  expect(recorded).toEqual([0, 1, 2, 3, 4]);
  expect(shown.at(-1)).toMatchObject({ status: "done", workers: 2 });
  expect(closed()).toBe(2);
});

test("a pause lets running jobs end and hands out no more until it goes on", async () => {
  const { run, answers, recorded, answerAll } = pool(6);
  run.pause();
  await answerAll();
  expect([recorded.length, answers.length]).toEqual([2, 0]);
  run.resume();
  await settled();
  expect(answers).toHaveLength(2);
});

test("after a cancel answers no longer count and the workers are closed", async () => {
  const { run, recorded, shown, answerAll, closed } = pool(6, 1);
  run.cancel();
  await answerAll();
  expect(recorded).toEqual([]);
  expect(shown.at(-1)).toMatchObject({ status: "cancelled", workers: 1 });
  expect(closed()).toBe(1);
});
