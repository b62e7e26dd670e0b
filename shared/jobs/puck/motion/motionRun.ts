import { radiansOf } from "../../../numerics/degreesAndPercent";
import { type Result, success } from "../../../result";
import type { Orientation } from "../drag/orientationIndex";
import { tiltedForces } from "../drag/tiltedDrag";
import type { MotionDocument } from "../motionDocument";
import type { PuckCase } from "../puckCase";
import type { BandEnd } from "./bandedMotion";
import type { DragTable } from "./dragTable";
import { flickThroughWater, type TiltedForceAreas } from "./flick";
import type { MotionBody, MotionSampling } from "./motionBody";
import { sinkToFloor, terminalSpeeds } from "./sink";
import { slideToRest } from "./slideToRest";
import type { Trajectory } from "./trajectory";

/** One motion with the drag of one end of its band. */
export interface MotionRun {
  readonly trajectory: Trajectory;
  /** Figures with their unit in the key. */
  readonly figures: Readonly<Record<string, number>>;
}

/** Follows a motion of a case once. */
export function runMotion(
  motion: MotionDocument,
  body: MotionBody,
  areas: DragTable,
  end: BandEnd,
  { play, stream }: PuckCase,
  sampling: MotionSampling,
): Result<MotionRun> {
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
              pitch: radiansOf(motion.attitude.pitchDegrees),
              forceAreas: tiltedAreas(areas, end),
            } as const);
      const start = {
        speed: motion.startSpeedMetresPerSecond,
        elevation: radiansOf(motion.elevationDegrees),
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
    expected: areas[orientation].expected(speed),
    high: areas[orientation].high(speed),
  });
  return (speed, tilt) => {
    const forces = tiltedForces(band("upright", speed), band("faceOn", speed), tilt);
    return { normal: forces.normalArea[end], tangential: forces.tangentialArea[end] };
  };
}

function last(values: Readonly<Float64Array>): number {
  return values[values.length - 1];
}
