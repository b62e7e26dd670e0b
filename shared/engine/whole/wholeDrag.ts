import { type Result, success } from "../../result";
import type { ConditionedBody, WeightedFlow } from "./conditionedFlow";
import { conditionEdgeOn, type WholeStream } from "./conditionFlow";
import { type EdgeOnFlow, edgeOnFlow } from "./edgeOnFlow";
import type { MeridianCurve } from "./meridianCurve";
import { conditionTilted, type TiltedFlow, tiltedFlow } from "./tiltedFlow";
import { prepareWholeBody, stateResolution, type WholeBody } from "./wholeBody";
import type { WholeResolution } from "./wholeFlow";

/** The flows about one body, solved once for all streams: edge-on, and at tilts as they are asked for. */
export interface WholeFlows {
  readonly body: WholeBody;
  readonly edgeOn: EdgeOnFlow;
  /** @param tilt rad, above 0 to pi / 2 */
  readonly tilted: (tilt: number) => TiltedFlow;
}

/**
 * @param curves   the meridian from the lower pole to the upper one, m, without recess and grooves
 * @param floorGap m, above 0: a floor parallel to the faces; null in open water
 */
export function wholeFlows(
  curves: readonly MeridianCurve[],
  floorGap: number | null = null,
  resolution: WholeResolution = stateResolution,
): Result<WholeFlows> {
  const body = prepareWholeBody(curves, floorGap, resolution);
  if (!body.ok) return body;
  const edgeOn = edgeOnFlow(body.value);
  const solved = new Map<number, TiltedFlow>();
  const tilted = (tilt: number): TiltedFlow => {
    const known = solved.get(tilt);
    if (known !== undefined) return known;
    const flow = tiltedFlow(edgeOn, tilt);
    solved.set(tilt, flow);
    return flow;
  };
  return success({ body: body.value, edgeOn, tilted });
}

/**
 * A body at one attitude in one stream: what its states and draws are taken from, see wholeStates.ts and wholeDraws.ts.
 * @param tilt  angle between mid-plane and stream, rad, 0 (edge-on) to pi / 2 (face-on)
 * @param walls the stream with the plain walls, and with walls as rough as their grooves are deep where there are any
 */
export function conditionWhole(flows: WholeFlows, tilt: number, walls: readonly WholeStream[]): ConditionedBody {
  if (!(tilt >= 0 && tilt <= Math.PI / 2)) throw new RangeError(`tilt is ${tilt} rad; it must be 0 to pi/2.`);
  const { edgeOn, body } = flows;
  const edgeOns = walls.map((stream) => conditionEdgeOn(edgeOn, stream));
  const crisisReynolds = walls[0].reynolds / Math.exp(edgeOns[0].rimMargin);
  if (tilt === 0 || body.edges === null) {
    return {
      walls: edgeOns.map((flow) => [{ flow, weight: 1 }]),
      frontalArea: edgeOn.grid.frontalArea,
      diameter: body.diameter,
      crisisReynolds,
    };
  }
  const tilted = flows.tilted(tilt);
  return {
    walls: edgeOns.map((flow, i) => weighted(tilted, conditionTilted(tilted, flow, walls[i]))),
    frontalArea: tilted.grid.frontalArea,
    diameter: body.diameter,
    crisisReynolds,
  };
}

/** The rim first, then the face, as far as there are both. */
function weighted({ faceShare }: TiltedFlow, flows: ReturnType<typeof conditionTilted>): WeightedFlow[] {
  if (flows.length === 1) return [{ flow: flows[0], weight: 1 }];
  return flows.map((flow, i) => ({ flow, weight: i === 0 ? 1 - faceShare : faceShare }));
}
