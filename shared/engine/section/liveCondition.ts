import type { FlowCondition } from "../condition";
import type { LiveRequest } from "./liveRequest";

/**
 * The dimensionless condition of a request.
 * @param width  reference width D, m
 */
export function liveCondition(request: LiveRequest, width: number): FlowCondition {
  return {
    reynolds: (request.speed * width) / request.kinematicViscosity,
    sandGrainRoughnessRatio: request.sandGrainRoughness / width,
    turbulenceIntensity: request.turbulenceIntensity,
    ...(request.trips.length > 0
      ? {
          trips: request.trips.map(({ side, arc, height }) => ({
            side,
            arcRatio: arc / width,
            heightRatio: height / width,
          })),
        }
      : {}),
  };
}
