import type { Contour } from "../../engine/geometry/contour";
import type { PuckAttitude, PuckFigures, PuckSpec } from "../puck/public";

/** What stands in the tunnel, at full size. Sections span the tunnel; a puck is held in one attitude. */
export type TunnelShape =
  | {
      readonly kind: "section";
      readonly name: string;
      readonly contour: Contour;
      /** Extent across the stream, m. */
      readonly width: number;
      /** Extent along the stream, m. */
      readonly length: number;
      /** True for a circle, which Allen & Vincenti's blockage holds for. */
      readonly isCircle: boolean;
      /** Span of the model at full size, m. */
      readonly span: number;
    }
  | {
      readonly kind: "puck";
      readonly name: string;
      readonly spec: PuckSpec;
      readonly figures: PuckFigures;
      readonly attitude: PuckAttitude;
    };

/** The model: a shape, its scale and its surface. */
export interface TunnelModel {
  readonly shape: TunnelShape;
  /** Model size / full size, above 0. */
  readonly scale: number;
  /** Equivalent sand-grain roughness at full size, m. */
  readonly sandGrainRoughness: number;
}

/** The length that Reynolds numbers are on, and the area that coefficients are on. */
export interface TunnelReference {
  /** m. */
  readonly length: number;
  readonly lengthName: string;
  /** m^2. */
  readonly area: number;
  readonly areaName: string;
}

/** Reference length and area of a shape at full size. */
export function referenceOf(shape: TunnelShape): TunnelReference {
  if (shape.kind === "section") {
    return {
      length: shape.width,
      lengthName: "width across the stream",
      area: shape.width * shape.span,
      areaName: "frontal width x span",
    };
  }
  const length = { length: shape.spec.diameterMetres, lengthName: "diameter" };
  return shape.attitude === "edgeOn"
    ? { ...length, area: shape.figures.frontalAreaEdgeOnSquareMetres, areaName: "frontal area edge-on" }
    : { ...length, area: shape.figures.frontalAreaFaceOnSquareMetres, areaName: "face area" };
}

/** The same at the model's size. */
export function modelReference({ shape, scale }: TunnelModel): TunnelReference {
  const full = referenceOf(shape);
  return { ...full, length: full.length * scale, area: full.area * scale * scale };
}
