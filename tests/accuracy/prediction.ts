import type { Regime } from "../../shared/solve/solution";

/** The engine's answer to a published quantity, in its unit; null with the reason when there is none. */
export interface Prediction {
  readonly value: number | null;
  /** Regime that the engine found there; null for quantities of a whole curve and for those without a regime. */
  readonly regime: Regime | null;
  /** Why there is no value, or what to know about it. */
  readonly note?: string;
}

export function predicted(value: number, regime: Regime | null = null): Prediction {
  return Number.isFinite(value) ? { value, regime } : notPredicted(`the engine answers ${value}`);
}

export function notPredicted(note: string): Prediction {
  return { value: null, regime: null, note };
}
