import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { Regime } from "../solution";

/** Kinds of sections that share their errors. "other" has no published values of its own. */
export type ShapeFamily = CheckedFamily | "other";

/** Families that published drag coefficients exist of. */
export type CheckedFamily = "smooth circle" | "rough circle" | "ellipse" | "sharp rectangle" | "rounded rectangle";

export const checkedFamilies: readonly CheckedFamily[] = [
  "smooth circle",
  "rough circle",
  "ellipse",
  "sharp rectangle",
  "rounded rectangle",
];

export const regimes: readonly Regime[] = ["subcritical", "critical", "supercritical", "transcritical"];

/** A wall up to this ks / D counts as smooth: between the polished 1e-5 and the 1e-4 of the first rough curve. */
export const smoothWallRoughness = TRUST_NUMBERS.smoothWallRoughness.value;

/** Corner radius / height up to which a rectangle counts as sharp. */
export const sharpCornerRadius = TRUST_NUMBERS.sharpCorner.value;

/** Drag coefficients below this have a half-width of an absolute size: the relative one times this. */
export const smallDragCoefficient = TRUST_NUMBERS.smallDragCoefficient.value;

/** Kinds of drag crises that share the error of their Reynolds number. */
export type CrisisKind = "circle in a quiet stream" | "circle in a turbulent stream" | "other section";

export const crisisKinds: readonly CrisisKind[] = [
  "circle in a quiet stream",
  "circle in a turbulent stream",
  "other section",
];

/** Turbulence intensity up to which a stream counts as quiet: that of the tunnel of the rough cylinders. */
export const quietStreamTurbulence = TRUST_NUMBERS.quietStreamTurbulence.value;

/** What the published drag coefficients say about the engine's: how wrong it is, and where that was looked at. */
export interface BandTable {
  /** How far the Reynolds number of a predicted drag crisis may be off, as a factor of 1 or more. */
  readonly crisisReynoldsFactor: Readonly<Record<CrisisKind, number>>;
  /** Half-width of the 90 % band over the drag coefficient (over smallDragCoefficient where that is larger). */
  readonly halfWidths: Readonly<Record<ShapeFamily, Readonly<Record<Regime, number>>>>;
  readonly checked: Readonly<Record<CheckedFamily, CheckedRange>>;
}

/** Lowest and highest conditions of the published drag coefficients of a family, and its shapes. */
export interface CheckedRange {
  readonly reynolds: readonly [number, number];
  /** ks / D. */
  readonly sandGrainRoughnessRatio: readonly [number, number];
  /** Fraction. */
  readonly turbulenceIntensity: readonly [number, number];
  /** Length / height and corner radius / height of each shape; the radius is 0 for a sharp corner and 0.5 for a circle. */
  readonly shapes: readonly (readonly [number, number])[];
}
