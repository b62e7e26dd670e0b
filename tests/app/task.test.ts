import { expect, test } from "vitest";
import { problem, type Result, success } from "../../shared/result";
import { Task, type TaskOptions } from "../../src/app/view/task";
import type { TaskState } from "../../src/app/view/taskState";
import type { CallOutcome } from "../../src/app/view/watchedWorker";

type Outcome = CallOutcome<Result<string>>;

/** A task whose calls are answered by hand, with all that it said of itself. */
function handled(options: Partial<TaskOptions<string, string, string>> = {}) {
  const calls: { inputs: string; answer: (outcome: Outcome) => void; step: (step: string) => Promise<void> }[] = [];
  const task = new Task<string, string, string>({
    ask: (inputs, step) => new Promise<Outcome>((answer) => calls.push({ inputs, answer, step })),
    crashWords: (reason) => `stopped: ${reason}`,
    ...options,
  });
  const states: TaskState<string, string, string>[] = [];
  task.subscribe((state) => states.push(state));
  return { task, calls, states, asked: () => calls.map(({ inputs }) => inputs) };
}

const done = (text: string): Outcome => ({ kind: "done", value: success(text) });
const settled = () => new Promise((resolve) => setTimeout(resolve));

test("a task is initial, then pending, then complete, and names the inputs of its answer", async () => {
  const { task, calls } = handled();
  expect(task.value).toMatchObject({ status: "initial", last: null });
  void task.run("a");
  expect(task.value).toMatchObject({ status: "pending", inputs: "a", last: null });
  calls[0].answer(done("A"));
  await settled();
  expect(task.value).toMatchObject({ status: "complete", last: { inputs: "a", result: "A" }, problems: [] });
});

test("the last answer stays while the next is pending and when it is refused; then the problem is told", async () => {
  const { task, calls } = handled();
  void task.run("a");
  calls[0].answer(done("A"));
  await settled();
  void task.run("b");
  expect(task.value).toMatchObject({ status: "pending", last: { result: "A" } });
  calls[1].answer({ kind: "done", value: problem("wrong", "b is wrong") });
  await settled();
  expect(task.value).toMatchObject({
    status: "error",
    last: { inputs: "a", result: "A" },
    problems: [{ code: "wrong" }],
  });
  void task.run("c");
  calls[2].answer({ kind: "crashed", reason: "no memory" });
  await settled();
  expect(task.value.problems[0].message).toBe("stopped: no memory");
});

test("where newer questions wait, the newest replaces the one that waits, and what lies between is never asked", async () => {
  const { task, calls, asked } = handled();
  for (const inputs of ["a", "b", "c", "d"]) void task.run(inputs);
  expect(asked()).toEqual(["a"]);
  calls[0].answer(done("A"));
  await settled();
  expect(asked()).toEqual(["a", "d"]);
  // The older answer is shown meanwhile, but the question stays open.
  expect(task.value).toMatchObject({ status: "pending", inputs: "d", last: { inputs: "a" } });
  calls[1].answer(done("D"));
  await settled();
  expect(task.value).toMatchObject({ status: "complete", last: { inputs: "d" } });
});

test("with two at a time an answer that comes late never overwrites a newer one", async () => {
  const { task, calls, asked } = handled({ mostRunning: 2 });
  for (const inputs of ["a", "b", "c"]) void task.run(inputs);
  expect(asked()).toEqual(["a", "b"]);
  calls[1].answer(done("B"));
  await settled();
  expect(task.value.last?.result).toBe("B");
  calls[0].answer(done("A"));
  await settled();
  expect(task.value.last?.result).toBe("B");
  expect(asked()).toEqual(["a", "b", "c"]);
});

test("where a newer question ends the older, the older's steps and answer are dropped", async () => {
  let ended = 0;
  const { task, calls } = handled({ end: () => ended++ });
  void task.run("a");
  await calls[0].step("half");
  expect(task.value.step).toBe("half");
  void task.run("b");
  expect(ended).toBe(1);
  await calls[0].step("whole");
  calls[0].answer(done("A"));
  await settled();
  expect(task.value).toMatchObject({ status: "pending", inputs: "b", step: null, last: null });
});

test("a cancelled call says so, and its answer is dropped even when nothing was asked after it", async () => {
  const { task, calls, states } = handled({ end: () => {}, cancelWords: "ended by hand" });
  void task.run("a");
  task.cancel();
  expect(task.value.problems).toEqual([{ code: "cancelled", message: "ended by hand" }]);
  calls[0].answer(done("A"));
  await settled();
  expect(task.value).toMatchObject({ status: "error", last: null });
  const heard = states.length;
  task.cancel();
  expect(states).toHaveLength(heard);
});

test("a call whose worker was ended by somebody else counts as cancelled", async () => {
  const { task, calls } = handled();
  void task.run("a");
  calls[0].answer({ kind: "cancelled" });
  await settled();
  expect(task.value).toMatchObject({ status: "error", problems: [{ code: "cancelled" }] });
});

test("what follows an answer is done before the next question is taken", async () => {
  const order: string[] = [];
  let go: () => void = () => {};
  const { task, calls, asked } = handled({
    after: (inputs, isNewest) => {
      order.push(`${inputs} ${isNewest()}`);
      return new Promise((resolve) => {
        go = resolve;
      });
    },
  });
  void task.run("a");
  calls[0].answer(done("A"));
  await settled();
  void task.run("b");
  expect([order, asked()]).toEqual([["a true"], ["a"]]);
  go();
  await settled();
  expect(asked()).toEqual(["a", "b"]);
});
