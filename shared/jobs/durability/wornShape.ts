import { problem, type Result, success } from "../../result";
import type { PuckSpec } from "../puck/public";

/** What wear has taken, m and m^3. */
export interface WornOff {
  /** Off each face and off the rim, radially. */
  readonly face: number;
  readonly rim: number;
  /** Off both edges together. */
  readonly edgeVolume: number;
}

/** A square corner with a round of radius 1 in it lacks this area. */
const roundCorner = 1 - Math.PI / 4;

/** Radius of a corner that is left as sharp as wear can make it, m: below it nothing changes. */
const sharpest = 1e-5;

/**
 * The puck as wear leaves it, without its core: faces and rim move in and cut the edges sharper, sliding on an edge
 * takes it off. An edge is given by the radius (a bevel by its size) that lacks the same area in the corner.
 * @returns a problem for a free profile, and when nothing sound is left
 */
export function wornShape(spec: PuckSpec, { face, rim, edgeVolume }: WornOff): Result<PuckSpec> {
  const diameterMetres = spec.diameterMetres - 2 * rim;
  const thicknessMetres = spec.thicknessMetres - 2 * face;
  const round = 2 * Math.PI * (spec.diameterMetres / 2);
  const lost = edgeVolume / (2 * round);
  const edge = wornEdge(spec.edge, face, rim, lost);
  if (edge === null) return problem("wear", "how a free profile wears is not followed; give the edge by its radius");
  const reach = edge.kind === "radius" ? edge.edgeRadiusMetres : 0;
  if (!(thicknessMetres > spec.thicknessMetres / 2 && diameterMetres > spec.diameterMetres / 2)) {
    return problem("wear", "more than half of it would be worn off before these hours of play");
  }
  const most = Math.min(thicknessMetres, diameterMetres) / 2;
  return success({
    ...spec,
    core: { kind: "none" },
    diameterMetres,
    thicknessMetres,
    edge: edge.kind === "radius" ? { kind: "radius", edgeRadiusMetres: Math.min(reach, most) } : edge,
    face: wornFace(spec.face, face, diameterMetres),
    rim: wornRim(spec.rim, rim),
  });
}

type WornEdge = Exclude<PuckSpec["edge"], { kind: "profile" }>;

function wornEdge(edge: PuckSpec["edge"], face: number, rim: number, lost: number): WornEdge | null {
  switch (edge.kind) {
    case "profile":
      return null;
    case "bevel": {
      const { radialMetres: radial, axialMetres: axial } = edge;
      const left = Math.max(0, 1 - rim / radial - face / axial);
      const share = Math.sqrt(left * left + (2 * lost) / (radial * axial));
      return {
        kind: "bevel",
        radialMetres: Math.max(sharpest, radial * share),
        axialMetres: Math.max(sharpest, axial * share),
      };
    }
    case "radius": {
      const lacking = lackingArea(edge.edgeRadiusMetres, face, rim) + lost;
      return { kind: "radius", edgeRadiusMetres: Math.max(sharpest, Math.sqrt(lacking / roundCorner)) };
    }
  }
}

/**
 * Area that the corner of a rounded edge lacks once face and rim have moved in, in closed form: between the new corner
 * and the arc of radius r about (r, r), corner at (0, 0).
 */
export function lackingArea(r: number, face: number, rim: number): number {
  if (face >= r || rim >= r) return 0;
  // The arc meets the new face at x = r - sqrt(r^2 - (r - face)^2), counted from the old rim.
  const end = r - Math.sqrt(r * r - (r - face) ** 2);
  if (end <= rim) return 0;
  const circle = (x: number) => {
    const u = x - r;
    return (u * Math.sqrt(r * r - u * u) + r * r * Math.asin(u / r)) / 2;
  };
  return (r - face) * (end - rim) - (circle(end) - circle(rim));
}

function wornFace(face: PuckSpec["face"], depth: number, diameter: number): PuckSpec["face"] {
  if (face.kind === "flat" || face.depthMetres <= depth) return { kind: "flat" };
  const left = { ...face, depthMetres: face.depthMetres - depth };
  return left.kind === "recess" && left.diameterMetres >= diameter ? { kind: "flat" } : left;
}

function wornRim(rim: PuckSpec["rim"], depth: number): PuckSpec["rim"] {
  if (rim.kind === "plain" || rim.kind === "rough") return rim;
  return rim.depthMetres <= depth ? { kind: "plain" } : { ...rim, depthMetres: rim.depthMetres - depth };
}
