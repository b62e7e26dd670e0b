import { problem, type Result, success } from "../../../result";
import { coreMeridian } from "./coreShape";
import { coverThickness } from "./coverThickness";
import { facePatternArea, grooveFigures } from "./grooves";
import { findMaterial, type Material } from "./materials";
import type { Meridian } from "./meridian";
import { carvedMeridian, edgeReach, outerMeridian, silhouetteMeridian } from "./outerShape";
import { checkOuterShape } from "./outerShapeCheck";
import type { PuckSpec } from "./puckSpec";
import { combineSolids, revolve, sectionArea, sweptSurface } from "./solidFigures";

/** m/s^2. Source: 3rd General Conference on Weights and Measures (1901). */
export const standardGravity = 9.80665;

/** What surrounds the puck, and the user's own materials. */
export interface PuckSetting {
  /** kg/m^3; 0 in a vacuum. */
  readonly fluidDensity: number;
  /** m/s^2; standardGravity when left out. */
  readonly gravity?: number;
  readonly userMaterials?: readonly Material[];
}

/** Everything that follows from a puck's description without any flow. Plain data with the unit in each key. */
export interface PuckFigures {
  readonly diameterMetres: number;
  readonly thicknessMetres: number;
  /** Radius of a rounded edge; 0 for a bevel, null for a free profile. */
  readonly edgeRadiusMetres: number | null;
  /** Volume of displaced fluid: recess and grooves are full of it. */
  readonly volumeCubicMetres: number;
  readonly massKilograms: number;
  readonly coreMassKilograms: number;
  readonly meanDensityKilogramsPerCubicMetre: number;
  /** Height of the centre of mass above the mid-plane. */
  readonly centreOfMassMetres: number;
  readonly momentOfInertiaAxisKilogramSquareMetres: number;
  /** About a line through the centre of mass across the axis. */
  readonly momentOfInertiaDiameterKilogramSquareMetres: number;
  /** Shadow of the puck seen along its mid-plane. */
  readonly frontalAreaEdgeOnSquareMetres: number;
  /** Shadow of the puck seen along its axis. */
  readonly frontalAreaFaceOnSquareMetres: number;
  /** Outer surface with a recess but without the walls of grooves. */
  readonly surfaceAreaSquareMetres: number;
  /** Weight less buoyancy; negative when it floats. */
  readonly weightInFluidNewtons: number;
  /** Flat part of the bottom face that touches a flat floor. */
  readonly floorContactAreaSquareMetres: number;
  /** Least material over the core anywhere, grooves and recess included; null without a core. */
  readonly coverMetres: number | null;
}

/**
 * Volume, mass, balance, inertia and areas of a puck, in closed form (arcs, lines and grooves all have one).
 * Fails when the shape is impossible, a material is unknown or the core reaches through the surface.
 */
export function puckFigures(spec: PuckSpec, setting: PuckSetting): Result<PuckFigures> {
  const outside = checkOuterShape(spec);
  if (!outside.ok) return outside;
  if (!(setting.fluidDensity >= 0)) {
    return problem("density", `fluid density is ${setting.fluidDensity} kg/m3; it must be 0 or more`, "fluidDensity");
  }
  const core = coreMeridian(spec);
  if (!core.ok) return core;
  const cover = checkCover(spec, core.value);
  if (!cover.ok) return cover;
  const userMaterials = setting.userMaterials ?? [];
  const coat = findMaterial(spec.coatMaterial, userMaterials, "coatMaterial");
  if (!coat.ok) return coat;
  const coreMaterial =
    spec.core.kind === "none" ? coat : findMaterial(spec.core.material, userMaterials, "core.material");
  if (!coreMaterial.ok) return coreMaterial;

  const displaced = combineSolids([
    [1, revolve(outerMeridian(spec))],
    [-1, grooveFigures(spec)],
  ]);
  const coreSolid = revolve(core.value);
  const mass = combineSolids([
    [coat.value.density, displaced],
    [coreMaterial.value.density - coat.value.density, coreSolid],
  ]);
  const centre = mass.axialMoment / mass.volume;
  const gravity = setting.gravity ?? standardGravity;
  return success({
    diameterMetres: spec.diameterMetres,
    thicknessMetres: spec.thicknessMetres,
    edgeRadiusMetres: spec.edge.kind === "radius" ? spec.edge.edgeRadiusMetres : spec.edge.kind === "bevel" ? 0 : null,
    volumeCubicMetres: displaced.volume,
    massKilograms: mass.volume,
    coreMassKilograms: spec.core.kind === "none" ? 0 : coreMaterial.value.density * coreSolid.volume,
    meanDensityKilogramsPerCubicMetre: mass.volume / displaced.volume,
    centreOfMassMetres: centre,
    momentOfInertiaAxisKilogramSquareMetres: mass.inertiaAxis,
    momentOfInertiaDiameterKilogramSquareMetres: mass.inertiaDiameter - mass.volume * centre * centre,
    frontalAreaEdgeOnSquareMetres: sectionArea(silhouetteMeridian(spec)),
    frontalAreaFaceOnSquareMetres: (Math.PI / 4) * spec.diameterMetres ** 2,
    surfaceAreaSquareMetres: sweptSurface(outerMeridian(spec)),
    weightInFluidNewtons: (mass.volume - setting.fluidDensity * displaced.volume) * gravity,
    floorContactAreaSquareMetres: floorContactArea(spec),
    coverMetres: cover.value,
  });
}

function checkCover(spec: PuckSpec, core: Meridian): Result<number | null> {
  if (core.length === 0) return success(null);
  const cover = coverThickness(carvedMeridian(spec), core);
  return cover === null || cover <= 0
    ? problem("puck-core", "the core reaches through the puck's surface, a recess or a groove; make it smaller", "core")
    : success(cover);
}

function floorContactArea(spec: PuckSpec): number {
  const flat = Math.PI * (spec.diameterMetres / 2 - edgeReach(spec).radial) ** 2;
  const { face } = spec;
  if (face.kind === "flat" || face.side === "top") return flat;
  if (face.kind === "recess") return flat - (Math.PI / 4) * face.diameterMetres ** 2;
  return flat - facePatternArea(spec);
}
