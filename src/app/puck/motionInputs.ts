import type { MotionDocument } from "../../../shared/jobs/puck/motionDocument";
import { degreesOf, radiansOf } from "../../../shared/numerics/degreesAndPercent";
import { freeName } from "../store/freeName";

interface CommonMotion {
  /** What results are told apart by: no two motions have the same. */
  readonly name: string;
  /** Distances at which time and speed are told, m, rising. */
  readonly markDistances: readonly number[];
  /** s; null for the engine's own. */
  readonly longestSeconds: number | null;
}

/** Along the floor to rest. */
export interface SlideInput extends CommonMotion {
  readonly kind: "slide";
  /** m/s. */
  readonly startSpeed: number;
}

/** Through the water. */
export interface FlickInput extends CommonMotion {
  readonly kind: "flick";
  /** m/s. */
  readonly startSpeed: number;
  /** Over the horizontal, rad. */
  readonly elevation: number;
  /** Over the floor at the start, m. */
  readonly startHeight: number;
  /** m. */
  readonly waterDepth: number;
  readonly attitude: "edgeAlongPath" | "fixed";
  /** Of the mid-plane while spin holds it, front up positive, rad. */
  readonly pitch: number;
}

/** From rest to the floor. */
export interface SinkInput extends CommonMotion {
  readonly kind: "sink";
  readonly attitude: "faceOn" | "edgeOn";
  /** m. */
  readonly depth: number;
}

/** A motion that a person asks for. SI units and radians. */
export type MotionInput = SlideInput | FlickInput | SinkInput;

export type MotionKind = MotionInput["kind"];

/** As many as a case may hold. */
export const mostMotions = 20;

/** Points of each motion over time. */
const curveSamples = 121;

const common = { markDistances: [1], longestSeconds: null };

/** A motion as each kind begins. */
export const firstMotions: Readonly<Record<MotionKind, MotionInput>> = {
  slide: { kind: "slide", name: "slide", ...common, startSpeed: 3 },
  flick: {
    kind: "flick",
    name: "flick",
    ...common,
    startSpeed: 4,
    elevation: radiansOf(25),
    startHeight: 0.02,
    waterDepth: 2,
    attitude: "edgeAlongPath",
    pitch: 0,
  },
  sink: { kind: "sink", name: "sink", ...common, markDistances: [], attitude: "faceOn", depth: 2 },
};

/** One more motion of a kind, like the last of that kind, under a free name. */
export function addedMotion(kind: MotionKind, motions: readonly MotionInput[]): MotionInput {
  const like = motions.findLast((motion) => motion.kind === kind) ?? firstMotions[kind];
  const names = motions.map(({ name }) => name);
  return { ...like, name: freeName(like.name, names) };
}

/** A motion as a case file writes it. */
export function motionDocument(motion: MotionInput): MotionDocument {
  const keys = {
    name: motion.name,
    curveSamples,
    ...(motion.markDistances.length === 0 ? {} : { markDistancesMetres: [...motion.markDistances] }),
    ...(motion.longestSeconds === null ? {} : { longestSeconds: motion.longestSeconds }),
  };
  switch (motion.kind) {
    case "slide":
      return { kind: "slide", ...keys, startSpeedMetresPerSecond: motion.startSpeed };
    case "sink":
      return { kind: "sink", ...keys, attitude: motion.attitude, depthMetres: motion.depth };
    case "flick":
      return {
        kind: "flick",
        ...keys,
        startSpeedMetresPerSecond: motion.startSpeed,
        elevationDegrees: degreesOf(motion.elevation),
        startHeightMetres: motion.startHeight,
        waterDepthMetres: motion.waterDepth,
        attitude:
          motion.attitude === "fixed"
            ? { kind: "fixed", pitchDegrees: degreesOf(motion.pitch) }
            : { kind: "edgeAlongPath" },
      };
  }
}

/** The motions of a case, each under a name of its own. */
export function motionInputs(documents: readonly MotionDocument[]): MotionInput[] {
  const motions: MotionInput[] = [];
  for (const document of documents) {
    const names = motions.map(({ name }) => name);
    motions.push(motionInput(document, freeName(document.name ?? document.kind, names)));
  }
  return motions;
}

function motionInput(document: MotionDocument, name: string): MotionInput {
  const keys = {
    name,
    markDistances: [...(document.markDistancesMetres ?? [])].sort((a, b) => a - b),
    longestSeconds: document.longestSeconds ?? null,
  };
  switch (document.kind) {
    case "slide":
      return { kind: "slide", ...keys, startSpeed: document.startSpeedMetresPerSecond };
    case "sink":
      return { kind: "sink", ...keys, attitude: document.attitude, depth: document.depthMetres };
    case "flick":
      return {
        kind: "flick",
        ...keys,
        startSpeed: document.startSpeedMetresPerSecond,
        elevation: radiansOf(document.elevationDegrees),
        startHeight: document.startHeightMetres,
        waterDepth: document.waterDepthMetres,
        attitude: document.attitude.kind,
        pitch: document.attitude.kind === "fixed" ? radiansOf(document.attitude.pitchDegrees) : 0,
      };
  }
}
