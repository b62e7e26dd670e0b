import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import { isSealed } from "../../../shared/engine/section/sealedSide";
import type { SectionState } from "../../../shared/engine/solution";
import type { Shape } from "../scene/scene";
import type { Palette } from "../style/palette";
import type { StreamFrame } from "./streamFrame";
import { type SurfaceKind, surfaceMarks, surfaceParts } from "./surfaceParts";
import { contourArc, wallPoint } from "./wallPoint";

/** The layer's momentum thickness is drawn so many times too thick; behind long bubbles, where it is thick, less. */
const exaggerations = { thin: 25, thick: 4 } as const;
/** theta / D from which a layer counts as thick. */
const thickLayer = 0.015;

/** How many times too thick the layers of a state are drawn. */
export function layerExaggeration(state: SectionState): number {
  const most = (["upper", "lower"] as const).reduce(
    (thickest, side) => state[side].layer.momentumThickness.reduce((one, other) => Math.max(one, other), thickest),
    0,
  );
  return most > thickLayer ? exaggerations.thick : exaggerations.thin;
}

/** Line weights tell the kinds of layer apart, so that no colour is needed for it. */
const wallLooks: Readonly<Record<SurfaceKind, { readonly width: number; readonly dash?: readonly number[] }>> = {
  laminar: { width: 1.3 },
  bubble: { width: 3.2, dash: [0.1, 5] },
  turbulent: { width: 3.6 },
  base: { width: 1 },
};

/** The wall by the kind of layer on it, the layers' growth along it, and the places where things happen. */
export function layerShapes(
  nodes: SectionNodes,
  state: SectionState,
  width: number,
  frame: StreamFrame,
  palette: Palette,
): Shape[] {
  const inView = (points: ArrayLike<number>) => {
    const shown = new Float64Array(points.length);
    for (let i = 0; i + 1 < points.length; i += 2) [shown[i], shown[i + 1]] = frame.toView(points[i], points[i + 1]);
    return shown;
  };
  const walls = surfaceParts(nodes, state, width).map(
    ({ kind, points }): Shape => ({
      kind: "lines",
      lines: [inView(points)],
      stroke: kind === "base" ? palette.outline : palette.ink,
      ...wallLooks[kind],
      round: kind === "bubble",
    }),
  );
  const marks = surfaceMarks(nodes, state, width).flatMap(({ kind, point }): Shape[] => {
    if (kind !== "stagnation" && kind !== "separation") return [];
    const [x, y] = frame.toView(...point);
    const mark = kind === "stagnation" ? "circle" : "square";
    return [{ kind: "mark", mark, x, y, size: 3.8, fill: palette.sheet, stroke: palette.ink, width: 1.4 }];
  });
  return [
    ...walls,
    { kind: "lines", lines: layerEdges(nodes, state, width).map(inView), stroke: palette.ink, width: 1 },
    ...marks,
  ];
}

/** The edge of each side's layer at its exaggerated thickness, body axes, m, interleaved. */
function layerEdges(nodes: SectionNodes, state: SectionState, width: number): number[][] {
  const times = layerExaggeration(state);
  return (["upper", "lower"] as const).flatMap((side) => {
    if (isSealed(state[side])) return [];
    const { arc, momentumThickness } = state[side].layer;
    const line: number[] = [];
    for (let i = 0; i < arc.length; i++) {
      const { x, y, normalX, normalY } = wallPoint(nodes, contourArc(state[side], side, width, arc[i]));
      const off = times * momentumThickness[i] * width;
      line.push(x + off * normalX, y + off * normalY);
    }
    return [line];
  });
}
