import type { FlowCondition } from "../condition";
import { arcAtPosition, interpolateAtPosition, nodeBeforeArc } from "../geometry/arcPosition";
import { layerProfile } from "../layer/layerProfile";
import type { Side } from "../layer/sideStations";
import type { LayerProfile, SectionState, SideSolution, SideState } from "../solution";
import { squireYoungDrag } from "../wake/closedWake";
import { quadraticAt } from "../wake/wakeFlow";
import type { FixedPoint } from "./fixedPoint";
import { followOneSide } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { regimeOf } from "./regime";
import type { Steadiness } from "./settled";

/** Works a fixed point out into everything that is reported of it. */
export function sectionState(
  section: PreparedSection,
  condition: FlowCondition,
  point: FixedPoint,
  { unsettledBy, changes }: Steadiness,
): SectionState {
  const { nodes } = section;
  const { wake, speedRatio, strouhal, velocity } = point.flow;
  const contact = section.floor?.contact ?? null;
  const symmetric = point.flow.upper === point.flow.lower && contact === null;
  const lower =
    contact === null
      ? sideSolution(section, condition, point, "lower")
      : sealedSide(section, contact.middle, point.upper.state);
  const upper = symmetric ? mirrored(section, lower) : sideSolution(section, condition, point, "upper");
  const lowerFriction = frictionForce(section, lower, "lower");
  const upperFriction = symmetric
    ? { drag: lowerFriction.drag, lift: -lowerFriction.lift }
    : frictionForce(section, upper, "upper");
  const bubbleDrag = (point.lower.longBubble?.drag ?? 0) + (point.upper.longBubble?.drag ?? 0);
  const bubbleLift = (point.lower.longBubble?.lift ?? 0) + (point.upper.longBubble?.lift ?? 0);
  const frictionDrag = lowerFriction.drag + upperFriction.drag;
  // What the layers carry off is the least drag that a flow can have, and all of it where the wake is closed.
  const layerDrag = Math.max(0, profileDrag(lower) + profileDrag(upper) - frictionDrag);
  const wakeDrag = point.flow.closedWake ? 0 : quadraticAt(wake.pressureDrag, speedRatio) + bubbleDrag;
  const attached = wakeDrag <= layerDrag;
  const pressureDrag = Math.max(wakeDrag, layerDrag);
  const basePressure = 1 - speedRatio * speedRatio;
  const amplitude = wake.amplitude[0] + speedRatio * wake.amplitude[1];
  const pressureCoefficient = new Float64Array(nodes.count);
  let minimumPressure = basePressure;
  const held = heldSpeeds(section, point, lower, upper);
  for (let i = 0; i < nodes.count; i++) {
    // Node steps from the lower separation point, past the base first, in [0, count).
    const behindLower = i - wake.lower - nodes.count * Math.floor((i - wake.lower) / nodes.count);
    const wetted = behindLower === 0 || behindLower > wake.upper - wake.lower;
    const speed = held === null ? velocity[i] : Math.min(Math.abs(velocity[i]), held[i]);
    pressureCoefficient[i] = wetted ? 1 - speed * speed : basePressure;
    minimumPressure = Math.min(minimumPressure, pressureCoefficient[i]);
  }
  return {
    regime: regimeOf(point),
    oneSided: section.symmetric && lower.state !== upper.state,
    onSwitch: point.onSwitch,
    attached,
    settled: unsettledBy === null,
    unsettledBy,
    dragCoefficientSeen: [
      Math.max(frictionDrag, pressureDrag + frictionDrag + changes[0]),
      pressureDrag + frictionDrag + changes[1],
    ],
    upper,
    lower,
    separationSpeedRatio: speedRatio,
    basePressureCoefficient: basePressure,
    minimumPressureCoefficient: minimumPressure,
    strouhal,
    pressureDragCoefficient: pressureDrag,
    frictionDragCoefficient: frictionDrag,
    dragCoefficient: pressureDrag + frictionDrag,
    liftCoefficient: symmetric
      ? 0
      : quadraticAt(wake.lift, speedRatio) + bubbleLift + lowerFriction.lift + upperFriction.lift,
    wakeWidth: wake.wakeWidth[0] + speedRatio * wake.wakeWidth[1],
    pressureCoefficient,
    surfaceVelocity: velocity,
    outflow: wake.outflow.map((strength, i) => (amplitude * strength) / nodes.ds[i]),
    intermittency: null,
  };
}

/**
 * The speed / U that a long bubble does not let the surface speed rise above, at the nodes from the front to where its
 * layer comes back, shape [count]; null without a long bubble.
 */
function heldSpeeds(
  section: PreparedSection,
  point: FixedPoint,
  lower: SideSolution,
  upper: SideSolution,
): Float64Array | null {
  if (point.lower.longBubble === null && point.upper.longBubble === null) return null;
  const { nodes, referenceWidth } = section;
  const held = new Float64Array(nodes.count).fill(Number.POSITIVE_INFINITY);
  for (const side of ["lower", "upper"] as const) {
    const { longBubble, bubble } = point[side];
    if (longBubble === null || bubble === null) continue;
    const { separationContourArc, separationArc } = side === "lower" ? lower : upper;
    const direction = side === "lower" ? 1 : -1;
    const start = separationContourArc - direction * separationArc * referenceWidth;
    for (let i = 0; i < nodes.count; i++) {
      let from = direction * (nodes.arc[i] - start);
      if (from < 0) from += nodes.perimeter;
      if (from < bubble.reattachmentArc * referenceWidth) held[i] = longBubble.speed;
    }
  }
  return held;
}

