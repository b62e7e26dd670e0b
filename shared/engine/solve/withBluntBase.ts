import type { SideLayer } from "../layer/sideLayer";
import { bluntBaseSpeedRatio } from "../wake/bluntBase";
import { surfaceVelocity } from "../wake/wakeFlow";
import type { FixedPoint } from "./fixedPoint";
import type { PreparedSection } from "./preparedSection";
import type { SeparatedFlow } from "./separatedFlow";

/** Corners that hold the layers for less than this count as bends. */
const LEAST_SHARE = 1e-3;

/**
 * A fixed point with its base pressure closed anew where the rear corners hold the layers, see bluntBase.ts. The layers
 * are left as they are: the corners fix where they leave, and the sides ahead hardly notice the base.
 */
export function withBluntBase(section: PreparedSection, point: FixedPoint): FixedPoint {
  const share = (heldShare(point.lower) + heldShare(point.upper)) / 2;
  if (share < LEAST_SHARE || section.floor?.contact || point.flow.closedWake) return point;
  const { flow, lower, upper } = point;
  const thickness = (lower.thickness + upper.thickness) / 2;
  const speedRatio = bluntBaseSpeedRatio(flow.wake, section.street, flow.speedRatio, thickness, share);
  const closed: SeparatedFlow = {
    wake: flow.wake,
    speedRatio,
    closedWake: false,
    strouhal: flow.strouhal * (speedRatio / flow.speedRatio),
    velocity: surfaceVelocity(flow.wake, speedRatio),
    stagnation: flow.stagnation,
    get lower() {
      return flow.lower;
    },
    get upper() {
      return flow.upper;
    },
  };
  return { ...point, flow: closed };
}

function heldShare({ sharpness }: SideLayer): number {
  return sharpness / (1 + sharpness);
}
