import { coreOutlines, planOutline, profileOutline } from "../../../shared/handoff/outline";
import { outlinePath } from "../../../shared/handoff/outlineSvg";
import { edgeReach } from "../../../shared/puck/outerShape";
import type { PuckSpec } from "../../../shared/puck/puckSpec";

/** What the drawing of a puck is made of: SVG paths in mm about the puck's centre, y downward. */
export interface PuckDrawing {
  readonly diameter: number;
  readonly thickness: number;
  readonly profile: string;
  readonly cores: readonly string[];
  readonly plan: string;
  /** Dashed floors of grooves in the profile. */
  readonly grooves: string;
  /** Grooves as seen along the axis. */
  readonly planGrooves: string;
  /** Where a leader to the edge starts. */
  readonly edge: { readonly x: number; readonly y: number; readonly text: string };
}

/** The paths of a puck that can be made. */
export function puckDrawingShape(spec: PuckSpec): PuckDrawing {
  const [R, h] = [500 * spec.diameterMetres, 500 * spec.thicknessMetres];
  const { radial, axial } = edgeReach(spec);
  return {
    diameter: 2 * R,
    thickness: 2 * h,
    profile: outlinePath(profileOutline(spec)),
    cores: coreOutlines(spec).map(outlinePath),
    plan: outlinePath(planOutline(spec)),
    grooves: `${faceGrooveFloors(spec, h)}${rimGrooveFloors(spec, R, h)}`,
    planGrooves: planGrooves(spec, R),
    edge: { x: R - 300 * radial, y: 300 * axial - h, text: edgeText(spec) },
  };
}

function edgeText({ edge }: PuckSpec): string {
  const mm = (metres: number) => Number((1000 * metres).toPrecision(4));
  if (edge.kind === "radius") return `R ${mm(edge.radiusMetres)}`;
  if (edge.kind === "bevel") return `${mm(edge.radialMetres)} × ${mm(edge.axialMetres)}`;
  return "free profile";
}

function faceGrooveFloors({ face }: PuckSpec, h: number): string {
  if (face.kind !== "radialGrooves") return "";
  const [a, b, depth] = [face.innerRadiusMetres, face.outerRadiusMetres, face.depthMetres].map((value) => 1000 * value);
  const floor = (y: number) => `M${a} ${y}H${b}M${-b} ${y}H${-a}`;
  return `${face.side === "bottom" ? "" : floor(depth - h)}${face.side === "top" ? "" : floor(h - depth)}`;
}

function rimGrooveFloors(spec: PuckSpec, R: number, h: number): string {
  const { rim } = spec;
  if (rim.kind !== "axialGrooves" && rim.kind !== "ringGrooves") return "";
  const half = h - 1000 * edgeReach(spec).axial;
  const floor = R - 1000 * rim.depthMetres;
  return `M${floor} ${-half}V${half}M${-floor} ${-half}V${half}`;
}

function planGrooves({ face, rim }: PuckSpec, R: number): string {
  const spokes = (count: number, from: number, to: number) =>
    Array.from({ length: count }, (_, k) => {
      const [c, s] = [Math.cos((2 * Math.PI * k) / count), Math.sin((2 * Math.PI * k) / count)];
      return `M${round(from * c)} ${round(from * s)}L${round(to * c)} ${round(to * s)}`;
    }).join("");
  const onFace =
    face.kind === "radialGrooves"
      ? spokes(face.number, 1000 * face.innerRadiusMetres, 1000 * face.outerRadiusMetres)
      : "";
  const recess = face.kind === "recess" ? circlePath(500 * face.diameterMetres) : "";
  const onRim = rim.kind === "axialGrooves" ? spokes(rim.number, R - 1000 * rim.depthMetres, R) : "";
  return onFace + recess + onRim;
}

function circlePath(r: number): string {
  return `M${r} 0A${r} ${r} 0 1 0 ${-r} 0A${r} ${r} 0 1 0 ${r} 0Z`;
}

function round(value: number): number {
  return Math.round(1000 * value) / 1000;
}
