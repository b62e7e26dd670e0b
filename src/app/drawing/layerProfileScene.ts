import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import { isSealed } from "../../../shared/engine/section/sealedSide";
import type { SectionState } from "../../../shared/engine/solution";
import type { Shape } from "../scene/scene";
import type { Palette } from "../style/palette";
import { wrapArc } from "./contourArc";
import type { StreamFrame } from "./streamFrame";
import { velocityProfile } from "./velocityProfile";

/** The layer at a place of the wall. */
export interface LayerThere {
  /** theta / D */
  readonly momentumThickness: number;
  readonly shapeFactor: number;
  readonly isTurbulent: boolean;
}

/** The layer over a node; null behind separation and on a side without water. */
export function layerAt(nodes: SectionNodes, state: SectionState, width: number, node: number): LayerThere | null {
  for (const side of ["upper", "lower"] as const) {
    const solution = state[side];
    if (isSealed(solution)) continue;
    const direction = side === "lower" ? 1 : -1;
    const start = solution.separationContourArc - direction * solution.separationArc * width;
    const arc = wrapArc(direction * (nodes.arc[node] - start), nodes.perimeter) / width;
    if (arc > solution.separationArc) continue;
    const { layer } = solution;
    let i = 1;
    while (i < layer.arc.length - 1 && layer.arc[i] < arc) i++;
    const span = layer.arc[i] - layer.arc[i - 1];
    const share = span > 0 ? Math.min(1, Math.max(0, (arc - layer.arc[i - 1]) / span)) : 0;
    const between = (values: Readonly<Float64Array>) => values[i - 1] + share * (values[i] - values[i - 1]);
    return {
      momentumThickness: between(layer.momentumThickness),
      shapeFactor: between(layer.shapeFactor),
      isTurbulent: layer.layerKind[i - 1] === 2,
    };
  }
  return null;
}

/** Length of the edge speed in a drawn profile, px. */
const speedLength = 34;
/** Least height of a drawn profile, px: thinner ones are drawn so high, and say so by their own scale. */
const leastHeight = 26;

/** The layer's velocity profile, standing on the wall. */
export function profileShapes(
  nodes: SectionNodes,
  node: number,
  layer: LayerThere,
  /** How many times too thick layers are drawn. */
  times: number,
  width: number,
  frame: StreamFrame,
  palette: Palette,
): Shape[] {
  const { heights, speeds } = velocityProfile(layer.shapeFactor, layer.isTurbulent);
  const theta = layer.momentumThickness * width * times * frame.scale;
  const scale = Math.max(theta, leastHeight / heights[heights.length - 1]);
  const [x, y] = frame.toView(nodes.x[node], nodes.y[node]);
  const [ax, ay] = frame.toView(nodes.x[node] + nodes.tangentY[node], nodes.y[node] - nodes.tangentX[node]);
  const [nx, ny] = [(ax - x) / frame.scale, (ay - y) / frame.scale];
  // Along the wall, whichever way the stream runs there.
  const [sx, sy] = -ny >= 0 ? [-ny, nx] : [ny, -nx];
  const at = (height: number, speed: number) => [
    x + nx * height * scale + sx * speed * speedLength,
    y + ny * height * scale + sy * speed * speedLength,
  ];
  const edge = heights.flatMap((height, i) => at(height, speeds[i]));
  const wall = [...heights].reverse().flatMap((height) => at(height, 0));
  return [
    { kind: "lines", lines: [[...edge, ...wall]], closed: true, fill: palette.sheet, stroke: palette.ink, width: 1.2 },
    {
      kind: "lines",
      lines: heights
        .filter((_, i) => i % 3 === 0 && i > 0)
        .map((height) => {
          const i = heights.indexOf(height);
          return [...at(height, 0), ...at(height, speeds[i])];
        }),
      stroke: palette.ink,
      width: 0.8,
    },
  ];
}
