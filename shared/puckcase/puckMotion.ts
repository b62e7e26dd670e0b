import { puckAddedMass } from "../motion/addedMass";
import { type BandEnd, type BandedMotion, bandedMotion } from "../motion/bandedMotion";
import { flickThroughWater, type TiltedForceAreas } from "../motion/flick";
import type { MotionBody, MotionSampling } from "../motion/motionBody";
import { sinkToFloor, terminalSpeeds } from "../motion/sink";
import { slideToRest } from "../motion/slideToRest";
import type { Trajectory } from "../motion/trajectory";
import type { DragBand } from "../puck/dragBand";
import type { Orientation } from "../puck/orientationIndex";
import { tiltedForces } from "../puck/tiltedDrag";
import { type Result, success } from "../result";
import { type DragTable, dragTable } from "./dragTable";
import type { MotionDocument } from "./motionDocument";
import type { CasePuck, PuckCase } from "./puckCase";
import type { PuckFlow } from "./puckFlow";

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
  /** What ended the run with the best values: "rest", "floor", "surface" or "time". */
  readonly ended: string;
  /** Largest energy that any of the runs lost track of, over the energy in play. */
  readonly energyResidual: number;
  /** The runs over time, with the best values, the least and the most resistance; null when not asked for. */
  readonly curves: BandedMotion<MotionCurve> | null;
}

export interface MotionCurve {
  readonly timeSeconds: readonly number[];
  readonly distanceMetres: readonly number[];
  readonly heightMetres: readonly number[];
  readonly speedMetresPerSecond: readonly number[];
}

interface Run {
  readonly trajectory: Trajectory;
  readonly figures: Readonly<Record<string, number>>;
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
    const result = followMotion(puck, flow.turbulencePercent, areas.value, motion, theCase);
    if (!result.ok) return result;
    results.push(result.value);
  }
  return success(results);
}

function followMotion(
  puck: CasePuck,
  turbulencePercent: number,
  areas: DragTable,
  motion: MotionDocument,
  theCase: PuckCase,
): Result<MotionResult> {
  const { fluid } = theCase.stream;
  const { figures } = puck;
  const added = puckAddedMass(puck.spec.diameterMetres, figures.volumeCubicMetres, fluid.density);
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
  const { best, leastResistance, mostResistance } = runs.value;
  const three = [leastResistance, best, mostResistance] as const;
  return success({
    motion: motion.kind,
    name: motion.name ?? null,
    turbulencePercent,
    figures: Object.fromEntries(
      Object.keys(best.figures).map((key) => [key, bandOf(three.map((run) => run.figures[key]))]),
    ),
    marks: best.trajectory.marks.map(({ distance }, i) => {
      const marks = three.map((run) => run.trajectory.marks[i]);
      const times = marks.flatMap(({ time }) => (time === null ? [] : [time]));
      const speeds = marks.flatMap(({ speed }) => (speed === null ? [] : [speed]));
      return {
        distanceMetres: distance,
        timeSeconds: times.length === three.length ? bandOf(times) : null,
        speedMetresPerSecond: speeds.length === three.length ? bandOf(speeds) : null,
      };
    }),
    ended: best.trajectory.ended,
    energyResidual: Math.max(...three.map(({ trajectory }) => trajectory.energy.relativeResidual)),
    curves:
      motion.curveSamples === undefined
        ? null
        : {
            best: curve(best.trajectory),
            leastResistance: curve(leastResistance.trajectory),
            mostResistance: curve(mostResistance.trajectory),
          },
  });
}

function runMotion(
  motion: MotionDocument,
  body: MotionBody,
  areas: DragTable,
  end: BandEnd,
  { play, stream }: PuckCase,
  sampling: MotionSampling,
): Result<Run> {
  switch (motion.kind) {
    case "slide": {
      const slid = slideToRest(body, areas.flat[end], play.friction[end], motion.startSpeedMetresPerSecond, sampling);
      return slid.ok
        ? success({
            trajectory: slid.value,
            figures: { distanceMetres: last(slid.value.distance), timeSeconds: last(slid.value.time) },
          })
        : slid;
    }
    case "flick": {
      const attitude =
        motion.attitude.kind === "edgeAlongPath"
          ? ({ kind: "edgeAlongPath", dragArea: areas.upright[end] } as const)
          : ({
              kind: "fixed",
              pitch: radians(motion.attitude.pitchDegrees),
              forceAreas: tiltedAreas(areas, end),
            } as const);
      const start = {
        speed: motion.startSpeedMetresPerSecond,
        elevation: radians(motion.elevationDegrees),
        height: motion.startHeightMetres,
        waterDepth: motion.waterDepthMetres,
      };
      const flicked = flickThroughWater(body, attitude, start, sampling);
      if (!flicked.ok) return flicked;
      const { trajectory, range, greatestHeight, flightTime } = flicked.value;
      const figures = {
        rangeMetres: range,
        greatestHeightMetres: greatestHeight,
        timeSeconds: flightTime,
        endSpeedMetresPerSecond: last(trajectory.speed),
      };
      return success({ trajectory, figures });
    }
    case "sink": {
      const area = motion.attitude === "faceOn" ? areas.faceOn[end] : areas.upright[end];
      const sunk = sinkToFloor(body, motion.attitude, area, motion.depthMetres, sampling);
      if (!sunk.ok) return sunk;
      const [terminal] = terminalSpeeds(body.weightInFluid, stream.fluid.density, area);
      const figures = {
        timeSeconds: last(sunk.value.time),
        endSpeedMetresPerSecond: last(sunk.value.speed),
        terminalSpeedMetresPerSecond: terminal ?? Number.NaN,
      };
      return success({ trajectory: sunk.value, figures });
    }
  }
}

function tiltedAreas(areas: DragTable, end: BandEnd): TiltedForceAreas {
  const band = (orientation: Orientation, speed: number) => ({
    low: areas[orientation].low(speed),
    best: areas[orientation].best(speed),
    high: areas[orientation].high(speed),
  });
  return (speed, tilt) => {
    const forces = tiltedForces(band("upright", speed), band("faceOn", speed), tilt);
    return { normal: forces.normalArea[end], tangential: forces.tangentialArea[end] };
  };
}

/** @param three with the least resistance, the best values, the most resistance */
function bandOf(three: readonly number[]): DragBand {
  return { low: Math.min(...three), best: three[1], high: Math.max(...three) };
}

function curve({ time, distance, height, speed }: Trajectory): MotionCurve {
  return {
    timeSeconds: [...time],
    distanceMetres: [...distance],
    heightMetres: [...height],
    speedMetresPerSecond: [...speed],
  };
}

function last(values: Readonly<Float64Array>): number {
  return values[values.length - 1];
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