function sideSolution(section: PreparedSection, condition: FlowCondition, point: FixedPoint, side: Side): SideSolution {
  const { nodes } = section;
  const stations = side === "lower" ? point.flow.lower : point.flow.upper;
  const turbulent: number[] = [];
  const layer = followOneSide(section, condition, point.flow, side, (arc, theta, H, Cf) => {
    turbulent.push(arc, theta, H, Cf);
  });
  const position = side === "lower" ? point.flow.wake.lower : point.flow.wake.upper;
  return {
    state: layer.state,
    separationArc: stations.arc[stations.count - 1],
    separationAngle: angleFromFront(section, position),
    separationContourArc: arcAtPosition(nodes, position),
    transitionCause: layer.transitionCause,
    transitionArc: layer.transitionArc,
    bubble: layer.bubble,
    layer: layerProfile(stations, layer, turbulent, condition.reynolds),
  };
}

/**
 * Drag of the momentum defect that a layer carries off where it leaves, on D. A layer that leaves faster than the stream
 * has separated: its defect stays what it is.
 */
function profileDrag({ layer }: SideSolution): number {
  const last = layer.arc.length - 1;
  if (last < 0) return 0;
  return squireYoungDrag(layer.momentumThickness[last], layer.shapeFactor[last], Math.min(1, layer.edgeSpeed[last]));
}

/** The lower side of a section on the floor: no flow passes, so there is no layer, and the contact stands for separation. */
function sealedSide(section: PreparedSection, contact: number, state: SideState): SideSolution {
  return {
    state,
    separationArc: 0,
    separationAngle: angleFromFront(section, contact),
    separationContourArc: arcAtPosition(section.nodes, contact),
    transitionCause: null,
    transitionArc: null,
    bubble: null,
    layer: {
      arc: new Float64Array(0),
      edgeSpeed: new Float64Array(0),
      momentumThickness: new Float64Array(0),
      shapeFactor: new Float64Array(0),
      skinFriction: new Float64Array(0),
      layerKind: new Uint8Array(0),
    },
  };
}

function mirrored(section: PreparedSection, lower: SideSolution): SideSolution {
  return { ...lower, separationContourArc: section.nodes.perimeter - lower.separationContourArc };
}

/** Angle at the centroid between the direction against the stream and a point of the contour, rad, in [0, pi]. */
function angleFromFront(section: PreparedSection, position: number): number {
  const { nodes, incidence } = section;
  const dx = interpolateAtPosition(nodes.x, position) - nodes.centroid[0];
  const dy = interpolateAtPosition(nodes.y, position) - nodes.centroid[1];
  const along = dx * Math.cos(incidence) + dy * Math.sin(incidence);
  return Math.acos(Math.max(-1, Math.min(1, -along / Math.hypot(dx, dy))));
}

/** Friction drag and lift coefficients of one side on D: the integral of Cf Ue^2 along the stream and across it. */
function frictionForce(section: PreparedSection, solution: SideSolution, side: Side): { drag: number; lift: number } {
  const { nodes, incidence, referenceWidth } = section;
  const layer: LayerProfile = solution.layer;
  const direction = side === "lower" ? 1 : -1;
  // Contour arc runs from the nose; layer arc from the stagnation point, which separation ties to the contour.
  const start = solution.separationContourArc - direction * solution.separationArc * referenceWidth;
  let drag = 0;
  let lift = 0;
  for (let i = 1; i < layer.arc.length; i++) {
    const step = layer.arc[i] - layer.arc[i - 1];
    if (!(step > 0)) continue;
    const stress =
      (layer.skinFriction[i] * layer.edgeSpeed[i] ** 2 + layer.skinFriction[i - 1] * layer.edgeSpeed[i - 1] ** 2) / 2;
    const contourArc = start + (direction * referenceWidth * (layer.arc[i] + layer.arc[i - 1])) / 2;
    const [tangentX, tangentY] = tangentAtArc(nodes, contourArc);
    const along = direction * (tangentX * Math.cos(incidence) + tangentY * Math.sin(incidence));
    const across = direction * (-tangentX * Math.sin(incidence) + tangentY * Math.cos(incidence));
    drag += stress * step * along;
    lift += stress * step * across;
  }
  return { drag, lift };
}

function tangentAtArc(nodes: PreparedSection["nodes"], contourArc: number): [number, number] {
  const { arc, count, perimeter } = nodes;
  const wrapped = contourArc - perimeter * Math.floor(contourArc / perimeter);
  const low = nodeBeforeArc(nodes, wrapped);
  const next = (low + 1) % count;
  const end = next === 0 ? perimeter : arc[next];
  const weight = (wrapped - arc[low]) / (end - arc[low]);
  return [
    nodes.tangentX[low] + weight * (nodes.tangentX[next] - nodes.tangentX[low]),
    nodes.tangentY[low] + weight * (nodes.tangentY[next] - nodes.tangentY[low]),
  ];
}
