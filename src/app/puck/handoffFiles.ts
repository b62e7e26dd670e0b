import { puckDrawing } from "../../../shared/handoff/drawing";
import { mesh3mf } from "../../../shared/handoff/mesh3mf";
import { meshStl } from "../../../shared/handoff/meshStl";
import { coreOutlines, planOutline, profileOutline } from "../../../shared/handoff/outline";
import { outlinesDxf } from "../../../shared/handoff/outlineDxf";
import { outlineSvg } from "../../../shared/handoff/outlineSvg";
import { pointsCsv } from "../../../shared/handoff/pointsCsv";
import { puckMesh } from "../../../shared/handoff/puckMesh";
import { puckCautions } from "../../../shared/puck/playCautions";
import type { PuckFigures } from "../../../shared/puck/puckFigures";
import { type Result, success } from "../../../shared/result";
import { ownTolerances } from "./ownTolerances";
import type { PuckInputs } from "./puckInputs";

/** What is handed to the workshop and to a flow computation. */
export const handoffKinds = {
  csv: { label: "Profile points, CSV", ending: "profile.csv", mediaType: "text/csv" },
  dxf: { label: "Profile and core, DXF", ending: "profile.dxf", mediaType: "image/vnd.dxf" },
  svg: { label: "Profile, SVG", ending: "profile.svg", mediaType: "image/svg+xml" },
  planSvg: { label: "Plan, SVG", ending: "plan.svg", mediaType: "image/svg+xml" },
  stl: { label: "Solid, STL", ending: "solid.stl", mediaType: "model/stl" },
  threeMf: { label: "Solid, 3MF", ending: "solid.3mf", mediaType: "model/3mf" },
  drawing: { label: "Drawing with tolerances, SVG", ending: "drawing.svg", mediaType: "image/svg+xml" },
} as const;

export type HandoffKind = keyof typeof handoffKinds;

export interface HandoffFile {
  readonly name: string;
  readonly mediaType: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
  /** What the file leaves out. */
  readonly notes: readonly string[];
}

/**
 * One file of the candidate.
 * @param figures    of the candidate, which must be one that can be made
 * @param deviation  greatest distance between file and puck where curves become straight lines, m
 * @param date       day on the drawing, year-month-day
 */
export function handoffFile(
  kind: HandoffKind,
  inputs: PuckInputs,
  figures: PuckFigures,
  deviation: number,
  date: string,
): Result<HandoffFile> {
  const { spec } = inputs.candidate;
  const { ending, mediaType } = handoffKinds[kind];
  const file = (content: HandoffFile["content"], notes: readonly string[] = []) =>
    success({ name: `${fileStem(spec.name)}-${ending}`, mediaType, content, notes });
  const grooves =
    spec.face.kind === "radialGrooves" || spec.rim.kind === "axialGrooves" || spec.rim.kind === "ringGrooves";
  const leftOut = grooves ? ["Grooves are not in this outline."] : [];
  switch (kind) {
    case "csv":
      return file(pointsCsv(profileOutline(spec), deviation), leftOut);
    case "dxf":
      return file(outlinesDxf([profileOutline(spec), ...coreOutlines(spec)]), leftOut);
    case "svg":
      return file(outlineSvg(profileOutline(spec)), leftOut);
    case "planSvg":
      return file(outlineSvg(planOutline(spec)), leftOut);
    case "drawing":
      return file(
        puckDrawing({
          spec,
          figures,
          tolerances: ownTolerances(spec, inputs.tolerances),
          date,
          notes: puckCautions(spec, inputs.userMaterials),
        }),
      );
    default: {
      const mesh = puckMesh(spec, deviation);
      if (!mesh.ok) return mesh;
      return file(kind === "stl" ? meshStl(mesh.value) : mesh3mf(mesh.value), mesh.value.notes);
    }
  }
}

/** A name as the beginning of file names: lower case, words joined by hyphens. */
export function fileStem(name: string): string {
  const stem = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return stem || "puck";
}
