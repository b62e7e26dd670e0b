import { nothing, svg } from "lit";
import type { FlowPicture } from "../../../../shared/engine/section/flowPicture";
import { markShapes } from "../../drawing/markShape";
import type { StreamFrame } from "../../drawing/streamFrame";
import { type SurfacePart, surfaceMarks, surfaceParts } from "../../drawing/surfaceParts";
import { svgPath } from "../../drawing/svgPath";
import { risingState, type Solved } from "../../section/solved";
import { type DrawingSize, floorDrawing, wakeFoot } from "./floorDrawing";

type PathOf = (points: ArrayLike<number>, closed?: boolean) => string;

/** All of a solved section's drawing that stands still while only the pointer moves. */
export function stillDrawing({ solution }: Solved, frame: StreamFrame, size: DrawingSize) {
  const { nodes, referenceWidth, picture, floor } = solution;
  const section = risingState(solution);
  const path: PathOf = (points, closed = false) => svgPath(inView(points, frame), closed);
  const parts = section ? surfaceParts(nodes, section, referenceWidth) : [];
  const marks = section ? surfaceMarks(nodes, section, referenceWidth) : [];
  const foot = floor === null || picture === null ? null : wakeFoot(floor, picture, frame);
  return svg`${picture ? streamDrawing(picture, parts, path, foot) : nothing}
    ${floor === null ? nothing : floorDrawing(floor, frame, size)}
    <path class="body" d=${path(interleaved(nodes.x, nodes.y), true)}></path>
    ${parts.map((part) => svg`<path class="part ${part.kind}" d=${path(part.points)}></path>`)}
    ${marks.map((mark) => {
      const [x, y] = frame.toView(...mark.point);
      return svg`<path class="mark" transform="translate(${x} ${y})" d=${markShapes[mark.kind]}></path>`;
    })}`;
}

/**
 * Streamlines, the wake between the free shear layers and the base, and the shear layers.
 * @param foot  lower edge of a wake that reaches down to the floor; null for the lower shear layer
 */
function streamDrawing(
  { streamlines, upperShear, lowerShear }: FlowPicture,
  parts: readonly SurfacePart[],
  path: PathOf,
  foot: readonly [number, number] | null,
) {
  const base = parts.find((part) => part.kind === "base")?.points ?? [];
  const wake = [...(foot ?? reversedPoints(lowerShear)), ...base, ...upperShear];
  return svg`<g aria-hidden="true">
    <path class="wake" d=${path(wake, true)}></path>
    <path class="stream" d=${streamlines.map((line) => path(line)).join("")}></path>
    <path class="shear" d=${path(upperShear) + path(lowerShear)}></path>
  </g>`;
}

function interleaved(x: Readonly<Float64Array>, y: Readonly<Float64Array>): Float64Array {
  const points = new Float64Array(2 * x.length);
  for (let i = 0; i < x.length; i++) {
    points[2 * i] = x[i];
    points[2 * i + 1] = y[i];
  }
  return points;
}

function reversedPoints(points: ArrayLike<number>): number[] {
  const reversed: number[] = [];
  for (let i = points.length - 2; i >= 0; i -= 2) reversed.push(points[i], points[i + 1]);
  return reversed;
}

function inView(points: ArrayLike<number>, frame: StreamFrame): Float64Array {
  const shown = new Float64Array(points.length);
  for (let i = 0; i + 1 < points.length; i += 2) [shown[i], shown[i + 1]] = frame.toView(points[i], points[i + 1]);
  return shown;
}
