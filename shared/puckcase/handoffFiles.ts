import { cfdBrief, largestFrictionSpeedRatio } from "../handoff/cfdBrief";
import { cfdBriefText } from "../handoff/cfdBriefText";
import { puckDrawing } from "../handoff/drawing";
import { mesh3mf } from "../handoff/mesh3mf";
import { meshStl } from "../handoff/meshStl";
import { coreOutlines, type Outline, planOutline, profileOutline } from "../handoff/outline";
import { outlinesDxf } from "../handoff/outlineDxf";
import { outlineSvg } from "../handoff/outlineSvg";
import { pointsCsv } from "../handoff/pointsCsv";
import { puckMesh } from "../handoff/puckMesh";
import { puckCautions } from "../puck/playCautions";
import { profileSection } from "../puck/solvedSections";
import { type Result, success } from "../result";
import type { PuckJudgement } from "../rules/judgePuck";
import { type BriefSection, solveBriefSection } from "./briefSection";
import type { CasePuck, PuckCase } from "./puckCase";
import { ownTolerances } from "./puckSteps";

/** One file of a hand-off, its name without a folder. */
export interface HandoffFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** What keys leave out: a solid that a workshop's machine reproduces, a boundary layer resolved to the wall. */
const standard = { deviationMetres: 1e-5, wantedYPlus: 1 };

export interface HandoffRequest {
  /** m/s. */
  readonly speed: number;
  readonly turbulencePercent: number;
  /** Day on the drawing, year-month-day. */
  readonly date: string;
}

/** Everything that leaves the house with a puck: outlines, solid, briefs for flow computations and the drawing. */
export function handoffFiles(
  puck: CasePuck,
  theCase: PuckCase,
  request: HandoffRequest,
  judgement: PuckJudgement | null,
): Result<readonly HandoffFile[]> {
  const { spec, figures } = puck;
  const base = fileNameOf(spec.name);
  const deviation = theCase.handoff.deviationMetres ?? standard.deviationMetres;
  const mesh = puckMesh(spec, deviation);
  if (!mesh.ok) return mesh;
  const briefs: HandoffFile[] = [];
  for (const part of briefParts(puck)) {
    const brief = briefText(part, puck, theCase, request);
    if (!brief.ok) return brief;
    briefs.push({ name: `${base}-${part.kind}-brief.txt`, content: brief.value });
  }
  const profile = profileOutline(spec);
  const plan = planOutline(spec);
  const cores = coreOutlines(spec);
  const cautions = puckCautions(spec, theCase.setting.userMaterials ?? []);
  return success([
    ...outlineFiles(`${base}-profile`, profile, deviation),
    ...outlineFiles(`${base}-plan`, plan, deviation),
    ...(cores.length === 0 ? [] : [{ name: `${base}-core.dxf`, content: outlinesDxf(cores) }]),
    { name: `${base}-solid.stl`, content: meshStl(mesh.value) },
    { name: `${base}-solid.3mf`, content: mesh3mf(mesh.value) },
    ...briefs,
    {
      name: `${base}-drawing.svg`,
      content: puckDrawing({
        spec,
        figures,
        tolerances: ownTolerances(puck, theCase),
        date: request.date,
        notes: [
          ...(theCase.handoff.notes ?? []),
          ...drawingNotes(judgement),
          "Read the cautions handed over with this drawing.",
        ],
      }),
    },
    { name: `${base}-read-first.txt`, content: readFirst(spec.name, mesh.value.notes, cautions, judgement) },
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

interface BriefPart {
  readonly kind: "plan" | "profile";
  readonly section: BriefSection;
}

function briefParts({ spec, finish }: CasePuck): BriefPart[] {
  const rim = spec.rim.kind === "rough" ? spec.rim.sandGrainRoughnessMetres : finish;
  return [
    {
      kind: "plan",
      section: {
        spec: { family: "circle", diameter: spec.diameterMetres },
        width: spec.diameterMetres,
        roughness: rim,
      },
    },
    {
      kind: "profile",
      section: {
        spec: profileSection(spec, spec.diameterMetres),
        width: spec.thicknessMetres,
        roughness: finish,
      },
    },
  ];
}

function briefText(part: BriefPart, { spec }: CasePuck, theCase: PuckCase, request: HandoffRequest): Result<string> {
  const { fluid } = theCase.stream;
  const solved = solveBriefSection(part.section, theCase.stream, request.speed, request.turbulencePercent);
  if (!solved.ok) return solved;
  const { state, band, applicability } = solved.value;
  const ratio = Math.max(
    ...[state.upper, state.lower].map(({ layer }) => largestFrictionSpeedRatio(layer.edgeSpeed, layer.skinFriction)),
  );
  const brief = cfdBrief({
    title: `${spec.name}: ${part.kind} section`,
    referenceWidth: part.section.width,
    speed: request.speed,
    fluid,
    turbulenceIntensity: request.turbulencePercent / 100,
    sandGrainRoughness: part.section.roughness,
    wantedYPlus: theCase.handoff.wantedYPlus ?? standard.wantedYPlus,
    friction: { kind: "solved", ratio },
    separationAngles: [state.upper.separationAngle, state.lower.separationAngle],
    strouhal: state.strouhal,
    expectedDrag: band,
    dragAreaName: "width across the stream x span of an endless section",
  });
  if (!brief.ok) return brief;
  const lines = [
    `- Regime expected: ${state.regime}. The band of the drag coefficient: ${applicability}.`,
    "- The section is endless; the puck is not. For the puck itself compute its solid, and read the puck results of the case for the expected band.",
    "",
  ];
  return success(`${cfdBriefText(brief.value)}${lines.join("\n")}`);
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
  meshNotes: readonly string[],
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
    ...meshNotes,
    "",
    "Cautions",
    ...cautions.map((caution) => `- ${caution}`),
    ...rules,
    "",
  ].join("\n");
}
