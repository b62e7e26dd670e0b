import type { FluidProperties } from "../engine/fluid/fluidSpec";
import type { Contour } from "../engine/geometry/contour";
import type { PatternEstimate } from "../engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import type { PlacedSection } from "../engine/section/placedSection";
import type { StreamSpeed, StreamTrip, WallRoughness } from "../engine/section/stream";
import type { CaseDocument } from "./caseDocument";
import type { CaseJobs } from "./jobBlocks";

/** A case that has been read and checked: sweeps written out, contours built. */
export interface Case extends CaseJobs {
  readonly title: string;
  readonly note: string | null;
  /** One for every section, sweep value and incidence, in the file's order. */
  readonly shapes: readonly CaseShape[];
  readonly fluid: FluidProperties | null;
  /** By speed or by Reynolds number, rising. */
  readonly speeds: readonly StreamSpeed[];
  /** In m, or over the reference width. */
  readonly walls: readonly WallRoughness[];
  /** The pattern that the roughness was estimated from; null where it was given. */
  readonly pattern: PatternWall | null;
  /** Fractions, in the file's order. */
  readonly turbulenceIntensities: readonly number[];
  readonly trips: readonly StreamTrip[];
  readonly branches: CaseBranches;
}

/** A section of the case at one sweep value and incidence. */
export interface CaseShape extends PlacedSection<Contour> {
  /** Name in results: the section's own name, or what the contour is. */
  readonly name: string;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGap: number | null;
  readonly panelCount: number | "auto";
  /** The key that the section sweeps, for instance "edgeRadiusMetres", and its value here; null without a sweep. */
  readonly sweep: { readonly key: string; readonly value: number } | null;
  /** Equivalent sand-grain roughness of its own, m, in place of those of the case; null without one. */
  readonly sandGrainRoughness: number | null;
}

/** A wall by its pattern. */
export interface PatternWall {
  readonly pattern: SurfacePattern;
  readonly estimate: PatternEstimate;
}

export type CaseBranches = NonNullable<CaseDocument["branches"]>;
