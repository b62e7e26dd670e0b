import type { UncertainDrag } from "../../engine/trust/uncertainDrag";
import { percentOf } from "../../numerics/degreesAndPercent";
import { type Result, success } from "../../result";
import type { CaseSoFar, JobStep } from "../jobBlock";
import {
  attitudes,
  type CasePuck,
  type DimensionKey,
  dimensionOf,
  dragByOrientation,
  type Orientation,
  type PuckCase,
  type PuckFlow,
  type PuckSample,
  preparePlan,
  puckFigures,
  solvedPuckFlows,
  solvePuckFlows,
  uncertainPuckDrag,
  withDimension,
} from "../puck/public";
import type { ComparedCondition } from "./comparison";
import type { CompareJob } from "./resolveCompare";
import type { RunStream, StudiedDrag, Study, StudyCondition } from "./study";
import { type UnknownSample, unknownKeys, unknownSamples } from "./unknownSamples";

/** A puck as it may be, with its flow at every turbulence that is told apart. */
interface SolvedSample {
  readonly puck: CasePuck;
  readonly sample: UnknownSample;
  readonly flows: readonly PuckFlow[];
}

/** One place of play: a turbulence and a speed that are told apart. */
interface Place {
  /** Place among the flows of a sample. */
  readonly flow: number;
  /** m/s; null where it is not known. */
  readonly speed: number | null;
}

/** The pucks of a case as the designs of a study; one step per puck. */
export function* puckStudy(job: CompareJob, theCase: PuckCase, before: CaseSoFar): Generator<JobStep, Study> {
  const samples = unknownSamples(job.unknown, job.seed);
  const { pucks, play, stream } = theCase;
  const plan = preparePlan(stream.panelCount);
  const known = before.leftOf(solvedPuckFlows);
  const designs: Result<readonly SolvedSample[]>[] = [];
  for (const [i, puck] of pucks.entries()) {
    const flows = known?.get(puck.spec.name);
    designs.push(plan.ok ? solvedSamples(puck, i, theCase, samples, plan.value, flows) : plan);
    yield { done: i + 1, label: `studied ${puck.spec.name}` };
  }
  const [sample] = samples;
  const unknown = unknownKeys(job.unknown);
  const turbulences = sample.turbulenceIntensity === null ? stream.turbulenceIntensities : [null];
  const speeds = sample.speed === null ? play.indexSpeeds : [null];
  const places = turbulences.flatMap((_, flow) => speeds.map((speed): Place => ({ flow, speed })));
  const conditionOf = (
    attitude: ComparedCondition["attitude"],
    place: Place | null,
    conditionCount: number,
  ): ComparedCondition => {
    const turbulence = place === null ? null : turbulences[place.flow];
    return {
      compared: "drag",
      attitude,
      speedMetresPerSecond: place?.speed ?? null,
      reynolds: null,
      sandGrainRoughnessRatio: null,
      sandGrainRoughnessMetres: null,
      turbulencePercent: turbulence === null ? null : percentOf(turbulence),
      conditionCount,
      unknown,
    };
  };
  const { kinematicViscosity } = stream.fluid;
  const each = (of: (solved: readonly SolvedSample[]) => StudiedDrag) =>
    designs.map((solved) => (solved.ok ? success(of(solved.value)) : solved));
  const inPlay = playMeasure(designs, theCase, places);
  const conditions: StudyCondition[] = [
    ...(inPlay === null
      ? []
      : [{ condition: conditionOf("play", null, places.length), drags: each((solved) => inPlay(solved)) }]),
    ...places.flatMap((place) =>
      attitudes.map((attitude) => ({
        condition: conditionOf(attitude, place, 1),
        drags: each((solved) => uncertainPuckDrag(samplesAt(solved, place), attitude, kinematicViscosity)),
      })),
    ),
  ];
  const names = pucks.map(({ spec }) => spec.name);
  const own = pucks.flatMap(({ role }, i) => (role === "baseline" ? [i] : []));
  return {
    designs: names,
    baselines: job.baseline === null ? own : [names.indexOf(job.baseline)],
    conditions,
    samples,
    unknown,
    inRun: (design, run, attitude) => {
      const solved = designs[design];
      if (!plan.ok) return plan;
      if (!solved.ok) return solved;
      return dragInRun(solved.value, run, attitude ?? "upright", theCase, plan.value);
    },
  };
}

function samplesAt(solved: readonly SolvedSample[], { flow, speed }: Place): PuckSample[] {
  return solved.map(({ puck, sample, flows }) => ({ puck, flow: flows[flow], speed: sample.speed ?? speed ?? 0 }));
}

function solvedSamples(
  puck: CasePuck,
  design: number,
  theCase: PuckCase,
  samples: readonly UnknownSample[],
  plan: Parameters<typeof solvePuckFlows>[2],
  known: readonly PuckFlow[] | undefined,
): Result<SolvedSample[]> {
  const { stream, play, setting } = theCase;
  const solved = new Map<string, Result<SolvedSample>>();
  const found: SolvedSample[] = [];
  for (const sample of samples) {
    const sizes = sample.sizes(design);
    const key = JSON.stringify([sizes, sample.turbulenceIntensity, sample.sandGrainRoughness]);
    let result = solved.get(key);
    if (result === undefined) {
      const isKnown = key === JSON.stringify([{}, null, null]);
      const made = madePuck(puck, sizes, sample, setting);
      if (!made.ok) return made;
      const turbulenceIntensities =
        sample.turbulenceIntensity === null ? stream.turbulenceIntensities : [sample.turbulenceIntensity];
      const flows =
        isKnown && known !== undefined
          ? success(known)
          : solvePuckFlows(made.value, { ...stream, turbulenceIntensities }, plan, { ...play, sweptGaps: [] });
      if (!flows.ok) return flows;
      result = success({ puck: made.value, sample, flows: flows.value });
      solved.set(key, result);
    }
    if (!result.ok) return result;
    found.push({ ...result.value, sample });
  }
  return success(found);
}

