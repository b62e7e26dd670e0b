import { buildOutline } from "../engine/geometry/outlineContour";
import { panelCountForSection } from "../engine/geometry/panelCountForSection";
import { type Result, success } from "../result";
import type { OutlineUnit } from "./outline";
import { type OutlineFormat, outlineFormat, readOutline } from "./readOutline";
import { type SolvedOutline, solvedOutline } from "./solvedOutline";

/** What is to be made of a text. Plain data. */
export interface OutlineQuestion {
  readonly text: string;
  /** Of the file, for its ending; empty for text that was typed. */
  readonly fileName: string;
  /** null to tell it from the name and the first characters. */
  readonly format: OutlineFormat | null;
  /** null for the unit that the file names, else millimetres. */
  readonly unit: OutlineUnit | null;
  readonly scale: number;
  /** Counter-clockwise. */
  readonly quarterTurns: number;
  /** Of the section. */
  readonly name: string;
  /** m; null for the smallest that the solver takes. */
  readonly cornerRadius: number | null;
}

/** An outline as it is solved. Plain data. */
export interface ImportedOutline {
  readonly format: OutlineFormat;
  readonly unit: OutlineUnit;
  readonly unitFrom: "file" | "assumed" | "chosen";
  readonly solved: SolvedOutline;
  /** That suits its corners. */
  readonly panelCount: number;
}

/** Reads an outline and makes it what the solver takes. */
export function importOutline(question: OutlineQuestion): Result<ImportedOutline> {
  const format = question.format ?? outlineFormat(question.fileName, question.text);
  const outline = readOutline(format, question.text);
  if (!outline.ok) return outline;
  const unit = question.unit ?? outline.value.unit ?? "mm";
  const { scale, quarterTurns, name, cornerRadius } = question;
  const solved = solvedOutline(outline.value, { unit, scale, quarterTurns }, name, cornerRadius ?? undefined);
  if (!solved.ok) return solved;
  const contour = buildOutline(solved.value.spec);
  if (!contour.ok) return contour;
  return success({
    format,
    unit,
    unitFrom: question.unit !== null ? "chosen" : outline.value.unit !== null ? "file" : "assumed",
    solved: solved.value,
    panelCount: panelCountForSection(contour.value),
  });
}
