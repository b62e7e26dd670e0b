import type { Contour } from "../geometry/contour";
import type { SectionSpec } from "../geometry/sectionSpec";
import type { LayerMethodName } from "../layer/layerMethodName";

/** A section as it lies in the stream: SI units and radians. */
export interface PlacedSection<Section extends SectionSpec | Contour = SectionSpec | Contour> {
  /** By family and dimensions, or as a contour. */
  readonly section: Section;
  /** Nose up, rad; 0 when left out. */
  readonly incidence?: number;
  /**
   * Gap between the section's lowest point and a floor along the stream, m: 0 when it lies on it, null or left out
   * without a floor.
   */
  readonly floorGap?: number | null;
  /** Even; "auto", also when left out, for as many panels as the section needs. */
  readonly panelCount?: number | "auto";
  /** True where a long thin plate along the stream parts the wake. */
  readonly splitterPlate?: boolean;
  /** How its boundary layers are worked out; "integral" when left out. */
  readonly layerMethod?: LayerMethodName;
}