/** A puck with its sizes and finish as they may be. */
function madePuck(
  puck: CasePuck,
  sizes: Readonly<Record<string, number>>,
  { sandGrainRoughness }: UnknownSample,
  setting: PuckCase["setting"],
): Result<CasePuck> {
  const spec = Object.entries(sizes).reduce((changed, [key, off]) => {
    const dimension = key as DimensionKey;
    const nominal = dimensionOf(puck.spec, dimension);
    return nominal === null ? changed : withDimension(changed, dimension, nominal + off);
  }, puck.spec);
  const rough = { ...puck, sandGrainRoughness: sandGrainRoughness ?? puck.sandGrainRoughness };
  if (spec === puck.spec) return success(rough);
  const figures = puckFigures(spec, setting);
  return figures.ok ? success({ ...rough, spec, figures: figures.value }) : figures;
}

/**
 * Drag over all of play: over that of the first baseline as the engine expects it at each place, weighed by the shares of
 * play and averaged over the places. null where that baseline could not be solved.
 */
function playMeasure(
  designs: readonly Result<readonly SolvedSample[]>[],
  { play, stream }: PuckCase,
  places: readonly Place[],
): ((solved: readonly SolvedSample[]) => StudiedDrag) | null {
  const { kinematicViscosity } = stream.fluid;
  const [baseline] = designs;
  if (!baseline.ok) return null;
  const references: Readonly<Record<Orientation, number>>[] = [];
  for (const place of places) {
    const [{ puck, flow, speed }] = samplesAt(baseline.value, place);
    const drag = dragByOrientation(puck, flow, speed, kinematicViscosity);
    if (!drag.ok) return null;
    const { upright, flat, faceOn } = drag.value;
    references.push({
      upright: upright.dragArea.expected,
      flat: flat.dragArea.expected,
      faceOn: faceOn.dragArea.expected,
    });
  }
  return (solved) => {
    const pieces = places.flatMap((place, p) =>
      attitudes.map((attitude) => ({
        attitude,
        reference: references[p][attitude],
        ...uncertainPuckDrag(samplesAt(solved, place), attitude, kinematicViscosity),
      })),
    );
    const shares = solved.map(({ sample }) => {
      const own = attitudes.map((attitude) => sample.shares[attitude] ?? play.shares[attitude]);
      const total = own.reduce((sum, value) => sum + value, 0) * places.length;
      return Object.fromEntries(attitudes.map((attitude, i) => [attitude, own[i] / total])) as Record<
        Orientation,
        number
      >;
    });
    const offsets: number[] = [];
    let parts = 0;
    for (const { drag } of pieces) {
      offsets.push(parts);
      parts += drag.parts.length;
    }
    const drag: UncertainDrag = {
      parts: pieces.flatMap((piece) => piece.drag.parts),
      streamCount: solved.length,
      sharedErrors: [...new Set(pieces.flatMap((piece) => piece.drag.sharedErrors))],
      evaluate: (world) =>
        pieces.reduce((sum, piece, i) => {
          const own = {
            stream: world.stream,
            drag: (part: number) => world.drag(offsets[i] + part),
            regime: (part: number) => world.regime(offsets[i] + part),
            shared: (name: string) => world.shared(name),
          };
          return sum + (shares[world.stream][piece.attitude] / piece.reference) * piece.drag.evaluate(own);
        }, 0),
    };
    return { drag, isChecked: pieces.every(({ isChecked }) => isChecked) };
  };
}

function dragInRun(
  solved: readonly SolvedSample[],
  { speed, fluid, turbulenceIntensity }: RunStream,
  attitude: Orientation,
  theCase: PuckCase,
  plan: Parameters<typeof solvePuckFlows>[2],
): Result<StudiedDrag> {
  const { stream, play } = theCase;
  const kinematicViscosity = fluid?.kinematicViscosity ?? stream.fluid.kinematicViscosity;
  const runSpeed = speed ?? play.indexSpeeds[0];
  const inWater =
    turbulenceIntensity === null && runSpeed >= stream.speeds[0] && runSpeed <= stream.speeds[stream.speeds.length - 1];
  if (inWater) {
    return success(uncertainPuckDrag(samplesAt(solved, { flow: 0, speed: runSpeed }), attitude, kinematicViscosity));
  }
  const flows = new Map<string, Result<PuckFlow[]>>();
  const samples: PuckSample[] = [];
  for (const { puck, sample, flows: own } of solved) {
    const intensity = turbulenceIntensity ?? sample.turbulenceIntensity ?? own[0].turbulenceIntensity;
    const key = JSON.stringify([puck.spec, puck.sandGrainRoughness, intensity]);
    const found =
      flows.get(key) ??
      solvePuckFlows(
        puck,
        {
          ...stream,
          fluid: { ...stream.fluid, kinematicViscosity },
          solvedSpeeds: [runSpeed],
          turbulenceIntensities: [intensity],
        },
        plan,
        { ...play, sweptGaps: [] },
      );
    flows.set(key, found);
    if (!found.ok) return found;
    samples.push({ puck, flow: found.value[0], speed: runSpeed });
  }
  return success(uncertainPuckDrag(samples, attitude, kinematicViscosity));
}
