import { parentPort, workerData } from "node:worker_threads";
import { readCaseDocument } from "../../shared/case/readCase";
import { tradeoffMember } from "../../shared/jobs/tradeoff/tradeoffMember";
import { tradeoffSearch } from "../../shared/jobs/tradeoff/tradeoffSearch";
import type { TradeoffAnswer, TradeoffTask } from "./tradeoffMessages";

/** The work of one thread of a trade-off: its own search from the case's document, then one answer per task. */
const port = parentPort;
if (port === null) throw new Error("this file is the work of a thread; the trade-off command starts it.");
const reading = readCaseDocument(workerData, "the case");
if (!reading.ok) throw new Error(reading.problem.message);
const { puck } = reading.value;
if (puck === null) throw new Error("the case has no puck.");
const search = tradeoffSearch(puck);
if (!search.ok) throw new Error(search.problem.message);

function answer(message: TradeoffAnswer): void {
  port?.postMessage(message);
}

port.on("message", (task: TradeoffTask) => {
  if (task.kind === "evaluate") {
    answer({ kind: "evaluate", evaluation: search.value.evaluate(task.variables) });
  } else {
    answer({ kind: "member", member: tradeoffMember(puck, search.value, task, task.madeOff) });
  }
});
answer({ kind: "ready" });
