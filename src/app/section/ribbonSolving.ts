import { type Design, designRequest } from "../../../shared/case/design";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { SolverApi } from "../../../workers/solverApi";
import type { WatchedWorker } from "../view/watchedWorker";
import type { Ribbon } from "./ribbon";
import { type RibbonRange, ribbonRange, ribbonValues } from "./ribbonRange";
import { ribbon } from "./ribbonStore";
import { type SweepInput, sweepInputs } from "./sweepInputs";

/** Points of a first look, and of the whole ribbon. */
const coarseCount = 7;
const fineCount = 25;
/** Panels of a first look: half as dear, and within a line's width of the whole. */
const coarsePanels = 80;

/** Follows the ribbon of the newest design, point by point, so that a newer one never waits for an older. */
export class RibbonSolving {
  readonly #worker: WatchedWorker<SolverApi>;
  #call = 0;

  constructor(worker: WatchedWorker<SolverApi>) {
    this.#worker = worker;
  }

  /**
   * Shows the ribbon of a design over an input; one that already holds for it is kept.
   * @param isMoving  true while a handle is held: a first look is all there is time for
   */
  async follow(design: Design, key: string, isMoving: boolean): Promise<void> {
    const input = sweepInputs(design).find((one) => one.key === key);
    if (input === undefined) return;
    const shown = ribbon.value;
    const isSame = shown !== null && shown.key === key && isAlikeBut(shown.design, design, input);
    const value = input.of(design);
    const range =
      isSame && value >= shown.range.from && value <= shown.range.to ? shown.range : ribbonRange(input, design);
    if (isSame && range === shown.range && (shown.isComplete || isMoving)) return;
    const call = ++this.#call;
    const isNewest = () => this.#call === call;
    const coarse = { ...design, panelCount: Math.min(coarsePanels, design.panelCount) };
    if (!isSame || range !== shown.range) await this.#trace(coarse, design, input, range, coarseCount, isNewest);
    if (!isMoving && isNewest()) await this.#trace(design, design, input, range, fineCount, isNewest);
  }

  async #trace(
    solved: Design,
    design: Design,
    input: SweepInput,
    range: RibbonRange,
    count: number,
    isNewest: () => boolean,
  ): Promise<void> {
    const values = ribbonValues(range, count);
    const rows: (ResultRow | null)[] = values.map(() => null);
    for (const [i, value] of values.entries()) {
      const made = designRequest(input.set(solved, value));
      if (!made.ok) continue;
      const outcome = await this.#worker.insist((remote) => remote.solveRow(made.value.request), 1);
      if (!isNewest()) return;
      if (outcome.kind === "done" && outcome.value.ok && outcome.value.value.converged) rows[i] = outcome.value.value;
    }
    const answer: Ribbon = { key: input.key, range, values, rows, design, isComplete: count === fineCount };
    ribbon.value = answer;
  }
}

/** True when two designs differ in nothing but an input. */
function isAlikeBut(one: Design, other: Design, input: SweepInput): boolean {
  const value = input.of(other);
  const alike = input.set(one, value);
  return (
    JSON.stringify({ ...alike, title: "", sectionName: null }) ===
    JSON.stringify({ ...other, title: "", sectionName: null })
  );
}
