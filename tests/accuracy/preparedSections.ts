import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { Result } from "../../shared/result";
import type { PublishedSection } from "../published/quantity";

/** Corner radius / height that stands for a sharp corner: the smallest that the section families promise. */
export const sharpCornerRatio = 0.01;

/** Length / height that stands for a thin plate across the stream. */
const plateLengthRatio = 0.1;

/** The engine's section for a published one, 1 m across the stream. */
export function sectionSpecOf(section: PublishedSection): SectionSpec {
  switch (section.shape) {
    case "circle":
      return { family: "circle", diameter: 1 };
    case "ellipse":
      return { family: "ellipse", length: section.lengthToHeight, height: 1 };
    case "rectangle":
      return {
        family: "roundedRectangle",
        length: section.lengthToHeight,
        height: 1,
        edgeRadius: Math.max(section.cornerRadiusToHeight, sharpCornerRatio),
      };
    case "plate across the stream":
      return { family: "roundedRectangle", length: plateLengthRatio, height: 1, edgeRadius: sharpCornerRatio };
  }
}

/** Panels that settle the drag coefficient to well under 1 % on every section of the table. */
export const panelCount = 240;

export function sectionNodesOf(section: PublishedSection): Result<SectionNodes> {
  const contour = buildContour(sectionSpecOf(section));
  return contour.ok ? gradeNodes(contour.value, panelCount) : contour;
}

/** Short name of a published section, for tables and as a key. */
export function sectionLabel(section: PublishedSection): string {
  switch (section.shape) {
    case "circle":
    case "plate across the stream":
      return section.shape;
    case "ellipse":
      return `ellipse ${section.lengthToHeight}:1`;
    case "rectangle": {
      const ratio = Number(section.lengthToHeight.toPrecision(3));
      const corner = section.cornerRadiusToHeight === 0 ? "sharp" : `r/H ${section.cornerRadiusToHeight}`;
      return `rectangle ${ratio}:1 ${corner}`;
    }
  }
}
