import { problem, type Result } from "../result";
import { buildCircle } from "./circle";
import type { Contour } from "./contour";
import { buildEllipse } from "./ellipse";
import { buildRoundedRectangle } from "./roundedRectangle";
import type { SectionFamily, SectionSpec, SpecOf } from "./sectionSpec";

/** One builder per family: a new family is one file, one entry here and one member of SectionSpec. */
export const sectionFamilies: { readonly [F in SectionFamily]?: (spec: SpecOf<F>) => Result<Contour> } = {
  circle: buildCircle,
  ellipse: buildEllipse,
  roundedRectangle: buildRoundedRectangle,
};

/**
 * The contour of a section. Fails, naming the field and its allowed range, when a dimension is not finite, not positive
 * or does not fit the others.
 */
export function buildContour(spec: SectionSpec): Result<Contour> {
  const build = sectionFamilies[spec.family] as ((spec: SectionSpec) => Result<Contour>) | undefined;
  if (build === undefined) {
    const known = Object.keys(sectionFamilies).join(", ");
    return problem("unknown-family", `section family "${spec.family}" is not known; use one of ${known}`, "family");
  }
  return build(spec);
}
