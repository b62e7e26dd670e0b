import type { FlowCondition } from "../condition";
import { CALIBRATED } from "../constants/calibrated";
import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import { reattachedShare } from "../layer/longBubble";
import { followSide, type SideLayer } from "../layer/sideLayer";
import type { StationTrip } from "../layer/transition";
import { type BaseBand, baseBand } from "./baseBand";
import { azimuthAtArc, type BodyLine, stayingReynolds } from "./bodyLayers";
import type { ConditionedFlow, FlowBranch, RimBranches } from "./conditionedFlow";
import {
  azimuthAt,
  BEHIND_SEPARATION,
  baseShareAt,
  betweenRows,
  type EdgeOnFlow,
  type EdgeStrip,
  firstTurbulentRow,
  rowAt,
} from "./edgeOnFlow";
import { meanFriction, type StripFriction, stripFriction } from "./lineFriction";
import { START_RADIUS } from "./surfaceLines";
import type { WakeRow } from "./wakeRow";

/** The last place on the rim at which a wake settles; a layer that would leave later is given the forces of this one. */
const lastSettled = rowAt(WHOLE_NUMBERS.settledRim.value);

/** A pattern of ridges or grooves on the faces, from this distance from the axis inward; lengths over the diameter. */
export interface FacePattern {
  readonly outerRadiusRatio: number;
  readonly heightRatio: number;
}

/** The stream and the walls that a body has in it; lengths over the diameter. */
export interface WholeStream {
  /** U d / nu. */
  readonly reynolds: number;
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** Equivalent sand grains ks / d. */
  readonly rimRoughnessRatio: number;
  readonly faceRoughnessRatio: number;
  /** Null without one. A pattern turns the face's layer where that is attached and the pattern is high enough. */
  readonly facePattern: FacePattern | null;
}

/** Where the layers of a body go over its edges in a stream, whatever its rim does. */
export interface EdgeLayers {
  /** ln(Re / Re at which the edge's layer stays), by line. */
  readonly margins: readonly number[];
  readonly backShares: readonly number[];
  readonly suctionCap: number;
  /** Friction on the strips with their layers followed, and of the laminar layers up to the edge alone. */
  readonly followed: readonly WideStrip[];
  readonly front: readonly WideStrip[];
}

type WideStrip = StripFriction & { readonly width: number };

/** What a lost front is capped at where no line has a bubble that would say it. */
const NO_CAP = Number.NEGATIVE_INFINITY;
/** A turned rim is looked at no lower than this over its crisis. */
const PAST_CRISIS = 1.02;

/** The flow along the mid-plane in one stream. */
export function conditionEdgeOn(flow: EdgeOnFlow, stream: WholeStream): ConditionedFlow {
  const { body, rows, across } = flow;
  const lengthRatio = body.thickness / body.diameter;
  const rimCondition = {
    reynolds: stream.reynolds,
    sandGrainRoughnessRatio: stream.rimRoughnessRatio,
    turbulenceIntensity: stream.turbulenceIntensity,
  };
  const crisis = flow.rim === null ? Number.POSITIVE_INFINITY : stayingReynolds(flow.rim.stations, rimCondition);
  const edge = edgeLayers(flow.edges, body.diameter, stream);
  const area = flow.grid.frontalArea;
  const rimWidth = flow.edges.length === 0 ? Math.PI / 2 : RIM_WIDTH;
  const branch = (
    rim: {
      readonly state: "laminar" | "turned";
      readonly azimuth: number;
      readonly friction: StripFriction;
      readonly settled: boolean;
    },
    nodes: FlowBranch["nodes"],
    base: BaseBand,
    faces: readonly WideStrip[],
    wettedArea: number,
  ): FlowBranch => ({
    rimState: rim.state,
    rimSeparation: rim.azimuth,
    nodes,
    base,
    friction: (meanFriction([{ ...rim.friction, width: rimWidth }, ...faces]) * wettedArea) / area,
    suctionCap: edge.suctionCap,
    settled: rim.settled,
  });
  const band = (baseShare: number) => baseBand({ across, lengthRatio, baseShare });
  const openBranch = (rim: Parameters<typeof branch>[0], row: WakeRow | undefined) =>
    row === undefined ? null : branch(rim, row.nodes, band(1), edge.front, row.wettedArea);

  const laminarRim = {
    state: "laminar" as const,
    azimuth: flow.laminarAzimuth,
    friction: rimFriction(flow.rim, null, stream.reynolds),
    settled: true,
  };
  const laminar: RimBranches = {
    followed: branch(laminarRim, flow.laminar, band(1), edge.followed, rows[firstTurbulentRow].wettedArea),
    open: openBranch(laminarRim, flow.open?.laminar),
    backShares: edge.backShares,
  };
  const margin = Math.log(stream.reynolds / crisis);
  if (!Number.isFinite(crisis)) {
    return { rimMargin: Number.NEGATIVE_INFINITY, edgeMargins: edge.margins, laminar, turned: laminar, tiltedness: 0 };
  }
  const past = { ...rimCondition, reynolds: Math.max(stream.reynolds, PAST_CRISIS * crisis) };
  const layers = rows.map(({ turnedRim }) => (turnedRim === null ? null : followRim(turnedRim, past)));
  const found = turnedPlace(flow, layers);
  const place = Math.min(found, lastSettled);
  const nearest = rows[Math.round(place)].turnedRim;
  const turnedRim = {
    state: "turned" as const,
    azimuth: azimuthAt(place),
    friction: rimFriction(nearest, layers[Math.round(place)], past.reynolds),
    settled: found <= lastSettled,
  };
  const turned: RimBranches = {
    followed: branch(
      turnedRim,
      betweenRows(rows, place),
      band(baseShareAt(rows, place)),
      edge.followed,
      rows[Math.round(place)].wettedArea,
    ),
    open: openBranch(turnedRim, flow.open?.turned),
    backShares: edge.backShares,
  };
  return { rimMargin: margin, edgeMargins: edge.margins, laminar, turned, tiltedness: 0 };
}

