import type { DragBand } from "../../../engine/trust/dragInterval";
import { percentOf } from "../../../numerics/degreesAndPercent";
import { type Result, success } from "../../../result";
import type { PuckFlow } from "../drag/puckFlow";
import type { MotionDocument } from "../motionDocument";
import type { CasePuck, PuckCase } from "../puckCase";
import { puckAddedMass } from "./addedMass";
import { type BandedMotion, bandedMotion } from "./bandedMotion";
import { type DragTable, dragTable } from "./dragTable";
import type { MotionBody, MotionSampling } from "./motionBody";
import { runMotion } from "./motionRun";
import type { Trajectory } from "./trajectory";

/** One motion of a puck. Figures carry their unit in their key; each is a band over the three runs. */
export interface MotionResult {
  readonly motion: MotionDocument["kind"];
  readonly name: string | null;
  readonly turbulencePercent: number;
  readonly figures: Readonly<Record<string, DragBand>>;
  /** Time and speed at the asked distances; null where not all runs of the band came there. */
  readonly marks: readonly {
    readonly distanceMetres: number;
    readonly timeSeconds: DragBand | null;
    readonly speedMetresPerSecond: DragBand | null;
  }[];
  /** What ended the run with the expected values: "rest", "floor", "surface" or "time". */
  readonly ended: string;
  /** Largest energy that any of the runs lost track of, over the energy in play. */
  readonly energyResidual: number;
  /** The runs over time, with the expected values, the least and the most resistance; null when not asked for. */
  readonly curves: BandedMotion<MotionCurve> | null;
}

export interface MotionCurve {
  readonly timeSeconds: readonly number[];
  readonly distanceMetres: readonly number[];
  readonly heightMetres: readonly number[];
  readonly speedMetresPerSecond: readonly number[];
}

/** Values that keys leave out; the longest time is beyond any slide or flick in a pool. */
const standard = { longestSeconds: 60, samples: 400 };

/** Follows the motions that a case asks for, of one puck at one turbulence: drag over speed, added mass and all bands. */
export function puckMotions(puck: CasePuck, flow: PuckFlow, theCase: PuckCase): Result<MotionResult[]> {
  if (theCase.motions.length === 0) return success([]);
  const areas = dragTable(puck, flow, theCase);
  if (!areas.ok) return areas;
  const results: MotionResult[] = [];
  for (const motion of theCase.motions) {
    const result = followMotion(puck, flow, areas.value, motion, theCase);
    if (!result.ok) return result;
    results.push(result.value);
  }
  return success(results);
}

function followMotion(
  puck: CasePuck,
  { turbulenceIntensity, faceOn, whole }: PuckFlow,
  areas: DragTable,
  motion: MotionDocument,
  theCase: PuckCase,
): Result<MotionResult> {
  const { fluid } = theCase.stream;
  const { figures } = puck;
  const added = puckAddedMass(
    puck.spec.diameterMetres,
    figures.volumeCubicMetres,
    fluid.density,
    whole === null
      ? { along: faceOn?.addedMassRatio ?? null, across: null }
      : { along: whole.body.flow.addedMassAlong, across: whole.body.flow.addedMassAcross },
  );
  if (!added.ok) return added;
  const body: MotionBody = {
    mass: figures.massKilograms,
    addedMassEdgeOn: added.value.edgeOn,
    addedMassFaceOn: added.value.faceOn,
    weightInFluid: figures.weightInFluidNewtons,
    fluidDensity: fluid.density,
  };
  const sampling: MotionSampling = {
    duration: motion.longestSeconds ?? standard.longestSeconds,
    samples: motion.curveSamples ?? standard.samples,
    markDistances: motion.markDistancesMetres,
  };
  const runs = bandedMotion((end) => runMotion(motion, body, areas, end, theCase, sampling));
  if (!runs.ok) return runs;
  const { expected, leastResistance, mostResistance } = runs.value;
  const three = [leastResistance, expected, mostResistance] as const;
  return success({
    motion: motion.kind,
    name: motion.name ?? null,
    turbulencePercent: percentOf(turbulenceIntensity),
    figures: Object.fromEntries(
      Object.keys(expected.figures).map((key) => [key, bandOf(three.map((run) => run.figures[key]))]),
    ),
    marks: expected.trajectory.marks.map(({ distance }, i) => {
      const marks = three.map((run) => run.trajectory.marks[i]);
      const times = marks.flatMap(({ time }) => (time === null ? [] : [time]));
      const speeds = marks.flatMap(({ speed }) => (speed === null ? [] : [speed]));
      return {
        distanceMetres: distance,
        timeSeconds: times.length === three.length ? bandOf(times) : null,
        speedMetresPerSecond: speeds.length === three.length ? bandOf(speeds) : null,
      };
    }),
    ended: expected.trajectory.ended,
    energyResidual: Math.max(...three.map(({ trajectory }) => trajectory.energy.relativeResidual)),
    curves:
      motion.curveSamples === undefined
        ? null
        : {
            expected: curve(expected.trajectory),
            leastResistance: curve(leastResistance.trajectory),
            mostResistance: curve(mostResistance.trajectory),
          },
  });
}

/** @param three with the least resistance, the expected values, the most resistance */
function bandOf(three: readonly number[]): DragBand {
  return { low: Math.min(...three), expected: three[1], high: Math.max(...three) };
}

function curve({ time, distance, height, speed }: Trajectory): MotionCurve {
  return {
    timeSeconds: [...time],
    distanceMetres: [...distance],
    heightMetres: [...height],
    speedMetresPerSecond: [...speed],
  };
}
