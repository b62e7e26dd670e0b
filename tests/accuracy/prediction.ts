import type { FlowCondition } from "../../shared/engine/condition";
import type { Regime } from "../../shared/engine/solution";
import type { DragState } from "../../shared/engine/trust/nearbyStates";
import type { StreamCurve } from "./streamCurve";

/** The engine's answer to a published quantity, in its unit; null with the reason when there is none. */
export interface Prediction {
  readonly value: number | null;
  /** Regime that the engine found there; null for quantities of a whole curve and for those without a regime. */
  readonly regime: Regime | null;
  /** Why there is no value, or what to know about it. */
  readonly note?: string;
  /** Where a drag coefficient was read; only of those in one regime. */
  readonly drag?: DragReading;
}

/** A drag coefficient on a curve. */
export interface DragReading {
  readonly curve: StreamCurve;
  readonly condition: FlowCondition;
  readonly state: DragState;
  /** Index of the condition on the curve; null when the value is the lowest or mean of a range, not of one condition. */
  readonly index: number | null;
}

export function predicted(value: number, regime: Regime | null = null): Prediction {
  return Number.isFinite(value) ? { value, regime } : notPredicted(`the engine answers ${value}`);
}

export function notPredicted(note: string): Prediction {
  return { value: null, regime: null, note };
}
