import { resolve } from "node:path";
import type { Case } from "../../shared/case/resolvedCase";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import type { TradeoffDocument } from "../../shared/jobs/puck/tradeoffDocument";
import { type TradeoffResults, tradeoffResults } from "../../shared/jobs/tradeoff/tradeoffResults";
import { startTradeoff, type TradeoffRun } from "../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch, type TradeoffPlan } from "../../shared/jobs/tradeoff/tradeoffSearch";
import { tradeoffTable } from "../../shared/jobs/tradeoff/tradeoffTable";
import { problem, type Result, success } from "../../shared/result";
import { endOnSignals, exitDone, exitIncomplete, refuse, say, unwritten } from "./command";
import type { TradeoffInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";
import { joinedTables, jsonText, type NamedResults } from "./severalCases";
import { shownInputName, standardInputName } from "./standardInput";
import { print } from "./standardOutput";
import { ThreadPool } from "./threadPool";
import { reportMembers, search, type Told, type TradeoffPool } from "./tradeoffStages";
import { caseFingerprint, readState, writeState } from "./tradeoffState";

/** The work of a thread, built beside this file. */
const tradeoffThread = new URL("./tradeoffThread.js", import.meta.url);

/** Milliseconds between two saves of the state. */
const betweenSaves = 1000;

/** A case with its search, before anything is solved. */
interface PlannedCase {
  /** The name of its file, for messages and results. */
  readonly shown: string;
  readonly theCase: Case;
  readonly document: unknown;
  readonly puck: PuckCase;
  readonly tradeoff: TradeoffDocument;
  readonly plan: TradeoffPlan;
  readonly fingerprint: string;
}

/** Runs the searches one after the other and writes the answers of all of them at once. */
export async function runTradeoff(args: TradeoffInput): Promise<number> {
  const cases: PlannedCase[] = [];
  for (const file of args.files) {
    const planned = await plannedCase(file);
    if (!planned.ok) return refuse(planned.problem.message);
    cases.push(planned.value);
  }
  const inputs = args.files.filter((file) => file !== standardInputName).map((file) => resolve(file));
  const statePath = args.state === null ? null : resolve(args.state);
  const first = firstRuns(cases, statePath, args.state);
  if (!first.ok) return refuse(first.problem.message);

  const runs = first.value;
  const progress = new ProgressLine(process.stderr);
  let output: OutputFile | null = null;
  const stop = new AbortController();
  const save = () =>
    statePath === null || args.state === null ? null : writeState(statePath, args.state, runs, inputs);
  // Before anything is begun, so that no moment is left in which a signal would leave a file behind.
  endOnSignals(() => {
    stop.abort();
    progress.end();
    const saved = save();
    output?.discard();
    if (args.state !== null && saved?.ok === true) {
      say(`interrupted; the same command with --resume ${args.state} goes on from here`);
    }
  });
  const firstSave = save();
  if (firstSave?.ok === false) return refuse(firstSave.problem.message);
  if (args.out !== null) {
    const forbidden = statePath === null ? inputs : [...inputs, statePath];
    const begun = beginOutputFile(resolve(args.out), args.out, forbidden);
    if (!begun.ok) return refuse(begun.problem.message);
    output = begun.value;
  }

  try {
    let lastSaved = performance.now();
    const done: NamedResults<TradeoffResults>[] = [];
    for (const one of cases) {
      const keep = (changed: TradeoffRun) => {
        runs.set(one.fingerprint, changed);
        if (performance.now() - lastSaved < betweenSaves) return;
        lastSaved = performance.now();
        const saved = save();
        if (saved?.ok === false) throw new Error(saved.problem.message);
      };
      const run = runs.get(one.fingerprint) ?? missingRun();
      const prefix = cases.length > 1 ? `${one.shown}: ` : "";
      const told = (count: number, total: number, what: string) => progress.update(count, total, `${prefix}${what}`);
      done.push({ file: one.shown, results: await searched(one, run, told, keep, stop.signal) });
      save();
    }
    progress.end();
    const text = args.isJson
      ? jsonText(done)
      : joinedTables(done.map(({ file, results }) => ({ file, text: tradeoffTable(results) })));
    const written = output?.commit(text);
    if (written?.ok === false) return unwritten(written.problem.message);
    const printed = output === null ? await print(text) : exitDone;
    if (printed !== exitDone) return printed;
    const isWhole = done.every(({ results }) => results.front.length > 0 && results.problems.length === 0);
    return isWhole ? exitDone : exitIncomplete;
  } catch (error) {
    output?.discard();
    throw error;
  } finally {
    progress.end();
  }
}

function missingRun(): never {
  throw new RangeError("a search has no run, although each was given one.");
}

async function plannedCase(file: string): Promise<Result<PlannedCase>> {
  const shown = shownInputName(file);
  const opened = await openNamedCase(file);
  if (!opened.ok) return opened;
  const { theCase, document } = opened.value;
  const { puck } = theCase;
  if (puck === null) return problem("puck", `${shown}: puck is missing; a trade-off needs a case with a puck`);
  const plan = plannedSearch(puck);
  if (!plan.ok) return problem("tradeoff", `${shown}: ${plan.problem.message}`);
  if (puck.tradeoff === null) throw new RangeError("the case has no trade-off, although one was planned.");
  const fingerprint = caseFingerprint(document);
  return success({ shown, theCase, document, puck, tradeoff: puck.tradeoff, plan: plan.value, fingerprint });
}

/** Where each case's search begins, by its fingerprint: where the state left it, or at its beginning. */
function firstRuns(
  cases: readonly PlannedCase[],
  statePath: string | null,
  shownState: string | null,
): Result<Map<string, TradeoffRun>> {
  const runs = new Map<string, TradeoffRun>();
  if (statePath !== null && shownState !== null) {
    const spaces = new Map(cases.map(({ fingerprint, plan }) => [fingerprint, plan.space]));
    const saved = readState(statePath, shownState, spaces);
    if (!saved.ok) return saved;
    for (const [fingerprint, run] of saved.value) runs.set(fingerprint, run);
  }
  for (const { shown, fingerprint, tradeoff, plan } of cases) {
    if (runs.has(fingerprint)) continue;
    const begun = startTradeoff(tradeoff, plan.space);
    if (!begun.ok) return problem("tradeoff", `${shown}: ${begun.problem.message}`);
    runs.set(fingerprint, begun.value);
  }
  return success(runs);
}

/** Searches to the end and works out the members that are reported in full. */
async function searched(
  { theCase: { title, note }, document, puck, plan }: PlannedCase,
  first: TradeoffRun,
  told: Told,
  onChange: (run: TradeoffRun) => void,
  signal: AbortSignal,
): Promise<TradeoffResults> {
  const pool: TradeoffPool = new ThreadPool(tradeoffThread, document);
  try {
    let run = first;
    const keep = (changed: TradeoffRun) => {
      run = changed;
      onChange(changed);
    };
    await search(pool, run, told, keep, signal);
    const members = await reportMembers(pool, puck, run, plan.search.goals, told, signal);
    return tradeoffResults({ title, note }, puck, plan, run, members.found, members.problems);
  } finally {
    await pool.end();
  }
}
