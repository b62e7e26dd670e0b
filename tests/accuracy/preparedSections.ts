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

/** The engine's section for a published one, about 1 m across the stream. */
export function sectionSpecOf(section: PublishedSection): SectionSpec {
  switch (section.shape) {
    case "circle":
    case "circle with splitter plate":
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
    case "diagonal square":
      return {
        family: "roundedPolygon",
        sides: 4,
        inscribedDiameter: 1,
        cornerRadius: Math.max(section.cornerRadiusToSide, sharpCornerRatio),
        facing: "corner",
      };
    case "triangle": {
      const radius = Math.max(section.cornerRadiusToHeight, sharpCornerRatio);
      return {
        family: "roundedTriangle",
        length: equilateralLength * (1 - 2 * radius) + 2 * radius,
        height: 1,
        cornerRadius: radius,
        apex: section.pointing === "apex upstream" ? "forward" : "rearward",
      };
    }
    case "dodecagon":
      return {
        family: "roundedPolygon",
        sides: 12,
        inscribedDiameter: 1,
        cornerRadius: sharpCornerRatio,
        facing: "flat",
      };
    case "round nose, flat rear":
      return {
        family: "dShape",
        length: section.lengthToHeight,
        height: 1,
        noseLength: Math.min(0.5, section.lengthToHeight - sharpCornerRatio),
        cornerRadius: sharpCornerRatio,
        flatSide: "rear",
      };
  }
}

/** Length of an equilateral triangle over its height across the stream. */
const equilateralLength = Math.sqrt(3) / 2;

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
    case "dodecagon":
    case "circle with splitter plate":
      return section.shape;
    case "diagonal square":
      return `${section.shape} ${cornerLabel("r/a", section.cornerRadiusToSide)}`;
    case "triangle":
      return `${section.shape}, ${section.pointing}, ${cornerLabel("r/H", section.cornerRadiusToHeight)}`;
    case "round nose, flat rear":
      return `${section.shape} ${section.lengthToHeight}:1`;
    case "ellipse":
      return `ellipse ${section.lengthToHeight}:1`;
    case "rectangle": {
      const ratio = Number(section.lengthToHeight.toPrecision(3));
      return `rectangle ${ratio}:1 ${cornerLabel("r/H", section.cornerRadiusToHeight)}`;
    }
  }
}

function cornerLabel(name: string, ratio: number): string {
  return ratio === 0 ? "sharp" : `${name} ${Number(ratio.toPrecision(3))}`;
}
