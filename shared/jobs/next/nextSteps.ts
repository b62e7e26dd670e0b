import { TRUST_NUMBERS } from "../../engine/constants/trustNumbers";
import { compareDraws, rankDraws } from "../../engine/trust/compareDraws";
import { measuredDrag } from "../../engine/trust/measuredDrag";
import { drawDrags, type UncertainDrag } from "../../engine/trust/uncertainDrag";
import { valueOfInformation } from "../../engine/trust/valueOfInformation";
import { randomDraws } from "../../statistics/randomDraws";
import {
  designCount,
  knowledgeFor,
  knowledgeOfCase,
  type StudiedDrag,
  type Study,
  type StudyCondition,
  studySteps,
} from "../compare/public";
import type { CaseSoFar, JobStep } from "../jobBlock";
import { decisionCondition } from "./decisionCondition";
import type { MeasurementWorth, NextResult } from "./nextResult";
import type { NextJob, PlannedMeasurement } from "./resolveNext";
import { worthSentence } from "./worthSentence";

/** Worlds that are drawn: enough for the posterior of two precise values. */
const drawCount = 8000;
const DECIDED = TRUST_NUMBERS.decidedProbability.value;

/** How many steps nextSteps counts. */
export function nextStepCount({ compare, measurements }: NextJob): number {
  return designCount(compare) + 2 * measurements.length;
}

/** A measurement with what it would show of the designs, or why it cannot be judged. */
type Shown =
  | { readonly ok: true; readonly drags: readonly StudiedDrag[] }
  | { readonly ok: false; readonly problem: string };

/** Studies the designs and the possible runs, then simulates each measurement, one per step. */
export function* nextSteps(job: NextJob, before: CaseSoFar): Generator<JobStep, NextResult> {
  const study = yield* studySteps(job.compare, before);
  const { measurements, simulations, compare } = job;
  const solved = designCount(compare);
  const decision = decisionCondition(study, job);
  const failure = decision?.drags.find((drag) => !drag.ok);
  if (decision === null || failure?.ok === false) {
    const reason =
      failure?.ok === false ? failure.problem.message : "no condition of the case is the one that was asked for";
    return emptyResult(job, decision, reason);
  }
  const designs = decision.drags.flatMap((drag) => (drag.ok ? [drag.value] : []));
  const shown: Shown[] = [];
  for (const [i, measurement] of measurements.entries()) {
    shown.push(runsOf(study, measurement));
    yield { done: solved + i + 1, label: `solved ${measurement.name}` };
  }
  const knowledge = knowledgeFor(
    [...designs, ...shown.flatMap((each) => (each.ok ? each.drags : []))],
    knowledgeOfCase(before),
  );
  const [{ level }] = knowledge;
  const inFacility = (each: Shown, facility: string): UncertainDrag[] =>
    each.ok ? each.drags.map(({ drag }) => measuredDrag(drag, facility, level.parameters)) : [];
  const runs = shown.map((each, i) => inFacility(each, measurements[i].facility));
  const drawn = drawDrags(knowledge, [...designs.map(({ drag }) => drag), ...runs.flat()], drawCount, compare.seed);
  const logDrag = drawn.logDrag.slice(0, designs.length);
  const losses = regrets(logDrag);
  const pairs = study.baselines.flatMap((second) =>
    study.designs.flatMap((_, first) => (first === second ? [] : [[first, second] as const])),
  );
  const worths: MeasurementWorth[] = [];
  let next = designs.length;
  for (const [i, measurement] of measurements.entries()) {
    const first = next;
    next += runs[i].length;
    const each = shown[i];
    const values =
      measurement.kind === "turbulence" ? [turbulences(study, drawn.stream)] : drawn.logDrag.slice(first, next);
    const question = {
      losses,
      shown: values,
      noise: values.map(() => measurement.deviation),
      probability: DECIDED,
      pairs,
    };
    worths.push(
      each.ok
        ? worthOf(measurement, study, pairs, valueOfInformation(question, simulations, randomDraws(compare.seed + 1)))
        : unjudged(measurement, each.problem),
    );
    yield { done: solved + measurements.length + i + 1, label: `simulated ${measurement.name}` };
  }
  const { probabilityBest, expectedRegretPercent } = rankDraws(logDrag);
  const least = expectedRegretPercent.indexOf(Math.min(...expectedRegretPercent));
  return {
    condition: decision.condition,
    ranking: study.designs.map((name, i) => ({
      name,
      probabilityBest: probabilityBest[i],
      expectedRegretPercent: expectedRegretPercent[i],
    })),
    choice: study.designs[least],
    regretPercent: expectedRegretPercent[least],
    pairs: pairs.map(([first, second]) => {
      const { probabilityLess, decided } = compareDraws(logDrag[first], logDrag[second]);
      return { first: study.designs[first], second: study.designs[second], probabilityLess, decided };
    }),
    measurements: worths.sort((a, b) => (b.regretFallPerCost ?? -1) - (a.regretFallPerCost ?? -1)),
    draws: drawCount,
    simulations,
    seed: compare.seed,
    problem: null,
  };
}

