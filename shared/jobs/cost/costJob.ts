import type { UncertainRange } from "../../statistics/uncertainRange";

/** Prices in the currency of the job. */
export interface CostJob {
  readonly currency: string;
  readonly source: string;
  readonly materials: readonly MaterialPrice[];
  readonly parts: readonly BoughtPart[];
  readonly steps: readonly ProcessStep[];
  readonly tools: readonly Tool[];
  /** Fraction; null for what the pucks' own making gives. */
  readonly accepted: UncertainRange | null;
  /** Rising. */
  readonly batchSizes: readonly number[];
  readonly draws: number;
  readonly seed: number;
  readonly puckCount: number;
}

export interface MaterialPrice {
  readonly material: string;
  readonly perKilogram: UncertainRange;
  /** Fraction of what is bought. */
  readonly waste: UncertainRange;
}

/** For the pucks named; null for all. */
interface ForPucks {
  readonly name: string;
  readonly pucks: readonly string[] | null;
}

export interface BoughtPart extends ForPucks {
  readonly perPuck: UncertainRange;
}

/** h and currency / h. */
export interface ProcessStep extends ForPucks {
  readonly hoursPerPuck: UncertainRange;
  readonly setupHours: UncertainRange;
  readonly ratePerHour: UncertainRange;
}

export interface Tool extends ForPucks {
  readonly price: UncertainRange;
  /** Infinity where it does not wear. */
  readonly life: number;
}
