import type { Result } from "../result";
import { csvOutline } from "./csvOutline";
import { dxfOutline } from "./dxfOutline";
import type { Outline } from "./outline";
import { svgOutline } from "./svgOutline";

export const outlineFormats = ["csv", "svg", "dxf"] as const;
export type OutlineFormat = (typeof outlineFormats)[number];

/** The format of a file by its name's ending, else by its first characters. */
export function outlineFormat(fileName: string, text: string): OutlineFormat {
  const ending = /\.(csv|txt|dat|svg|dxf)$/i.exec(fileName)?.[1].toLowerCase();
  if (ending === "svg" || ending === "dxf") return ending;
  if (ending !== undefined) return "csv";
  const start = text.slice(0, 1000).trimStart().slice(0, 200);
  if (start.startsWith("<") || /^[Mm][\s\d.,+-]/.test(start)) return "svg";
  return /^(0|999)\s*[\r\n]/.test(start) ? "dxf" : "csv";
}

export function readOutline(format: OutlineFormat, text: string): Result<Outline> {
  switch (format) {
    case "csv":
      return csvOutline(text);
    case "svg":
      return svgOutline(text);
    case "dxf":
      return dxfOutline(text);
  }
}
