import { type Meridian, type MeridianPiece, piecePoints } from "./meridian";

/** rad; nearest points on arcs this far apart are found to a few micrometres on a puck. */
const arcStep = 0.1;

/**
 * Least thickness of material between the surface of a core and that of the body around it, m; null when the core is
 * not wholly inside. Distances are measured in the half section, exact from each vertex or arc point to each piece.
 * @param outer half section of the body, on the axis at both ends
 * @param core half section of the core, not empty
 */
export function coverThickness(outer: Meridian, core: Meridian): number | null {
  const outerPoints = meridianPoints(outer);
  const corePoints = meridianPoints(core);
  if (!corePoints.every(([r, z]) => isInside(outerPoints, r, z))) return null;
  const surface = outer.filter((piece) => !isOnAxis(piece));
  const coreSurface = core.filter((piece) => !isOnAxis(piece));
  const fromCore = corePoints.map(([r, z]) => least(surface, r, z));
  const fromOuter = outerPoints.map(([r, z]) => least(coreSurface, r, z));
  return Math.min(...fromCore, ...fromOuter);
}

function least(pieces: Meridian, r: number, z: number): number {
  return pieces.reduce((nearest, piece) => Math.min(nearest, distance(piece, r, z)), Number.POSITIVE_INFINITY);
}

function isOnAxis(piece: MeridianPiece): boolean {
  return piece.kind === "line" && piece.r1 === 0 && piece.r2 === 0;
}

function meridianPoints(meridian: Meridian): [number, number][] {
  const points = meridian.flatMap((piece) => piecePoints(piece, arcStep));
  const last = meridian[meridian.length - 1];
  if (last.kind === "line") points.push([last.r2, last.z2]);
  return points;
}

function distance(piece: MeridianPiece, r: number, z: number): number {
  if (piece.kind === "line") {
    const a = piece.r2 - piece.r1;
    const b = piece.z2 - piece.z1;
    const share = Math.min(1, Math.max(0, ((r - piece.r1) * a + (z - piece.z1) * b) / (a * a + b * b)));
    return Math.hypot(r - piece.r1 - share * a, z - piece.z1 - share * b);
  }
  const dr = r - piece.centreR;
  const dz = z - piece.centreZ;
  const middle = (piece.phi1 + piece.phi2) / 2;
  const half = Math.abs(piece.phi2 - piece.phi1) / 2;
  const turn = Math.atan2(dz, dr) - middle;
  const offset = Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
  if (offset <= half) return Math.abs(Math.hypot(dr, dz) - piece.radius);
  const toEnd = (phi: number) => Math.hypot(dr - piece.radius * Math.cos(phi), dz - piece.radius * Math.sin(phi));
  return Math.min(toEnd(piece.phi1), toEnd(piece.phi2));
}

/** Crossing count of a ray in direction +r; the walk is closed along the axis, which the ray never meets. */
function isInside(walk: readonly (readonly [number, number])[], r: number, z: number): boolean {
  let inside = false;
  for (let i = 1; i < walk.length; i++) {
    const [r1, z1] = walk[i - 1];
    const [r2, z2] = walk[i];
    if (z1 > z !== z2 > z && r < r1 + ((z - z1) / (z2 - z1)) * (r2 - r1)) inside = !inside;
  }
  return inside;
}
