import type { FreeCoreDimension, MassTarget } from "../../../shared/jobs/puck/body/coreSizing";
import type { PuckCore, PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";

/** The dimensions of each kind of core that a wanted mass can size, the usual one first. */
export const coreDimensions: Readonly<Record<PuckCore["kind"], readonly FreeCoreDimension[]>> = {
  none: [],
  disc: ["thickness", "diameter"],
  ring: ["thickness", "diameter", "innerDiameter"],
  underCoat: ["coatThickness"],
};

/** The wanted mass with a dimension that this core has; null for a puck without a core. */
export function fittingTarget({ core }: PuckSpec, target: MassTarget): MassTarget | null {
  const dimensions = coreDimensions[core.kind];
  if (dimensions.includes(target.freeDimension)) return target;
  return dimensions.length === 0 ? null : { ...target, freeDimension: dimensions[0] };
}
