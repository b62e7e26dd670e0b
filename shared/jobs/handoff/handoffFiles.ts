import { type Result, success } from "../../result";
import { type CasePuck, ownTolerances, type PuckCase, type PuckJudgement, puckCautions } from "../puck/public";
import { briefFiles } from "./briefFiles";
import { puckDrawing } from "./drawing";
import { grooveProfileOutline, planLines } from "./grooveOutlines";
import type { HandoffFile, HandoffRequest } from "./handoffFile";
import { mesh3mf } from "./mesh3mf";
import { meshStl } from "./meshStl";
import { coreOutlines, type Outline, planOutline, profileOutline } from "./outline";
import { outlinesDxf } from "./outlineDxf";
import { outlineSvg } from "./outlineSvg";
import { pointsCsv } from "./pointsCsv";
import { puckMesh } from "./puckMesh";

/** m, when a case names none: a solid that a workshop's machine reproduces. */
const standardDeviation = 1e-5;

/** Everything that leaves the house with a puck: outlines, solid, briefs for flow computations and the drawing. */
export function handoffFiles(
  puck: CasePuck,
  theCase: PuckCase,
  request: HandoffRequest,
  judgement: PuckJudgement | null,
): Result<readonly HandoffFile[]> {
  const { spec, figures } = puck;
  const base = fileNameOf(spec.name);
  const deviation = theCase.handoff.deviationMetres ?? standardDeviation;
  const mesh = puckMesh(spec, deviation);
  if (!mesh.ok) return mesh;
  const briefs = briefFiles(base, puck, theCase, request);
  if (!briefs.ok) return briefs;
  const profile = profileOutline(spec);
  const plan = planOutline(spec);
  const cores = coreOutlines(spec);
  const cautions = puckCautions(spec, theCase.setting.userMaterials ?? []);
  const ownNotes = theCase.handoff.notes ?? [];
  const notes = [...ownNotes, ...drawingNotes(judgement), "Read the cautions handed over with this drawing."];
  return success([
    ...outlineFiles(`${base}-profile`, profile, deviation),
    ...outlineFiles(`${base}-plan`, plan, deviation),
    ...(cores.length === 0 ? [] : [{ name: `${base}-core.dxf`, content: outlinesDxf(cores) }]),
    ...patternFiles(base, spec),
    { name: `${base}-solid.stl`, content: meshStl(mesh.value) },
    { name: `${base}-solid.3mf`, content: mesh3mf(mesh.value) },
    ...briefs.value,
    {
      name: `${base}-drawing.svg`,
      content: puckDrawing({
        spec,
        figures,
        tolerances: ownTolerances(puck, theCase),
        date: request.date,
        notes,
      }),
    },
    {
      name: `${base}-read-first.txt`,
      content: readFirst(spec.name, [...mesh.value.notes, ...ownNotes], cautions, judgement),
    },
  ]);
}

/** A file name of plain letters, digits and hyphens. */
export function fileNameOf(name: string): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return plain === "" ? "puck" : plain.slice(0, 60);
}

function outlineFiles(base: string, outline: Outline, deviation: number): HandoffFile[] {
  return [
    { name: `${base}.csv`, content: `${pointsCsv(outline, deviation)}\n` },
    { name: `${base}.dxf`, content: outlinesDxf([outline]) },
    { name: `${base}.svg`, content: outlineSvg(outline) },
  ];
}

/** What plan and profile do not show of a recess or grooves, as drawings of their own: those two stay single outlines. */
function patternFiles(base: string, spec: CasePuck["spec"]): HandoffFile[] {
  const lines = planLines(spec).map(({ outline }) => outline);
  const grooved = grooveProfileOutline(spec);
  return [
    ...(lines.length === 0
      ? []
      : [{ name: `${base}-pattern.dxf`, content: outlinesDxf([planOutline(spec), ...lines]) }]),
    ...(grooved === null ? [] : [{ name: `${base}-groove-section.dxf`, content: outlinesDxf([grooved]) }]),
  ];
}

function drawingNotes(judgement: PuckJudgement | null): string[] {
  if (judgement === null) return [];
  return [`${judgement.ruleSet}, ${judgement.date}: ${verdictWords[judgement.verdict]}; no statement of compliance.`];
}

const verdictWords = {
  pass: "computed figures inside, tolerances included",
  fail: "computed figures OUTSIDE",
  onlyIfMadeBetter: "inside only if made better than these tolerances",
  notDetermined: "not determined",
} as const;

function readFirst(
  name: string,
  notes: readonly string[],
  cautions: readonly string[],
  judgement: PuckJudgement | null,
): string {
  const rules =
    judgement === null
      ? []
      : [
          "",
          `Rules: ${judgement.ruleSet}, ${judgement.date}`,
          ...judgement.rules.map(({ message }) => `- ${message}`),
          judgement.notice,
        ];
  return [
    name,
    "",
    "Lengths in all drawings, outlines and solids are millimetres; STL carries no unit of its own.",
    ...notes,
    "",
    "Cautions",
    ...cautions.map((caution) => `- ${caution}`),
    ...rules,
    "",
  ].join("\n");
}
