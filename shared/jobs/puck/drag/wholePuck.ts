import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { WHOLE_NUMBERS } from "../../../engine/constants/wholeNumbers";
import { smallestRadiusRatio } from "../../../engine/geometry/dimensionChecks";
import { CONDITION_LIMITS } from "../../../engine/solve/checkCondition";
import type { ConditionedBody } from "../../../engine/whole/conditionedFlow";
import type { WholeStream } from "../../../engine/whole/conditionFlow";
import { arcCurve, type MeridianCurve, straightCurve } from "../../../engine/whole/meridianCurve";
import { conditionWhole, type WholeFlows, wholeFlows } from "../../../engine/whole/wholeDrag";
import type { WholeResolution } from "../../../engine/whole/wholeFlow";
import { type Result, success } from "../../../result";
import type { MeridianPiece } from "../body/meridian";
import { silhouetteMeridian } from "../body/outerShape";
import type { PuckSpec } from "../body/puckSpec";
import type { CasePuck } from "../puckCase";
import { faceRoughness, rimRoughness } from "./puckSurface";

/** Where a puck meets the water: in the open, or over a floor parallel to its faces at this gap, m, 0 when it lies on it. */
export type WholePlace = number | null;

/** Gap / thickness below which a puck is taken as lying on the floor. */
const CONTACT = WHOLE_NUMBERS.contactGap.value;
/** Corners are solved rounded: of the smaller of thickness and diameter. */
const CORNER = SHORT_BODY_NUMBERS.bevelCorner.value;

/**
 * The flow round a whole puck, without recess and grooves. On the floor it is half of the body that it makes with its
 * mirror image, the hollow between the two lower edges filled; above it the image stands across the gap.
 */
export function wholePuck(spec: PuckSpec, place: WholePlace, resolution?: WholeResolution): Result<WholeFlows> {
  const { thicknessMetres: t } = spec;
  if (place !== null && place < CONTACT * t) {
    return wholeFlows(puckCurves({ ...spec, thicknessMetres: 2 * t }), null, resolution);
  }
  return wholeFlows(puckCurves(spec), place, resolution);
}

/** The meridian of a puck's outside, corners rounded; m. */
export function puckCurves(spec: PuckSpec): MeridianCurve[] {
  const { edge, diameterMetres: d, thicknessMetres: t } = spec;
  const least = Math.min(d, t);
  const solvable =
    edge.kind === "radius"
      ? { ...spec, edge: { ...edge, edgeRadiusMetres: Math.max(edge.edgeRadiusMetres, smallestRadiusRatio * least) } }
      : spec;
  return rounded(silhouetteMeridian(solvable), CORNER * least);
}

/** Lines that meet at a corner are joined by an arc of this radius, less where they are short. */
function rounded(pieces: readonly MeridianPiece[], radius: number): MeridianCurve[] {
  const cuts = pieces.map(() => ({ start: 0, end: 0 }));
  const arcs: (MeridianCurve | null)[] = pieces.map((piece, i) => {
    const next = pieces[i + 1];
    if (next === undefined || piece.kind !== "line" || next.kind !== "line") return null;
    const [a, b] = [directionOf(piece), directionOf(next)];
    const turn = Math.atan2(a.r * b.z - a.z * b.r, a.r * b.r + a.z * b.z);
    if (Math.abs(turn) < STRAIGHT) return null;
    const room = Math.min(a.length, b.length) / 3;
    const own = Math.min(radius, room / Math.tan(Math.abs(turn) / 2));
    const cut = own * Math.tan(Math.abs(turn) / 2);
    cuts[i].end = cut;
    cuts[i + 1].start = cut;
    // The arc begins where the first line is cut; its centre lies to the left of the walk on a convex corner.
    const side = Math.sign(turn);
    const centreR = piece.r2 - cut * a.r - side * own * a.z;
    const centreZ = piece.z2 - cut * a.z + side * own * a.r;
    const from = Math.atan2(-side * a.r, side * a.z);
    return arcCurve(centreR, centreZ, own, from, from + turn);
  });
  return pieces.flatMap((piece, i): MeridianCurve[] => {
    const arc = arcs[i];
    const after = arc === null ? [] : [arc];
    if (piece.kind === "arc") {
      return [arcCurve(piece.centreR, piece.centreZ, piece.radius, piece.phi1, piece.phi2), ...after];
    }
    const { r, z } = directionOf(piece);
    const { start, end } = cuts[i];
    return [
      straightCurve(piece.r1 + start * r, piece.z1 + start * z, piece.r2 - end * r, piece.z2 - end * z),
      ...after,
    ];
  });
}

/** A turn below this, rad, is none. */
const STRAIGHT = 1e-6;

function directionOf({ r1, z1, r2, z2 }: Extract<MeridianPiece, { kind: "line" }>) {
  const length = Math.hypot(r2 - r1, z2 - z1);
  return { r: (r2 - r1) / length, z: (z2 - z1) / length, length };
}

/** The shape of a puck as its flow sees it: pucks that are alike in this have the same flow. */
export function shapeKey({ diameterMetres, thicknessMetres, edge }: PuckSpec, place: WholePlace): string {
  return JSON.stringify([diameterMetres, thicknessMetres, edge, place]);
}

/** Flows of the shapes solved last; those of one sweep come back to the same few. */
const remembered = new Map<string, WholeFlows>();
const MOST_REMEMBERED = 24;

/** {@link wholePuck}, from memory where the shape was solved before. */
export function rememberedWholePuck(spec: PuckSpec, place: WholePlace): Result<WholeFlows> {
  const key = shapeKey(spec, place);
  const known = remembered.get(key);
  if (known !== undefined) return success(known);
  const solved = wholePuck(spec, place);
  if (!solved.ok) return solved;
  if (remembered.size >= MOST_REMEMBERED) {
    const [oldest] = remembered.keys();
    remembered.delete(oldest);
  }
  remembered.set(key, solved.value);
  return solved;
}

/** Roughest wall over the diameter that the layers take. */
const ROUGHEST = CONDITION_LIMITS.sandGrainRoughnessRatio[1];

/** The stream that a puck meets with its walls plain, and with them as rough as their grooves are deep where it has any. */
export function wholeStreams(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  reynolds: number,
  turbulenceIntensity: number,
): WholeStream[] {
  const { diameterMetres: d, face } = puck.spec;
  const [rim, faces] = [rimRoughness(puck), faceRoughness(puck)];
  const facePattern =
    face.kind === "radialGrooves"
      ? { outerRadiusRatio: face.outerRadiusMetres / d, heightRatio: face.depthMetres / d }
      : null;
  return Array.from({ length: Math.max(rim.length, faces.length) }, (_, i) => ({
    reynolds,
    turbulenceIntensity,
    rimRoughnessRatio: Math.min(ROUGHEST, rim[Math.min(i, rim.length - 1)] / d),
    faceRoughnessRatio: Math.min(ROUGHEST, faces[Math.min(i, faces.length - 1)] / d),
    facePattern,
  }));
}

/** A puck at one tilt, rad, in one stream: what its states and its draws are taken from. */
export function conditionPuck(
  flows: WholeFlows,
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  tilt: number,
  speed: number,
  kinematicViscosity: number,
  turbulenceIntensity: number,
): ConditionedBody {
  const reynolds = (speed * puck.spec.diameterMetres) / kinematicViscosity;
  return conditionWhole(flows, tilt, wholeStreams(puck, reynolds, turbulenceIntensity));
}
