import { CALIBRATED } from "../constants/calibrated";
import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import { reattachedShare } from "../layer/longBubble";
import { followSide } from "../layer/sideLayer";
import { baseBand, speedRatioOf } from "./baseBand";
import { type BodyLine, edgeLine, stayingReynolds } from "./bodyLayers";
import type { ConditionedFlow, FlowBranch } from "./conditionedFlow";
import type { WholeStream } from "./conditionFlow";
import { type EdgeOnFlow, edgeReach } from "./edgeOnFlow";
import { lineStations } from "./lineStations";
import { separationLine, type Wetting } from "./separationFamily";
import { type StreamGrid, streamGrid } from "./streamGrid";
import { surfaceField } from "./surfaceField";
import { type SurfaceLine, stagnationDirection, surfaceLines } from "./surfaceLines";
import { type WakeRow, wakeRow } from "./wakeRow";
import type { WholeBody } from "./wholeBody";
import { streamPotential } from "./wholeFlow";
import { wakeOf } from "./wholeWake";

/** The flow about a body at a tilt, as far as it depends on no Reynolds number. */
export interface TiltedFlow {
  readonly body: WholeBody;
  readonly tilt: number;
  readonly grid: StreamGrid;
  /** The front is the rim: upper face followed or left, the rim leaving as edge-on. Null where the lower face is the front. */
  readonly rimFirst: readonly { readonly azimuth: number; readonly followed: WakeRow; readonly open: WakeRow }[];
  /** The lower face is the front: the flow follows the rim to its rear edge, or leaves at the front edge. */
  readonly faceFirst: { readonly followed: WakeRow; readonly open: WakeRow };
  /** Share of the second: 0 while the front point lies on rim or edge, 1 from the attitude on in which it lies on the face. */
  readonly faceShare: number;
  /** Line over the upper edge and the upper face, and that from the lower face over its edge. */
  readonly upperEdge: BodyLine | null;
  readonly lowerEdge: BodyLine | null;
}

const TURNED_AZIMUTH = WHOLE_NUMBERS.turnedAzimuth.value;
/** An azimuth that every place of the rim is ahead of. */
const ALL_ROUND = Math.PI + 1;

/** @param tilt rad, above 0 to pi / 2; edges are needed: bodies without them are met alike from all sides */
export function tiltedFlow({ body, laminarAzimuth, across }: EdgeOnFlow, tilt: number): TiltedFlow {
  const { edges } = body;
  if (edges === null) throw new RangeError("the body has no edges; a tilt is solved for bodies with faces.");
  const grid = streamGrid(body.flow, body.shape, tilt);
  const row = (wetting: Wetting) => wakeRow(grid, separationLine(grid, edges, wetting));
  const stream = surfaceField(body.flow.panels, streamPotential(body.flow, tilt));
  const front = stagnationDirection(body.shape, stream, tilt);
  const latitude = Math.atan2(front[2], -front[0]);
  const corner = Math.atan2(body.thickness / 2, body.diameter / 2);
  // From the corner to where the face's front point is half-way to the middle.
  const faceShare = Math.min(1, Math.max(0, (-latitude - corner) / (Math.PI / 4 - corner / 2)));
  const lengthRatio = body.thickness / body.diameter;
  const k = speedRatioOf(baseBand({ across: across * Math.cos(tilt) ** 2, lengthRatio, baseShare: 1 }).expected);
  const rimFirst =
    faceShare === 1
      ? []
      : [laminarAzimuth, TURNED_AZIMUTH].map((azimuth) => ({
          azimuth,
          followed: row({ rim: azimuth, lowerFace: true, upperFace: true }),
          open: row({ rim: azimuth, lowerFace: true, upperFace: false }),
        }));
  const faceFirst = {
    followed: row({ rim: ALL_ROUND, lowerFace: true, upperFace: false }),
    open: row({ rim: 0, lowerFace: true, upperFace: false }),
  };
  const upperLine = (followed: WakeRow) => {
    const { field } = wakeOf(followed.responses, k);
    const [line] = surfaceLines(body.shape, field, front, [Math.PI / 2], edgeReach(body) + 1);
    return edgeLine(body, edges, line, tilt);
  };
  const { field } = wakeOf(faceFirst.followed.responses, k);
  const [down] = surfaceLines(body.shape, field, front, [Math.PI / 2], edgeReach(body));
  return {
    body,
    tilt,
    grid,
    rimFirst,
    faceFirst,
    faceShare,
    upperEdge: rimFirst.length === 0 ? null : upperLine(rimFirst[0].followed),
    lowerEdge: overLowerEdge(body, down),
  };
}

