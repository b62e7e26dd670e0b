import { edgeReach, type PuckResult } from "../puck/public";
import type { ImpactSetup } from "./durabilityJob";

/** Where a puck is hit: the round that meets the plane, how far beside the centre of mass, and the coat below. m. */
export interface ContactSite {
  readonly shape:
    | { readonly kind: "point"; readonly radius: number }
    | { readonly kind: "line"; readonly radius: number; readonly length: number }
    | { readonly kind: "flat"; readonly area: number };
  /** From the line of impact to the centre of mass. */
  readonly lever: number;
  /** null without a core. */
  readonly coatThickness: number | null;
}

/**
 * The edge of a tilted puck is a torus: across it its own radius r, along it (R - r) / sin(tilt) + r. A contact of two
 * unequal radii is that of a sphere of their geometric mean, as long as they are not too unequal (Johnson 1985, section
 * 4.2); force and approach are then within some per cent.
 * @param sharpRadius of corners without a radius of their own, m
 */
export function contactSite(
  { puck, figures }: Pick<PuckResult, "puck" | "figures">,
  { contact, tilt }: Pick<ImpactSetup, "contact" | "tilt">,
  sharpRadius: number,
): ContactSite {
  const R = puck.diameterMetres / 2;
  const t = puck.thicknessMetres;
  const { core } = puck;
  const coat = (own: number) => (core.kind === "underCoat" ? core.coatThicknessMetres : own);
  if (contact === "face") {
    const own = core.kind === "none" ? null : coat(faceCover(puck));
    return { shape: { kind: "flat", area: figures.floorContactAreaSquareMetres }, lever: 0, coatThickness: own };
  }
  const length = t - 2 * edgeReach(puck).axial;
  if (contact === "rim" && length > 0) {
    const own = core.kind === "none" ? null : coat(rimCover(puck));
    return { shape: { kind: "line", radius: R, length }, lever: 0, coatThickness: own };
  }
  const r = Math.min(Math.max(puck.edge.kind === "radius" ? puck.edge.edgeRadiusMetres : 0, sharpRadius), t / 2);
  // A full round that is hit on its rim meets the plane upright.
  const angle = contact === "rim" ? Math.PI / 2 : tilt;
  const along = (R - r) / Math.sin(angle) + r;
  return {
    shape: { kind: "point", radius: Math.sqrt(r * along) },
    lever: contact === "rim" ? 0 : Math.abs((R - r) * Math.cos(angle) - (t / 2 - r) * Math.sin(angle)),
    coatThickness: core.kind === "none" ? null : coat(figures.coverMetres ?? 0),
  };
}

/** Coat between the land of a face and the core, m. */
export function faceCover({ core, thicknessMetres: t }: PuckResult["puck"]): number {
  if (core.kind === "none") return t / 2;
  if (core.kind === "underCoat") return core.coatThicknessMetres;
  return t / 2 - Math.abs(core.heightMetres ?? 0) - core.thicknessMetres / 2;
}

/** Coat between the straight rim and the core, m. */
export function rimCover({ core, diameterMetres: d }: PuckResult["puck"]): number {
  if (core.kind === "none") return d / 2;
  if (core.kind === "underCoat") return core.coatThicknessMetres;
  return (d - (core.kind === "disc" ? core.diameterMetres : core.outerDiameterMetres)) / 2;
}
