import { interpolateAtPosition, positionAtArc } from "../../shared/engine/geometry/arcPosition";
import type { Regime, SectionState } from "../../shared/engine/solution";
import type { SectionQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";
import type { CurvePoint, StreamCurve } from "./streamCurve";

/** Share of the points of a range that must have converged before anything is said about the range. */
const neededShare = 0.9;

/** The engine's value of a quantity, read off the curve of its stream. */
export function predictSection(quantity: SectionQuantity, curve: StreamCurve): Prediction {
  if ("reynolds" in quantity) {
    const index = curve.points.findIndex(({ reynolds }) => reynolds === quantity.reynolds);
    if (index < 0) throw new RangeError(`the curve has no point at Re ${quantity.reynolds}.`);
    const { state, reason } = curve.points[index];
    if (state === null) return notPredicted(reason ?? "no state");
    const answer = predicted(pointValue(quantity, state, curve), state.regime);
    if (quantity.kind !== "dragCoefficient") return answer;
    return { ...answer, drag: { curve, condition: curve.conditions[index], state, index } };
  }
  const inRange = curve.points.filter((p) => p.reynolds >= quantity.reynoldsFrom && p.reynolds <= quantity.reynoldsTo);
  const found = inRange.flatMap(({ reynolds, state }) => (state === null ? [] : [{ reynolds, state }]));
  if (found.length < neededShare * inRange.length) {
    return notPredicted(`${inRange.length - found.length} of ${inRange.length} points did not converge`);
  }
  const lowest = found.reduce((a, b) => (b.state.dragCoefficient < a.state.dragCoefficient ? b : a));
  switch (quantity.kind) {
    case "meanDragCoefficient": {
      const dragCoefficient = logarithmicMean(found, (state) => state.dragCoefficient);
      return rangeDrag(dragCoefficient, commonRegime(found), found[found.length >> 1].reynolds, curve);
    }
    case "meanStrouhal":
      return predicted(
        logarithmicMean(found, (state) => state.strouhal),
        commonRegime(found),
      );
    case "meanBasePressureCoefficient":
      return predicted(
        logarithmicMean(found, (state) => state.basePressureCoefficient),
        commonRegime(found),
      );
    case "lowestDragCoefficient":
      return rangeDrag(lowest.state.dragCoefficient, lowest.state.regime, lowest.reynolds, curve);
    case "reynoldsAtLowestDrag":
      return lowest.reynolds === found[0].reynolds || lowest.reynolds === found[found.length - 1].reynolds
        ? notPredicted("the drag has no minimum in the range")
        : predicted(lowest.reynolds);
    case "largestOneSidedLift": {
      const lifts = inRange.flatMap(({ oneSidedLift }) => (oneSidedLift === null ? [] : [oneSidedLift]));
      return lifts.length === 0 ? notPredicted("no one-sided state found") : predicted(Math.max(...lifts));
    }
    case "reynoldsAtDrag":
    case "criticalReynoldsRatio": {
      const crossing = fallingCrossing(found, quantity.dragCoefficient);
      return crossing === null
        ? notPredicted(`the drag coefficient does not fall through ${quantity.dragCoefficient.toFixed(2)}`)
        : predicted(crossing);
    }
  }
}

/** A drag coefficient of a range, with the condition that stands for it. */
function rangeDrag(dragCoefficient: number, regime: Regime | null, reynolds: number, curve: StreamCurve): Prediction {
  const answer = predicted(dragCoefficient, regime);
  const condition = curve.conditions.find((each) => each.reynolds === reynolds);
  if (regime === null || condition === undefined) return answer;
  return { ...answer, drag: { curve, condition, state: { regime, dragCoefficient }, index: null } };
}

type Converged = CurvePoint & { readonly state: SectionState };

function pointValue(
  quantity: Extract<SectionQuantity, { reynolds: number }>,
  state: SectionState,
  curve: StreamCurve,
): number {
  switch (quantity.kind) {
    case "dragCoefficient":
      return state.dragCoefficient;
    case "strouhal":
      return state.strouhal;
    case "basePressureCoefficient":
      return state.basePressureCoefficient;
    case "separationAngle":
      return ((state.upper.separationAngle + state.lower.separationAngle) * 90) / Math.PI;
    case "pressureCoefficient": {
      // Both sides of the circle, whose arc from the nose is proportional to the angle.
      const arc = (curve.section.nodes.perimeter * quantity.angleDegrees) / 360;
      const at = (s: number) => interpolateAtPosition(state.pressureCoefficient, positionAtArc(curve.section.nodes, s));
      return (at(arc) + at(curve.section.nodes.perimeter - arc)) / 2;
    }
  }
}

/** Trapezoidal mean over log Re. */
function logarithmicMean(
  points: readonly Pick<Converged, "reynolds" | "state">[],
  value: (s: SectionState) => number,
): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++) {
    const width = Math.log(points[i].reynolds / points[i - 1].reynolds);
    sum += (width * (value(points[i].state) + value(points[i - 1].state))) / 2;
  }
  return sum / Math.log(points[points.length - 1].reynolds / points[0].reynolds);
}

/** Reynolds number at which the drag first falls through a level, interpolated in log Re; null when it never does. */
function fallingCrossing(points: readonly Pick<Converged, "reynolds" | "state">[], level: number): number | null {
  for (let i = 1; i < points.length; i++) {
    const before = points[i - 1].state.dragCoefficient;
    const after = points[i].state.dragCoefficient;
    if (before >= level && after < level) {
      const share = (before - level) / (before - after);
      return points[i - 1].reynolds * (points[i].reynolds / points[i - 1].reynolds) ** share;
    }
  }
  return null;
}

function commonRegime(points: readonly Pick<Converged, "state">[]) {
  const first = points[0].state.regime;
  return points.every(({ state }) => state.regime === first) ? first : null;
}
