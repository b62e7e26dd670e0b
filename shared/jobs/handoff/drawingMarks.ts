import type { Outline } from "./outline";
import { outlinePath } from "./outlineSvg";
import { svgNumber as n, svgText } from "./svgText";

/** A place on the sheet, mm from its upper left corner. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** An outline in its view; widths and dashes are those on paper. */
export function view({ x, y }: Place, scale: number, outline: Outline, style: ViewStyle): string {
  const dash = style.isHidden === true ? ` stroke-dasharray="${n(2 / scale)} ${n(1 / scale)}"` : "";
  const width = style.isHidden === true || style.isThin === true ? 0.25 : 0.5;
  return `<path transform="translate(${n(x)} ${n(y)}) scale(${n(scale)})" d="${outlinePath(outline)}" stroke="black" stroke-width="${n(width / scale)}" fill="${style.fill ?? "none"}"${dash}/>`;
}

/** How a line is drawn: hidden ones thin and dashed. Source: ISO 128-2 (2020), line types 01 and 02. */
export interface ViewStyle {
  readonly fill?: string;
  readonly isHidden?: boolean;
  readonly isThin?: boolean;
}

export function centreLine(x1: number, y1: number, x2: number, y2: number): string {
  return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="black" stroke-width="0.2" stroke-dasharray="6 1.5 1 1.5"/>`;
}

export function thinLine(x1: number, y1: number, x2: number, y2: number): string {
  return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="black" stroke-width="0.2"/>`;
}

function arrow(x: number, y: number, dx: number, dy: number): string {
  const tail = (side: number) => `${n(x - 2.5 * dx + 0.5 * side * dy)},${n(y - 2.5 * dy + 0.5 * side * dx)}`;
  return `<polygon points="${n(x)},${n(y)} ${tail(1)} ${tail(-1)}"/>`;
}

/** Extension lines begin at height `from`, the dimension line is at height `at`. */
export function horizontalDimension({ x }: Place, width: number, from: number, at: number, text: string): string {
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

export function verticalDimension({ y }: Place, height: number, from: number, at: number, text: string): string {
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

/** @param size height of the letters' body, mm; that of the sheet when left out */
export function label(
  x: number,
  y: number,
  text: string,
  anchor: "start" | "middle" = "middle",
  size?: number,
): string {
  const height = size === undefined ? "" : ` font-size="${n(size)}"`;
  return `<text x="${n(x)}" y="${n(y)}" text-anchor="${anchor}"${height}>${svgText(text)}</text>`;
}
