import { problem, type Result } from "../../result";
import { buildBevelledRectangle } from "./bevelledRectangle";
import { buildCircle } from "./circle";
import type { Contour } from "./contour";
import { buildDShape } from "./dShape";
import { buildEllipse } from "./ellipse";
import { buildFreeContour } from "./freeContour";
import { buildOutline } from "./outlineContour";
import { buildRoundedPolygon } from "./roundedPolygon";
import { buildRoundedRectangle } from "./roundedRectangle";
import { buildRoundedTriangle } from "./roundedTriangle";
import type { SectionFamily, SectionSpec, SpecOf } from "./sectionSpec";
import { buildStadium } from "./stadium";
import { buildSuperellipse } from "./superellipse";

/** One builder per family: a new family is one file, one entry here and one member of SectionSpec. */
export const sectionFamilies: { readonly [F in SectionFamily]: (spec: SpecOf<F>) => Result<Contour> } = {
  circle: buildCircle,
  ellipse: buildEllipse,
  roundedRectangle: buildRoundedRectangle,
  superellipse: buildSuperellipse,
  stadium: buildStadium,
  bevelledRectangle: buildBevelledRectangle,
  dShape: buildDShape,
  roundedPolygon: buildRoundedPolygon,
  roundedTriangle: buildRoundedTriangle,
  freeContour: buildFreeContour,
  outline: buildOutline,
};

/**
 * The contour of a section. Fails, naming the field and its allowed range, when a dimension is not finite, not positive
 * or does not fit the others.
 */
export function buildContour(spec: SectionSpec): Result<Contour> {
  const build = Object.hasOwn(sectionFamilies, spec.family)
    ? (sectionFamilies[spec.family] as (spec: SectionSpec) => Result<Contour>)
    : undefined;
  if (build === undefined) {
    const known = Object.keys(sectionFamilies).join(", ");
    return problem("unknown-family", `section family "${spec.family}" is not known; use one of ${known}`, "family");
  }
  return build(spec);
}
