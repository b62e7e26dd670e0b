import type { SectionState } from "../solution";

/**
 * Time mean of a flow that sits on one state for a share of the time and on another for the rest: pressures, forces and
 * frequency are weighed; sides and kind are those of the state that holds longer. Both are kept in it.
 * @param share of the time for which the layers are back on the sides, in (0, 1]
 */
export function intermittentState(open: SectionState, reattached: SectionState, share: number): SectionState {
  const mix = (a: number, b: number): number => a + share * (b - a);
  const base = mix(open.basePressureCoefficient, reattached.basePressureCoefficient);
  return {
    ...(share < 0.5 ? open : reattached),
    separationSpeedRatio: Math.sqrt(Math.max(0, 1 - base)),
    basePressureCoefficient: base,
    minimumPressureCoefficient: mix(open.minimumPressureCoefficient, reattached.minimumPressureCoefficient),
    strouhal: mix(open.strouhal, reattached.strouhal),
    pressureDragCoefficient: mix(open.pressureDragCoefficient, reattached.pressureDragCoefficient),
    frictionDragCoefficient: mix(open.frictionDragCoefficient, reattached.frictionDragCoefficient),
    dragCoefficient: mix(open.dragCoefficient, reattached.dragCoefficient),
    liftCoefficient: mix(open.liftCoefficient, reattached.liftCoefficient),
    wakeWidth: mix(open.wakeWidth, reattached.wakeWidth),
    outflow: open.outflow.map((value, i) => mix(value, reattached.outflow[i])),
    pressureCoefficient: open.pressureCoefficient.map((value, i) => mix(value, reattached.pressureCoefficient[i])),
    surfaceVelocity: open.surfaceVelocity.map((value, i) => mix(value, reattached.surfaceVelocity[i])),
    intermittency: { reattachedShare: share, open, reattached },
  };
}
