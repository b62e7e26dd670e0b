import type { DragBand } from "../../../engine/trust/dragInterval";
import { type Result, success } from "../../../result";
import { mean } from "../../../statistics/sample";
import type { CasePuck, PuckCase } from "../puckCase";
import { dragAreas, dragByOrientation } from "./orientationDrag";
import { type OrientationDrag, type OrientationIndex, orientationIndex } from "./orientationIndex";
import type { PuckFlow } from "./puckFlow";

/** Drag areas at every turbulence and index speed, in the order of the stream. */
export type ConditionDrags = readonly OrientationDrag[];

export function conditionDrags(
  puck: Pick<CasePuck, "spec" | "figures" | "sandGrainRoughness">,
  flows: readonly PuckFlow[],
  { play, stream }: PuckCase,
): Result<ConditionDrags> {
  const drags: OrientationDrag[] = [];
  for (const flow of flows) {
    for (const speed of play.indexSpeeds) {
      const drag = dragByOrientation(puck, flow, speed, stream.fluid.kinematicViscosity);
      if (!drag.ok) return drag;
      drags.push(dragAreas(drag.value));
    }
  }
  return success(drags);
}

/**
 * Orientation-weighted index against a baseline, averaged over turbulences and index speeds. The band is the average of
 * the bands' ends, as when errors at all conditions go the same way.
 */
export function meanIndex(
  candidate: ConditionDrags,
  baseline: ConditionDrags,
  { play }: Pick<PuckCase, "play">,
): Result<OrientationIndex> {
  if (candidate.length !== baseline.length || candidate.length === 0) {
    throw new RangeError(`there are ${candidate.length} and ${baseline.length} conditions; both need the same number.`);
  }
  const indices: OrientationIndex[] = [];
  for (const [i, drag] of candidate.entries()) {
    const index = orientationIndex(play.shares, drag, baseline[i]);
    if (!index.ok) return index;
    indices.push(index.value);
  }
  return success({
    index: meanBand(indices.map(({ index }) => index)),
    indexWithCommonError: meanBand(indices.map(({ indexWithCommonError }) => indexWithCommonError)),
    changePercent: meanBand(indices.map(({ changePercent }) => changePercent)),
  });
}

function meanBand(bands: readonly DragBand[]): DragBand {
  const meanOf = (end: keyof DragBand) => mean(bands.map((band) => band[end]));
  return { low: meanOf("low"), expected: meanOf("expected"), high: meanOf("high") };
}