/** A line from the lower face over its edge, to where the rim meets the upper edge. */
function overLowerEdge({ edges, thickness, diameter }: WholeBody, line: SurfaceLine): BodyLine | null {
  if (edges === null) return null;
  const latitude = (i: number) => Math.atan2(line.z[i], Math.hypot(line.x[i], line.y[i]));
  let last = 0;
  while (last < line.count - 1 && latitude(last) < edges.upper) last++;
  if (last < 5 || latitude(0) > edges.lower) return null;
  const reference = Math.min(thickness, diameter);
  return { line, stations: lineStations(line, reference, line.arc[last]), reference };
}

/** The flow at a tilt in one stream; the friction is left to the edge-on figure times the mid-plane's share. */
export function conditionTilted(flow: TiltedFlow, edgeOn: ConditionedFlow, stream: WholeStream): ConditionedFlow[] {
  const { body, tilt, rimFirst, faceFirst, faceShare } = flow;
  const lengthRatio = body.thickness / body.diameter;
  const base = baseBand({ across: Math.cos(tilt) ** 2, lengthRatio, baseShare: 1 });
  const tiltedness = Math.sin(2 * tilt);
  const branch = (of: FlowBranch, row: WakeRow, suctionCap: number, own = base): FlowBranch => ({
    ...of,
    nodes: row.nodes,
    base: own,
    friction: of.friction * Math.cos(tilt) ** 2,
    suctionCap,
  });
  const flows: ConditionedFlow[] = [];
  if (rimFirst.length > 0) {
    const upper = edgeOutcome(flow.upperEdge, stream, body);
    const [laminar, turned] = rimFirst.map(({ followed, open }, i) => {
      const of = i === 0 ? edgeOn.laminar : edgeOn.turned;
      const { baseShare } = followed;
      const own = baseBand({ across: Math.cos(tilt) ** 2, lengthRatio, baseShare: i === 0 ? 1 : baseShare });
      return {
        followed: branch(of.followed, followed, upper.suctionCap, own),
        open: branch(of.open ?? of.followed, open, upper.suctionCap),
        backShares: [upper.backShare],
      };
    });
    flows.push({ rimMargin: edgeOn.rimMargin, edgeMargins: [upper.margin], laminar, turned, tiltedness });
  }
  if (faceShare > 0) {
    const lower = edgeOutcome(flow.lowerEdge, stream, body);
    const own = baseBand({ across: Math.cos(tilt) ** 2, lengthRatio, baseShare: 1, afterbody: lengthRatio });
    const open = branch(edgeOn.laminar.followed, faceFirst.open, Number.NEGATIVE_INFINITY, own);
    const followed = branch(edgeOn.turned.followed, faceFirst.followed, Number.NEGATIVE_INFINITY);
    const branches = {
      followed: { ...followed, rimState: "turned" as const, rimSeparation: null, settled: true },
      open: { ...open, rimSeparation: null, settled: true },
      backShares: [0],
    };
    flows.push({
      rimMargin: Number.NEGATIVE_INFINITY,
      edgeMargins: [lower.margin],
      laminar: branches,
      turned: branches,
      tiltedness,
    });
  }
  return flows;
}

function edgeOutcome(edge: BodyLine | null, stream: WholeStream, { diameter }: WholeBody) {
  if (edge === null) return { margin: Number.NEGATIVE_INFINITY, backShare: 0, suctionCap: Number.NEGATIVE_INFINITY };
  const scale = diameter / edge.reference;
  const condition = {
    reynolds: stream.reynolds / scale,
    sandGrainRoughnessRatio: stream.faceRoughnessRatio * scale,
    turbulenceIntensity: stream.turbulenceIntensity,
    longBubbles: true,
  };
  const { longBubble } = followSide(edge.stations, condition, [], CALIBRATED);
  return {
    margin: Math.log(condition.reynolds / stayingReynolds(edge.stations, condition)),
    backShare: longBubble === null ? 0 : reattachedShare(longBubble.side, longBubble.length),
    suctionCap:
      longBubble !== null && Number.isFinite(longBubble.speed) ? 1 - longBubble.speed ** 2 : Number.NEGATIVE_INFINITY,
  };
}
