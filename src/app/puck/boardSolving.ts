import type { PuckJudgement } from "../../../shared/jobs/puck/rules/judgePuck";
import { type Result, success } from "../../../shared/result";
import type { PuckApi } from "../../../workers/puckApi";
import { crisisZones } from "../section/crisisZone";
import { Task } from "../view/task";
import type { CallOutcome, WatchedWorker } from "../view/watchedWorker";
import { puckWorker } from "../view/workers";
import { ownTolerances } from "./ownTolerances";
import { puckBench } from "./puckBench";
import { puckCaseOf } from "./puckBlock";
import type { KnownBoard, StudiedPuck } from "./puckBoard";
import { judgeParts, sameParts, solveParts } from "./puckChanges";
import type { PuckInputs, PuckMake } from "./puckInputs";

const crashWords = () => "The solver stopped again and again on these pucks; change one to go on.";

/** Calls that a crash may end before the page stops repeating them. */
const mostRepeats = 2;

interface BoardRequest {
  readonly inputs: PuckInputs;
  readonly others: readonly PuckMake[];
}

let running = false;

/** Keeps the board up to date: crises, comparisons and judgements of all its pucks, newest first, in a worker of its own. */
export function startBoardSolving(): void {
  if (running) return;
  running = true;
  const worker = puckWorker("The puck solver");
  const task = new Task<BoardRequest, KnownBoard>({ ask: (request) => studyBoard(worker, request), crashWords });
  task.subscribe(({ last }) => {
    if (last !== null) puckBench.patch({ board: last.result });
  });
  let asked: BoardRequest | null = null;
  const follow = () => {
    const { history, pins, measured, solved, solveProblem } = puckBench.value;
    const inputs = history.present;
    // The pair that is worked on has the cores to itself until its drag is there.
    if (measured === null || measured.inputs !== inputs || (solved === null && solveProblem === null)) return;
    const others = pins.map(({ make }) => make);
    const isSame =
      asked !== null &&
      sameParts(asked.inputs, inputs, [...solveParts, ...judgeParts]) &&
      asked.others.length === others.length &&
      asked.others.every((make, i) => make === others[i]);
    if (isSame) return;
    asked = { inputs, others };
    void task.run(asked);
  };
  puckBench.subscribe(follow);
  follow();
}

async function studyBoard(
  worker: WatchedWorker<PuckApi>,
  { inputs, others }: BoardRequest,
): Promise<CallOutcome<Result<KnownBoard>>> {
  const made = puckCaseOf({ ...inputs, rules: null }, others);
  if (!made.ok) return { kind: "done", value: made };
  const curves = await worker.insist((remote) => remote.puckCurves(made.value), mostRepeats);
  if (curves.kind !== "done") return curves;
  const studies = Object.fromEntries(
    curves.value.map(({ name, profile, plan }): [string, StudiedPuck] => [
      name,
      {
        comparison: null,
        probabilityBest: null,
        profileCrisis: crisisZones(profile).rising,
        planCrisis: crisisZones(plan).rising,
      },
    ]),
  );
  const judgements: Record<string, PuckJudgement> = {};
  const { rules, tolerances } = inputs;
  for (const { spec } of rules === null ? [] : made.value.pucks) {
    const design = { spec, setting: made.value.setting };
    const judged = await worker.call((remote) => remote.judge(design, rules!, ownTolerances(spec, tolerances), null));
    if (judged.kind === "done" && judged.value.ok) judgements[spec.name] = judged.value.value;
  }
  return { kind: "done", value: success({ inputs, studies, judgements }) };
}
