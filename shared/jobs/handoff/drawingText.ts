import type { MakingTolerances, PuckFigures, PuckSpec } from "../puck/public";
import { label } from "./drawingMarks";
import { svgNumber as n } from "./svgText";

/** "80 \u00b1 0.2", or "80" without a tolerance; mm. */
export function withTolerance(millimetres: number, plusMinusMetres: number | undefined): string {
  const size = String(Number(millimetres.toFixed(3)));
  return plusMinusMetres === undefined ? size : `${size} \u00b1 ${Number((1000 * plusMinusMetres).toFixed(3))}`;
}

export function edgeText({ edge }: PuckSpec, tolerances: MakingTolerances): string {
  if (edge.kind === "radius")
    return `R${withTolerance(1000 * edge.edgeRadiusMetres, tolerances.edgeRadiusMetres)} all edges`;
  if (edge.kind === "profile") return "edges by the point list";
  const along = withTolerance(1000 * edge.radialMetres, tolerances.bevelRadialMetres);
  return `bevel ${along} x ${withTolerance(1000 * edge.axialMetres, tolerances.bevelAxialMetres)} all edges`;
}

/** What the views do not show: materials, core, recess, grooves, mass. */
export function detailLines(spec: PuckSpec, figures: PuckFigures, tolerances: MakingTolerances): string[] {
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
  if (face.kind === "recess") {
    const size = mm(face.diameterMetres, tolerances.recessDiameterMetres);
    lines.push(
      `Recess ${sideText(face.side)}: \u2300${size} x ${mm(face.depthMetres, tolerances.faceDepthMetres)} deep`,
    );
  }
  if (face.kind === "radialGrooves") {
    lines.push(
      `Grooves in ${sideText(face.side)}: ${face.number} x ${mm(face.widthMetres, tolerances.faceGrooveWidthMetres)} wide x ${mm(face.depthMetres, tolerances.faceDepthMetres)} deep, R${mm(face.innerRadiusMetres)} to R${mm(face.outerRadiusMetres)}`,
    );
  }
  if (rim.kind === "axialGrooves" || rim.kind === "ringGrooves") {
    const kind = rim.kind === "axialGrooves" ? "grooves along the axis" : "rings";
    lines.push(
      `Rim: ${rim.number} ${kind}, ${mm(rim.widthMetres, tolerances.rimGrooveWidthMetres)} wide x ${mm(rim.depthMetres, tolerances.rimDepthMetres)} deep`,
    );
  }
  lines.push(`Mass ${figures.massKilograms.toFixed(3)} kg, computed`);
  if (figures.coverMetres !== null) lines.push(`Least cover over the core ${mm(figures.coverMetres)}, computed`);
  return lines;
}

function sideText(side: "top" | "bottom" | "both"): string {
  return side === "both" ? "both faces" : `the ${side} face`;
}

/** A part of the sheet for lines of text, mm. */
export interface TextArea {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
}

/** Sizes of letters, mm, the largest that fits being taken; 2.5 and 1.8 are lettering heights of ISO 3098-1 (2015). */
const sizes = [3.2, 2.5, 1.8];
const lineSpacing = 1.4;
/** Widest mean advance of a sans-serif letter over its size: common practice, no source. */
export const letterAdvance = 0.55;

/**
 * Paragraphs in the first area, in smaller letters where need be; only when those do not do in all areas, one after
 * another. When even the smallest letters do not, the last line says where to read the rest.
 */
export function textBlock(paragraphs: readonly string[], areas: readonly TextArea[], elsewhere: string): string[] {
  const [large, medium, small] = sizes;
  const [first] = areas;
  const laidOut = [
    layOut(paragraphs, [first], large),
    layOut(paragraphs, [first], medium),
    layOut(paragraphs, areas, medium),
    layOut(paragraphs, areas, small),
  ];
  const fitting = laidOut.find(({ isWhole }) => isWhole);
  if (fitting !== undefined) return fitting.placed.map((line) => line.draw(line.text));
  const { placed } = laidOut[laidOut.length - 1];
  return placed.map((line, i) => line.draw(i + 1 < placed.length ? line.text : elsewhere));
}

function layOut(paragraphs: readonly string[], areas: readonly TextArea[], size: number) {
  const slots = areas.flatMap((area) => {
    const count = Math.max(0, Math.floor((area.bottom - area.top) / (lineSpacing * size)));
    return Array.from({ length: count }, (_, i) => ({ area, y: area.top + size + lineSpacing * size * i }));
  });
  const narrowest = Math.min(...areas.map(({ width }) => width));
  const lines = paragraphs.flatMap((text) => wrap(text, Math.floor(narrowest / (letterAdvance * size))));
  const placed = slots.slice(0, lines.length).map(({ area, y }, i) => ({
    text: lines[i],
    draw: (text: string) => label(area.x, y, text, "start", size),
  }));
  return { placed, isWhole: placed.length === lines.length };
}

/** Lines of at most this many letters, broken at spaces; a longer word is cut. */
function wrap(text: string, most: number): string[] {
  const words = text.split(" ").flatMap((word) => word.match(new RegExp(`.{1,${most}}`, "gu")) ?? []);
  return words.reduce<string[]>((lines, word) => {
    const last = lines[lines.length - 1];
    if (last === undefined || last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
    return lines;
  }, []);
}

/** Name, scale, day and standing of the drawing in a frame. */
export function titleBlock(name: string, date: string, scale: number, { x, y }: { x: number; y: number }): string {
  const ratio = scale >= 1 ? `${n(scale)} : 1` : `1 : ${n(1 / scale)}`;
  const { width, height } = titleSize;
  const room = width - 6;
  const size = Math.max(sizes[sizes.length - 1], Math.min(sizes[0], room / (letterAdvance * name.length)));
  const most = Math.floor(room / (letterAdvance * size));
  const shown = name.length > most ? `${name.slice(0, most - 3)}...` : name;
  return [
    `<rect x="${n(x)}" y="${n(y)}" width="${width}" height="${height}" fill="none" stroke="black" stroke-width="0.5"/>`,
    label(x + 3, y + 7, shown, "start", size),
    label(x + 3, y + 14, `Scale ${ratio}   ${date}`, "start"),
    label(x + 60, y + 14, "Screening design, not checked", "start"),
  ].join("");
}

/** mm. */
export const titleSize = { width: 120, height: 20 };
