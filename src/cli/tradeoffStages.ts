import type { PuckCase } from "../../shared/jobs/puck/puckcase/puckCase";
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
import type { ProgressLine } from "./progressLine";
import type { TradeoffPool } from "./tradeoffPool";

const standardMembers = 5;
const standardMadeOff = 5e-4;

/** Evaluates points until the run is finished. */
export async function search(
  pool: TradeoffPool,
  first: TradeoffRun,
  progress: ProgressLine,
  onChange: (run: TradeoffRun) => void,
): Promise<void> {
  let run = first;
  const started = performance.now();
  const before = runCounts(first).done;
  const handedOut = new Set<number>();
  await pool.work(
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
      progress.update(done, total, `searching, about ${timeText(perPoint * (total - done))} left`);
    },
  );
}

/** Works out the members of the front that are reported in full, in the order of the front. */
export async function reportMembers(
  pool: TradeoffPool,
  { tradeoff }: PuckCase,
  run: TradeoffRun,
  goals: Parameters<typeof spreadMembers>[1],
  progress: ProgressLine,
) {
  const chosen = spreadMembers(frontOf(run), goals, tradeoff?.reportedMembers ?? standardMembers);
  const open = chosen.map(({ variables, goals: values }, i) => ({ index: i, variables, goals: values }));
  const members: (TradeoffMember | null)[] = chosen.map(() => null);
  const problems: string[] = [];
  const started = performance.now();
  let done = 0;
  await pool.work(
    () => {
      const point = open.shift();
      if (point === undefined) return null;
      const name = `Member ${point.index + 1}`;
      return { kind: "member", ...point, name, madeOff: tradeoff?.madeOffMetres ?? standardMadeOff } as const;
    },
    (task, answer) => {
      if (answer.kind !== "member") throw new Error("a thread answered what it was not asked");
      if (answer.member.ok) members[task.index] = answer.member.value;
      else problems.push(`${task.name}: ${answer.member.problem.message}`);
      done++;
      const left = ((performance.now() - started) / done) * (chosen.length - done);
      progress.update(done, chosen.length, `working out members of the front, about ${timeText(left)} left`);
    },
  );
  return { found: members.filter((member) => member !== null), problems: problems.sort() };
}

function timeText(milliseconds: number): string {
  const seconds = Math.round(milliseconds / 1000);
  return seconds < 100 ? `${seconds} s` : `${Math.round(seconds / 60)} min`;
}
