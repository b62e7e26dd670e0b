import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import type { Result } from "../../shared/result";

/** An invented puck of the Harbour League's size: 80 x 30 mm, edge radius 6 mm, lead disc in polyurethane. */
export const examplePuck: PuckSpec = {
  name: "Harbour League baseline",
  diameterMetres: 0.08,
  thicknessMetres: 0.03,
  edge: { kind: "radius", edgeRadiusMetres: 0.006 },
  face: { kind: "flat" },
  rim: { kind: "plain" },
  core: { kind: "disc", material: "lead", diameterMetres: 0.068, thicknessMetres: 0.022, edgeRadiusMetres: 0.002 },
  coatMaterial: "polyurethane",
};

export function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}
