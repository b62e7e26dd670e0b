import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import type { UncertainRange } from "../../statistics/uncertainRange";
import type { Material } from "../puck/public";
import type { ElasticMaterial } from "./elasticMaterials";

/** What hits, and in which way. SI units and radians. */
export interface ImpactSetup {
  readonly name: string;
  readonly onto: ElasticMaterial;
  readonly contact: "edge" | "rim" | "face";
  /** Angle between face and what is hit, rad. */
  readonly tilt: number;
  readonly medium: "air" | "water";
  /** m/s, or the height of a fall, m. */
  readonly start: { readonly kind: "speed" | "drop"; readonly range: UncertainRange };
}

export interface WearSetup {
  /** m^3 / (N m). */
  readonly wearCoefficient: UncertainRange;
  /** m/h. */
  readonly slidingPerHour: UncertainRange;
  /** N, on top of the weight in water. */
  readonly press: UncertainRange;
  /** They add up to 1. */
  readonly shares: SlidingShares;
  /** m. */
  readonly leastCover: number;
  /** h. */
  readonly playedHours: number;
}

export interface SlidingShares {
  readonly face: number;
  readonly rim: number;
  readonly edge: number;
}

/** The durability block, read and checked. */
export interface DurabilityJob {
  readonly fluid: FluidProperties;
  /** The user's own elastic data. */
  readonly elastic: readonly ElasticMaterial[];
  /** The user's own densities, as the pucks have them. */
  readonly userMaterials: readonly Material[];
  readonly impacts: readonly ImpactSetup[];
  readonly wear: WearSetup | null;
  /** Of corners that have no radius of their own, m. */
  readonly sharpEdgeRadius: UncertainRange;
  readonly draws: number;
  readonly seed: number;
  readonly puckCount: number;
}
