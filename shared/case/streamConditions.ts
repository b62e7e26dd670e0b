import type { FlowCondition, Trip } from "../engine/condition";
import type { Case } from "./resolvedCase";

/** One condition of a sweep over the stream. */
export interface StreamCondition {
  readonly flow: FlowCondition;
  /** m/s; null without a fluid. */
  readonly speed: number | null;
}

/**
 * The conditions that a section meets at one roughness and one turbulence, Reynolds number rising.
 * @param width     reference width, m
 * @param roughness in m or as a ratio, as the case has it
 */
export function streamConditions(
  theCase: Case,
  width: number,
  roughness: number,
  turbulencePercent: number,
): StreamCondition[] {
  const { stream, fluid } = theCase;
  const trips = theCase.trips.map(
    (trip): Trip => ({
      side: trip.side,
      arcRatio: trip.arcRatio ?? (trip.arcMetres ?? 0) / width,
      heightRatio: trip.heightRatio ?? (trip.heightMetres ?? 0) / width,
    }),
  );
  return stream.values.map((value) => {
    const reynoldsPerSpeed = fluid === null ? null : width / fluid.kinematicViscosity;
    const bySpeed = stream.by === "speed" && reynoldsPerSpeed !== null;
    return {
      flow: {
        reynolds: bySpeed ? value * reynoldsPerSpeed : value,
        sandGrainRoughnessRatio: theCase.roughness.by === "ratio" ? roughness : roughness / width,
        turbulenceIntensity: turbulencePercent / 100,
        ...(trips.length > 0 ? { trips } : {}),
      },
      speed: bySpeed ? value : reynoldsPerSpeed === null ? null : value / reynoldsPerSpeed,
    };
  });
}
