import type { FlowCondition } from "../condition";
import type { CalibratedConstants } from "../constants/calibrated";
import { marchTurbulent, type StationSink, type TurbulentMarch, type TurbulentStart } from "./lagEntrainmentMarch";
import { type LaminarMethod, laminarLayer } from "./laminarLayer";
import type { LayerMethodName } from "./layerMethodName";
import type { SideStations } from "./sideStations";
import { marchHead } from "./textbook/headMarch";
import { michelTransition } from "./textbook/michel";
import { thwaitesLayer } from "./textbook/thwaites";
import { type AttachedTransition, attachedTransition, type StationTrip } from "./transition";

/** How the attached layers of a side are worked out. What happens in a separated shear layer is the same for all. */
export interface LayerMethod {
  readonly name: LayerMethodName;
  readonly laminarLayer: LaminarMethod;
  /** First place where the attached laminar layer turns; null when it does not. */
  readonly attachedTransition: (
    stations: SideStations,
    condition: FlowCondition,
    trips: readonly StationTrip[],
    constants: CalibratedConstants,
  ) => AttachedTransition | null;
  /** The turbulent layer to its separation or the last station; see marchTurbulent in lagEntrainmentMarch.ts. */
  readonly marchTurbulent: (
    stations: SideStations,
    reynolds: number,
    roughnessRatio: number,
    start: TurbulentStart,
    detachmentFriction: number,
    sink?: StationSink,
  ) => TurbulentMarch;
}

/** Momentum and energy integrals, Abu-Ghannam & Shaw's transition, lag entrainment with rough walls. */
export const integralMethod: LayerMethod = { name: "integral", laminarLayer, attachedTransition, marchTurbulent };

/**
 * What a textbook gives: Thwaites (1949), Michel (1951) and Head (1958), each with its own criterion. Transition is that
 * of a quiet stream (roughness and trips still fire), the turbulent layer that of a smooth wall.
 */
const textbookMethod: LayerMethod = {
  name: "textbook",
  laminarLayer: thwaitesLayer,
  attachedTransition: (stations, condition, trips, constants) =>
    attachedTransition(stations, condition, trips, constants, (_lambda, _turbulence, reynoldsArc) =>
      michelTransition(reynoldsArc),
    ),
  marchTurbulent: marchHead,
};

const methods: Readonly<Record<LayerMethodName, LayerMethod>> = { integral: integralMethod, textbook: textbookMethod };

export function layerMethod(name: LayerMethodName): LayerMethod {
  return methods[name];
}
