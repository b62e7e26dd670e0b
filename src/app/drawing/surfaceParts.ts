import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import { isSealed } from "../../../shared/engine/section/sealedSide";
import type { SectionState, SideSolution } from "../../../shared/engine/solution";
import { arcPolyline, pointAtArc, wrapArc } from "./contourArc";

export type SurfaceKind = "laminar" | "bubble" | "turbulent" | "base";

/** A stretch of the contour with one kind of flow over it: points interleaved x and y, m. */
export interface SurfacePart {
  readonly kind: SurfaceKind;
  readonly points: readonly number[];
}

export interface SurfaceMark {
  readonly kind: "stagnation" | "transition" | "separation" | "reattachment";
  readonly side: "upper" | "lower" | "front";
  readonly point: readonly [number, number];
}

const kinds = ["laminar", "bubble", "turbulent"] as const;

/** The contour cut into its laminar, bubble, turbulent and separated parts. */
export function surfaceParts(nodes: SectionNodes, state: SectionState, width: number): SurfacePart[] {
  const parts: SurfacePart[] = [];
  for (const side of ["upper", "lower"] as const) {
    const toContour = contourArcOf(nodes, state[side], side, width);
    const { arc, layerKind } = state[side].layer;
    let start = 0;
    for (let i = 1; i <= arc.length; i++) {
      if (i < arc.length && layerKind[i] === layerKind[start]) continue;
      const from = toContour(start === 0 ? 0 : arc[start]);
      const to = i < arc.length ? toContour(arc[i]) : wrapArc(state[side].separationContourArc, nodes.perimeter);
      const points = side === "lower" ? arcPolyline(nodes, from, to) : arcPolyline(nodes, to, from);
      parts.push({ kind: kinds[Math.min(2, layerKind[start])], points });
      start = i;
    }
  }
  parts.push({
    kind: "base",
    points: arcPolyline(nodes, state.lower.separationContourArc, state.upper.separationContourArc),
  });
  return parts;
}

/** Where things happen on the surface. */
export function surfaceMarks(nodes: SectionNodes, state: SectionState, width: number): SurfaceMark[] {
  const marks: SurfaceMark[] = [];
  for (const side of ["upper", "lower"] as const) {
    if (isSealed(state[side])) continue;
    const toContour = contourArcOf(nodes, state[side], side, width);
    const { transitionArc, bubble, separationContourArc } = state[side];
    if (side === "upper") marks.push({ kind: "stagnation", side: "front", point: pointAtArc(nodes, toContour(0)) });
    if (transitionArc !== null && transitionArc <= state[side].separationArc) {
      marks.push({ kind: "transition", side, point: pointAtArc(nodes, toContour(transitionArc)) });
    }
    if (bubble !== null) {
      marks.push({ kind: "reattachment", side, point: pointAtArc(nodes, toContour(bubble.reattachmentArc)) });
    }
    marks.push({ kind: "separation", side, point: pointAtArc(nodes, separationContourArc) });
  }
  return marks;
}

/**
 * From arc length behind the stagnation point / width on one side to arc length from the nose, m. The contour is walked
 * counter-clockwise, so the lower side runs with it and the upper side against it.
 */
function contourArcOf(
  nodes: SectionNodes,
  { separationArc, separationContourArc }: SideSolution,
  side: "upper" | "lower",
  width: number,
): (arc: number) => number {
  const direction = side === "lower" ? 1 : -1;
  return (arc) => wrapArc(separationContourArc - direction * (separationArc - arc) * width, nodes.perimeter);
}
