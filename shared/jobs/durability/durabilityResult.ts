import type { DrawnBand } from "../../statistics/drawnBand";
import type { ImpactSetup } from "./durabilityJob";

/** What a case yields of its pucks' durability. Bands are 5 %, mean and 95 % of the draws. Plain data. */
export interface DurabilityResult {
  readonly pucks: readonly PuckDurability[];
  readonly draws: number;
  readonly seed: number;
  /** What the estimates rest on. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

export interface PuckDurability {
  readonly name: string;
  readonly impacts: readonly ImpactResult[];
  /** null where the case asks for none. */
  readonly wear: WearResult | null;
}

/** Everything but the names is null where the impact could not be had, with the reason in `problem`. */
export interface ImpactResult {
  readonly name: string;
  readonly contact: ImpactSetup["contact"];
  readonly onto: string;
  readonly medium: ImpactSetup["medium"];
  readonly speedMetresPerSecond: DrawnBand | null;
  /** Mass that the blow feels: with water that moves along, less what only turns the puck. */
  readonly movingMassKilograms: DrawnBand | null;
  readonly energyJoules: DrawnBand | null;
  readonly peakForceNewtons: DrawnBand | null;
  /** On what is hit, at the middle of the contact. */
  readonly peakPressurePascals: DrawnBand | null;
  /** Greatest approach over the coat's thickness; null without a core. */
  readonly coatStrainPercent: DrawnBand | null;
  readonly contactTimeSeconds: DrawnBand | null;
  readonly notes: readonly string[];
  readonly problem: string | null;
}

export interface WearResult {
  readonly contactAreaSquareMetres: number;
  /** Pressure on the land of a face that the puck slides on. */
  readonly contactPressurePascals: DrawnBand;
  /** Off one face, while its pattern is there. */
  readonly faceMetresPerHour: DrawnBand;
  readonly rimMetresPerHour: DrawnBand;
  /** Until the coat over the core is at its least anywhere; null without a core. */
  readonly hoursToLeastCover: DrawnBand | null;
  /** After the hours of play that the case asks for; null where the puck is worn out of shape before. */
  readonly worn: WornResult | null;
  readonly notes: readonly string[];
}

export interface WornResult {
  readonly hours: number;
  readonly diameterMetres: DrawnBand;
  readonly thicknessMetres: DrawnBand;
  readonly edgeRadiusMetres: DrawnBand;
  readonly massKilograms: DrawnBand;
  /** Drag area edge-on over that of the new puck, less 1, for the expected wear; null where it could not be solved. */
  readonly dragAreaChangePercent: number | null;
}
