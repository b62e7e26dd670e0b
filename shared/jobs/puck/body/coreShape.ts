import { problem, type Result, success } from "../../../result";
import { type Meridian, type MeridianPiece, polyline } from "./meridian";
import { edgeReach } from "./outerShape";
import type { PuckCore, PuckSpec } from "./puckSpec";

/** Half section of the core; empty when there is none. Whether it fits is checked by coverThickness. */
export function coreMeridian(spec: PuckSpec): Result<Meridian> {
  const { core } = spec;
  switch (core.kind) {
    case "none":
      return success([]);
    case "disc":
      return disc(core);
    case "ring":
      return ring(core);
    case "underCoat":
      return underCoat(spec, core.coatThicknessMetres);
  }
}

function disc(core: Extract<PuckCore, { kind: "disc" }>): Result<Meridian> {
  const R = core.diameterMetres / 2;
  const h = core.thicknessMetres / 2;
  const r = core.edgeRadiusMetres ?? 0;
  if (!(R > 0)) return refuse("core diameter must be above 0", "core.diameterMetres");
  if (!(h > 0)) return refuse("core thickness must be above 0", "core.thicknessMetres");
  if (!(r >= 0 && r <= Math.min(R, h))) {
    return refuse(
      `core edge radius ${mm(r)} must be 0 or more and at most ${mm(Math.min(R, h))}`,
      "core.edgeRadiusMetres",
    );
  }
  return success(roundedDisc(R, (core.heightMetres ?? 0) - h, (core.heightMetres ?? 0) + h, r));
}

function ring(core: Extract<PuckCore, { kind: "ring" }>): Result<Meridian> {
  const R = core.outerDiameterMetres / 2;
  const a = core.innerDiameterMetres / 2;
  const h = core.thicknessMetres / 2;
  if (!(h > 0)) return refuse("core thickness must be above 0", "core.thicknessMetres");
  if (!(a > 0 && a < R)) {
    return refuse(
      `core ring from ${mm(2 * a)} to ${mm(2 * R)} across must have its inner diameter above 0 and below the outer`,
      "core.innerDiameterMetres",
    );
  }
  const z = core.heightMetres ?? 0;
  return success(
    polyline([
      [a, z - h],
      [R, z - h],
      [R, z + h],
      [a, z + h],
      [a, z - h],
    ]),
  );
}

function roundedDisc(R: number, bottom: number, top: number, r: number): Meridian {
  const quarter = Math.PI / 2;
  const low: MeridianPiece[] =
    r > 0 ? [{ kind: "arc", centreR: R - r, centreZ: bottom + r, radius: r, phi1: -quarter, phi2: 0 }] : [];
  const high: MeridianPiece[] =
    r > 0 ? [{ kind: "arc", centreR: R - r, centreZ: top - r, radius: r, phi1: 0, phi2: quarter }] : [];
  return [
    ...polyline([
      [0, bottom],
      [R - r, bottom],
    ]),
    ...low,
    ...polyline([
      [R, bottom + r],
      [R, top - r],
    ]),
    ...high,
    ...polyline([
      [R - r, top],
      [0, top],
    ]),
  ];
}

/** The silhouette moved inwards by c; below a recess the whole core face is c deeper than the recess floor. */
function underCoat(spec: PuckSpec, c: number): Result<Meridian> {
  const { edge, face } = spec;
  if (edge.kind === "profile") {
    return refuse(
      "a core under a coat of given thickness needs an edge with a radius or a bevel; give a disc or a ring",
    );
  }
  const recess = (side: "top" | "bottom") =>
    face.kind === "recess" && (face.side === side || face.side === "both") ? face.depthMetres : 0;
  const R = spec.diameterMetres / 2 - c;
  const top = spec.thicknessMetres / 2 - c - recess("top");
  const bottom = c + recess("bottom") - spec.thicknessMetres / 2;
  if (!(c > 0 && R > 0 && top > bottom)) {
    return refuse(`coat thickness ${mm(c)} must be above 0 and leave room for a core`, "core.coatThicknessMetres");
  }
  const isRecessed = recess("top") > 0 || recess("bottom") > 0;
  if (edge.kind === "radius") {
    const r = Math.max(edge.edgeRadiusMetres - c, 0);
    if (2 * r > top - bottom || r > R) return refuse("the edge leaves no room for a core under this coat and recess");
    return success(roundedDisc(R, bottom, top, r));
  }
  return bevelled(R, bottom, top, spec, c, isRecessed);
}

function bevelled(R: number, bottom: number, top: number, spec: PuckSpec, c: number, isRecessed: boolean) {
  const { radial: a, axial: b } = edgeReach(spec);
  const slant = Math.hypot(a, b);
  const isSharp = a === 0 || b === 0;
  // Along the core's rim the bevel, moved in by c across itself, has moved in by this much along each side.
  const coreA = isSharp ? 0 : a - (c * (a + b - slant)) / b;
  const coreB = isSharp ? 0 : b - (c * (a + b - slant)) / a;
  if (coreA <= 0 || coreB <= 0) return success(roundedDisc(R, bottom, top, 0));
  if (isRecessed) {
    return refuse("a core under a coat of given thickness with both a bevel and a recess is not offered; give a disc");
  }
  if (2 * coreB > top - bottom || coreA > R) return refuse("the bevel leaves no room for a core under this coat");
  const core: Meridian = polyline([
    [0, bottom],
    [R - coreA, bottom],
    [R, bottom + coreB],
    [R, top - coreB],
    [R - coreA, top],
    [0, top],
  ]);
  return success(core);
}

function mm(metres: number): string {
  return `${Number((metres * 1000).toPrecision(6))} mm`;
}

function refuse(message: string, field = "core") {
  return problem("puck-core", message, field);
}
