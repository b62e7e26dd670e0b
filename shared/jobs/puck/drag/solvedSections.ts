import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { smallestRadiusRatio } from "../../../engine/geometry/dimensionChecks";
import type { SectionSpec } from "../../../engine/geometry/sectionSpec";
import type { PlacedSection } from "../../../engine/section/placedSection";
import { type PreparedShape, prepareShape } from "../../../engine/section/prepareShape";
import { type SolvedStream, solveStreams } from "../../../engine/section/solveStreams";
import { flowCondition } from "../../../engine/section/stream";
import { type StudiedCurve, studiedCurve } from "../../../engine/section/studyBodies";
import { problem, type Result, success } from "../../../result";
import type { PuckSpec } from "../body/puckSpec";
import { type SectionDragCurve, type SectionDragPoint, tabulatedSectionDrag } from "./sectionDrag";

/** The stream of one drag curve. */
export interface StripStream {
  /** Speeds that the curve must cover, m/s, rising, one or more. */
  readonly speeds: readonly number[];
  /** m^2/s. */
  readonly kinematicViscosity: number;
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /**
   * Relative error of a solved drag coefficient, 0 or more, on top of the spread between steady states; null for the
   * 90 % bands by the engine's errors against published values, which also hold the states about a near drag crisis.
   */
  readonly relativeError: number | null;
}

/**
 * The profile section of a strip: the puck's edges at a shorter chord, sharper ones at the least radius that is solved.
 * Recess and grooves are left out.
 */
export function profileSection({ thicknessMetres: t, edge }: PuckSpec, chord: number): SectionSpec {
  if (edge.kind === "radius") {
    const edgeRadius = Math.max(edge.edgeRadiusMetres, smallestRadiusRatio * Math.min(t, chord));
    return { family: "roundedRectangle", length: chord, height: t, edgeRadius };
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

/** Least low end of a band, as a part of the expected value. */
const leastShare = SHORT_BODY_NUMBERS.leastBandShare.value;

/** Of the smaller dimension: close to the least radius that the section families take, 1 %. */
const sharpCornerRadius = SHORT_BODY_NUMBERS.bevelCorner.value;

/**
 * A section of a puck, ready for every stream.
 * @param surroundings gap under the section, m, or a plate that parts its wake; neither in open water
 */
export function prepareStrip(
  section: SectionSpec,
  panelCount: number,
  surroundings: Pick<PlacedSection, "floorGap" | "splitterPlate"> = {},
): Result<PreparedShape> {
  return prepareShape({ section, panelCount, ...surroundings });
}

/** A section of a puck in one stream, ready for draws that it shares with other pucks. */
export interface StudiedStrip extends StudiedCurve {
  /** Across the stream, m. */
  readonly width: number;
  /** Equivalent, m. */
  readonly sandGrainRoughness: number;
  /** m^2/s */
  readonly kinematicViscosity: number;
  /** A fraction. */
  readonly turbulenceIntensity: number;
}

export interface StripCurve {
  readonly drag: SectionDragCurve;
  readonly study: StudiedStrip;
}

/**
 * Drag curve of a prepared section as a slowly rising speed meets it; where several steady states exist the band holds
 * them all.
 * @param width     across the stream, m: of the section at its true size, since one circle serves every plan
 * @param sandGrainRoughness equivalent, m
 */
export function stripDrag(
  shape: PreparedShape,
  width: number,
  sandGrainRoughness: number,
  { speeds, kinematicViscosity, turbulenceIntensity, relativeError }: StripStream,
): Result<StripCurve> {
  const streams = speeds.map((speed) =>
    flowCondition({ speed, fluid: { kinematicViscosity }, sandGrainRoughness, turbulenceIntensity }, width),
  );
  const points: SectionDragPoint[] = [];
  let reason = "no speed was given";
  const all = solveStreams(shape, streams, relativeError === null ? "all" : "none");
  for (const solved of all) {
    const point = stripPoint(solved, relativeError);
    if (point.ok) points.push(point.value);
    else reason = point.problem.message;
  }
  const studied = studiedCurve(shape, all);
  if (points.length === 0 || studied === null)
    return problem("edge-on", `nothing converged on a section ${1000 * width} mm across the stream: ${reason}`);
  const study = { ...studied, width, sandGrainRoughness, kinematicViscosity, turbulenceIntensity };
  return success({ drag: tabulatedSectionDrag(points), study });
}

function stripPoint(
  { condition, outcome, bands, nearby }: SolvedStream,
  relativeError: number | null,
): Result<SectionDragPoint> {
  const { rising, states } = outcome;
  if (rising === null) return problem("edge-on", outcome.problem?.message ?? "no steady state was found");
  const { dragCoefficient: expected, regime } = states[rising];
  if (!(expected > 0)) {
    return problem("edge-on", `the drag coefficient came out as ${expected.toPrecision(3)}; more panels may help`);
  }
  const byDrag = [...nearby].sort((a, b) => a.dragCoefficient - b.dragCoefficient);
  const [lowest, highest] = [byDrag[0], byDrag[byDrag.length - 1]];
  const band =
    relativeError === null
      ? bands[rising]
      : {
          low: lowest.dragCoefficient * (1 - Math.min(relativeError, 0.99)),
          high: highest.dragCoefficient * (1 + relativeError),
        };
  return success({
    reynolds: condition.reynolds,
    // A coefficient near 0 is below what the method can tell, and the index divides by it.
    low: Math.min(Math.max(band.low, leastShare * expected), expected),
    expected,
    high: Math.max(band.high, expected),
    regime,
    lowRegime: lowest.regime,
    highRegime: highest.regime,
  });
}
