import { nothing, svg } from "lit";
import type { FlowPicture } from "../../../../shared/engine/section/flowPicture";
import type { LiveFloor } from "../../../../shared/engine/section/liveFloor";
import { floorShape } from "../../drawing/floorShape";
import type { StreamFrame } from "../../drawing/streamFrame";
import type { Solved } from "../../section/solved";
import { quantityText, type UnitPreferences } from "../../units/units";

/** Width and height of the drawing, view-box units. */
export type DrawingSize = readonly [number, number];

/** The floor as a surface with what lies below it; nothing when it lies outside the drawing. */
export function floorDrawing(floor: LiveFloor, frame: StreamFrame, [width, height]: DrawingSize) {
  const { level, isOutside } = floorShape(floor, frame, height);
  if (isOutside) return nothing;
  return svg`<g class="floor" aria-hidden="true">
    <rect x="0" y=${level} width=${width} height=${height - level}></rect>
    <path d="M0 ${level}H${width}"></path>
  </g>`;
}

/** How far the floor is, in words, with an arrow when it lies outside the drawing; nothing in open water. */
export function floorWords(
  { design, solution }: Solved,
  frame: StreamFrame,
  [width, height]: DrawingSize,
  units: UnitPreferences,
) {
  if (solution.floor === null || design.floorGap === null) return nothing;
  const { level, isOutside } = floorShape(solution.floor, frame, height);
  const words = design.floorGap === 0 ? "on the floor" : `floor, gap ${quantityText(design.floorGap, "length", units)}`;
  return svg`<text class="words" text-anchor="end" x=${width - 14} y=${Math.min(level + 18, height - 14)} aria-hidden="true">${words}${isOutside ? " ↓" : ""}</text>`;
}

/**
 * The wake's lower edge where the section lies on the floor: the floor below the end of the upper shear layer, a point
 * in body axes, m; null above a gap.
 */
export function wakeFoot({ gapRatio, foot }: LiveFloor, { upperShear }: FlowPicture, frame: StreamFrame) {
  if (gapRatio > 0 || upperShear.length < 2) return null;
  const [x] = frame.toView(upperShear[upperShear.length - 2], upperShear[upperShear.length - 1]);
  return frame.toBody(x, frame.toView(...foot)[1]);
}
