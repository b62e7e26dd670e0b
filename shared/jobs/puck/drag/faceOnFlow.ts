import { type AxialFlow, axialAddedMassRatio, axialFlow } from "../../../engine/axial/axialFlow";
import { axialNodes } from "../../../engine/axial/axialNodes";
import { laminarAxialWake } from "../../../engine/axial/axialSeparation";
import { type AxialWake, axialWake, speedAt } from "../../../engine/axial/axialWake";
import { CALIBRATED } from "../../../engine/constants/calibrated";
import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { smallestRadiusRatio } from "../../../engine/geometry/dimensionChecks";
import { buildContour } from "../../../engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../../engine/geometry/sectionSpec";
import { reattachmentDistance, shearLayerTransitionReynolds } from "../../../engine/layer/bubble";
import { CHECKED_BANDS } from "../../../engine/trust/checkedBands";
import { type DragBand, dragOn, type PuckDrag, scaleBand } from "../../../engine/trust/dragInterval";
import { findSwitch } from "../../../numerics/rootFinder";
import { problem, type Result, success } from "../../../result";
import { edgeReach, silhouetteMeridian } from "../body/outerShape";
import type { PuckSpec } from "../body/puckSpec";
import { revolve } from "../body/solidFigures";
import { attachedFrontDrag, sharpCylinderDrag } from "./faceOnDrag";
import { profileSection } from "./solvedSections";

/** The flow along the axis of a puck as far as it does not depend on speed and turbulence. Coefficients on the face area. */
export interface FaceOnFlow {
  /** Laminar layers leave the front edge for good. */
  readonly separated: DragBand;
  /** They come back behind a bubble on the front edge, and the flow follows the rim to the rear edge. */
  readonly attached: DragBand;
  /** Surface speed / U at the laminar separation, and the meridian's curvature there times the diameter. */
  readonly separationSpeed: number;
  readonly separationCurvature: number;
  /** Added mass / displaced mass for motion along the axis. */
  readonly addedMassRatio: number;
}

/**
 * Base pressure coefficients of bodies of revolution behind a laminar separation all round: a disc (Fail, Lawford & Eyre
 * 1957, ARC R&M 3120) and a sphere below its crisis (Achenbach 1972, J. Fluid Mech. 54, 565), both from memory. The expected
 * value lies between them: no street of vortices closes the base pressure here, as it does in plane flow.
 */
const basePressure = {
  disc: SHORT_BODY_NUMBERS.discBasePressure.value,
  between: SHORT_BODY_NUMBERS.faceOnBasePressure.value,
  sphere: SHORT_BODY_NUMBERS.sphereBasePressure.value,
};

/** The flow misses sharp cylinders and spheres by less than this part: see the tests against published drag. */
const methodError = SHORT_BODY_NUMBERS.faceOnMethodError.value;

/** Thickness / diameter at which panels resolve the edge, and up to which no sharp cylinder's flow comes back to its side. */
const solvedRange = [SHORT_BODY_NUMBERS.thinnestFaceOn.value, SHORT_BODY_NUMBERS.thickestFaceOn.value] as const;

const panelCount = 120;

/** Solves the flow along the axis of a puck, both faces without recess and grooves. */
export function prepareFaceOn(spec: PuckSpec): Result<FaceOnFlow> {
  const slenderness = spec.thicknessMetres / spec.diameterMetres;
  if (!(slenderness >= solvedRange[0] && slenderness <= solvedRange[1])) {
    return problem(
      "face-on",
      `thickness / diameter is ${slenderness.toPrecision(3)}; the flow face-on is solved from ${solvedRange[0]} to ${solvedRange[1]}`,
      "thicknessMetres",
    );
  }
  const contour = buildContour(axialSection(spec));
  if (!contour.ok) return contour;
  const nodes = axialNodes(contour.value, panelCount);
  if (!nodes.ok) return nodes;
  const flow = axialFlow(nodes.value);
  const wake = laminarAxialWake(flow, speedRatio(basePressure.between));
  if (wake === null) {
    return problem("face-on", "no place was found where the layer separates as the wake assumes it");
  }
  const sharp = sharpCylinderDrag(slenderness);
  const separated = separatedBand(flow, wake, sharp);
  return success({
    separated,
    attached: attachedBand(flow, wake, spec, separated),
    separationSpeed: speedRatio(basePressure.between),
    separationCurvature: speedAt(flow.nodes, flow.nodes.curvature, wake.separationArc) * spec.diameterMetres,
    addedMassRatio: axialAddedMassRatio(flow, revolve(silhouetteMeridian(spec)).volume),
  });
}

