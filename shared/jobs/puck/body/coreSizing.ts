import { findRoot, findSwitch } from "../../../numerics/rootFinder";
import { problem, type Result, success } from "../../../result";
import { type PuckFigures, type PuckSetting, puckFigures } from "./puckFigures";
import type { PuckCore, PuckSpec } from "./puckSpec";

/** The dimension of the core that is free; the others stay as they are in the spec. */
export type FreeCoreDimension = "diameter" | "thickness" | "innerDiameter" | "coatThickness";

/** A mass that every core is sized for. */
export interface MassTarget {
  readonly massKilograms: number;
  readonly freeDimension: FreeCoreDimension;
  readonly leastCoverMetres: number;
}

/** How sentences call them. */
const dimensionNames: Readonly<Record<FreeCoreDimension, string>> = {
  diameter: "diameter of the core",
  thickness: "thickness of the core",
  innerDiameter: "inner diameter of the core",
  coatThickness: "thickness of the coat",
};

export interface SizedPuck {
  readonly spec: PuckSpec;
  readonly figures: PuckFigures;
}

/**
 * Finds the core dimension that gives a wanted mass, the rest of the puck unchanged.
 * Mass is monotone in each of the dimensions, so the answer is bracketed and found to the rounding error.
 * @param wantedMass     kg
 * @param freeDimension  diameter or thickness of a disc or ring, innerDiameter of a ring, coatThickness under a coat
 * @param leastCover     least material over the core, m, above 0
 * @returns the sized puck, or the masses that can be reached when the wanted one cannot
 */
export function sizeCoreForMass(
  spec: PuckSpec,
  setting: PuckSetting,
  wantedMass: number,
  freeDimension: FreeCoreDimension,
  leastCover: number,
): Result<SizedPuck> {
  if (!(wantedMass > 0)) return problem("mass", `wanted mass is ${wantedMass} kg; it must be above 0`, "wantedMass");
  if (!(leastCover > 0)) return problem("cover", `least cover is ${leastCover} m; it must be above 0`, "leastCover");
  if (withCoreDimension(spec, freeDimension, 1) === null) {
    return problem(
      "puck-core",
      `a core of kind "${spec.core.kind}" has no ${dimensionNames[freeDimension]} to size`,
      "core",
    );
  }
  const evaluate = (size: number): Result<SizedPuck> => {
    const trial = withCoreDimension(spec, freeDimension, size) ?? spec;
    const figures = puckFigures(trial, setting);
    return figures.ok ? success({ spec: trial, figures: figures.value }) : figures;
  };
  const fits = (size: number) => {
    const trial = evaluate(size);
    return trial.ok && (trial.value.figures.coverMetres ?? 0) >= leastCover * (1 - 1e-9);
  };
  const range = usableRange(spec, freeDimension, fits, leastCover);
  if (range === null) {
    const first = evaluate(startingSize(spec, freeDimension));
    return first.ok
      ? problem("puck-core", `no ${dimensionNames[freeDimension]} leaves ${mm(leastCover)} of cover`, "core")
      : first;
  }
  const ends = range.map(evaluate);
  const [small, large] = ends;
  if (!small.ok) return small;
  if (!large.ok) return large;
  const mass = (sized: SizedPuck) => sized.figures.massKilograms;
  const lightest = Math.min(mass(small.value), mass(large.value));
  const heaviest = Math.max(mass(small.value), mass(large.value));
  if (!(wantedMass >= lightest && wantedMass <= heaviest)) {
    return problem(
      "mass",
      `wanted mass ${kg(wantedMass)} cannot be reached: the ${dimensionNames[freeDimension]} gives ${kg(lightest)} to ${kg(heaviest)} with ${mm(leastCover)} of cover`,
      "wantedMass",
    );
  }
  let refused: Result<SizedPuck> | null = null;
  const excess = (size: number) => {
    const trial = evaluate(size);
    if (trial.ok) return mass(trial.value) - wantedMass;
    refused ??= trial;
    return 0;
  };
  const size = findRoot(excess, ...range, {
    endValues: [mass(small.value) - wantedMass, mass(large.value) - wantedMass],
  });
  return refused ?? evaluate(size);
}

/** The spec with one core dimension set, m; null when its core has no such dimension. */
export function withCoreDimension(spec: PuckSpec, dimension: FreeCoreDimension, size: number): PuckSpec | null {
  const core = coreWith(spec.core, dimension, size);
  return core === null ? null : { ...spec, core };
}

function coreWith(core: PuckCore, dimension: FreeCoreDimension, size: number): PuckCore | null {
  if (core.kind === "disc" && dimension === "diameter") return { ...core, diameterMetres: size };
  if (core.kind === "ring" && dimension === "diameter") return { ...core, outerDiameterMetres: size };
  if (core.kind === "ring" && dimension === "innerDiameter") return { ...core, innerDiameterMetres: size };
  if ((core.kind === "disc" || core.kind === "ring") && dimension === "thickness") {
    return { ...core, thicknessMetres: size };
  }
  if (core.kind === "underCoat" && dimension === "coatThickness") return { ...core, coatThicknessMetres: size };
  return null;
}

/** Smallest size the solids allow: the hole of a ring and the edge radius of a disc bound it from below. */
function startingSize({ core, diameterMetres }: PuckSpec, dimension: FreeCoreDimension): number {
  const least = diameterMetres * 1e-6;
  if (core.kind === "ring" && dimension === "diameter") return core.innerDiameterMetres + least;
  if (core.kind === "disc") return Math.max(least, 2 * (core.edgeRadiusMetres ?? 0));
  return least;
}

/**
 * Smallest and largest size that fit with the least cover, m; null when none is found. A core only grows towards the
 * surface, so the sizes that fit are one interval: from the smallest up, or, for a coat, from the least cover up.
 */
function usableRange(
  spec: PuckSpec,
  dimension: FreeCoreDimension,
  fits: (size: number) => boolean,
  leastCover: number,
): [number, number] | null {
  const largest = Math.max(spec.diameterMetres, spec.thicknessMetres);
  if (dimension === "innerDiameter") {
    const outer = spec.core.kind === "ring" ? spec.core.outerDiameterMetres : 0;
    const ends: [number, number] = [outer * 1e-6, outer * (1 - 1e-6)];
    return fits(ends[0]) && fits(ends[1]) ? ends : null;
  }
  if (dimension === "coatThickness") {
    // Grooves take from the cover: the thinnest coat is found between none and half the thickness.
    const steps = Array.from({ length: 400 }, (_, i) => leastCover + ((largest / 2 - leastCover) * i) / 400);
    const first = steps.findIndex(fits);
    if (first < 0) return null;
    const last = steps.findLastIndex(fits);
    const thinnest = first === 0 ? steps[0] : findSwitch(fits, steps[first], steps[first - 1]).holding;
    const thickest = last === steps.length - 1 ? steps[last] : findSwitch(fits, steps[last], steps[last + 1]).holding;
    return [thinnest, thickest];
  }
  const start = startingSize(spec, dimension);
  if (!fits(start)) return null;
  return [start, fits(largest) ? largest : findSwitch(fits, start, largest).holding];
}

function mm(metres: number): string {
  return `${Number((metres * 1000).toPrecision(4))} mm`;
}

function kg(mass: number): string {
  return `${Number(mass.toPrecision(4))} kg`;
}
