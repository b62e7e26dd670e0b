import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import type { SectionState } from "../../../shared/engine/solution";
import type { Shape } from "../scene/scene";
import type { Palette } from "../style/palette";
import { pressureColours, pressureStep } from "./pressureColours";
import type { StreamFrame } from "./streamFrame";

/** Length of a normal for Cp 1, px. */
export const normalLength = 26;
/** Distance between drawn normals, px. */
const normalSpacing = 11;
/** Width of the coloured rim inside the wall, px. */
const rimWidth = 7;

/** The pressure on the wall: normals of its size, inward arrows left out where they would be short, and a coloured rim. */
export function pressureShapes(
  nodes: SectionNodes,
  { pressureCoefficient: cp }: SectionState,
  frame: StreamFrame,
  palette: Palette,
): { readonly normals: Shape[]; readonly rim: Shape[] } {
  const { count } = nodes;
  const wall = new Float64Array(2 * count);
  const tip = new Float64Array(2 * count);
  const inner = new Float64Array(2 * count);
  for (let n = 0; n < count; n++) {
    const [x, y] = frame.toView(nodes.x[n], nodes.y[n]);
    const [ax, ay] = frame.toView(nodes.x[n] + nodes.tangentY[n], nodes.y[n] - nodes.tangentX[n]);
    const [nx, ny] = [(ax - x) / frame.scale, (ay - y) / frame.scale];
    const length = normalLength * Math.min(4, Math.abs(cp[n]));
    wall.set([x, y], 2 * n);
    tip.set([x + nx * length, y + ny * length], 2 * n);
    inner.set([x - (nx * rimWidth) / 2, y - (ny * rimWidth) / 2], 2 * n);
  }
  const areas = { suction: [] as number[][], pressure: [] as number[][] };
  const ticks = { suction: [] as number[][], pressure: [] as number[][] };
  const rims = pressureColours(palette).map((): number[][] => []);
  let run = normalSpacing;
  for (let n = 0; n < count; n++) {
    const next = (n + 1) % count;
    const kind = cp[n] + cp[next] < 0 ? "suction" : "pressure";
    areas[kind].push([
      wall[2 * n],
      wall[2 * n + 1],
      tip[2 * n],
      tip[2 * n + 1],
      tip[2 * next],
      tip[2 * next + 1],
      wall[2 * next],
      wall[2 * next + 1],
    ]);
    rims[pressureStep((cp[n] + cp[next]) / 2)].push([
      inner[2 * n],
      inner[2 * n + 1],
      inner[2 * next],
      inner[2 * next + 1],
    ]);
    run += Math.hypot(wall[2 * next] - wall[2 * n], wall[2 * next + 1] - wall[2 * n + 1]);
    if (run >= normalSpacing) {
      run = 0;
      ticks[kind].push([wall[2 * n], wall[2 * n + 1], tip[2 * n], tip[2 * n + 1]]);
    }
  }
  return {
    normals: (["suction", "pressure"] as const).flatMap((kind): Shape[] => [
      { kind: "lines", lines: areas[kind], closed: true, fill: palette[kind], opacity: 0.42 },
      { kind: "lines", lines: ticks[kind], stroke: palette[kind], width: 1 },
    ]),
    rim: pressureColours(palette).flatMap((stroke, i): Shape[] =>
      rims[i].length === 0 ? [] : [{ kind: "lines", lines: rims[i], stroke, width: rimWidth, round: true }],
    ),
  };
}

/** The scale of colours with its ends. */
export function pressureKey(x: number, y: number, palette: Palette): Shape[] {
  const colours = pressureColours(palette);
  const step = 7.5;
  return [
    ...colours.map(
      (fill, i): Shape => ({
        kind: "lines",
        lines: [[x + i * step, y, x + (i + 1) * step, y, x + (i + 1) * step, y + 6, x + i * step, y + 6]],
        closed: true,
        fill,
      }),
    ),
    ...[-3, -2, -1, 0, 1].map(
      (cp): Shape => ({
        kind: "text",
        x: x + ((cp + 3) / 4) * colours.length * step,
        y: y - 4,
        text: String(cp).replace("-", "−"),
        fill: palette.softInk,
        anchor: "middle",
        rim: palette.water,
      }),
    ),
  ];
}
