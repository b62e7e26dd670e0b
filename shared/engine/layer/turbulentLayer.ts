import type { FlowCondition } from "../condition";
import type { CalibratedConstants } from "../constants/calibrated";
import type { StationSink, TurbulentMarch, TurbulentStart } from "./lagEntrainmentMarch";
import { recoveryStation } from "./laminarLayer";
import type { LayerMethod } from "./layerMethod";
import { type SideStations, stationOfArc, stationValue } from "./sideStations";

/**
 * A turbulent layer to its separation for good. Where it leaves the wall in a short dip of the edge speed it comes back
 * behind it as a laminar one does (see laminarLayer.ts), with the momentum thickness it left with and in equilibrium, if the
 * dip is longer than the layer is thick: a shorter one, as panels make them, does not renew it.
 * @param sink called step by step, when the layer itself is wanted
 */
export function followTurbulent(
  stations: SideStations,
  { reynolds, sandGrainRoughnessRatio }: FlowCondition,
  first: TurbulentStart,
  { detachmentFriction }: CalibratedConstants,
  method: LayerMethod,
  sink?: StationSink,
): TurbulentMarch {
  let start = first;
  for (;;) {
    const march = method.marchTurbulent(stations, reynolds, sandGrainRoughnessRatio, start, detachmentFriction, sink);
    if (march.separationArc === null) return march;
    const recovery = recoveryStation(stations.speed, stationOfArc(stations, march.separationArc));
    if (recovery === null) return march;
    const arc = stationValue(stations.arc, recovery);
    if (!(arc - march.separationArc > march.thickness)) return march;
    start = { arc, momentumThickness: march.momentumThickness, stress: null };
  }
}
