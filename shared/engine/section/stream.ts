import type { FlowCondition, Trip } from "../condition";

/** What a stream needs to know of its fluid. */
export interface StreamFluid {
  /** rho, kg/m^3; without it no force is given. */
  readonly density?: number;
  /** nu, m^2/s. */
  readonly kinematicViscosity: number;
}

/**
 * The stream and the wall that a section meets, in SI units or over the section's reference width D: by speed or by
 * Reynolds number, roughness in m or over D. A {@link FlowCondition} is a stream as well.
 */
export type Stream = StreamSpeed &
  WallRoughness & {
    /** Fraction. */
    readonly turbulenceIntensity: number;
    /** None when left out. */
    readonly trips?: readonly StreamTrip[];
  };

export type StreamSpeed =
  | {
      /** U, m/s, above 0. */
      readonly speed: number;
      readonly fluid: StreamFluid;
    }
  | {
      /** Re = U D / nu. */
      readonly reynolds: number;
      /** null or left out where only ratios are wanted. */
      readonly fluid?: StreamFluid | null;
    };

/** Equivalent sand-grain roughness. */
export type WallRoughness =
  | {
      /** ks, m. */
      readonly sandGrainRoughness: number;
    }
  | {
      /** ks / D. */
      readonly sandGrainRoughnessRatio: number;
    };

/** A trip, its arc length from the section's nose and its height in m or over D. */
export type StreamTrip = {
  /** The side it is on, at zero incidence. */
  readonly side: Trip["side"];
} & (
  | {
      /** Arc length from the nose, m. */
      readonly arc: number;
    }
  | {
      /** Arc length from the nose / D. */
      readonly arcRatio: number;
    }
) &
  (
    | {
        /** m */
        readonly height: number;
      }
    | {
        /** Height / D. */
        readonly heightRatio: number;
      }
  );

/**
 * The dimensionless condition of a stream.
 * @param referenceWidth D, m, above 0
 */
export function flowCondition(stream: Stream, referenceWidth: number): FlowCondition {
  const { turbulenceIntensity, trips = [] } = stream;
  return {
    reynolds: "speed" in stream ? (stream.speed * referenceWidth) / stream.fluid.kinematicViscosity : stream.reynolds,
    sandGrainRoughnessRatio:
      "sandGrainRoughness" in stream ? stream.sandGrainRoughness / referenceWidth : stream.sandGrainRoughnessRatio,
    turbulenceIntensity,
    ...(trips.length > 0 ? { trips: trips.map((trip) => tripOver(trip, referenceWidth)) } : {}),
  };
}

/** Speed of a stream, m/s; null where it has no fluid. */
export function speedOf(stream: Stream, referenceWidth: number): number | null {
  if ("speed" in stream) return stream.speed;
  const { reynolds, fluid } = stream;
  return fluid === null || fluid === undefined ? null : (reynolds * fluid.kinematicViscosity) / referenceWidth;
}

function tripOver(trip: StreamTrip, referenceWidth: number): Trip {
  return {
    side: trip.side,
    arcRatio: "arc" in trip ? trip.arc / referenceWidth : trip.arcRatio,
    heightRatio: "height" in trip ? trip.height / referenceWidth : trip.heightRatio,
  };
}
