import type { PuckSpec } from "../puck/public";

/** A face that wears: its lands until a pattern in it is gone, then all of it. */
export interface WearingFace {
  /** Volume that one face loses in an hour, m^3. */
  readonly volumePerHour: number;
  /** Area in contact while the pattern is there, and without it, m^2. */
  readonly landArea: number;
  readonly fullArea: number;
  /** Of the pattern, m; 0 without one. */
  readonly patternDepth: number;
}

/** Off the land of a face, m. */
export function faceDepthAfter(face: WearingFace, hours: number): number {
  const { volumePerHour, landArea, fullArea, patternDepth } = face;
  const onLands = (volumePerHour * hours) / landArea;
  if (onLands <= patternDepth) return onLands;
  return patternDepth + ((onLands - patternDepth) * landArea) / fullArea;
}

/** Hours until a depth is worn off the land of a face; 0 for a depth of 0 or less. */
export function hoursToFaceDepth(
  { volumePerHour, landArea, fullArea, patternDepth }: WearingFace,
  depth: number,
): number {
  const lands = Math.min(Math.max(0, depth), patternDepth);
  const rest = Math.max(0, depth - patternDepth);
  return (lands * landArea + rest * fullArea) / volumePerHour;
}

/** Depth of the pattern or recess of a face that slides, m; of unlike faces the patterned one wears faster and counts. */
export function patternDepth({ face }: Pick<PuckSpec, "face">): number {
  return face.kind === "flat" ? 0 : face.depthMetres;
}
