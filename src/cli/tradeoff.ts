import { resolve } from "node:path";
import type { Case } from "../../shared/case/resolvedCase";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import { tradeoffResults } from "../../shared/jobs/tradeoff/tradeoffResults";
import { startTradeoff, type TradeoffRun } from "../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch } from "../../shared/jobs/tradeoff/tradeoffSearch";
import { tradeoffTable } from "../../shared/jobs/tradeoff/tradeoffTable";
import { endOnSignals, exitDone, exitIncomplete, refuse } from "./command";
import type { TradeoffInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { ProgressLine } from "./progressLine";
import { shownInputName, standardInputName } from "./standardInput";
import { ThreadPool } from "./threadPool";
import { reportMembers, search, type TradeoffPool } from "./tradeoffStages";
import { caseFingerprint, readState, writeState } from "./tradeoffState";

/** The work of a thread, built beside this file. */
const tradeoffThread = new URL("./tradeoffThread.js", import.meta.url);

/** Milliseconds between two saves of the state. */
const betweenSaves = 1000;

export async function runTradeoff(args: TradeoffInput): Promise<number> {
  const shown = shownInputName(args.file);
  const path = args.file === standardInputName ? null : resolve(args.file);
  const opened = await openNamedCase(args.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const { theCase, document } = opened.value;
  const { puck } = theCase;
  if (puck === null) return refuse(`${shown}: puck is missing; a trade-off needs a case with a puck`);
  const plan = plannedSearch(puck);
  if (!plan.ok) return refuse(`${shown}: ${plan.problem.message}`);
  const fingerprint = caseFingerprint(document);
  const statePath = args.state === null ? null : resolve(args.state);
  const first = firstRun(args, puck, plan.value, statePath, fingerprint);
  if (!first.ok) return refuse(first.problem.message);

  let run: TradeoffRun = first.value;
  const progress = new ProgressLine(process.stderr);
  let output: OutputFile | null = null;
  const stop = new AbortController();
  const inputs = path === null ? [] : [path];
  const save = () =>
    statePath === null || args.state === null ? null : writeState(statePath, args.state, fingerprint, run, inputs);
  // Before anything is begun, so that no moment is left in which a signal would leave a file behind.
  endOnSignals(() => {
    stop.abort();
    progress.end();
    const saved = save();
    output?.discard();
    if (args.state !== null && saved?.ok === true) {
      process.stderr.write(`interrupted; the same command with --resume ${args.state} goes on from here\n`);
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

  const pool: TradeoffPool = new ThreadPool(tradeoffThread, document);
  try {
    let lastSaved = performance.now();
    const keep = (changed: TradeoffRun) => {
      run = changed;
      if (performance.now() - lastSaved < betweenSaves) return;
      lastSaved = performance.now();
      const saved = save();
      if (saved?.ok === false) throw new Error(saved.problem.message);
    };
    await search(pool, run, progress, keep, stop.signal);
    save();
    const members = await reportMembers(pool, puck, run, plan.value.search.goals, progress, stop.signal);
    const results = tradeoffResults(about(theCase), puck, plan.value, run, members.found, members.problems);
    progress.end();
    const text = args.isJson ? `${JSON.stringify(results, null, 2)}\n` : tradeoffTable(results);
    const written = output?.commit(text);
    if (written?.ok === false) return refuse(written.problem.message);
    if (output === null) process.stdout.write(text);
    return results.front.length > 0 && results.problems.length === 0 ? exitDone : exitIncomplete;
  } catch (error) {
    output?.discard();
    throw error;
  } finally {
    progress.end();
    await pool.end();
  }
}

function about({ title, note }: Case) {
  return { title, note };
}

function firstRun(
  args: TradeoffInput,
  puck: PuckCase,
  plan: Extract<ReturnType<typeof plannedSearch>, { readonly ok: true }>["value"],
  statePath: string | null,
  fingerprint: string,
) {
  const { tradeoff } = puck;
  if (tradeoff === null) throw new RangeError("the case has no trade-off, although one was planned.");
  if (statePath !== null && args.state !== null) {
    const saved = readState(statePath, args.state, fingerprint, plan.space);
    if (!saved.ok) return saved;
    if (saved.value !== null) return { ok: true, value: saved.value } as const;
  }
  return startTradeoff(tradeoff, plan.space);
}
