import type { LiveSolution } from "../../../shared/engine/section/solveLive";
import type { Scene, Shape } from "../scene/scene";
import { risingState } from "../section/solved";
import type { Palette } from "../style/palette";
import { floorShape } from "./floorShape";
import { layerExaggeration, layerShapes } from "./layerScene";
import { pressureKey, pressureShapes } from "./pressureScene";
import { separationLabels } from "./separationLabels";
import type { StreamFrame } from "./streamFrame";
import { surfaceParts } from "./surfaceParts";
import { wakeFoot } from "./wakeFoot";

/** Width and height, px. */
export type PictureSize = readonly [number, number];

/** The flow round a solved section: streamlines, wake, pressure on the wall, layers and where they leave. */
export function flowScene(
  solution: LiveSolution,
  frame: StreamFrame,
  [width, height]: PictureSize,
  palette: Palette,
  words: { readonly stream: string; readonly isSmall: boolean },
): Scene {
  const { nodes, referenceWidth, picture, floor } = solution;
  const state = risingState(solution);
  const inView = (points: ArrayLike<number>) => {
    const shown = new Float64Array(points.length);
    for (let i = 0; i + 1 < points.length; i += 2) [shown[i], shown[i + 1]] = frame.toView(points[i], points[i + 1]);
    return shown;
  };
  const wall = new Float64Array(2 * nodes.count);
  for (let n = 0; n < nodes.count; n++) wall.set(frame.toView(nodes.x[n], nodes.y[n]), 2 * n);
  const shapes: Shape[] = [
    { kind: "lines", lines: [[0, 0, width, 0, width, height, 0, height]], closed: true, fill: palette.water },
  ];
  if (picture !== null && state !== null) {
    const base = surfaceParts(nodes, state, referenceWidth).find(({ kind }) => kind === "base")?.points ?? [];
    const foot = floor === null ? null : wakeFoot(floor, picture, frame);
    const wake = [...(foot ?? reversedPoints(picture.lowerShear)), ...base, ...picture.upperShear];
    shapes.push(
      { kind: "lines", lines: picture.streamlines.map(inView), stroke: palette.streamline, width: 1 },
      { kind: "lines", lines: [inView(wake)], closed: true, fill: palette.wake },
      {
        kind: "lines",
        lines: [inView(picture.upperShear), inView(picture.lowerShear)],
        stroke: palette.softInk,
        width: 1.2,
        dash: [2, 3],
      },
    );
  }
  if (floor !== null) {
    const { level } = floorShape(floor, frame, height);
    shapes.push(
      { kind: "lines", lines: [[0, level, width, level, width, height, 0, height]], closed: true, fill: palette.rule },
      { kind: "lines", lines: [[0, level, width, level]], stroke: palette.outline, width: 2 },
    );
  }
  const pressure = state === null ? null : pressureShapes(nodes, state, frame, palette);
  shapes.push(
    ...(pressure?.normals ?? []),
    { kind: "lines", lines: [wall], closed: true, fill: palette.body },
    ...(pressure?.rim ?? []),
  );
  if (state !== null) {
    shapes.push(...layerShapes(nodes, state, referenceWidth, frame, palette));
    if (!words.isSmall) shapes.push(...separationLabels(nodes, state, referenceWidth, frame, [width, height], palette));
  }
  shapes.push({ kind: "text", x: 12, y: 20, text: words.stream, fill: palette.ink, size: 12, rim: palette.water });
  if (!words.isSmall) {
    const key = `surface Cp${state === null ? "" : `; layer θ × ${layerExaggeration(state)}`}`;
    shapes.push(...pressureKey(width - 262, height - 18, palette), {
      kind: "text",
      x: width - 134,
      y: height - 11,
      text: key,
      fill: palette.softInk,
      rim: palette.water,
    });
  }
  return { width, height, shapes };
}

function reversedPoints(points: ArrayLike<number>): number[] {
  const reversed: number[] = [];
  for (let i = points.length - 2; i >= 0; i -= 2) reversed.push(points[i], points[i + 1]);
  return reversed;
}
