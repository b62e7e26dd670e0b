import { coatedCylinderCurve } from "./coatedCylinder";
import { coatedSphereCurve } from "./coatedSphere";
import type { CoatedPair } from "./coatKernel";
import type { ContactCurve } from "./contactCurve";
import type { ContactSite } from "./contactSite";
import { type ForceLaw, forceLaw } from "./forceLaw";
import { contactModulus, hertzSphere, lineCompression, planeStrainModulus } from "./hertz";

/** Stiffness of one body, Pa. */
export interface Stiffness {
  readonly youngsModulus: number;
  readonly poissonRatio: number;
}

export interface ContactBodies {
  readonly coat: Stiffness;
  /** null without a core. */
  readonly core: Stiffness | null;
  readonly surface: Stiffness;
}

/** Curves that were solved, kept by what they depend on. */
export type SolvedCurves = Map<string, ContactCurve>;

/**
 * The part of coat in a sum of compliances is rounded to this, so that curves can be shared by many draws: forces change
 * by less than it.
 */
const partStep = 0.01;

function roundedRatio(ratio: number): number {
  const part = partStep * Math.round(ratio / (1 + ratio) / partStep);
  return part / Math.max(1 - part, partStep / 2);
}

/** To 5 %: the depth of a line contact goes into its approach by the logarithm alone. */
function roundedDepth(depth: number): number {
  return 1.05 ** Math.round(Math.log(depth) / Math.log(1.05));
}

/** Force against approach of a puck on a surface. */
export function contactLaw(site: ContactSite, bodies: ContactBodies, curves: SolvedCurves): ForceLaw {
  const { shape, coatThickness } = site;
  const { coat, core, surface } = bodies;
  const [coatModulus, surfaceModulus] = [coat, surface].map((body) =>
    planeStrainModulus(body.youngsModulus, body.poissonRatio),
  );
  const modulus = contactModulus(coatModulus, surfaceModulus);
  if (shape.kind === "flat") return flatLaw(shape.area, coatThickness, coat, modulus, surfaceModulus);
  if (core === null || coatThickness === null) {
    return shape.kind === "point"
      ? sphereLaw(shape.radius, modulus)
      : cylinderLaw(shape.radius, shape.length, modulus, [coat, surface]);
  }
  const pair: CoatedPair = {
    poissonRatio: coat.poissonRatio,
    coatOverSurface: roundedRatio(coatModulus / surfaceModulus),
    coatOverCore: roundedRatio(coatModulus / planeStrainModulus(core.youngsModulus, core.poissonRatio)),
  };
  const b = coatThickness;
  const R = shape.radius;
  const scaled = (curve: ContactCurve, perForce: number, firstExponent: number) =>
    forceLaw(
      curve.approach.map((value) => (value * b * b) / R),
      curve.force.map((value) => value * perForce),
      curve.peakPressure.map((value) => (value * modulus * b) / R),
      firstExponent,
    );
  if (shape.kind === "point") {
    const curve = kept(curves, ["point", pair], () => coatedSphereCurve(pair));
    return scaled(curve, (modulus * b ** 3) / R, 1.5);
  }
  const depths = {
    depth: roundedDepth(shape.length / b),
    surfacePoissonRatio: surface.poissonRatio,
    corePoissonRatio: core.poissonRatio,
  };
  const curve = kept(curves, ["line", pair, depths], () => coatedCylinderCurve(pair, depths));
  return scaled(curve, ((modulus * b * b) / R) * shape.length, 1);
}

function kept(curves: SolvedCurves, what: unknown, solve: () => ContactCurve): ContactCurve {
  const key = JSON.stringify(what);
  const found = curves.get(key) ?? solve();
  curves.set(key, found);
  return found;
}

/** Two points are enough: the exponents are the same everywhere. */
function sphereLaw(radius: number, modulus: number): ForceLaw {
  const approach = Float64Array.of(1e-6, 1e-3);
  const force = approach.map((x) => (4 / 3) * modulus * Math.sqrt(radius) * x ** 1.5);
  return forceLaw(
    approach,
    force,
    force.map((F) => hertzSphere(F, radius, modulus).peakPressure),
    1.5,
  );
}

const halfWidths = Float64Array.from({ length: 24 }, (_, i) => 1e-3 * 400 ** (i / 23));

/** Approach of a line contact of half-spaces down to a depth of the line's length, where it acts as a point. */
function cylinderLaw(radius: number, length: number, modulus: number, bodies: readonly Stiffness[]): ForceLaw {
  const widths = halfWidths.map((share) => share * Math.min(radius, length));
  const loads = widths.map((a) => (Math.PI * modulus * a * a) / (4 * radius));
  const approach = widths.map((a, i) =>
    bodies.reduce((sum, { youngsModulus, poissonRatio }) => {
      const own = { modulus: planeStrainModulus(youngsModulus, poissonRatio), poissonRatio };
      return sum + lineCompression(loads[i], a, length, own);
    }, 0),
  );
  return forceLaw(
    approach,
    loads.map((load) => load * length),
    widths.map((a) => (modulus * a) / (2 * radius)),
    1,
  );
}

/**
 * A face flat on: the coat as an elastic foundation of the modulus under uniaxial strain (Johnson 1985, section 5.8), the
 * surface as a half-space under a round punch, 2 E* radius (Johnson 1985, eq. 3.36); without a core the coat as one too.
 * Water that must leave the gap would soften the blow and is left out.
 */
function flatLaw(
  area: number,
  thickness: number | null,
  coat: Stiffness,
  modulus: number,
  surfaceModulus: number,
): ForceLaw {
  const radius = Math.sqrt(area / Math.PI);
  const stiffness =
    thickness === null
      ? 2 * modulus * radius
      : 1 / (thickness / (foundationModulus(coat) * area) + 1 / (2 * surfaceModulus * radius));
  const approach = Float64Array.of(1e-6, 1e-3);
  const force = approach.map((x) => stiffness * x);
  return forceLaw(
    approach,
    force,
    force.map((F) => F / area),
    1,
  );
}

/** Modulus of a layer that cannot give sideways, (1 - nu) E / ((1 + nu) (1 - 2 nu)), Pa. Johnson (1985), eq. 5.71. */
export function foundationModulus({ youngsModulus, poissonRatio: nu }: Stiffness): number {
  return ((1 - nu) * youngsModulus) / ((1 + nu) * (1 - 2 * nu));
}
