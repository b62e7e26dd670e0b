import { problem, type Result, success } from "../result";
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
      return { radial: spec.edge.radiusMetres, axial: spec.edge.radiusMetres };
    case "bevel":
      return { radial: spec.edge.radialMetres, axial: spec.edge.axialMetres };
    case "profile":
      return { radial: spec.edge.points[0][0], axial: spec.edge.points[spec.edge.points.length - 1][1] };
  }
}

/** Half section without recess or grooves: what frontal areas are taken from. The spec must have passed checkPuck. */
export function silhouetteMeridian(spec: PuckSpec): Meridian {
  return outline(spec, null, spec.diameterMetres / 2);
}

/** Half section of the displaced volume before grooves are cut: the silhouette with its recess. */
export function outerMeridian(spec: PuckSpec): Meridian {
  const { face } = spec;
  if (face.kind !== "recess") return silhouetteMeridian(spec);
  const dent = { side: face.side, inner: 0, outer: face.diameterMetres / 2, depth: face.depthMetres };
  return outline(spec, dent, spec.diameterMetres / 2);
}

/** Half section with every groove cut all the way round: the least material that is left anywhere. */
export function carvedMeridian(spec: PuckSpec): Meridian {
  const { face, rim } = spec;
  const isGroovedRim = rim.kind === "axialGrooves" || rim.kind === "ringGrooves";
  const rimRadius = spec.diameterMetres / 2 - (isGroovedRim ? rim.depthMetres : 0);
  if (face.kind === "radialGrooves") {
    const dent = {
      side: face.side,
      inner: face.innerRadiusMetres,
      outer: face.outerRadiusMetres,
      depth: face.depthMetres,
    };
    return outline(spec, dent, rimRadius);
  }
  const dent =
    face.kind === "recess"
      ? { side: face.side, inner: 0, outer: face.diameterMetres / 2, depth: face.depthMetres }
      : null;
  return outline(spec, dent, rimRadius);
}

/** The four straight corners' arcs or lines, from the bottom face to the rim, z at or below 0. */
function bottomEdge(spec: PuckSpec): MeridianPiece[] {
  const R = spec.diameterMetres / 2;
  const h = spec.thicknessMetres / 2;
  const { edge } = spec;
  if (edge.kind === "radius") {
    const r = edge.radiusMetres;
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

function outline(spec: PuckSpec, dent: FaceDent | null, rimRadius: number): Meridian {
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
    [rimRadius, axial - h],
    [rimRadius, h - axial],
    [R, h - axial],
  ]);
  const upperEdge = [...edge].reverse().map(mirrored);
  const upperFace = [...topFace].reverse().map((piece) => mirrored(piece) as LinePiece);
  return [...bottomFace, ...edge, ...rim, ...upperEdge, ...upperFace];
}

/** Checks the outside of a puck: sizes, edge, face and rim. Problems name the quantity, its value and the limit in mm. */
export function checkOuterShape(spec: PuckSpec): Result<null> {
  const { diameterMetres: d, thicknessMetres: t, edge } = spec;
  if (!(d > 0 && d <= 10)) return refuse(`diameter ${mm(d)} must be above 0 and at most 10 m`, "diameterMetres");
  if (!(t > 0 && t <= 10)) return refuse(`thickness ${mm(t)} must be above 0 and at most 10 m`, "thicknessMetres");
  if (edge.kind === "profile") {
    const fault = profileFault(edge.points);
    if (fault !== null) return refuse(fault, "edge.points");
  }
  const { radial, axial } = edgeReach(spec);
  const named = edge.kind === "radius" ? "edge radius" : "edge inset";
  if (!(radial >= 0 && axial >= 0)) return refuse(`${named} must be 0 or more`, "edge");
  if (axial > t / 2) return refuse(`${named} ${mm(axial)} exceeds half the thickness, ${mm(t / 2)}`, "edge");
  if (radial > d / 2) return refuse(`${named} ${mm(radial)} exceeds half the diameter, ${mm(d / 2)}`, "edge");
  const faceFault = faceProblem(spec, d / 2 - radial);
  if (faceFault !== null) return refuse(faceFault, "face");
  const rimFault = rimProblem(spec, t - 2 * axial);
  return rimFault === null ? success(null) : refuse(rimFault, "rim");
}

