// A thread of the tests: answers with the square of its task, and fails where it is told to.
import { writeFileSync } from "node:fs";
import { threadId, workerData } from "node:worker_threads";

if (workerData.failsToStart) throw new Error("cannot start");

export default async function answerTask({ number, failure, waits }) {
  if (failure === "throws") throw new Error(`no answer to ${number}`);
  if (failure === "endsOnce" && takesMark(workerData.mark)) process.exit(3);
  if (failure === "ends") process.exit(3);
  if (waits) await new Promise((resolve) => setTimeout(resolve, waits));
  return { square: number * number, threadId };
}

/** Whether no other thread has taken it. */
function takesMark(path) {
  try {
    writeFileSync(path, "", { flag: "wx" });
    return true;
  } catch {
    return false;
  }
}
