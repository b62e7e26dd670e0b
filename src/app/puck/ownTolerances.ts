import { dimensionKeys, dimensionOf } from "../../../shared/jobs/puck/body/puckDimension";
import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";
import type { MakingTolerances } from "../../../shared/jobs/puck/rules/judgePuck";

/** The tolerances of the dimensions that a puck has; those of another kind of edge or core are kept but not used. */
export function ownTolerances(spec: PuckSpec, tolerances: MakingTolerances): MakingTolerances {
  return Object.fromEntries(
    dimensionKeys
      .filter((key) => tolerances[key] !== undefined && dimensionOf(spec, key) !== null)
      .map((key) => [key, tolerances[key]]),
  );
}
