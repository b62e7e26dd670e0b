import type { SurfacePattern } from "../../../shared/engine/pattern/surfacePattern";
import type { LayerQuantity } from "../plots/layerFigure";

/** What the layer plot shows: one quantity, or all in plots of their own. */
export type LayerChoice = LayerQuantity | "all";

/** What the section view's tools are set to: no part of a design, but of its screen. Plain data. */
export interface SectionTools {
  /** Pattern whose sand-grain roughness is estimated. */
  readonly pattern: SurfacePattern;
  readonly layerChoice: LayerChoice;
}

export const firstTools: SectionTools = {
  pattern: { kind: "grooves", depth: 0.0005, width: 0.001, pitch: 0.0025 },
  layerChoice: "momentumThickness",
};
