import type { FluidProperties } from "../engine/fluid/fluidSpec";
import type { Contour } from "../engine/geometry/contour";
import type { PatternEstimate } from "../engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import type { MeasurementCase } from "../jobs/evidence/measurementCase";
import type { PuckCase } from "../jobs/puck/puckcase/puckCase";
import type { TrialCase } from "../jobs/trial/trialCase";
import type { TunnelCase } from "../jobs/tunnel/tunnelCase";
import type { CaseDocument } from "./caseDocument";

/** A case that has been read and checked: sweeps written out, contours built. */
export interface Case {
  readonly title: string;
  readonly note: string | null;
  /** One for every section, sweep value and incidence, in the file's order. */
  readonly shapes: readonly CaseShape[];
  readonly panelCount: number | "auto";
  readonly fluid: FluidProperties | null;
  readonly stream: CaseStream;
  readonly roughness: CaseRoughness;
  /** The pattern that the roughness was estimated from; null where it was given. */
  readonly pattern: PatternWall | null;
  /** In the file's order and unit, so that results repeat them to the last digit. */
  readonly turbulencePercents: readonly number[];
  readonly trips: readonly CaseTrip[];
  readonly branches: CaseBranches;
  /** The pucks of the case; null without any. */
  readonly puck: PuckCase | null;
  /** Measurements to hold against the prediction; null without any. */
  readonly measurements: MeasurementCase | null;
  /** The tunnel test of the case; null without one. */
  readonly tunnel: TunnelCase | null;
  /** The player trial of the case; null without one. */
  readonly trial: TrialCase | null;
}

export interface CaseShape {
  /** Name in results: the section's own name, or what the contour is. */
  readonly name: string;
  readonly contour: Contour;
  /** Positive nose up. Kept in the file's unit, so that results repeat it to the last digit. */
  readonly incidenceDegrees: number;
  /** The key that the section sweeps, for instance "edgeRadiusMetres", and its value here; null without a sweep. */
  readonly sweep: { readonly key: string; readonly value: number } | null;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGapMetres: number | null;
  /** Equivalent sand-grain roughness of its own, m, in place of those of the case; null without one. */
  readonly sandGrainRoughness: number | null;
}

/** A wall by its pattern. */
export interface PatternWall {
  readonly pattern: SurfacePattern;
  readonly estimate: PatternEstimate;
}

/** The stream by speed, m/s, or by Reynolds number; values rise. */
export interface CaseStream {
  readonly by: "speed" | "reynolds";
  readonly values: readonly number[];
}

/** Equivalent sand-grain roughness in m, or as a ratio to the reference width. */
export interface CaseRoughness {
  readonly by: "height" | "ratio";
  readonly values: readonly number[];
}

export type CaseTrip = NonNullable<CaseDocument["trips"]>[number];

export type CaseBranches = NonNullable<CaseDocument["branches"]>;
