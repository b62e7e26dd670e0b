import type { FlowPicture } from "../../../shared/engine/section/flowPicture";
import type { LiveFloor } from "../../../shared/engine/section/liveFloor";
import type { StreamFrame } from "./streamFrame";

/**
 * The wake's lower edge where the section lies on the floor: the floor below the end of the upper shear layer, a point
 * in body axes, m; null above a gap.
 */
export function wakeFoot({ gapRatio, foot }: LiveFloor, { upperShear }: FlowPicture, frame: StreamFrame) {
  if (gapRatio > 0 || upperShear.length < 2) return null;
  const [x] = frame.toView(upperShear[upperShear.length - 2], upperShear[upperShear.length - 1]);
  return frame.toBody(x, frame.toView(...foot)[1]);
}
