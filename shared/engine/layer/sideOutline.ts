import { interpolateAtPosition } from "../geometry/arcPosition";
import type { SectionNodes } from "../geometry/sectionNodes";

/** How positions on the contour lie to the stream, all in D: outward across it and along it. */
export interface SideOutline {
  readonly nodes: Pick<SectionNodes, "x" | "y">;
  /** Cosine and sine of the incidence / D, with the sign of the lower side. */
  readonly cosine: number;
  readonly sine: number;
  readonly sign: 1 | -1;
  /** Curvature * D at the first node behind the last station. */
  readonly curvatureAhead: number;
  /**
   * What the surface velocity / U at the nodes, counter-clockwise, shape [count], changes by when the wake does not widen
   * behind the section; null where it does not widen in this flow.
   */
  readonly parallelWake: { readonly velocity: Readonly<Float64Array>; readonly factor: number } | null;
}

/** Distance across the stream, outward, of a position / D. */
export function acrossAt({ nodes, cosine, sine }: SideOutline, position: number): number {
  return sine * interpolateAtPosition(nodes.x, position) - cosine * interpolateAtPosition(nodes.y, position);
}

/** Stream coordinate of a position / D, with the sign of the lower side. */
export function alongAt({ nodes, cosine, sine }: SideOutline, position: number): number {
  return cosine * interpolateAtPosition(nodes.x, position) + sine * interpolateAtPosition(nodes.y, position);
}
