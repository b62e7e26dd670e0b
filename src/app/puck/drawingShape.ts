import { grooveProfileOutline, planLines } from "../../../shared/jobs/handoff/grooveOutlines";
import { coreOutlines, planOutline, profileOutline } from "../../../shared/jobs/handoff/outline";
import { outlinePath } from "../../../shared/jobs/handoff/outlineSvg";
import { edgeReach } from "../../../shared/jobs/puck/body/outerShape";
import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";

/** What the drawing of a puck is made of: SVG paths in mm about the puck's centre, y downward. */
export interface PuckDrawing {
  readonly diameter: number;
  readonly thickness: number;
  readonly profile: string;
  readonly cores: readonly string[];
  readonly plan: string;
  /** The profile through the grooves, dashed. */
  readonly grooves: string;
  /** Recess and grooves as seen along the axis. */
  readonly planGrooves: string;
  /** Where a leader to the edge starts. */
  readonly edge: { readonly x: number; readonly y: number; readonly text: string };
}

/** The paths of a puck that can be made. */
export function puckDrawingShape(spec: PuckSpec): PuckDrawing {
  const [R, h] = [500 * spec.diameterMetres, 500 * spec.thicknessMetres];
  const { radial, axial } = edgeReach(spec);
  const grooved = grooveProfileOutline(spec);
  return {
    diameter: 2 * R,
    thickness: 2 * h,
    profile: outlinePath(profileOutline(spec)),
    cores: coreOutlines(spec).map(outlinePath),
    plan: outlinePath(planOutline(spec)),
    grooves: grooved === null ? "" : outlinePath(grooved),
    planGrooves: planLines(spec)
      .map(({ outline }) => outlinePath(outline))
      .join(""),
    edge: { x: R - 300 * radial, y: 300 * axial - h, text: edgeText(spec) },
  };
}

function edgeText({ edge }: PuckSpec): string {
  const mm = (metres: number) => Number((1000 * metres).toPrecision(4));
  if (edge.kind === "radius") return `R ${mm(edge.edgeRadiusMetres)}`;
  if (edge.kind === "bevel") return `${mm(edge.radialMetres)} × ${mm(edge.axialMetres)}`;
  return "free profile";
}