/** Half the angle at the front point to the first line over the edge, rad: what the rim's line stands for. */
const RIM_WIDTH = 0.2;

interface FollowedLayer {
  readonly layer: SideLayer;
  readonly turbulent: readonly number[];
}

function followRim({ stations }: BodyLine, condition: FlowCondition): FollowedLayer {
  const turbulent: number[] = [];
  const layer = followSide(stations, condition, [], CALIBRATED, (...point) => turbulent.push(...point));
  return { layer, turbulent };
}

/** Fractional row where a turned rim's layer leaves as its wake assumes it: the last place where it is not behind the line. */
function turnedPlace({ rows }: EdgeOnFlow, layers: readonly (FollowedLayer | null)[]): number {
  const residuals = rows.map((row, i) => {
    const followed = layers[i];
    // A line that does not come so far round the rim has left before.
    if (row.turnedRim === null || followed === null) return -BEHIND_SEPARATION;
    const { residual, separationArc } = followed.layer;
    if (residual > 0) return BEHIND_SEPARATION;
    return azimuthAtArc(row.turnedRim, separationArc) - row.azimuth;
  });
  let last = rows.length - 1;
  while (last > firstTurbulentRow && !(residuals[last] > 0)) last--;
  if (last === rows.length - 1 || !(residuals[last] > 0)) return last;
  return last + residuals[last] / (residuals[last] - residuals[last + 1]);
}

function rimFriction(rim: BodyLine | null, followed: FollowedLayer | null, reynolds: number): StripFriction {
  if (rim === null) return { force: 0, area: 0 };
  const startRadius = (START_RADIUS * rim.reference) / 2;
  if (followed === null) {
    const laminarOnly = followSide(
      rim.stations,
      { reynolds, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0 },
      [],
      CALIBRATED,
    );
    const layer = { ...laminarOnly, bubble: null, transitionArc: laminarArc(rim) };
    return stripFriction(rim, layer, [], reynolds, DOWNSTREAM, startRadius);
  }
  return stripFriction(rim, followed.layer, followed.turbulent, reynolds, DOWNSTREAM, startRadius);
}

/** Arc / reference up to which a line's layer is laminar and attached, however fast the stream. */
function laminarArc({ stations }: BodyLine): number {
  const { arc, laminar, count } = stations;
  if (!Number.isFinite(laminar.separation)) return arc[count - 1];
  const i = Math.min(count - 2, Math.floor(laminar.separation));
  return arc[i] + (laminar.separation - i) * (arc[i + 1] - arc[i]);
}

const DOWNSTREAM = [1, 0, 0] as const;

/** Follows the layers over the edges of a body. @param diameter m */
export function edgeLayers(strips: readonly EdgeStrip[], diameter: number, stream: WholeStream): EdgeLayers {
  const margins: number[] = [];
  const backShares: number[] = [];
  const caps: number[] = [];
  const followed: WideStrip[] = [];
  const front: WideStrip[] = [];
  for (const strip of strips) {
    const { stations, reference, width } = strip;
    const scale = diameter / reference;
    const condition = {
      reynolds: stream.reynolds / scale,
      sandGrainRoughnessRatio: stream.faceRoughnessRatio * scale,
      turbulenceIntensity: stream.turbulenceIntensity,
      longBubbles: true,
    };
    const trips = patternTrips(strip, diameter, stream.facePattern);
    margins.push(Math.log(condition.reynolds / stayingReynolds(stations, condition, trips)));
    const turbulent: number[] = [];
    const layer = followSide(stations, condition, trips, CALIBRATED, (...point) => turbulent.push(...point));
    const long = layer.longBubble;
    backShares.push(backShareOf(layer));
    if (long !== null && Number.isFinite(long.speed)) caps.push(1 - long.speed ** 2);
    const startRadius = (START_RADIUS * diameter) / 2;
    const friction = (points: readonly number[]) =>
      stripFriction(strip, layer, points, condition.reynolds, DOWNSTREAM, startRadius);
    followed.push({ ...friction(turbulent), width });
    front.push({ ...friction([]), width });
  }
  const suctionCap = caps.length === 0 ? NO_CAP : caps.reduce((sum, cap) => sum + cap, 0) / caps.length;
  return { margins, backShares, suctionCap, followed, front };
}

/** Share of the time for which a layer that left the edge is back on the face; none where its bubble has no length. */
function backShareOf({ longBubble, state }: SideLayer): number {
  if (longBubble === null) return state === "laminar separation" ? 0 : 1;
  const share = reattachedShare(longBubble.side, longBubble.length);
  return Number.isFinite(share) ? share : 0;
}

/** The pattern as a trip where the line first comes over it. */
function patternTrips(
  { line, stations, reference }: EdgeStrip,
  diameter: number,
  pattern: FacePattern | null,
): StationTrip[] {
  if (pattern === null) return [];
  const { position, count } = stations;
  const reach = pattern.outerRadiusRatio * diameter;
  let peak = 0;
  for (let station = 1; station < count; station++) {
    const i = Math.min(line.count - 1, Math.max(0, Math.round(position[station])));
    const radius = Math.hypot(line.x[i], line.y[i]);
    peak = Math.max(peak, Math.abs(line.z[i]));
    const onFace = Math.abs(line.z[i]) >= peak && line.curvature[i] === 0;
    if (onFace && radius <= reach) return [{ station, heightRatio: (pattern.heightRatio * diameter) / reference }];
  }
  return [];
}
