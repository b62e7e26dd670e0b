import type { TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import type { MeasuredSetInputs } from "../compare/compareInputs";
import { setOfReduction } from "../compare/tunnelOffer";
import type { TunnelInputs } from "./tunnelInputs";

/** The reduced test as a set for the view of measurements; null without reduced points. */
export function offeredSet(
  { title, block }: TunnelInputs,
  { model, facility, reduction }: TunnelResult,
): MeasuredSetInputs | null {
  if (reduction === null || reduction.points.length === 0) return null;
  const { section, puck, attitude = "edgeOn", sandGrainRoughnessMetres } = block.model;
  const facts = {
    name: `${model}, tunnel test`.slice(-100),
    source: `${title}; ${facility}`.slice(0, 500),
    turbulencePercent: block.facility.turbulencePercent,
    sandGrainRoughnessMetres,
  };
  if (section !== undefined) return setOfReduction(reduction, { ...facts, thing: { section } });
  return puck === undefined ? null : setOfReduction(reduction, { ...facts, thing: { puck, attitude } });
}
