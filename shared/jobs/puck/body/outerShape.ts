import { type LinePiece, type Meridian, type MeridianPiece, polyline } from "./meridian";
import type { FaceSide, PuckSpec } from "./puckSpec";

/** Insets of the edge: how far it reaches in along the face and down along the rim, m. */
export interface EdgeReach {
  readonly radial: number;
  readonly axial: number;
}

/** A dent that is cut all the way round a face: between two radii, m, this deep, m. */
interface FaceDent {
  readonly side: FaceSide;
  readonly inner: number;
  readonly outer: number;
  readonly depth: number;
}

/** Inset along face and rim of an edge. */
export function edgeReach(spec: PuckSpec): EdgeReach {
  switch (spec.edge.kind) {
    case "radius":
      return { radial: spec.edge.edgeRadiusMetres, axial: spec.edge.edgeRadiusMetres };
    case "bevel":
      return { radial: spec.edge.radialMetres, axial: spec.edge.axialMetres };
    case "profile":
      return { radial: spec.edge.points[0][0], axial: spec.edge.points[spec.edge.points.length - 1][1] };
  }
}

/** Half section without recess or grooves: what frontal areas are taken from. The spec must have passed checkOuterShape. */
export function silhouetteMeridian(spec: PuckSpec): Meridian {
  return outline(spec, null, []);
}

/** Half section of the displaced volume before grooves are cut: the silhouette with its recess. */
export function outerMeridian(spec: PuckSpec): Meridian {
  return outline(spec, recessDent(spec), []);
}

/** Half section of all that is turned: the silhouette with its recess and its rings round the rim. */
export function turnedMeridian(spec: PuckSpec): Meridian {
  return outline(spec, recessDent(spec), ringNotches(spec));
}

/** Half section through the grooves of a pattern, face and rim at once, as though it went through one of each. */
export function grooveMeridian(spec: PuckSpec): Meridian {
  const { rim } = spec;
  if (rim.kind !== "axialGrooves") return outline(spec, faceDent(spec), ringNotches(spec));
  const half = spec.thicknessMetres / 2 - edgeReach(spec).axial;
  return outline(spec, faceDent(spec), [{ floor: spec.diameterMetres / 2 - rim.depthMetres, from: -half, to: half }]);
}

/** Half section with every groove cut all the way round: the least material that is left anywhere. */
export function carvedMeridian(spec: PuckSpec): Meridian {
  const { rim } = spec;
  if (rim.kind !== "axialGrooves" && rim.kind !== "ringGrooves") return outline(spec, faceDent(spec), []);
  const half = spec.thicknessMetres / 2 - edgeReach(spec).axial;
  return outline(spec, faceDent(spec), [{ floor: spec.diameterMetres / 2 - rim.depthMetres, from: -half, to: half }]);
}

/** A notch in the straight rim: radius of its floor and its lower and upper end, m. */
interface RimNotch {
  readonly floor: number;
  readonly from: number;
  readonly to: number;
}

function recessDent({ face }: PuckSpec): FaceDent | null {
  return face.kind === "recess"
    ? { side: face.side, inner: 0, outer: face.diameterMetres / 2, depth: face.depthMetres }
    : null;
}

function faceDent(spec: PuckSpec): FaceDent | null {
  const { face } = spec;
  if (face.kind !== "radialGrooves") return recessDent(spec);
  const { side, innerRadiusMetres: inner, outerRadiusMetres: outer, depthMetres: depth } = face;
  return { side, inner, outer, depth };
}

function ringNotches(spec: PuckSpec): RimNotch[] {
  const { rim } = spec;
  if (rim.kind !== "ringGrooves") return [];
  const half = spec.thicknessMetres / 2 - edgeReach(spec).axial;
  const pitch = (2 * half) / rim.number;
  return Array.from({ length: rim.number }, (_, i) => {
    const middle = (i + 0.5) * pitch - half;
    const floor = spec.diameterMetres / 2 - rim.depthMetres;
    return { floor, from: middle - rim.widthMetres / 2, to: middle + rim.widthMetres / 2 };
  });
}

/** Arc or lines of the lower edge, from the bottom face to the rim, z at or below 0. */
function bottomEdge(spec: PuckSpec): MeridianPiece[] {
  const R = spec.diameterMetres / 2;
  const h = spec.thicknessMetres / 2;
  const { edge } = spec;
  if (edge.kind === "radius") {
    const r = edge.edgeRadiusMetres;
    if (r === 0) return [];
    return [{ kind: "arc", centreR: R - r, centreZ: r - h, radius: r, phi1: -Math.PI / 2, phi2: 0 }];
  }
  const points = edge.kind === "bevel" ? bevelPoints(edge.radialMetres, edge.axialMetres) : edge.points;
  return polyline(points.map(([radial, axial]) => [R - radial, axial - h] as const));
}

function bevelPoints(radial: number, axial: number): readonly (readonly [number, number])[] {
  return [
    [radial, 0],
    [0, axial],
  ];
}

function mirrored(piece: MeridianPiece): MeridianPiece {
  if (piece.kind === "line") return { kind: "line", r1: piece.r2, z1: -piece.z2, r2: piece.r1, z2: -piece.z1 };
  return { ...piece, centreZ: -piece.centreZ, phi1: -piece.phi2, phi2: -piece.phi1 };
}

function outline(spec: PuckSpec, dent: FaceDent | null, notches: readonly RimNotch[]): Meridian {
  const R = spec.diameterMetres / 2;
  const h = spec.thicknessMetres / 2;
  const { radial, axial } = edgeReach(spec);
  const face = (side: "top" | "bottom"): [number, number][] => {
    if (dent === null || (dent.side !== side && dent.side !== "both")) return [[0, -h]];
    const floor = dent.depth - h;
    const middle: [number, number][] =
      dent.inner > 0
        ? [
            [0, -h],
            [dent.inner, -h],
            [dent.inner, floor],
          ]
        : [[0, floor]];
    return [...middle, [dent.outer, floor], [dent.outer, -h]];
  };
  const bottomFace = polyline([...face("bottom"), [R - radial, -h]]);
  const topFace = polyline([...face("top"), [R - radial, -h]]);
  const edge = bottomEdge(spec);
  const rim = polyline([
    [R, axial - h],
    ...notches.flatMap(({ floor, from, to }): [number, number][] => [
      [R, from],
      [floor, from],
      [floor, to],
      [R, to],
    ]),
    [R, h - axial],
  ]);
  const upperEdge = [...edge].reverse().map(mirrored);
  const upperFace = [...topFace].reverse().map((piece) => mirrored(piece) as LinePiece);
  return [...bottomFace, ...edge, ...rim, ...upperEdge, ...upperFace];
}
