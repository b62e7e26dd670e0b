import type { LiveFloor } from "../../../shared/engine/section/liveFloor";
import type { StreamFrame } from "./streamFrame";

/** The floor in a drawing: its level in view-box units, at most the drawing's own height, and whether it lies below that. */
export interface FloorShape {
  readonly level: number;
  readonly isOutside: boolean;
}

/** Where the floor is drawn: the stream is level in the drawing, and so is the floor. */
export function floorShape({ foot }: LiveFloor, frame: StreamFrame, height: number): FloorShape {
  const [, level] = frame.toView(...foot);
  return { level: Math.min(level, height), isOutside: level >= height };
}