function profileFault(points: readonly (readonly [number, number])[]): string | null {
  if (points.length < 2) return `edge profile has ${points.length} points; it needs 2 or more`;
  if (points[0][1] !== 0) return "edge profile must start on the face (inset from the face 0)";
  if (points[points.length - 1][0] !== 0) return "edge profile must end on the rim (inset from the rim 0)";
  for (let i = 1; i < points.length; i++) {
    const inward = points[i - 1][0] - points[i][0];
    const down = points[i][1] - points[i - 1][1];
    if (!(inward >= 0 && down >= 0 && inward + down > 0)) {
      return `edge profile turns back at point ${i + 1}; each point must lie further out or further down than the last`;
    }
  }
  return null;
}

function faceProblem({ face, thicknessMetres: t }: PuckSpec, flatRadius: number): string | null {
  if (face.kind === "flat") return null;
  const deepest = face.side === "both" ? t / 2 : t;
  if (!(face.depthMetres > 0 && face.depthMetres < deepest)) {
    return `face depth ${mm(face.depthMetres)} must be above 0 and below ${mm(deepest)}`;
  }
  if (face.kind === "recess") {
    if (face.diameterMetres > 0 && face.diameterMetres <= 2 * flatRadius) return null;
    return `recess diameter ${mm(face.diameterMetres)} must be above 0 and within the flat face, ${mm(2 * flatRadius)}`;
  }
  const { number, widthMetres: w, innerRadiusMetres: a, outerRadiusMetres: b } = face;
  if (!(Number.isInteger(number) && number >= 3)) return `number of grooves is ${number}; it must be 3 or more`;
  if (!(a < b && b <= flatRadius)) {
    return `grooves from radius ${mm(a)} to ${mm(b)} must lie within the flat face, radius ${mm(flatRadius)}`;
  }
  const widest = 2 * a * Math.sin(Math.PI / number);
  return w > 0 && w <= widest
    ? null
    : `groove width ${mm(w)} must be above 0 and at most ${mm(widest)}, or ${number} grooves meet at radius ${mm(a)}`;
}

function rimProblem({ rim, diameterMetres: d }: PuckSpec, straight: number): string | null {
  if (rim.kind === "plain") return null;
  if (rim.kind === "rough") {
    const ks = rim.sandGrainRoughnessMetres;
    return ks >= 0 && ks < d / 20 ? null : `rim roughness ${mm(ks)} must be 0 or more and below ${mm(d / 20)}`;
  }
  const { number, widthMetres: w, depthMetres: depth } = rim;
  if (!(depth > 0 && depth < d / 4)) return `rim depth ${mm(depth)} must be above 0 and below ${mm(d / 4)}`;
  if (!(straight > 0)) return "a grooved rim needs a straight part between the edges; there is none";
  if (rim.kind === "ringGrooves") {
    if (!(Number.isInteger(number) && number >= 1)) return `number of rings is ${number}; it must be 1 or more`;
    return w > 0 && number * w <= straight
      ? null
      : `${number} rings of width ${mm(w)} must fit on the straight rim, ${mm(straight)}`;
  }
  if (!(Number.isInteger(number) && number >= 3)) return `number of grooves is ${number}; it must be 3 or more`;
  const floorRadius = d / 2 - depth;
  const widest = 2 * floorRadius * Math.tan(Math.PI / number);
  return w > 0 && w <= widest ? null : `groove width ${mm(w)} must be above 0 and at most ${mm(widest)}`;
}

function mm(metres: number): string {
  return `${Number((metres * 1000).toPrecision(6))} mm`;
}

function refuse(message: string, field: string) {
  return problem("puck-shape", message, field);
}
