import type { FlowCondition } from "../condition";
import type { CalibratedConstants } from "../constants/calibrated";
import { LAYER_NUMBERS } from "../constants/layerNumbers";
import type { SideState, TransitionCause } from "../solution";
import { reattachmentDistance, shearLayerTransitionReynolds } from "./bubble";
import type { StationSink, TurbulentMarch } from "./lagEntrainmentMarch";
import type { LaminarDip } from "./laminarLayer";
import { integralMethod, type LayerMethod } from "./layerMethod";
import { type LongBubble, longBubble } from "./longBubble";
import { type SideStations, stationOfArc, stationValue } from "./sideStations";
import { SEPARATION_SHAPE_FACTOR } from "./similarLayers";
import type { StationTrip } from "./transition";
import { followTurbulent } from "./turbulentLayer";

/** How the layer on one side meets an assumed separation point. */
export interface SideLayer {
  readonly state: SideState;
  /**
   * Distance / D by which the layer separates behind the assumed separation point: above 0 when it is still attached
   * there (then an estimate from its last rate of change), below 0 when it has separated before.
   */
  readonly residual: number;
  /** Arc / D where the layer separates for good; the last station when it is still attached there. */
  readonly separationArc: number;
  readonly transitionCause: TransitionCause | null;
  readonly transitionArc: number | null;
  readonly bubble: { readonly separationArc: number; readonly reattachmentArc: number } | null;
  /** The long bubble of a layer that comes back to its side; only where the condition asks for it. */
  readonly longBubble: LongBubble | null;
  /** Thickness of a turbulent layer where it leaves / D, and how sharp the wall is there, see cornerSharpness.ts; 0 of a laminar one. */
  readonly thickness: number;
  readonly sharpness: number;
}

/**
 * Follows the boundary layer along one side: laminar from the stagnation point, then transition (attached, or in the
 * separated shear layer), a bubble where that layer comes back to the wall, and the turbulent layer to its separation.
 * @param sink receives the turbulent part step by step, when it is wanted
 * @param method of the attached layers, the engine's own unless another is given
 */
export function followSide(
  stations: SideStations,
  condition: FlowCondition,
  trips: readonly StationTrip[],
  constants: CalibratedConstants,
  sink?: StationSink,
  method: LayerMethod = integralMethod,
): SideLayer {
  const root = Math.sqrt(condition.reynolds);
  const end = stations.arc[stations.count - 1];
  const attached = method.attachedTransition(stations, condition, trips, constants);
  const dip = turbulentDip(stations, condition);
  if (dip !== null && (attached === null || dip.separation < attached.station)) {
    return bubbleSide(stations, condition, constants, method, bridgedBubble(stations, dip, condition, constants), sink);
  }
  if (attached !== null) {
    const arc = stationValue(stations.arc, attached.station);
    const momentumThickness = stationValue(stations.laminar.thickness, attached.station) / root;
    const start = { arc, momentumThickness, stress: null };
    const march = followTurbulent(stations, condition, start, constants, method, sink);
    if (condition.longBubbles && march.separationArc !== null) {
      const station = stationOfArc(stations, march.separationArc);
      const long = longBubbleSide(stations, condition, constants, method, station, march.momentumThickness, 0, sink);
      if (long !== null) return { ...long, transitionCause: attached.cause, transitionArc: arc };
    }
    return turbulentEnd("turbulent separation", attached.cause, arc, null, march, end);
  }
  if (stations.laminar.separation === Number.POSITIVE_INFINITY) {
    return {
      state: "laminar separation",
      residual: stations.laminar.remainingArc,
      separationArc: end,
      transitionCause: null,
      transitionArc: null,
      bubble: null,
      longBubble: null,
      thickness: 0,
      sharpness: 0,
    };
  }
  const separationArc = stationValue(stations.arc, stations.laminar.separation);
  const separationSpeed = stationValue(stations.speed, stations.laminar.separation);
  const laminarLength = laminarShearLayerLength(stations, stations.laminar.separation, condition);
  const curvature = stationValue(stations.curvature, stations.laminar.separation);
  const distance = reattachmentDistance(laminarLength, curvature, constants.reattachmentSlope);
  const separationThickness = stations.laminar.separationThickness / root;
  if (distance === null) {
    if (condition.longBubbles) {
      const { separation } = stations.laminar;
      const long = longBubbleSide(
        stations,
        condition,
        constants,
        method,
        separation,
        separationThickness,
        laminarLength,
        sink,
      );
      if (long !== null) return long;
    }
    return {
      state: "laminar separation",
      residual: separationArc - end,
      separationArc,
      transitionCause: "separated shear layer",
      transitionArc: separationArc + laminarLength,
      bubble: null,
      longBubble: null,
      thickness: 0,
      sharpness: 0,
    };
  }
  const reattachmentArc = separationArc + distance;
  const reattachmentSpeed = stationValue(stations.speed, stationOfArc(stations, Math.min(reattachmentArc, end)));
  // Momentum integral without friction: theta grows as Ue^-(H+2), H being that of the laminar profile at separation.
  const growth = (separationSpeed / reattachmentSpeed) ** (SEPARATION_SHAPE_FACTOR + 2);
  const bubble = {
    separationArc,
    reattachmentArc,
    transitionArc: separationArc + laminarLength,
    momentumThickness: separationThickness * growth,
    stress: constants.reattachmentStress,
  };
  const short = bubbleSide(stations, condition, constants, method, bubble, sink);
  if (!condition.longBubbles || stations.outline === undefined) return short;
  // Over a short bubble the front keeps its suction; how far the layer of an open wake would reach is the same.
  const { separation } = stations.laminar;
  const reach = longBubble(stations, stations.outline, separation, laminarLength, condition.turbulenceIntensity);
  return { ...short, longBubble: { ...reach, speed: Number.POSITIVE_INFINITY, drag: 0, lift: 0 } };
}

