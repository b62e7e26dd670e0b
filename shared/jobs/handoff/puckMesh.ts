import { problem, type Result, success } from "../../result";
import { checkOuterShape, edgeReach, type PuckSpec, piecePoints, turnedMeridian } from "../puck/public";
import { type FaceGrooves, grooveAngles, halfAngle } from "./groovePlan";
import { addPlaneFace, addQuad, addVertex, type MeshBuilder, type TriangleMesh } from "./meshBuilder";
import { addFaceGroove, addRimGroove, type Notch, notchedRing, type PuckRings } from "./meshGrooves";
import { ringAngles } from "./ringAngles";

/** Most triangles of one mesh. */
const mostTriangles = 2_000_000;

/** m; heights and radii nearer than this are one. */
const coincident = 1e-12;

/**
 * The outside of a puck, within `deviation` of its surface, with its recess and grooves. The core is not in it, and a
 * note says so.
 * @param deviation greatest distance between mesh and surface, m; 1e-5 is usual for a workshop
 */
export function puckMesh(spec: PuckSpec, deviation: number): Result<TriangleMesh> {
  const checked = checkOuterShape(spec);
  if (!checked.ok) return checked;
  const R = spec.diameterMetres / 2;
  if (!(deviation > 0 && deviation < R / 4)) {
    return problem("mesh", `deviation is ${deviation} m; it must be above 0 and below ${R / 4} m`, "deviation");
  }
  const around = Math.max(12, Math.ceil((2 * Math.PI) / Math.sqrt((8 * deviation) / R)));
  const edge = spec.edge.kind === "radius" && spec.edge.edgeRadiusMetres > 0 ? spec.edge.edgeRadiusMetres : R;
  const meridian = turnedMeridian(spec).flatMap((piece) => piecePoints(piece, Math.sqrt((8 * deviation) / edge)));
  const isRimOpen = spec.rim.kind === "axialGrooves" && edgeReach(spec).axial === 0;
  const h = spec.thicknessMetres / 2;
  // Grooves that run out at a sharp edge notch the whole flat face: nothing on it may part it but a recess.
  const belowEdge = ([r, z]: readonly [number, number]) =>
    !isRimOpen || spec.face.kind === "recess" || Math.abs(z) < h - coincident || r > R - coincident;
  const walk = meridian.filter((point) => point[0] > 0 && belowEdge(point));
  if (2 * around * (walk.length + 1) > mostTriangles) {
    return problem(
      "mesh",
      `deviation ${deviation} m needs more than ${mostTriangles} triangles; allow more`,
      "deviation",
    );
  }
  const builder: MeshBuilder = { positions: [], triangles: [] };
  const angles = ringAngles(around, fixedAngles(spec));
  const numbers = walk.map(([r, z]) =>
    Array.from(angles, (angle) => addVertex(builder, r * Math.cos(angle), r * Math.sin(angle), z)),
  );
  const rings: PuckRings = { angles, numbers, radii: walk.map(([r]) => r), heights: walk.map(([, z]) => z) };
  const rimNotches = addRim(builder, rings, spec);
  addFace(builder, rings, spec, "bottom", deviation, isRimOpen ? rimNotches.bottom : []);
  addFace(builder, rings, spec, "top", deviation, isRimOpen ? rimNotches.top : []);
  return success({
    name: spec.name,
    positions: Float64Array.from(builder.positions),
    triangles: Uint32Array.from(builder.triangles),
    notes: spec.core.kind === "none" ? [] : ["This is the outside; the core is not a body of its own in it."],
  });
}

/** Angles at which grooves cut the rim or the edge of a flat face, rad. */
function fixedAngles(spec: PuckSpec): number[] {
  const { face, rim, diameterMetres: d } = spec;
  const corners = (number: number, half: number) =>
    grooveAngles(number).flatMap((angle) => [angle - half, angle + half]);
  return [
    ...(face.kind === "radialGrooves" && reachesEdge(spec, face)
      ? corners(face.number, halfAngle(face.widthMetres, face.outerRadiusMetres))
      : []),
    ...(rim.kind === "axialGrooves" ? corners(rim.number, halfAngle(rim.widthMetres, d / 2)) : []),
  ];
}

