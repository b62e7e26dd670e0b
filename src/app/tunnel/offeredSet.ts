import type { TunnelResult } from "../../../shared/tunnel/tunnelResult";
import type { MeasuredSetInputs } from "../compare/compareInputs";
import { setOfReduction } from "../compare/tunnelOffer";
import type { TunnelInputs } from "./tunnelInputs";

/**
 * The reduced test as a set for the view of measurements: that of a section as it is; that of a puck edge-on as one of
 * its plan section with free ends. Null without reduced points, and for a puck face-on, which has no section.
 */
export function offeredSet(
  { title, block }: TunnelInputs,
  { model, facility, reduction }: TunnelResult,
): MeasuredSetInputs | null {
  if (reduction === null || reduction.points.length === 0) return null;
  const { section, puck, attitude, sandGrainRoughnessMetres } = block.model;
  const facts = {
    name: `tunnel: ${model}`.slice(0, 100),
    source: `${title}; ${facility}`.slice(0, 500),
    turbulencePercent: block.facility.turbulencePercent,
    sandGrainRoughnessMetres,
  };
  if (section !== undefined) return setOfReduction(reduction, { ...facts, section, freeEnds: false });
  if (puck === undefined || attitude === "faceOn") return null;
  return setOfReduction(reduction, {
    ...facts,
    section: { family: "circle", name: `${puck.name}, plan section`, diameterMetres: puck.diameterMetres },
    lengthToWidth: puck.thicknessMetres / puck.diameterMetres,
    freeEnds: true,
  });
}
