import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import type { TradeoffMember } from "../../shared/jobs/tradeoff/tradeoffMember";
import {
  frontOf,
  isFinished,
  nextPoints,
  recordAnswer,
  runCounts,
  spreadMembers,
  type TradeoffRun,
} from "../../shared/jobs/tradeoff/tradeoffRun";
import type { ThreadPool } from "./threadPool";
import type { TradeoffAnswer, TradeoffTask } from "./tradeoffMessages";

export type TradeoffPool = ThreadPool<TradeoffTask, TradeoffAnswer>;

const standardMembers = 5;
const standardMadeOff = 5e-4;

/** Tells how far a stage is. */
export type Told = (done: number, total: number, what: string) => void;

/** Evaluates points until the run is finished. */
export async function search(
  pool: TradeoffPool,
  first: TradeoffRun,
  told: Told,
  onChange: (run: TradeoffRun) => void,
  signal: AbortSignal,
): Promise<void> {
  let run = first;
  const started = performance.now();
  const before = runCounts(first).done;
  const handedOut = new Set<number>();
  await pool.workThrough(
    () => {
      if (isFinished(run)) return null;
      const [point] = nextPoints(run, 1, handedOut);
      if (point === undefined) return null;
      handedOut.add(point.index);
      return { kind: "evaluate", index: point.index, variables: point.variables } as const;
    },
    ({ index }, answer) => {
      if (answer.kind !== "evaluate") throw new Error("a thread answered what it was not asked");
      handedOut.delete(index);
      run = recordAnswer(run, index, answer.evaluation);
      onChange(run);
      const { done, total } = runCounts(run);
      const perPoint = (performance.now() - started) / Math.max(1, done - before);
      told(done, total, `searching, about ${timeText(perPoint * (total - done))} left`);
    },
    signal,
  );
}

/** Works out the members of the front that are reported in full, in the order of the front. */
export async function reportMembers(
  pool: TradeoffPool,
  { tradeoff }: PuckCase,
  run: TradeoffRun,
  goals: Parameters<typeof spreadMembers>[1],
  told: Told,
  signal: AbortSignal,
) {
  const chosen = spreadMembers(frontOf(run), goals, tradeoff?.reportedMembers ?? standardMembers);
  const madeOff = tradeoff?.madeOffMetres ?? standardMadeOff;
  const tasks = chosen.map(
    ({ variables, goals: values }, i) =>
      ({ kind: "member", name: `Member ${i + 1}`, variables, goals: values, madeOff }) as const,
  );
  const started = performance.now();
  const answers = await pool.answers(
    tasks,
    (done) => {
      const left = ((performance.now() - started) / done) * (chosen.length - done);
      told(done, chosen.length, `working out members of the front, about ${timeText(left)} left`);
    },
    signal,
  );
  const members: TradeoffMember[] = [];
  const problems: string[] = [];
  answers.forEach((answer, i) => {
    if (answer.kind !== "member") throw new Error("a thread answered what it was not asked");
    if (answer.member.ok) members.push(answer.member.value);
    else problems.push(`${tasks[i].name}: ${answer.member.problem.message}`);
  });
  return { found: members, problems };
}

function timeText(milliseconds: number): string {
  const seconds = Math.round(milliseconds / 1000);
  return seconds < 100 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
}
