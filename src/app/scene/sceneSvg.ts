import { markLine } from "./marks";
import { hatchLines } from "./paintScene";
import { type Scene, type Shape, sceneFont } from "./scene";
import { svgPath } from "./svgPath";

/** A scene as the text of an SVG file. @param paper colour behind it; left out for none */
export function sceneSvg({ width, height, shapes }: Scene, paper?: string): string {
  const ground = paper === undefined ? "" : `<rect width="${width}" height="${height}" fill="${paper}"/>`;
  const body = shapes.map((shape, i) => shapeSvg(shape, `clip-${i}`)).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${escaped(sceneFont)}">${ground}${body}</svg>`;
}

/** The same as an address for an image element. */
export function sceneAddress(scene: Scene, paper?: string): string {
  return `data:image/svg+xml,${encodeURIComponent(sceneSvg(scene, paper))}`;
}

function shapeSvg(shape: Shape, id: string): string {
  switch (shape.kind) {
    case "lines": {
      const path = shape.lines.map((line) => svgPath(line, shape.closed === true)).join("");
      return `<path d="${path}"${look(shape)}/>`;
    }
    case "mark": {
      const path = svgPath(markLine(shape.mark, shape.x, shape.y, shape.size), true);
      return `<path d="${path}"${look(shape)}/>`;
    }
    case "hatch": {
      const strokes = hatchLines(shape.area)
        .map((line) => svgPath(line))
        .join("");
      return `<clipPath id="${id}"><path d="${svgPath(shape.area, true)}"/></clipPath><path d="${strokes}" clip-path="url(#${id})"${look(shape)}/>`;
    }
    case "text": {
      const { x, y, text, fill, size = 11, bold = false, anchor = "start", rim } = shape;
      const rimmed =
        rim === undefined ? "" : ` paint-order="stroke" stroke="${rim}" stroke-width="3.5" stroke-linejoin="round"`;
      return `<text x="${round(x)}" y="${round(y)}" font-size="${size}" font-weight="${bold ? 700 : 400}" text-anchor="${anchor}" fill="${fill}"${rimmed}>${escaped(text)}</text>`;
    }
  }
}

interface Look {
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly opacity?: number;
  readonly round?: boolean;
}

function look({ fill, stroke, width, dash, opacity, round: isRound }: Look): string {
  const parts = [` fill="${fill ?? "none"}"`];
  if (stroke !== undefined) parts.push(` stroke="${stroke}" stroke-width="${width ?? 1}" stroke-linejoin="round"`);
  if (isRound === true) parts.push(' stroke-linecap="round"');
  if (dash !== undefined && dash.length > 0) parts.push(` stroke-dasharray="${dash.join(" ")}"`);
  if (opacity !== undefined) parts.push(` opacity="${opacity}"`);
  return parts.join("");
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
