import type { DrawnBand } from "../../statistics/drawnBand";
import type { UnitCost } from "./unitCost";

/** What a case yields of its pucks' cost. Bands are 5 %, mean and 95 % of the draws. Plain data. */
export interface CostResult {
  readonly currency: string;
  /** Where the numbers come from. */
  readonly source: string;
  readonly pucks: readonly PuckCost[];
  readonly draws: number;
  readonly seed: number;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

export interface PuckCost {
  readonly name: string;
  readonly coreMassKilograms: number;
  readonly coatMassKilograms: number;
  readonly acceptedPercent: DrawnBand | null;
  readonly acceptedFrom: "the pucks' making" | "the case" | "nothing: all are taken as accepted";
  /** Over the batch size, rising; empty where the cost could not be had. */
  readonly batches: readonly BatchCost[];
  readonly problem: string | null;
}

export interface BatchCost {
  /** Accepted pucks. */
  readonly batchSize: number;
  readonly unitCost: DrawnBand;
  /** Shares of the expected unit cost; they add up to 100. */
  readonly sharesPercent: UnitCost;
}