function reachesEdge(spec: PuckSpec, face: FaceGrooves): boolean {
  const { radial, axial } = edgeReach(spec);
  // An edge that does not reach down the rim is part of the flat face.
  const flatRadius = spec.diameterMetres / 2 - (axial === 0 ? 0 : radial);
  return face.outerRadiusMetres > flatRadius - coincident;
}

/** All bands between neighbouring rings but those of a flat face, with the grooves of the rim. */
function addRim(builder: MeshBuilder, rings: PuckRings, spec: PuckSpec) {
  const { numbers, radii, heights, angles } = rings;
  const { rim } = spec;
  const h = spec.thicknessMetres / 2;
  const { axial } = edgeReach(spec);
  const notches: { readonly bottom: Notch[]; readonly top: Notch[] } = { bottom: [], top: [] };
  const cut = new Set<number>();
  let lower = -1;
  if (rim.kind === "axialGrooves") {
    lower = heights.findIndex((z, i) => radii[i] > spec.diameterMetres / 2 - coincident && z > axial - h - coincident);
    for (const angle of grooveAngles(rim.number)) {
      const groove = addRimGroove(builder, rings, lower, rim, angle, axial > 0);
      for (const cell of groove.cells) cut.add(cell);
      notches.bottom.push(groove.bottom);
      notches.top.push(groove.top);
    }
  }
  for (let i = 0; i + 1 < numbers.length; i++) {
    const isFlatFace = Math.abs(heights[i] - heights[i + 1]) <= coincident && Math.abs(heights[i]) > h - coincident;
    if (isFlatFace) continue;
    for (let k = 0; k < angles.length; k++) {
      if (i === lower && cut.has(k)) continue;
      const next = (k + 1) % angles.length;
      addQuad(builder, [numbers[i][k], numbers[i][next], numbers[i + 1][next], numbers[i + 1][k]]);
    }
  }
  return notches;
}

/** One face: its flat part with grooves or round a recess, and the floor of the recess. */
function addFace(
  builder: MeshBuilder,
  rings: PuckRings,
  spec: PuckSpec,
  side: "top" | "bottom",
  deviation: number,
  rimNotches: readonly Notch[],
): void {
  const { numbers, radii, heights } = rings;
  const { face } = spec;
  const isTop = side === "top";
  const level = isTop ? spec.thicknessMetres / 2 : -spec.thicknessMetres / 2;
  const onFace = numbers.map((_, i) => i).filter((i) => Math.abs(heights[i] - level) <= coincident);
  const isOwn = face.kind !== "flat" && (face.side === side || face.side === "both");
  // An edge that meets itself on the axis leaves no flat face; a recess has its floor as the innermost ring.
  const innermost = isTop ? numbers.length - 1 : 0;
  if (onFace.length === 0 || (face.kind === "recess" && isOwn)) {
    const tip = addVertex(builder, 0, 0, onFace.length === 0 ? level : heights[innermost]);
    const ring = numbers[innermost];
    ring.forEach((vertex, k) => {
      const next = ring[(k + 1) % ring.length];
      builder.triangles.push(...(isTop ? [tip, vertex, next] : [tip, next, vertex]));
    });
    if (onFace.length === 0) return;
  }
  const outermost = onFace.reduce((found, i) => (radii[i] > radii[found] ? i : found), onFace[0]);
  const holes: (readonly number[])[] = [];
  const notches = [...rimNotches];
  if (face.kind === "recess" && isOwn) {
    const wall = onFace.reduce((found, i) => (radii[i] < radii[found] ? i : found), onFace[0]);
    // As wide as the whole flat face, the recess leaves none of it.
    if (wall === outermost) return;
    holes.push(numbers[wall]);
  }
  if (face.kind === "radialGrooves" && isOwn) {
    for (const angle of grooveAngles(face.number)) {
      const edge = reachesEdge(spec, face) ? outermost : null;
      const groove = addFaceGroove(builder, rings, face, angle, level, edge, deviation);
      if (groove.notch === null) holes.push(groove.outline);
      else notches.push(groove.notch);
    }
  }
  addPlaneFace(builder, notchedRing(numbers[outermost], notches), holes, isTop);
}

/** Enclosed volume, m^3: sum of the signed tetrahedra from the origin (Gauss's theorem). */
export function meshVolume({ positions: p, triangles }: Pick<TriangleMesh, "positions" | "triangles">): number {
  let volume = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    volume +=
      (p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
        p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
        p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c])) /
      6;
  }
  return volume;
}
