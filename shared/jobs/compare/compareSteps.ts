import { prepareShape } from "../../engine/section/prepareShape";
import type { Stream } from "../../engine/section/stream";
import { type StudiedStream, studiedStreams } from "../../engine/section/studyBodies";
import { CHECKED_LEVEL, UNCHECKED_LEVEL } from "../../engine/trust/checkedLevel";
import { compareDraws, rankDraws } from "../../engine/trust/compareDraws";
import { studyDraws } from "../../engine/trust/studyDraws";
import { percentOf } from "../../numerics/degreesAndPercent";
import type { CaseSoFar, JobStep, SolvedSweep } from "../jobBlock";
import type { ComparedCondition, Comparison } from "./comparison";
import type { CompareJob } from "./resolveCompare";

/** Worlds that are drawn; probabilities are then good to 0.01. */
const drawCount = 4000;

/** A section with what common draws need of it in every condition of the case. */
interface Competitor {
  readonly name: string;
  /** D, m. */
  readonly width: number;
  readonly streams: readonly Stream[];
  readonly studied: readonly (StudiedStream | null)[];
  readonly problem: string | null;
}

/** Prepares every section, then compares all with the baseline in common draws. */
export function* compareSteps(job: CompareJob, before: CaseSoFar): Generator<JobStep, readonly Comparison[]> {
  const competitors: Competitor[] = [];
  for (const sweeps of byShape(before.sweeps())) {
    competitors.push(competitor(sweeps));
    const done = Math.min(competitors.length, job.sectionCount);
    yield { done, label: `studied ${sweeps[0].shape.name}` };
  }
  const comparisons = compareAll(job, competitors);
  yield { done: job.sectionCount + 1, label: `compared with ${job.baseline}` };
  return comparisons;
}

function byShape(sweeps: readonly SolvedSweep[]): SolvedSweep[][] {
  const groups = new Map<SolvedSweep["shape"], SolvedSweep[]>();
  for (const sweep of sweeps) groups.set(sweep.shape, [...(groups.get(sweep.shape) ?? []), sweep]);
  return [...groups.values()];
}

function competitor(sweeps: readonly SolvedSweep[]): Competitor {
  const [{ shape, streams }] = sweeps;
  const prepared = prepareShape(shape, streams[0]);
  const all = sweeps.flatMap((sweep) => sweep.streams);
  if (!prepared.ok) {
    const { message } = prepared.problem;
    return { name: shape.name, width: 1, streams: all, studied: all.map(() => null), problem: message };
  }
  return {
    name: shape.name,
    width: prepared.value.referenceWidth,
    streams: all,
    studied: sweeps.flatMap((sweep) => studiedStreams(prepared.value, sweep.streams)),
    problem: null,
  };
}

function compareAll({ baseline, conditions, seed }: CompareJob, competitors: readonly Competitor[]): Comparison[] {
  const second = competitors.find(({ name }) => name === baseline);
  const candidates = competitors.filter((each) => each !== second);
  const count = competitors[0]?.streams.length ?? 0;
  const places = Array.from({ length: count }, (_, i) => i);
  const groups = conditions === "any" ? [places] : places.map((i) => [i]);
  return groups.flatMap((group) => {
    const reference = second ?? competitors[0];
    const condition = comparedCondition(group.map((i) => reference.streams[i]));
    const empty = (problem: string) =>
      candidates.map(({ name: first }) => ({ ...noComparison, first, second: baseline, condition, problem }));
    if (second === undefined) {
      const names = competitors.map(({ name }) => name).join(", ");
      return empty(`no section is called "${baseline}"; the names are ${names}`);
    }
    if (candidates.length === 0) return [];
    const missing = competitors.find(({ studied }) => group.some((i) => studied[i] === null));
    if (missing !== undefined)
      return empty(missing.problem ?? `${missing.name}: no steady state was found in a condition`);
    return compareGroup(group, second, candidates, condition, seed);
  });
}

const noComparison = { changePercent: null, probabilityLess: null, decided: null, ranking: null } as const;

/** All candidates with the baseline, in one condition or over several that are as likely. */
function compareGroup(
  group: readonly number[],
  baseline: Competitor,
  candidates: readonly Competitor[],
  condition: ComparedCondition,
  seed: number,
): Comparison[] {
  const all = [baseline, ...candidates];
  const bodies = all.map(({ studied }) => {
    const streams = group.map((i) => studied[i]!);
    return { section: streams[0].section, streams };
  });
  const level = bodies.every(({ streams }) => streams.every(({ isChecked }) => isChecked))
    ? CHECKED_LEVEL
    : UNCHECKED_LEVEL;
  const { logDrag } = studyDraws(level, bodies, drawCount, seed);
  const compared = logDrag.map((column, i) => {
    const scale = condition.compared === "drag per span" ? Math.log(all[i].width) : 0;
    return column.map((value) => value + scale);
  });
  const { probabilityBest, expectedRegretPercent } = rankDraws(compared);
  const ranking =
    all.length < 3
      ? null
      : all.map(({ name }, i) => ({
          name,
          probabilityBest: probabilityBest[i],
          expectedRegretPercent: expectedRegretPercent[i],
        }));
  return candidates.map(({ name }, i) => ({
    first: name,
    second: baseline.name,
    condition,
    ...compareDraws(compared[i + 1], compared[0]),
    ranking,
    problem: null,
  }));
}

function comparedCondition(streams: readonly Stream[]): ComparedCondition {
  const [stream] = streams;
  const alone = streams.length === 1;
  const only = (value: number | null) => (alone ? value : null);
  return {
    compared: "speed" in stream ? "drag per span" : "drag coefficient",
    speedMetresPerSecond: only("speed" in stream ? stream.speed : null),
    reynolds: only("reynolds" in stream ? stream.reynolds : null),
    sandGrainRoughnessRatio: only("sandGrainRoughnessRatio" in stream ? stream.sandGrainRoughnessRatio : null),
    sandGrainRoughnessMetres: only("sandGrainRoughness" in stream ? stream.sandGrainRoughness : null),
    turbulencePercent: only(percentOf(stream.turbulenceIntensity)),
    conditionCount: streams.length,
  };
}
