import type { Design } from "../../../shared/design/design";
import type { FluidProperties } from "../../../shared/fluid/fluidSpec";
import { cfdBrief, largestFrictionSpeedRatio } from "../../../shared/handoff/cfdBrief";
import { cfdBriefText } from "../../../shared/handoff/cfdBriefText";
import type { LiveSolution } from "../../../shared/live/solveLive";
import { profileSection } from "../../../shared/puck/solvedSections";
import { problem, type Result, success } from "../../../shared/result";
import type { PuckInputs } from "./puckInputs";

/** The two sections of the candidate that a flow computation starts from, at one speed and the first turbulence. */
export function briefDesigns({ candidate, play }: PuckInputs, speed: number): readonly Design[] {
  const { spec, finish } = candidate;
  const design = (part: string, section: Design["section"], sandGrainRoughness: number): Design => ({
    title: `${spec.name}, ${part}`,
    section,
    sectionName: null,
    incidence: 0,
    fluid: play.fluid,
    speed,
    turbulenceIntensity: play.turbulences[0],
    sandGrainRoughness,
    trips: [],
    panelCount: 160,
  });
  const rim = spec.rim.kind === "rough" ? spec.rim.sandGrainRoughnessMetres : finish;
  return [
    design("profile section", profileSection(spec, spec.diameterMetres), finish),
    design("plan section", { family: "circle", diameter: spec.diameterMetres }, rim),
  ];
}

/** The brief of one solved section as text. */
export function sectionBrief(
  design: Design,
  solution: LiveSolution,
  fluid: FluidProperties,
  wantedYPlus: number,
): Result<string> {
  const { outcome, band, referenceWidth } = solution;
  if (outcome.rising === null) return problem("brief", outcome.problem?.message ?? "No steady state was found.");
  const state = outcome.states[outcome.rising];
  const sides = [state.upper, state.lower];
  const ratio = Math.max(...sides.map(({ layer }) => largestFrictionSpeedRatio(layer.edgeSpeed, layer.skinFriction)));
  const brief = cfdBrief({
    title: design.title,
    referenceWidth,
    speed: design.speed,
    fluid,
    turbulenceIntensity: design.turbulenceIntensity,
    sandGrainRoughness: design.sandGrainRoughness,
    wantedYPlus,
    friction: { kind: "solved", ratio },
    separationAngles: sides.map(({ separationAngle }) => separationAngle),
    strouhal: state.strouhal,
    expectedDrag: {
      low: band?.low ?? state.dragCoefficient,
      best: state.dragCoefficient,
      high: band?.high ?? state.dragCoefficient,
    },
    dragAreaName: "width across the stream times span of an endless section",
  });
  return brief.ok ? success(cfdBriefText(brief.value)) : brief;
}
