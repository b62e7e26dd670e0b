import type { MarkName } from "../style/markName";

/** Points of one line, interleaved x and y, in the picture's own units (CSS px). */
export type Line = ArrayLike<number>;

/** Lines, or areas when they are closed, drawn alike. */
export interface LinesShape {
  readonly kind: "lines";
  readonly lines: readonly Line[];
  readonly closed?: boolean;
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly opacity?: number;
  readonly round?: boolean;
}

/** An area filled with strokes at 45 degrees: what needs attention, also without colour. */
export interface HatchShape {
  readonly kind: "hatch";
  readonly area: Line;
  readonly stroke: string;
  readonly opacity?: number;
}

export interface TextShape {
  readonly kind: "text";
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  readonly text: string;
  readonly fill: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: "start" | "middle" | "end";
  /** Colour of a rim that keeps the words legible over lines. */
  readonly rim?: string;
}

export interface MarkShape {
  readonly kind: "mark";
  readonly mark: MarkName;
  readonly x: number;
  readonly y: number;
  /** Half its width. */
  readonly size: number;
  readonly fill?: string;
  readonly stroke?: string;
  readonly width?: number;
}

export type Shape = LinesShape | HatchShape | TextShape | MarkShape;

/** A picture as plain data, in the order of drawing: painted on the screen, written as SVG for paper and files. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** The page's own letters, also on canvases and in files. */
export const sceneFont =
  '"Seravek", "Gill Sans Nova", "Ubuntu", "Calibri", "DejaVu Sans Condensed", "DejaVu Sans", sans-serif';

/** Distance between hatch strokes, px. */
export const hatchStep = 7;
