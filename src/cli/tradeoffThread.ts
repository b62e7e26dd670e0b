import { workerData } from "node:worker_threads";
import { readCaseDocument } from "../../shared/case/readCase";
import { tradeoffMember } from "../../shared/jobs/tradeoff/tradeoffMember";
import { tradeoffSearch } from "../../shared/jobs/tradeoff/tradeoffSearch";
import type { TradeoffAnswer, TradeoffTask } from "./tradeoffMessages";

/** One thread of a trade-off: its own search from the case's document, then one answer per task. */
export default function answerTask(task: TradeoffTask): TradeoffAnswer {
  if (task.kind === "evaluate") return { kind: "evaluate", evaluation: search.evaluate(task.variables) };
  return { kind: "member", member: tradeoffMember(puck, search, task, task.madeOff) };
}

const { puck, search } = searchOf(workerData);

function searchOf(document: unknown) {
  const reading = readCaseDocument(document, "the case");
  if (!reading.ok) throw new Error(reading.problem.message);
  const { puck } = reading.value;
  if (puck === null) throw new Error("the case has no puck.");
  const search = tradeoffSearch(puck);
  if (!search.ok) throw new Error(search.problem.message);
  return { puck, search: search.value };
}
