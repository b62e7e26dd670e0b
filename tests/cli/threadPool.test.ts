import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ThreadPool } from "../../src/cli/threadPool";

interface Task {
  readonly number: number;
  readonly failure?: "throws" | "ends" | "endsOnce";
  readonly waits?: number;
}
interface Answer {
  readonly square: number;
  readonly threadId: number;
}

const entry = new URL("./poolThread.mjs", import.meta.url);
const never = () => {};

let folder: string;
let pool: ThreadPool<Task, Answer>;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-pool-"));
});
afterEach(async () => {
  await pool.end();
  rmSync(folder, { recursive: true, force: true });
});

function start(threads?: number, shared: object = {}) {
  pool = new ThreadPool<Task, Answer>(entry, { mark: join(folder, "mark"), ...shared }, threads);
  return pool;
}

function numbers(count: number): Task[] {
  return Array.from({ length: count }, (_, number) => ({ number, waits: number % 2 === 0 ? 20 : 0 }));
}

describe("ThreadPool", () => {
  it("gives answers in the order of the tasks, whichever is ready first", async () => {
    const counted: number[] = [];
    const answers = await start(3).answers(numbers(9), (done) => counted.push(done));
    expect(answers.map(({ square }) => square)).toEqual([0, 1, 4, 9, 16, 25, 36, 49, 64]);
    expect(counted).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(await pool.answers([], never)).toEqual([]);
  });

  it("works in as many threads as the machine has cores, the last one too", async () => {
    const waiting = Array.from({ length: 4 * availableParallelism() }, (_, number) => ({ number, waits: 300 }));
    const answers = await start().answers(waiting, never);
    expect(new Set(answers.map(({ threadId }) => threadId)).size).toBe(availableParallelism());
  });

  it("lets answers open new tasks, and ends when none is left", async () => {
    const open: Task[] = [{ number: 2 }];
    const found: number[] = [];
    await start(3).workThrough(
      () => open.shift() ?? null,
      ({ number }, { square }) => {
        found.push(square);
        if (number < 16) open.push({ number: 2 * number }, { number: 2 * number, waits: 10 });
      },
    );
    expect(found.sort((a, b) => a - b)).toEqual([4, ...Array(2).fill(16), ...Array(4).fill(64), ...Array(8).fill(256)]);
  });

  it("gives the task of a lost thread to another one", async () => {
    const answers = await start(2).answers([...numbers(4), { number: 4, failure: "endsOnce" }, { number: 5 }], never);
    expect(answers.map(({ square }) => square)).toEqual([0, 1, 4, 9, 16, 25]);
  });

  it.each([
    ["throws", "no answer to 7"],
    ["ends", "exited with code: 3"],
  ] as const)("ends with the error of a task that fails again: %s", async (failure, message) => {
    const answers = start(2).answers([...numbers(3), { number: 7, failure }, { number: 8, waits: 60_000 }], never);
    await expect(answers).rejects.toThrow(message);
  });

  it("ends with the error of threads that cannot start", async () => {
    await expect(start(2, { failsToStart: true }).answers(numbers(3), never)).rejects.toThrow("cannot start");
  });

  it("ends with the error of the one who takes the answers", async () => {
    const answers = start(2).answers(numbers(5), () => {
      throw new Error("no room for answers");
    });
    await expect(answers).rejects.toThrow("no room for answers");
  });

  it("ends at once when the signal says so, whatever is under way", async () => {
    const stop = new AbortController();
    const answers = start(2).answers(
      [{ number: 1 }, { number: 2, waits: 60_000 }, { number: 3, waits: 60_000 }],
      () => stop.abort(new Error("seen enough")),
      stop.signal,
    );
    await expect(answers).rejects.toThrow("seen enough");
    await expect(pool.answers(numbers(2), never, stop.signal)).rejects.toThrow("seen enough");
  });
});
