import { type Result, success } from "../../result";
import { type CasePuck, type PuckCase, profileSection } from "../puck/public";
import { type BriefSection, solveBriefSection } from "./briefSection";
import { cfdBrief, largestFrictionSpeedRatio } from "./cfdBrief";
import { cfdBriefText } from "./cfdBriefText";
import type { HandoffFile, HandoffRequest } from "./handoffFile";

/** y+ of the first cell when a case names none: a boundary layer resolved to the wall. */
const standardYPlus = 1;

/** Briefs for flow computations of a puck's plan and profile. */
export function briefFiles(
  base: string,
  puck: CasePuck,
  theCase: PuckCase,
  request: HandoffRequest,
): Result<readonly HandoffFile[]> {
  const briefs: HandoffFile[] = [];
  for (const part of briefParts(puck)) {
    const brief = briefText(part, puck, theCase, request);
    if (!brief.ok) return brief;
    briefs.push({ name: `${base}-${part.kind}-brief.txt`, content: brief.value });
  }
  return success(briefs);
}

interface BriefPart {
  readonly kind: "plan" | "profile";
  readonly section: BriefSection;
}

function briefParts({ spec, sandGrainRoughness }: CasePuck): BriefPart[] {
  const rim = spec.rim.kind === "rough" ? spec.rim.sandGrainRoughnessMetres : sandGrainRoughness;
  return [
    {
      kind: "plan",
      section: {
        spec: { family: "circle", diameter: spec.diameterMetres },
        width: spec.diameterMetres,
        sandGrainRoughness: rim,
      },
    },
    {
      kind: "profile",
      section: {
        spec: profileSection(spec, spec.diameterMetres),
        width: spec.thicknessMetres,
        sandGrainRoughness,
      },
    },
  ];
}

function briefText(part: BriefPart, { spec }: CasePuck, theCase: PuckCase, request: HandoffRequest): Result<string> {
  const { fluid } = theCase.stream;
  const solved = solveBriefSection(part.section, theCase.stream, request.speed, request.turbulenceIntensity);
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
    turbulenceIntensity: request.turbulenceIntensity,
    sandGrainRoughness: part.section.sandGrainRoughness,
    wantedYPlus: theCase.handoff.wantedYPlus ?? standardYPlus,
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
