import type { SectionState } from "../solution";

/** Share of the time beyond which the other flow is too rare to unsettle the mean. */
const RARELY_OTHER = 0.99;

/**
 * Time mean of a flow that sits on one state for a share of the time and on another for the rest: pressures, forces and
 * frequency are weighed; sides and kind are those of the state that holds longer. Both are kept in it.
 * @param share of the time for which the layers are back on the sides, in (0, 1]
 */
export function intermittentState(open: SectionState, reattached: SectionState, share: number): SectionState {
  const mix = (a: number, b: number): number => a + share * (b - a);
  const unsettledBy =
    (share < RARELY_OTHER ? open.unsettledBy : null) ?? (share > 1 - RARELY_OTHER ? reattached.unsettledBy : null);
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
    settled: unsettledBy === null,
    unsettledBy,
    dragCoefficientSeen: [
      mix(open.dragCoefficientSeen[0], reattached.dragCoefficientSeen[0]),
      mix(open.dragCoefficientSeen[1], reattached.dragCoefficientSeen[1]),
    ],
    intermittency: { reattachedShare: share, open, reattached },
  };
}
