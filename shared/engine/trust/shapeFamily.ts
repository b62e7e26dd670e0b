import type { FlowCondition } from "../condition";
import { type ShapeFamily, sharpCornerRadius, smoothWallRoughness } from "./bandTable";
import type { SectionDescription } from "./sectionDescription";

/** The family whose errors stand for a section's. */
export function shapeFamily(section: SectionDescription, condition: FlowCondition): ShapeFamily {
  switch (section.shape) {
    case "circle":
      return condition.sandGrainRoughnessRatio <= smoothWallRoughness ? "smooth circle" : "rough circle";
    case "ellipse":
      return "ellipse";
    case "rectangle":
      return section.cornerRadiusToHeight! <= sharpCornerRadius ? "sharp rectangle" : "rounded rectangle";
    case "other":
      return "other";
  }
}

/** How sentences call the members of a family; "other" by the families that surround it. */
export const familyNames: Record<ShapeFamily, string> = {
  "smooth circle": "smooth circles",
  "rough circle": "rough circles",
  ellipse: "ellipses",
  "sharp rectangle": "sharp rectangles",
  "rounded rectangle": "rounded rectangles",
  other: "ellipses and rectangles",
};
