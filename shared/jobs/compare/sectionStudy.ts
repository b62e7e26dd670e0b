import type { SectionDocument } from "../../document/sectionDocument";
import { sectionSpecs } from "../../document/sectionSpecs";
import type { PlacedSection } from "../../engine/section/placedSection";
import { type PreparedShape, prepareShape } from "../../engine/section/prepareShape";
import type { Stream, StreamSpeed, WallRoughness } from "../../engine/section/stream";
import { type StudiedStream, studiedStreams } from "../../engine/section/studyBodies";
import { sectionDragOf } from "../../engine/trust/uncertainDrag";
import { percentOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";
import type { JobStep, SolvedSweep } from "../jobBlock";
import type { ComparedCondition } from "./comparison";
import type { CompareJob } from "./resolveCompare";
import type { RunStream, StudiedDrag, Study, StudyCondition } from "./study";
import { knownInputs, type UnknownSample, unknownKeys, unknownSamples } from "./unknownSamples";

type Shape = SolvedSweep["shape"];

/** A section ready for the streams of one sample. */
interface PreparedSample {
  readonly shape: PreparedShape;
  readonly sample: UnknownSample;
}

/** The sections of a case as the designs of a study; one step per section. */
export function* sectionStudy(job: CompareJob, sweeps: readonly SolvedSweep[]): Generator<JobStep, Study> {
  const samples = unknownSamples(job.unknown, job.seed);
  const designs = byShape(sweeps);
  const bases = baseStreams(designs[0] ?? [], samples[0]);
  const groups = job.conditions === "any" ? [bases] : bases.map((base) => [base]);
  const prepared: Result<readonly PreparedSample[]>[] = [];
  const drags: Result<StudiedDrag>[][] = groups.map(() => []);
  for (const [i, own] of designs.entries()) {
    const ready = preparedSamples(own[0], i, samples, job.documents);
    prepared.push(ready);
    const streams = baseStreams(own, samples[0]);
    const { name } = own[0].shape;
    const studied = ready.ok ? ready.value.map((sample) => studiedSample(sample, streams)) : [];
    const places = groups.map((group) => group.map((base) => bases.indexOf(base)));
    places.forEach((own, g) => {
      if (!ready.ok) drags[g].push(ready);
      else {
        const widths = ready.value.flatMap(({ shape }) =>
          own.map((place) => ("speed" in streams[place] ? shape.referenceWidth : 1)),
        );
        const joined = studied.flatMap((found) => own.map((place) => found[place]));
        drags[g].push(joinedDrag(joined, widths, name));
      }
    });
    yield { done: i + 1, label: `studied ${own[0].shape.name}` };
  }
  const unknown = unknownKeys(job.unknown);
  const names = designs.map(([{ shape }]) => shape.name);
  return {
    designs: names,
    baselines: names.flatMap((name, i) => (name === job.baseline ? [i] : [])).slice(0, 1),
    conditions: groups.map(
      (group, g): StudyCondition => ({
        condition: comparedCondition(group, samples[0], unknown),
        drags: drags[g],
      }),
    ),
    samples,
    unknown,
    inRun: (design, run) => {
      const ready = prepared[design];
      const [wall] = baseStreams(designs[design], samples[0]);
      return ready.ok ? dragInRun(ready.value, run, wall, names[design], groups[0].length) : ready;
    },
  };
}

function byShape(sweeps: readonly SolvedSweep[]): SolvedSweep[][] {
  const groups = new Map<Shape, SolvedSweep[]>();
  for (const sweep of sweeps) groups.set(sweep.shape, [...(groups.get(sweep.shape) ?? []), sweep]);
  return [...groups.values()];
}

/** The streams of the case that are told apart: where an input is not known, only the first of those that the case lists. */
function baseStreams(sweeps: readonly SolvedSweep[], sample: UnknownSample): Stream[] {
  const found = new Map<string, Stream>();
  for (const stream of sweeps.flatMap(({ streams }) => streams)) {
    const key = [
      sample.speed === null && sample.reynolds === null && ("speed" in stream ? stream.speed : stream.reynolds),
      sample.sandGrainRoughness === null && sample.sandGrainRoughnessRatio === null && wallOf(stream),
      sample.turbulenceIntensity === null && stream.turbulenceIntensity,
    ].join(" ");
    if (!found.has(key)) found.set(key, stream);
  }
  return [...found.values()];
}

function wallOf(stream: Stream): number {
  return "sandGrainRoughness" in stream ? stream.sandGrainRoughness : stream.sandGrainRoughnessRatio;
}

/** A section as it may be made and lie; once where sizes and incidence are known. */
function preparedSamples(
  { shape, streams }: SolvedSweep,
  design: number,
  samples: readonly UnknownSample[],
  documents: readonly SectionDocument[],
): Result<PreparedSample[]> {
  const known = new Map<string, Result<PreparedShape>>();
  const found: PreparedSample[] = [];
  for (const sample of samples) {
    const sizes = sample.sizes(design);
    const key = JSON.stringify([sizes, sample.incidence]);
    const prepared = known.get(key) ?? prepareSample(shape, sample, sizes, documents, streams[0]);
    known.set(key, prepared);
    if (!prepared.ok) return prepared;
    found.push({ shape: prepared.value, sample });
  }
  return success(found);
}

function prepareSample(
  shape: Shape,
  { incidence }: UnknownSample,
  sizes: Readonly<Record<string, number>>,
  documents: readonly SectionDocument[],
  slowest: Stream,
): Result<PreparedShape> {
  const placed: PlacedSection = incidence === null ? shape : { ...shape, incidence };
  if (Object.keys(sizes).length === 0) return prepareShape(placed, slowest);
  const document = documents.find(({ name }) => name === shape.name);
  if (document === undefined) {
    return problem("tolerances", `${shape.name}: making tolerances need a section with a name and without a sweep`);
  }
  const made = Object.fromEntries(
    Object.entries(document).map(([key, value]) =>
      typeof value === "number" && key in sizes ? [key, value + sizes[key]] : [key, value],
    ),
  ) as SectionDocument;
  return prepareShape({ ...placed, section: sectionSpecs(made)[0].spec }, slowest);
}

/** The stream of one sample. */
function sampleStream(base: Stream, sample: UnknownSample): Stream {
  const { trips, turbulenceIntensity } = base;
  return {
    ...sampleFlow(base, sample),
    ...sampleWall(base, sample),
    turbulenceIntensity: sample.turbulenceIntensity ?? turbulenceIntensity,
    ...(trips === undefined ? {} : { trips }),
  };
}

function sampleFlow(base: Stream, { speed, reynolds }: UnknownSample): StreamSpeed {
  if (reynolds !== null) return { reynolds, fluid: base.fluid ?? null };
  if ("speed" in base) return { speed: speed ?? base.speed, fluid: base.fluid };
  return { reynolds: base.reynolds, fluid: base.fluid ?? null };
}

function sampleWall(base: Stream, { sandGrainRoughness, sandGrainRoughnessRatio }: UnknownSample): WallRoughness {
  if (sandGrainRoughness !== null) return { sandGrainRoughness };
  if (sandGrainRoughnessRatio !== null) return { sandGrainRoughnessRatio };
  return "sandGrainRoughness" in base
    ? { sandGrainRoughness: base.sandGrainRoughness }
    : { sandGrainRoughnessRatio: base.sandGrainRoughnessRatio };
}

/** A section in the streams of one sample, those of one wall and turbulence followed as the speed rises. */
function studiedSample({ shape, sample }: PreparedSample, bases: readonly Stream[]): (StudiedStream | null)[] {
  const streams = bases.map((base) => sampleStream(base, sample));
  const alike = new Map<string, number[]>();
  streams.forEach((stream, i) => {
    const key = `${wallOf(stream)} ${stream.turbulenceIntensity}`;
    alike.set(key, [...(alike.get(key) ?? []), i]);
  });
  const found: (StudiedStream | null)[] = bases.map(() => null);
  for (const places of alike.values()) {
    const studied = studiedStreams(
      shape,
      places.map((i) => streams[i]),
    );
    places.forEach((place, i) => {
      found[place] = studied[i];
    });
  }
  return found;
}

/** Drag over streams that are each as likely, in every sample of what is not known. */
function joinedDrag(
  streams: readonly (StudiedStream | null)[],
  widths: readonly number[],
  name: string,
): Result<StudiedDrag> {
  const found = streams.flatMap((stream) => (stream === null ? [] : [stream]));
  if (found.length < streams.length) {
    return problem("compare", `${name}: no steady state was found in a condition`);
  }
  const isChecked = found.every((stream) => stream.isChecked);
  return success({ drag: sectionDragOf({ streams: found }, widths), isChecked });
}

function dragInRun(
  prepared: readonly PreparedSample[],
  run: RunStream,
  wall: Stream,
  name: string,
  repeats: number,
): Result<StudiedDrag> {
  const fluid = run.fluid ?? wall.fluid ?? null;
  if (run.reynolds === null && (run.speed === null || fluid === null)) {
    return problem("run", "a run needs a speed and a fluid, or a Reynolds number");
  }
  const flow = run.reynolds !== null ? { reynolds: run.reynolds, fluid } : { speed: run.speed!, fluid: fluid! };
  const asWall = sampleWall(wall, knownInputs);
  const base: Stream = { ...flow, ...asWall, turbulenceIntensity: run.turbulenceIntensity ?? wall.turbulenceIntensity };
  const known = new Map<string, StudiedStream | null>();
  const streams = prepared.flatMap(({ shape, sample }) => {
    const inRun = {
      ...sample,
      speed: null,
      reynolds: null,
      turbulenceIntensity: run.turbulenceIntensity === null ? sample.turbulenceIntensity : null,
    };
    // Samples that come to the same stream are solved once.
    const shapePlace = prepared.findIndex((other) => other.shape === shape);
    const key = JSON.stringify([shapePlace, sampleStream(base, inRun)]);
    const studied = known.has(key) ? known.get(key)! : studiedSample({ shape, sample: inRun }, [base])[0];
    known.set(key, studied);
    return Array.from({ length: repeats }, () => studied);
  });
  return joinedDrag(streams, [1], name);
}

function comparedCondition(
  streams: readonly Stream[],
  sample: UnknownSample,
  unknown: readonly string[],
): ComparedCondition {
  const [stream] = streams;
  const alone = streams.length === 1;
  const only = (value: number | null, drawn: number | null) => (alone && drawn === null ? value : null);
  const isBySpeed = "speed" in stream;
  return {
    compared: isBySpeed ? "drag per span" : "drag coefficient",
    attitude: null,
    speedMetresPerSecond: only(isBySpeed ? stream.speed : null, sample.speed),
    reynolds: only(isBySpeed ? null : stream.reynolds, sample.reynolds),
    sandGrainRoughnessRatio: only(
      "sandGrainRoughnessRatio" in stream ? stream.sandGrainRoughnessRatio : null,
      sample.sandGrainRoughnessRatio,
    ),
    sandGrainRoughnessMetres: only(
      "sandGrainRoughness" in stream ? stream.sandGrainRoughness : null,
      sample.sandGrainRoughness,
    ),
    turbulencePercent: only(percentOf(stream.turbulenceIntensity), sample.turbulenceIntensity),
    conditionCount: streams.length,
    unknown,
  };
}
