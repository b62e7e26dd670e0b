import { edgeReach } from "../puck/outerShape";
import type { PuckFigures } from "../puck/puckFigures";
import type { PuckSpec } from "../puck/puckSpec";
import type { MakingTolerances } from "../rules/judgePuck";
import { coreOutlines, type Outline, planOutline, profileOutline } from "./outline";
import { outlinePath } from "./outlineSvg";
import { svgNumber as n, svgText } from "./svgText";

export interface DrawingInput {
  readonly spec: PuckSpec;
  readonly figures: PuckFigures;
  /** Plus and minus, m; a dimension without one is drawn without. */
  readonly tolerances: MakingTolerances;
  /** Day of the drawing, year-month-day. */
  readonly date: string;
  readonly notes: readonly string[];
}

/** A4 landscape, mm. Source: ISO 216. */
const sheet = { width: 297, height: 210 };

/** Reductions and the true size, as 1 : n or n : 1. Source: ISO 5455 (1979). */
const scales = [10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

/** Widest that the profile may be drawn, mm. */
const viewWidth = 110;

/** A drawing of a puck on one A4 sheet as SVG: profile in section and plan, dimensions in mm with their tolerances. */
export function puckDrawing({ spec, figures, tolerances, date, notes }: DrawingInput): string {
  const d = 1000 * spec.diameterMetres;
  const t = 1000 * spec.thicknessMetres;
  const scale = scales.find((candidate) => candidate * d <= viewWidth && candidate * t <= viewWidth) ?? viewWidth / d;
  const [w, h] = [scale * d, scale * t];
  const profile = { x: 78, y: 75 };
  const plan = { x: 215, y: 75 };
  const reach = edgeReach(spec);
  const inset = { radial: 1000 * scale * reach.radial, axial: 1000 * scale * reach.axial };
  const edgeAt = { x: profile.x + w / 2 - 0.3 * inset.radial, y: profile.y - h / 2 + 0.3 * inset.axial };
  const body = [
    ...coreOutlines(spec).map((core) => view(profile, scale, core, 'fill="#ddd" stroke-dasharray="2 1"')),
    view(profile, scale, profileOutline(spec), 'fill="none"'),
    view(plan, scale, planOutline(spec), 'fill="none"'),
    centreLine(profile.x, profile.y - h / 2 - 6, profile.x, profile.y + h / 2 + 6),
    centreLine(plan.x - w / 2 - 6, plan.y, plan.x + w / 2 + 6, plan.y),
    centreLine(plan.x, plan.y - w / 2 - 6, plan.x, plan.y + w / 2 + 6),
    horizontalDimension(
      profile,
      w,
      profile.y + h / 2 - inset.axial,
      profile.y + h / 2 + 14,
      `\u2300${withTolerance(d, tolerances.diameterMetres)}`,
    ),
    verticalDimension(
      profile,
      h,
      profile.x - w / 2 + inset.radial,
      profile.x - w / 2 - 12,
      withTolerance(t, tolerances.thicknessMetres),
    ),
    thinLine(edgeAt.x, edgeAt.y, edgeAt.x + 5, edgeAt.y - 7),
    label(edgeAt.x + 5, edgeAt.y - 8, edgeText(spec, tolerances), "start"),
    label(profile.x, profile.y - h / 2 - 14, "PROFILE, section through the axis"),
    label(plan.x, plan.y - w / 2 - 14, "PLAN"),
    ...textBlock(12, 142, detailLines(spec, figures, tolerances)),
    ...textBlock(150, 142, ["Notes", ...notes]),
    titleBlock(spec.name, date, scale),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${sheet.width}mm" height="${sheet.height}mm" viewBox="0 0 ${sheet.width} ${sheet.height}" font-family="sans-serif" font-size="3.2">`,
    `  <title>${svgText(`${spec.name}, drawing`)}</title>`,
    `  <rect x="0" y="0" width="${sheet.width}" height="${sheet.height}" fill="white"/>`,
    `  <rect x="5" y="5" width="${sheet.width - 10}" height="${sheet.height - 10}" fill="none" stroke="black" stroke-width="0.5"/>`,
    ...body.map((line) => `  ${line}`),
    "</svg>",
    "",
  ].join("\n");
}

/** "80 \u00b1 0.2", or "80" without a tolerance; mm. */
export function withTolerance(millimetres: number, plusMinusMetres: number | undefined): string {
  const size = String(Number(millimetres.toFixed(3)));
  return plusMinusMetres === undefined ? size : `${size} \u00b1 ${Number((1000 * plusMinusMetres).toFixed(3))}`;
}

interface Place {
  readonly x: number;
  readonly y: number;
}

function view({ x, y }: Place, scale: number, outline: Outline, style: string): string {
  return `<path transform="translate(${n(x)} ${n(y)}) scale(${n(scale)})" d="${outlinePath(outline)}" stroke="black" stroke-width="${n(0.5 / scale)}" ${style}/>`;
}

function centreLine(x1: number, y1: number, x2: number, y2: number): string {
  return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="black" stroke-width="0.2" stroke-dasharray="6 1.5 1 1.5"/>`;
}

function thinLine(x1: number, y1: number, x2: number, y2: number): string {
  return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="black" stroke-width="0.2"/>`;
}

function arrow(x: number, y: number, dx: number, dy: number): string {
  const tail = (side: number) => `${n(x - 2.5 * dx + 0.5 * side * dy)},${n(y - 2.5 * dy + 0.5 * side * dx)}`;
  return `<polygon points="${n(x)},${n(y)} ${tail(1)} ${tail(-1)}"/>`;
}

/** Extension lines begin at height `from`, the dimension line is at height `at`. */
function horizontalDimension({ x }: Place, width: number, from: number, at: number, text: string): string {
  const [left, right] = [x - width / 2, x + width / 2];
  return [
    thinLine(left, from, left, at + 1.5),
    thinLine(right, from, right, at + 1.5),
    thinLine(left, at, right, at),
    arrow(left, at, -1, 0),
    arrow(right, at, 1, 0),
    label(x, at - 1.2, text),
  ].join("");
}

function verticalDimension({ y }: Place, height: number, from: number, at: number, text: string): string {
  const [top, bottom] = [y - height / 2, y + height / 2];
  return [
    thinLine(from, top, at - 1.5, top),
    thinLine(from, bottom, at - 1.5, bottom),
    thinLine(at, top, at, bottom),
    arrow(at, top, 0, -1),
    arrow(at, bottom, 0, 1),
    `<text x="${n(at - 1.2)}" y="${n(y)}" text-anchor="middle" transform="rotate(-90 ${n(at - 1.2)} ${n(y)})">${svgText(text)}</text>`,
  ].join("");
}

function label(x: number, y: number, text: string, anchor: "start" | "middle" = "middle"): string {
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="${anchor}">${svgText(text)}</text>`;
}

function textBlock(x: number, y: number, lines: readonly string[]): string[] {
  return lines.flatMap((line) => wrap(line, 78)).map((line, i) => label(x, y + 4.4 * i, line, "start"));
}

function wrap(text: string, most: number): string[] {
  return text.split(" ").reduce<string[]>((lines, word) => {
    const last = lines[lines.length - 1];
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
    return lines;
  }, []);
}

function edgeText({ edge }: PuckSpec, tolerances: MakingTolerances): string {
  if (edge.kind === "radius")
    return `R${withTolerance(1000 * edge.radiusMetres, tolerances.edgeRadiusMetres)} all edges`;
  if (edge.kind === "profile") return "edges by the point list";
  const along = withTolerance(1000 * edge.radialMetres, tolerances.bevelRadialMetres);
  return `bevel ${along} x ${withTolerance(1000 * edge.axialMetres, tolerances.bevelAxialMetres)} all edges`;
}

function detailLines(spec: PuckSpec, figures: PuckFigures, tolerances: MakingTolerances): string[] {
  const { core, face, rim } = spec;
  const mm = (metres: number, tolerance?: number) => withTolerance(1000 * metres, tolerance);
  const lines = ["All lengths in mm", `Coat: ${spec.coatMaterial}`];
  if (core.kind === "disc") {
    lines.push(
      `Core: ${core.material}, \u2300${mm(core.diameterMetres, tolerances.coreDiameterMetres)} x ${mm(core.thicknessMetres, tolerances.coreThicknessMetres)}, edge R${mm(core.edgeRadiusMetres ?? 0)}`,
    );
  }
  if (core.kind === "ring") {
    lines.push(
      `Core: ${core.material} ring, \u2300${mm(core.outerDiameterMetres, tolerances.coreOuterDiameterMetres)} / \u2300${mm(core.innerDiameterMetres, tolerances.coreInnerDiameterMetres)} x ${mm(core.thicknessMetres, tolerances.coreThicknessMetres)}`,
    );
  }
  if (core.kind === "underCoat") {
    lines.push(
      `Core: ${core.material} under ${mm(core.coatThicknessMetres, tolerances.coatThicknessMetres)} of coat all over`,
    );
  }
  if (face.kind === "recess")
    lines.push(`Recess ${face.side}: \u2300${mm(face.diameterMetres)} x ${mm(face.depthMetres)} deep`);
  if (face.kind === "radialGrooves") {
    lines.push(
      `Face grooves ${face.side}: ${face.number} x ${mm(face.widthMetres)} wide x ${mm(face.depthMetres)} deep, R${mm(face.innerRadiusMetres)} to R${mm(face.outerRadiusMetres)}`,
    );
  }
  if (rim.kind === "axialGrooves" || rim.kind === "ringGrooves") {
    const kind = rim.kind === "axialGrooves" ? "axial grooves" : "ring grooves";
    lines.push(`Rim: ${rim.number} ${kind}, ${mm(rim.widthMetres)} wide x ${mm(rim.depthMetres)} deep`);
  }
  lines.push(`Mass ${figures.massKilograms.toFixed(3)} kg, computed`);
  if (figures.coverMetres !== null) lines.push(`Least cover over the core ${mm(figures.coverMetres)}, computed`);
  return lines;
}

function titleBlock(name: string, date: string, scale: number): string {
  const ratio = scale >= 1 ? `${n(scale)} : 1` : `1 : ${n(1 / scale)}`;
  const [x, y] = [sheet.width - 125, sheet.height - 25];
  return [
    `<rect x="${x}" y="${y}" width="120" height="20" fill="none" stroke="black" stroke-width="0.5"/>`,
    label(x + 3, y + 7, name, "start"),
    label(x + 3, y + 14, `Scale ${ratio}   ${date}`, "start"),
    label(x + 60, y + 14, "Screening design, not checked", "start"),
  ].join("");
}
