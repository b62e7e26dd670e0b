import { parseXml, XmlElement } from "@rgrove/parse-xml";
import { problem, type Result, success } from "../result";
import { chooseOutline } from "./chooseOutline";
import { joinChains } from "./joinChains";
import { type Chain, finiteOutline, mostDrawnSides, type Outline, type OutlineUnit, tooLarge } from "./outline";
import { pathChains } from "./svgPath";
import { shapeChains } from "./svgShapes";
import { combined, identity, type Matrix, transformMatrix } from "./svgTransform";

/** SVG counts y downward. */
const yUp: Matrix = [1, 0, 0, -1, 0, 0];
/** Elements whose content is not drawn where it stands. */
const notDrawn = new Set([
  "defs",
  "clipPath",
  "mask",
  "marker",
  "pattern",
  "symbol",
  "metadata",
  "style",
  "script",
  "text",
  "title",
]);
const deepestNesting = 100;

/**
 * Reads the largest closed outline of an SVG drawing, its transformations applied, or a bare path text ("M 0 0 L ..."):
 * paths, rectangles with rounded corners, circles, ellipses, polygons, and lines whose ends meet.
 */
export function svgOutline(text: string): Result<Outline> {
  const large = tooLarge(text);
  if (large !== null) return large;
  const bare = text.trim();
  if (/^[Mm][\s\d.,+-]/.test(bare)) {
    const chains = pathChains(bare, yUp);
    return chains.ok ? outlineOf(chains.value, null, [], "path") : chains;
  }
  if (!bare.startsWith("<")) {
    return problem(
      "outline",
      `the text starts with ${JSON.stringify(bare.slice(0, 12))}; it must be an SVG drawing, or a path that starts with M`,
    );
  }
  let root: XmlElement | null;
  try {
    root = parseXml(bare, { ignoreUndefinedEntities: true }).root;
  } catch (error) {
    const reason = error instanceof Error ? error.message.split("\n")[0].slice(0, 120) : "it is no XML";
    return problem("outline", `the SVG file could not be read: ${reason}`);
  }
  if (root === null || localName(root) !== "svg")
    return problem("outline", "the file is no SVG drawing: its root must be <svg>");
  const { unit, scale } = drawingUnit(root.attributes);
  const found: Drawn = { chains: [], sides: 0, uses: 0, odd: [] };
  const walked = walk(root, combined(yUp, scale), found, 0);
  if (!walked.ok) return walked;
  const remarks: string[] = [];
  if (found.uses > 0) remarks.push(`Not read: ${found.uses} <use> elements; draw the outline itself.`);
  if (found.odd.length > 0) remarks.push(`A transform was not understood and left out: ${found.odd[0].slice(0, 40)}.`);
  return outlineOf(found.chains, unit, remarks, "drawing");
}

function outlineOf(
  chains: readonly Chain[],
  unit: OutlineUnit | null,
  remarks: readonly string[],
  what: string,
): Result<Outline> {
  const usable = chains.filter(({ sides, end }) => end.every(Number.isFinite) && sides.length > 0);
  if (usable.length === 0) {
    return problem(
      "outline",
      `the ${what} has no shape; it must have a path, rect, circle, ellipse or polygon with an area`,
    );
  }
  const broken = usable.some(({ sides }) => sides.some(({ from }) => !from.every(Number.isFinite)));
  if (broken) return problem("outline", "the drawing has a coordinate that is not a finite number");
  const chosen = chooseOutline(joinChains(usable), what);
  if (!chosen.ok) return chosen;
  return finiteOutline({
    sides: chosen.value.sides,
    unit,
    fitted: null,
    remarks: [...chosen.value.remarks, ...remarks],
  });
}

interface Drawn {
  readonly chains: Chain[];
  sides: number;
  uses: number;
  readonly odd: string[];
}

function walk(element: XmlElement, outer: Matrix, found: Drawn, depth: number): Result<null> {
  if (depth > deepestNesting) {
    return problem("outline", `the drawing is nested more than ${deepestNesting} deep; ungroup it`);
  }
  for (const child of element.children) {
    if (!(child instanceof XmlElement)) continue;
    const name = localName(child);
    if (notDrawn.has(name) || isHidden(child.attributes)) continue;
    if (name === "use") found.uses++;
    const { transform } = child.attributes;
    const own = transform === undefined ? identity : transformMatrix(transform);
    if (own === null) found.odd.push(transform);
    const matrix = combined(outer, own ?? identity);
    const chains = shapeChains(name, child.attributes, matrix);
    if (chains !== null) {
      if (!chains.ok) return chains;
      for (const chain of chains.value) {
        found.chains.push(chain);
        found.sides += chain.sides.length;
      }
      if (found.sides > mostDrawnSides) {
        return problem("outline", `the drawing has more than ${mostDrawnSides} lines; leave only the outline in it`);
      }
    }
    const inside = walk(child, matrix, found, depth + 1);
    if (!inside.ok) return inside;
  }
  return success(null);
}

function localName({ name }: XmlElement): string {
  return name.slice(name.indexOf(":") + 1);
}

function isHidden({ display, visibility, style = "" }: Readonly<Record<string, string>>): boolean {
  return (
    display === "none" ||
    visibility === "hidden" ||
    /display\s*:\s*none|visibility\s*:\s*hidden/.test(style.slice(0, 2000))
  );
}

/** The unit that the drawing's own width is given in, and the scale from the coordinates to it. */
function drawingUnit({ width, height, viewBox }: Readonly<Record<string, string>>): {
  unit: OutlineUnit | null;
  scale: Matrix;
} {
  const [, widthText, unit] = /^\s*([\d.eE+-]+)\s*(mm|cm|in)\s*$/.exec(width ?? "") ?? [];
  if (unit === undefined) return { unit: null, scale: identity };
  const box = (viewBox ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const scale = box.length === 4 && box[2] > 0 ? Number(widthText) / box[2] : Number.NaN;
  const [, heightText] = /^\s*([\d.eE+-]+)\s*(?:mm|cm|in)\s*$/.exec(height ?? "") ?? [];
  // Drawings keep their proportions unless they say otherwise: the smaller of the two scales holds.
  const other = heightText !== undefined && box[3] > 0 ? Number(heightText) / box[3] : scale;
  const factor = Math.min(scale, other);
  // Without a box one unit of a drawing is a 96th of an inch, by CSS Values and Units 3, sec. 6.2.
  const perInch: Readonly<Record<string, number>> = { mm: 25.4, cm: 2.54, in: 1 };
  const used = factor > 0 && Number.isFinite(factor) ? factor : perInch[unit] / 96;
  return { unit: unit as OutlineUnit, scale: [used, 0, 0, used, 0, 0] };
}