/** The puck's meridian and its mirror image, the axis along x. */
function axialSection(spec: PuckSpec): SectionSpec {
  const { diameterMetres: d, thicknessMetres: t, edge } = spec;
  if (edge.kind === "radius") {
    const edgeRadius = Math.max(edge.edgeRadiusMetres, smallestRadiusRatio * Math.min(t, d));
    return { family: "roundedRectangle", length: t, height: d, edgeRadius };
  }
  const across = profileSection(spec, d);
  if (across.family === "freeContour") {
    return { family: "freeContour", points: [...across.points].reverse().map(([x, y]) => [y, x] as const) };
  }
  if (across.family !== "bevelledRectangle") throw new RangeError(`the profile is a ${across.family}.`);
  return { ...across, length: t, height: d, bevelLength: across.bevelHeight, bevelHeight: across.bevelLength };
}

function speedRatio(Cpb: number): number {
  return Math.sqrt(1 - Cpb);
}

function separatedBand(flow: AxialFlow, { separationArc, pressureDrag }: AxialWake, sharp: DragBand): DragBand {
  const at = (Cpb: number) => axialWake(flow, separationArc, speedRatio(Cpb)).pressureDrag;
  // A rounded edge never has more drag than a sharp one, which is measured.
  const expected = Math.min(pressureDrag, sharp.expected);
  return {
    low: Math.min(expected, (1 - methodError) * at(basePressure.sphere)),
    expected,
    high: Math.max(expected, Math.min(sharp.high, (1 + methodError) * at(basePressure.disc))),
  };
}

/** From the table of rounded fronts to the flow that separates at the rear edge, at the place that mirrors the front one. */
function attachedBand(flow: AxialFlow, wake: AxialWake, spec: PuckSpec, separated: DragBand): DragBand {
  const rear = flow.nodes.length - wake.separationArc;
  const reach = edgeReach(spec);
  const table = attachedFrontDrag(Math.min(reach.radial, reach.axial) / spec.diameterMetres);
  const solved = [basePressure.sphere, basePressure.disc].map(
    (Cpb) => axialWake(flow, rear, speedRatio(Cpb)).pressureDrag,
  );
  const expected = Math.min(table.expected, separated.expected);
  return {
    low: Math.min(expected, table.low),
    expected,
    high: Math.max(expected, Math.min(separated.high, Math.max(table.high, ...solved))),
  };
}

/**
 * Reynolds number on the diameter from which on the layer comes back behind a bubble on the front edge, by the same rule
 * and constant as in plane flow, see bubble.ts.
 * @param turbulenceIntensity a fraction
 */
export function closingReynolds(
  { separationSpeed, separationCurvature }: FaceOnFlow,
  turbulenceIntensity: number,
): number {
  const length = shearLayerTransitionReynolds(turbulenceIntensity / separationSpeed);
  const closes = (reynolds: number) =>
    reattachmentDistance(length / (separationSpeed * reynolds), separationCurvature, CALIBRATED.reattachmentSlope) !==
    null;
  return Math.exp(findSwitch((logarithm) => !closes(Math.exp(logarithm)), 0, Math.log(1e10)).failing);
}

/**
 * Drag of a puck moving along its axis, on its face area. Near the Reynolds number at which the flow closes over the front
 * edge the band holds the states on both sides.
 * @param reynolds            on the diameter, 1e4 or more
 * @param turbulenceIntensity a fraction
 */
export function solvedFaceOnDrag(
  { diameterMetres: d }: PuckSpec,
  flow: FaceOnFlow,
  reynolds: number,
  turbulenceIntensity: number,
): PuckDrag {
  const closing = closingReynolds(flow, turbulenceIntensity);
  const factor = CHECKED_BANDS.crisisReynoldsFactor["other section"];
  const [own, other] = reynolds < closing ? [flow.separated, flow.attached] : [flow.attached, flow.separated];
  const isNear = reynolds > closing / factor && reynolds < closing * factor;
  const coefficient = isNear
    ? { low: Math.min(own.low, other.low), expected: own.expected, high: Math.max(own.high, other.high) }
    : own;
  const area = (Math.PI / 4) * d * d;
  return dragOn(scaleBand(coefficient, area), area, "face area", [faceOnFlowNote]);
}

export const faceOnFlowNote =
  "Face-on: the flow along the axis is solved, its base pressure taken between those measured behind discs and spheres. The layer leaves the front edge unless its bubble closes there, by the rule and constant of plane sections; then the drag is that of long cylinders with rounded fronts, low confidence. Recess and grooves are left out.";
