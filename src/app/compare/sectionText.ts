import type { SectionDocument } from "../../../shared/document/sectionDocument";
import { sectionSpecs } from "../../../shared/document/sectionSpecs";
import { buildContour } from "../../../shared/engine/geometry/sectionFamilies";

/** A section by its own name and its dimensions. */
export function sectionText(section: SectionDocument): string {
  const contour = buildContour(sectionSpecs(section)[0].spec);
  const dimensions = contour.ok ? contour.value.name : section.family;
  return section.name === undefined || section.name === dimensions ? dimensions : `${section.name}: ${dimensions}`;
}
