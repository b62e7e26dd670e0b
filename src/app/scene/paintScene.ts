import { markLine } from "./marks";
import {
  type HatchShape,
  hatchStep,
  type Line,
  type LinesShape,
  type Scene,
  type Shape,
  sceneFont,
  type TextShape,
} from "./scene";

/** Pixels beyond this for one of the page cost more than an eye sees. */
const mostPixelsPerUnit = 3;

/** Paints a scene over the whole of a canvas. @param pixelsPerUnit the screen's own where left out */
export function paintScene(
  canvas: HTMLCanvasElement,
  { width, height, shapes }: Scene,
  pixelsPerUnit = Math.min(globalThis.devicePixelRatio || 1, mostPixelsPerUnit),
): void {
  const context = canvas.getContext("2d");
  if (context === null || width <= 0 || height <= 0) return;
  const [columns, rows] = [Math.round(width * pixelsPerUnit), Math.round(height * pixelsPerUnit)];
  if (canvas.width !== columns || canvas.height !== rows) {
    canvas.width = columns;
    canvas.height = rows;
  }
  context.setTransform(pixelsPerUnit, 0, 0, pixelsPerUnit, 0, 0);
  context.clearRect(0, 0, width, height);
  for (const shape of shapes) paintShape(context, shape);
}

function paintShape(context: CanvasRenderingContext2D, shape: Shape): void {
  switch (shape.kind) {
    case "lines":
      paintLines(context, shape);
      break;
    case "hatch":
      paintHatch(context, shape);
      break;
    case "text":
      paintText(context, shape);
      break;
    case "mark": {
      const { mark, x, y, size, ...look } = shape;
      paintLines(context, { ...look, kind: "lines", lines: [markLine(mark, x, y, size)], closed: true });
    }
  }
}

function follow(context: CanvasRenderingContext2D, line: Line, closed: boolean): void {
  for (let i = 0; i + 1 < line.length; i += 2) {
    if (i === 0) context.moveTo(line[0], line[1]);
    else context.lineTo(line[i], line[i + 1]);
  }
  if (closed) context.closePath();
}

function paintLines(context: CanvasRenderingContext2D, shape: LinesShape): void {
  context.beginPath();
  for (const line of shape.lines) follow(context, line, shape.closed === true);
  context.globalAlpha = shape.opacity ?? 1;
  if (shape.fill !== undefined) {
    context.fillStyle = shape.fill;
    context.fill();
  }
  if (shape.stroke !== undefined) {
    context.strokeStyle = shape.stroke;
    context.lineWidth = shape.width ?? 1;
    context.lineCap = shape.round === true ? "round" : "butt";
    context.lineJoin = "round";
    context.setLineDash([...(shape.dash ?? [])]);
    context.stroke();
  }
  context.globalAlpha = 1;
}

function paintHatch(context: CanvasRenderingContext2D, { area, stroke, opacity = 1 }: HatchShape): void {
  context.save();
  context.beginPath();
  follow(context, area, true);
  context.clip();
  context.globalAlpha = opacity;
  context.strokeStyle = stroke;
  context.lineWidth = 1;
  context.setLineDash([]);
  context.beginPath();
  for (const line of hatchLines(area)) follow(context, line, false);
  context.stroke();
  context.restore();
}

/** Strokes at 45 degrees over the box of an area; they start from a fixed grid, so that they stand still while it moves. */
export function hatchLines(area: Line): number[][] {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i + 1 < area.length; i += 2) {
    left = Math.min(left, area[i]);
    right = Math.max(right, area[i]);
    top = Math.min(top, area[i + 1]);
    bottom = Math.max(bottom, area[i + 1]);
  }
  if (!(right > left && bottom > top)) return [];
  const lines: number[][] = [];
  const first = Math.ceil((left + top) / hatchStep) * hatchStep;
  for (let sum = first; sum <= right + bottom; sum += hatchStep) lines.push([sum - top, top, sum - bottom, bottom]);
  return lines;
}

function paintText(context: CanvasRenderingContext2D, shape: TextShape): void {
  const { x, y, text, fill, size = 11, bold = false, anchor = "start", rim } = shape;
  context.font = `${bold ? 700 : 400} ${size}px ${sceneFont}`;
  context.textAlign = anchor === "middle" ? "center" : anchor;
  context.setLineDash([]);
  if (rim !== undefined) {
    context.strokeStyle = rim;
    context.lineWidth = 3.5;
    context.lineJoin = "round";
    context.strokeText(text, x, y);
  }
  context.fillStyle = fill;
  context.fillText(text, x, y);
}
