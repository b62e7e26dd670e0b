import { describe, expect, it } from "vitest";
import { coatedCylinderCurve } from "../../shared/jobs/durability/coatedCylinder";
import { coatedSphereCurve } from "../../shared/jobs/durability/coatedSphere";
import type { ContactCurve } from "../../shared/jobs/durability/contactCurve";
import { foundationModulus } from "../../shared/jobs/durability/contactLaw";

/** Of a coat with E* 1 and thickness 1 on a radius 1. */
const foundation = (nu: number) => foundationModulus({ youngsModulus: 1 - nu * nu, poissonRatio: nu });
const hard = { coatOverSurface: 0, coatOverCore: 0 };
const depths = { depth: 6, surfacePoissonRatio: 0.2, corePoissonRatio: 0.3 };

function last({ contactSize, force, approach, peakPressure }: ContactCurve) {
  const i = contactSize.length - 1;
  return { a: contactSize[i], F: force[i], d: approach[i], p: peakPressure[i] };
}

describe("a sphere on a coat", () => {
  it("of a thickness far beyond the contact is Hertz's: F = 4 E* a^3 / 3 R, d = a^2 / R, p0 = 2 E* a / pi R", () => {
    for (const poissonRatio of [0, 0.3, 0.48]) {
      const { contactSize, force, approach, peakPressure } = coatedSphereCurve({ poissonRatio, ...hard });
      const a = contactSize[0];
      expect(force[0] / ((4 / 3) * a ** 3)).toBeCloseTo(1, 3);
      expect(peakPressure[0] / ((2 * a) / Math.PI)).toBeCloseTo(1, 3);
      // The layer's end is felt first in the approach, by the first order of Dimitriadis et al. (2002), see below.
      expect(approach[0] / a ** 2).toBeGreaterThan(0.98);
      expect(approach[0] / a ** 2).toBeLessThan(1);
    }
  });

  it("that is thin is an elastic foundation, Johnson (1985), section 5.8: F = pi M R d^2 / b, p0 = M d / b, d = a^2 / 2R", () => {
    for (const poissonRatio of [0, 0.3]) {
      const { a, F, d, p } = last(coatedSphereCurve({ poissonRatio, ...hard }));
      const M = foundation(poissonRatio);
      expect(Math.abs(F / (Math.PI * M * d * d) - 1)).toBeLessThan(0.01);
      expect(Math.abs(p / (M * d) - 1)).toBeLessThan(0.01);
      // The coat bulges beside the contact by about its own thickness: a is a little less than on free springs.
      expect(Math.abs(d / (a * a) - 0.5)).toBeLessThan(0.03);
    }
  });

  it("is stiffer than Hertz's by 1 + 1.133 sqrt(R d) / b where it begins to be thin, nu 1/2: Dimitriadis et al. (2002), Biophys. J. 82, 2798 (from memory)", () => {
    const { force, approach } = coatedSphereCurve({ poissonRatio: 0.4999, ...hard });
    for (const i of [0, 2, 4]) {
      const chi = Math.sqrt(approach[i]);
      const stiffer = force[i] / ((4 / 3) * approach[i] ** 1.5);
      expect(stiffer).toBeCloseTo(1 + 1.133 * chi + 1.283 * chi ** 2, 2);
    }
  });

  it("follows the fourth order of Garcia & Garcia (2018), Biophys. J. 114, 2923 (from memory), to 3 % up to sqrt(R d) / b of 0.7", () => {
    const { force, approach } = coatedSphereCurve({ poissonRatio: 0.4999, ...hard });
    for (let i = 0; approach[i] < 0.5; i++) {
      const chi = Math.sqrt(approach[i]);
      const published = 1 + 1.133 * chi + 1.497 * chi ** 2 + 1.469 * chi ** 3 + 0.755 * chi ** 4;
      expect(Math.abs(force[i] / ((4 / 3) * approach[i] ** 1.5) / published - 1)).toBeLessThan(0.03);
    }
  });

  it("that is rigid leaves the surface alone: Hertz with the modulus of the surface at every thickness", () => {
    const { contactSize, force, approach } = coatedSphereCurve({
      poissonRatio: 0.3,
      coatOverSurface: 1e7,
      coatOverCore: 0,
    });
    contactSize.forEach((a, i) => {
      expect(force[i] / ((4 / 3) * a ** 3)).toBeCloseTo(1, 5);
      expect(approach[i] / a ** 2).toBeCloseTo(1, 5);
    });
  });

  it("of its core's own stuff hardly feels the core: within 10 % of Hertz at every size", () => {
    const { contactSize, force } = coatedSphereCurve({ poissonRatio: 0.3, coatOverSurface: 0, coatOverCore: 1 });
    contactSize.forEach((a, i) => {
      expect(Math.abs(force[i] / ((4 / 3) * a ** 3) - 1)).toBeLessThan(0.1);
    });
  });
});

describe("a cylinder on a coat", () => {
  it("of a thickness far beyond the contact is Hertz's: P = pi E* a^2 / 4 R, p0 = E* a / 2 R", () => {
    const { contactSize, force, peakPressure } = coatedCylinderCurve({ poissonRatio: 0.3, ...hard }, depths);
    expect(force[0] / ((Math.PI / 4) * contactSize[0] ** 2)).toBeCloseTo(1, 3);
    expect(peakPressure[0] / (contactSize[0] / 2)).toBeCloseTo(1, 3);
  });

  it("sinks as Johnson (1985), eq. 5.58, says of a block of the coat's thickness, to 5 %: 2 ln(2 b / a) - nu / (1 - nu)", () => {
    for (const poissonRatio of [0, 0.3, 0.45]) {
      const { contactSize, force, approach } = coatedCylinderCurve({ poissonRatio, ...hard }, depths);
      const published = 2 * Math.log(2 / contactSize[0]) - poissonRatio / (1 - poissonRatio);
      expect(Math.abs((approach[0] * Math.PI) / (force[0] * published) - 1)).toBeLessThan(0.05);
    }
  });

  it("that is thin is an elastic foundation, Johnson (1985), section 5.8: P = 2 M a^3 / 3 R b with d = a^2 / 2R", () => {
    for (const poissonRatio of [0, 0.3]) {
      const { F, d, p } = last(coatedCylinderCurve({ poissonRatio, ...hard }, depths));
      const M = foundation(poissonRatio);
      expect(Math.abs(F / ((2 / 3) * M * (2 * d) ** 1.5) - 1)).toBeLessThan(0.01);
      expect(Math.abs(p / (M * d) - 1)).toBeLessThan(0.01);
    }
  });

  it("that is rigid leaves the surface alone: Hertz, and the approach of Johnson (1985), eq. 5.57, down to the depth", () => {
    const pair = { poissonRatio: 0.3, coatOverSurface: 1e7, coatOverCore: 0 };
    const { contactSize, force, approach } = coatedCylinderCurve(pair, depths);
    for (const i of [0, 5, 10]) {
      const a = contactSize[i];
      expect(force[i] / ((Math.PI / 4) * a * a)).toBeCloseTo(1, 5);
      const factor = 2 * Math.log((2 * depths.depth) / a) - 0.2 / 0.8;
      expect((approach[i] * Math.PI) / (force[i] * factor)).toBeCloseTo(1, 3);
    }
  });
});
