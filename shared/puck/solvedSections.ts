import { gradeNodes } from "../geometry/gradedNodes";
import { buildContour } from "../geometry/sectionFamilies";
import type { SectionSpec } from "../geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { traceDragCurve } from "../solve/dragCurve";
import { type PreparedSection, prepareSection } from "../solve/prepareSection";
import type { EdgeOnSections, ProfileStrip } from "./edgeOnDrag";
import type { PuckSpec } from "./puckSpec";
import { type SectionDragCurve, type SectionDragPoint, tabulatedSectionDrag } from "./sectionDrag";

/** In which stream and how finely the sections of a puck are solved. */
export interface SectionSolving {
  /** Speeds that the curves must cover, m/s, rising, two or more. */
  readonly speeds: readonly number[];
  /** m^2/s. */
  readonly kinematicViscosity: number;
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** Equivalent sand-grain roughness of the rim, m, and of the faces, m. */
  readonly rimRoughness: number;
  readonly faceRoughness: number;
  readonly panelCount: number;
  /** Chords / diameter at which the profile is solved, rising, the last usually 1. */
  readonly chordRatios: readonly number[];
  /** Relative error of a solved drag coefficient, 0 or more: the band on top of the spread between steady states. */
  readonly relativeError: number;
}

/** The stream of one drag curve. */
export type StripStream = Pick<
  SectionSolving,
  "speeds" | "kinematicViscosity" | "turbulenceIntensity" | "relativeError"
>;

/**
 * Drag curves of a puck's plan (circle) and profile (its edge-on section at each chord, without recess or grooves), as a
 * slowly rising speed meets them. Where several steady states exist the band holds them all.
 */
export function solveEdgeOnSections(spec: PuckSpec, solving: SectionSolving): Result<EdgeOnSections> {
  const { diameterMetres: d, thicknessMetres: t } = spec;
  if (!(solving.relativeError >= 0)) return problem("edge-on", "relative error must be 0 or more", "relativeError");
  const plan = solveCurve({ family: "circle", diameter: d }, d, solving.rimRoughness, solving);
  if (!plan.ok) return plan;
  const profile: ProfileStrip[] = [];
  for (const chordRatio of solving.chordRatios) {
    const drag = solveCurve(profileSection(spec, chordRatio * d), t, solving.faceRoughness, solving);
    if (!drag.ok) return drag;
    profile.push({ chordRatio, drag: drag.value });
  }
  return success({ plan: plan.value, profile });
}

/** The profile section of a strip: the puck's edges at a shorter chord. Recess and grooves are left out. */
export function profileSection({ thicknessMetres: t, edge }: PuckSpec, chord: number): SectionSpec {
  if (edge.kind === "radius") {
    return { family: "roundedRectangle", length: chord, height: t, edgeRadius: edge.radiusMetres };
  }
  if (edge.kind === "bevel") {
    return {
      family: "bevelledRectangle",
      length: chord,
      height: t,
      bevelLength: edge.radialMetres,
      bevelHeight: edge.axialMetres,
      cornerRadius: sharpCornerRadius * Math.min(t, chord),
    };
  }
  const corner = edge.points.map(([radial, axial]) => [chord / 2 - radial, axial - t / 2] as const);
  const right = [...corner, ...[...corner].reverse().map(([x, y]) => [x, -y] as const)];
  return { family: "freeContour", points: [...right, ...[...right].reverse().map(([x, y]) => [-x, y] as const)] };
}

/** Of the smaller dimension: close to the least radius that the section families take, 1 %. */
const sharpCornerRadius = 0.02;

function solveCurve(
  spec: SectionSpec,
  width: number,
  roughness: number,
  solving: SectionSolving,
): Result<SectionDragCurve> {
  const section = prepareStrip(spec, solving.panelCount);
  return section.ok ? stripDrag(section.value, width, roughness, solving) : section;
}

/** A section of a puck, ready for every stream; its size does not matter, so that one circle serves every plan. */
export function prepareStrip(spec: SectionSpec, panelCount: number): Result<PreparedSection> {
  const contour = buildContour(spec);
  if (!contour.ok) return contour;
  const nodes = gradeNodes(contour.value, panelCount);
  return nodes.ok ? prepareSection(nodes.value, 0) : nodes;
}

/**
 * Drag curve of a prepared section as a slowly rising speed meets it; where several steady states exist the band holds
 * them all.
 * @param width     across the stream, m
 * @param roughness equivalent sand-grain roughness, m
 */
export function stripDrag(
  section: PreparedSection,
  width: number,
  roughness: number,
  solving: StripStream,
): Result<SectionDragCurve> {
  const conditions = solving.speeds.map((speed) => ({
    reynolds: (speed * width) / solving.kinematicViscosity,
    sandGrainRoughnessRatio: roughness / width,
    turbulenceIntensity: solving.turbulenceIntensity,
  }));
  const points: SectionDragPoint[] = [];
  let reason = "no speed was given";
  traceDragCurve(section, conditions).forEach((outcome, i) => {
    if (outcome.rising === null) {
      reason = outcome.problem?.message ?? reason;
      return;
    }
    const byDrag = [...outcome.states].sort((a, b) => a.dragCoefficient - b.dragCoefficient);
    const [lowest, highest] = [byDrag[0], byDrag[byDrag.length - 1]];
    points.push({
      reynolds: conditions[i].reynolds,
      low: lowest.dragCoefficient * (1 - Math.min(solving.relativeError, 0.99)),
      best: outcome.states[outcome.rising].dragCoefficient,
      high: highest.dragCoefficient * (1 + solving.relativeError),
      regime: outcome.states[outcome.rising].regime,
      lowRegime: lowest.regime,
      highRegime: highest.regime,
    });
  });
  if (points.length === 0)
    return problem("edge-on", `nothing converged on a section ${1000 * width} mm across the stream: ${reason}`);
  return success(tabulatedSectionDrag(points));
}
