import { CALIBRATED } from "../../engine/constants/calibrated";
import { SHORT_BODY_NUMBERS } from "../../engine/constants/shortBodyNumbers";
import { smallestRadiusRatio } from "../../engine/geometry/dimensionChecks";
import { gradeNodes } from "../../engine/geometry/gradedNodes";
import { buildContour } from "../../engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../engine/geometry/sectionSpec";
import { traceDragCurve } from "../../engine/solve/dragCurve";
import type { PreparedSection } from "../../engine/solve/preparedSection";
import { prepareSection } from "../../engine/solve/prepareSection";
import { crisisFactor, dragBand } from "../../engine/trust/dragBand";
import { statesNearby } from "../../engine/trust/nearbyStates";
import { describeSection } from "../../engine/trust/sectionDescription";
import { problem, type Result, success } from "../../result";
import type { PuckSpec } from "./puckSpec";
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

/** Least low end of a band, as a part of the best value. */
const leastShare = SHORT_BODY_NUMBERS.leastBandShare.value;

/** Of the smaller dimension: close to the least radius that the section families take, 1 %. */
const sharpCornerRadius = SHORT_BODY_NUMBERS.bevelCorner.value;

/**
 * A section of a puck, ready for every stream; its size does not matter, so that one circle serves every plan.
 * @param surroundings gap under the section / its height, or a plate that parts its wake; neither in open water
 */
export function prepareStrip(
  spec: SectionSpec,
  panelCount: number,
  surroundings: { readonly floorGapRatio?: number; readonly splitterPlate?: boolean } = {},
): Result<PreparedSection> {
  const contour = buildContour(spec);
  if (!contour.ok) return contour;
  const nodes = gradeNodes(contour.value, panelCount);
  const { floorGapRatio, splitterPlate } = surroundings;
  return nodes.ok ? prepareSection(nodes.value, 0, CALIBRATED, floorGapRatio, splitterPlate) : nodes;
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
  const outcomes = traceDragCurve(section, conditions);
  const description = describeSection(
    section.nodes,
    section.incidence,
    section.flow.wakeSuctionShare < 1 || section.floor !== null,
  );
  outcomes.forEach((outcome, i) => {
    if (outcome.rising === null) {
      reason = outcome.problem?.message ?? reason;
      return;
    }
    const state = outcome.states[outcome.rising];
    if (!(state.dragCoefficient > 0)) {
      reason = `the drag coefficient came out as ${state.dragCoefficient.toPrecision(3)}; more panels may help`;
      return;
    }
    const { relativeError } = solving;
    const held =
      relativeError === null
        ? statesNearby(section, conditions, outcomes, i, crisisFactor(description, conditions[i]))
        : outcome.states;
    const byDrag = [...held].sort((a, b) => a.dragCoefficient - b.dragCoefficient);
    const [lowest, highest] = [byDrag[0], byDrag[byDrag.length - 1]];
    const band =
      relativeError === null
        ? dragBand(description, state, conditions[i], held)
        : {
            low: lowest.dragCoefficient * (1 - Math.min(relativeError, 0.99)),
            high: highest.dragCoefficient * (1 + relativeError),
          };
    points.push({
      reynolds: conditions[i].reynolds,
      // A coefficient near 0 is below what the method can tell, and the index divides by it.
      low: Math.min(Math.max(band.low, leastShare * state.dragCoefficient), state.dragCoefficient),
      best: state.dragCoefficient,
      high: Math.max(band.high, state.dragCoefficient),
      regime: state.regime,
      lowRegime: lowest.regime,
      highRegime: highest.regime,
    });
  });
  if (points.length === 0)
    return problem("edge-on", `nothing converged on a section ${1000 * width} mm across the stream: ${reason}`);
  return success(tabulatedSectionDrag(points));
}