/** A layer has to leave this far / D ahead of the assumed point to count as one that comes back. */
const SHORTEST_SIDE = LAYER_NUMBERS.shortestSide.value;
/** Share of the way to the assumed point by which a layer that does come back is taken to be back at the latest. */
const LATEST_REATTACHMENT = LAYER_NUMBERS.latestReattachment.value;

/**
 * The turbulent layer behind a long bubble, to its separation: in equilibrium, with the momentum missing that the front
 * has lost in suction (drag of one side = 2 theta U_R^2). Null when it leaves where the flow assumes it.
 */
function longBubbleSide(
  stations: SideStations,
  condition: FlowCondition,
  constants: CalibratedConstants,
  method: LayerMethod,
  separation: number,
  theta: number,
  laminarLength: number,
  sink?: StationSink,
): SideLayer | null {
  if (stations.outline === undefined) return null;
  const separationArc = stationValue(stations.arc, separation);
  const room = stations.arc[stations.count - 1] - separationArc;
  if (room < SHORTEST_SIDE) return null;
  const long = longBubble(stations, stations.outline, separation, laminarLength, condition.turbulenceIntensity);
  const distance = Math.min(long.length, LATEST_REATTACHMENT * room);
  const reattachmentArc = separationArc + distance;
  const speed = stationValue(stations.speed, stationOfArc(stations, reattachmentArc));
  const growth = Math.max(1, long.speed / speed) ** (SEPARATION_SHAPE_FACTOR + 2);
  const bubble = {
    separationArc,
    reattachmentArc,
    transitionArc: separationArc + Math.min(distance, laminarLength),
    momentumThickness: theta * growth + long.drag / (2 * speed * speed),
    stress: null,
  };
  return { ...bubbleSide(stations, condition, constants, method, bubble, sink), longBubble: long };
}

/** A bubble with a turbulent layer behind it; arcs and momentum thickness at reattachment / D. */
interface TurbulentBubble {
  readonly separationArc: number;
  readonly reattachmentArc: number;
  readonly transitionArc: number;
  readonly momentumThickness: number;
  /** Largest shear stress / (rho Ue^2); null for a layer in equilibrium. */
  readonly stress: number | null;
}

/** The turbulent layer behind a bubble, to its separation. */
function bubbleSide(
  stations: SideStations,
  condition: FlowCondition,
  constants: CalibratedConstants,
  method: LayerMethod,
  { separationArc, reattachmentArc, transitionArc, momentumThickness, stress }: TurbulentBubble,
  sink?: StationSink,
): SideLayer {
  const end = stations.arc[stations.count - 1];
  const bubble = { separationArc, reattachmentArc };
  if (reattachmentArc >= end) {
    return {
      state: "separation bubble",
      residual: reattachmentArc - end + 1e-6,
      separationArc: end,
      transitionCause: "separated shear layer",
      transitionArc,
      bubble,
      longBubble: null,
      thickness: 0,
      sharpness: 0,
    };
  }
  const start = { arc: reattachmentArc, momentumThickness, stress };
  const march = followTurbulent(stations, condition, start, constants, method, sink);
  return turbulentEnd("separation bubble", "separated shear layer", transitionArc, bubble, march, end);
}

/** The first bridged dip that is longer than the laminar part of its shear layer, so that the layer leaves it turbulent. */
function turbulentDip(stations: SideStations, condition: FlowCondition): LaminarDip | null {
  const { arc, laminar } = stations;
  return (
    laminar.dips.find(({ separation, recovery }) => {
      const length = stationValue(arc, recovery) - stationValue(arc, separation);
      return laminarShearLayerLength(stations, separation, condition) < length;
    }) ?? null
  );
}

function bridgedBubble(
  stations: SideStations,
  dip: LaminarDip,
  condition: FlowCondition,
  constants: CalibratedConstants,
): TurbulentBubble {
  const separationArc = stationValue(stations.arc, dip.separation);
  return {
    separationArc,
    reattachmentArc: stationValue(stations.arc, dip.recovery),
    transitionArc: separationArc + laminarShearLayerLength(stations, dip.separation, condition),
    momentumThickness: dip.thickness / Math.sqrt(condition.reynolds),
    stress: constants.reattachmentStress,
  };
}

/** Length of the laminar part of the shear layer that leaves the wall at a station / D. */
export function laminarShearLayerLength(stations: SideStations, station: number, condition: FlowCondition): number {
  const speed = stationValue(stations.speed, station);
  return shearLayerTransitionReynolds(condition.turbulenceIntensity / speed) / (speed * condition.reynolds);
}

function turbulentEnd(
  state: SideState,
  transitionCause: TransitionCause,
  transitionArc: number,
  bubble: SideLayer["bubble"],
  { separationArc, remainingArc, thickness, sharpness }: TurbulentMarch,
  end: number,
): SideLayer {
  return {
    state,
    residual: separationArc === null ? remainingArc : separationArc - end,
    separationArc: separationArc ?? end,
    transitionCause,
    transitionArc,
    bubble,
    longBubble: null,
    thickness,
    sharpness,
  };
}
