import type { FlowCondition, Trip } from "../../shared/engine/condition";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import type { SectionState } from "../../shared/engine/solution";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { nodesOf, unwrap } from "../flow/sections";

/** ks / D of the polished cylinders that the published "smooth" curves were measured on. */
export const POLISHED = 1e-5;

/** A condition of a quiet stream, Tu 0.1 %. */
export function quietCondition(reynolds: number, roughness = POLISHED, trips?: readonly Trip[]): FlowCondition {
  const condition = { reynolds, sandGrainRoughnessRatio: roughness, turbulenceIntensity: 0.001 };
  return trips === undefined ? condition : { ...condition, trips };
}

/** A section ready to be solved. */
export function prepared(spec: SectionSpec, panelCount = 160, incidence = 0): PreparedSection {
  return unwrap(prepareSection(nodesOf(spec, panelCount), incidence));
}

export const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** What two solutions of the same flow must agree in, with the sides exchanged when `mirrored`. */
export function figuresOf(state: SectionState, mirrored = false): Record<string, number | string> {
  const [lower, upper] = mirrored ? [state.upper, state.lower] : [state.lower, state.upper];
  return {
    regime: state.regime,
    lowerState: lower.state,
    upperState: upper.state,
    dragCoefficient: state.dragCoefficient,
    pressureDragCoefficient: state.pressureDragCoefficient,
    liftCoefficient: mirrored ? -state.liftCoefficient : state.liftCoefficient,
    basePressureCoefficient: state.basePressureCoefficient,
    minimumPressureCoefficient: state.minimumPressureCoefficient,
    strouhal: state.strouhal,
    lowerSeparationAngle: lower.separationAngle,
    upperSeparationAngle: upper.separationAngle,
    lowerSeparationArc: lower.separationArc,
    upperSeparationArc: upper.separationArc,
  };
}

/** The figures in which two states differ by more than the tolerance (absolute; the figures are of the order of 1). */
export function differences(
  actual: Record<string, number | string>,
  expected: Record<string, number | string>,
  tolerance: number,
): string[] {
  return Object.keys(expected).filter((key) => {
    const a = actual[key];
    const b = expected[key];
    return typeof a === "number" && typeof b === "number" ? !(Math.abs(a - b) <= tolerance) : a !== b;
  });
}

/**
 * The states of one solution that have no counterpart in another, each described by the nearest one's differences; empty
 * when the two solutions hold the same states in any order.
 */
export function unmatchedStates(
  actual: readonly SectionState[],
  expected: readonly SectionState[],
  tolerance: number,
  mirrored = false,
): string[] {
  const wanted = expected.map((state) => figuresOf(state));
  const got = actual.map((state) => figuresOf(state, mirrored));
  const describe = (state: Record<string, number | string>, others: Record<string, number | string>[]) =>
    others.some((other) => differences(state, other, tolerance).length === 0)
      ? []
      : [`${JSON.stringify(state)} has no counterpart among ${JSON.stringify(others)}`];
  return [...got.flatMap((state) => describe(state, wanted)), ...wanted.flatMap((state) => describe(state, got))];
}