function emptyResult(
  { measurements, simulations, compare }: NextJob,
  decision: StudyCondition | null,
  problem: string,
): NextResult {
  return {
    condition: decision?.condition ?? null,
    ranking: [],
    choice: null,
    regretPercent: null,
    pairs: [],
    measurements: measurements.map((measurement) => unjudged(measurement, problem)),
    draws: drawCount,
    simulations,
    seed: compare.seed,
    problem,
  };
}

/** The drags that a measurement would show; none of the turbulence. */
function runsOf(study: Study, { kind, designs, attitude, ...run }: PlannedMeasurement): Shown {
  if (kind === "turbulence") return { ok: true, drags: [] };
  const drags: StudiedDrag[] = [];
  for (const name of designs) {
    const place = study.designs.indexOf(name);
    if (place < 0)
      return { ok: false, problem: `no design is called "${name}"; the names are ${study.designs.join(", ")}` };
    const drag = study.inRun(place, run, attitude);
    if (!drag.ok) return { ok: false, problem: drag.problem.message };
    drags.push(drag.value);
  }
  return { ok: true, drags };
}

/** 100 (own drag / least drag - 1) in every draw. */
function regrets(logDrag: readonly Float64Array[]): Float64Array[] {
  const least = logDrag[0].map((_, k) => Math.min(...logDrag.map((column) => column[k])));
  return logDrag.map((column) => column.map((value, k) => 100 * Math.expm1(value - least[k])));
}

/** The turbulence of the water in every draw, a fraction. */
function turbulences({ samples, conditions }: Study, stream: Readonly<Uint16Array>): Float64Array {
  const streams = conditions[0].drags[0];
  const repeats = streams.ok ? streams.value.drag.parts[0].streams.length / samples.length : 1;
  return Float64Array.from(stream, (s) => samples[Math.floor(s / repeats)].turbulenceIntensity ?? 0);
}

function worthOf(
  measurement: PlannedMeasurement,
  { designs }: Study,
  pairs: readonly (readonly [number, number])[],
  { regretNow, regretAfter, decidedShare, pairDecidedShares }: ReturnType<typeof valueOfInformation>,
): MeasurementWorth {
  const fall = Math.max(0, regretNow - regretAfter);
  const decides = pairs.map(([first, second], p) => ({
    first: designs[first],
    second: designs[second],
    probability: pairDecidedShares[p],
  }));
  const worth = {
    ...about(measurement),
    regretAfterPercent: regretAfter,
    regretFallPercent: fall,
    regretFallPerCost: fall / measurement.cost,
    decidesBestProbability: decidedShare,
    decides,
    problem: null,
  };
  return { ...worth, sentence: worthSentence(worth) };
}

function unjudged(measurement: PlannedMeasurement, problem: string): MeasurementWorth {
  return {
    ...about(measurement),
    regretAfterPercent: null,
    regretFallPercent: null,
    regretFallPerCost: null,
    decidesBestProbability: null,
    decides: [],
    sentence: `${measurement.name} could not be judged: ${problem}`,
    problem,
  };
}

function about({ name, kind, designs, speed, reynolds, deviation, cost }: PlannedMeasurement) {
  return {
    name,
    kind,
    designs,
    speedMetresPerSecond: speed,
    reynolds,
    standardUncertaintyPercent: 100 * deviation,
    cost,
  };
}
