import { describe, expect, it } from "vitest";
import { contactLaw } from "../../shared/jobs/durability/contactLaw";
import type { ContactSite } from "../../shared/jobs/durability/contactSite";
import { forceAt, workAt } from "../../shared/jobs/durability/forceLaw";
import { contactModulus, planeStrainModulus } from "../../shared/jobs/durability/hertz";
import { fallSpeed, impact, impactMass, sinkSpeed } from "../../shared/jobs/durability/impact";

const coat = { youngsModulus: 50e6, poissonRatio: 0.48 };
const bodies = {
  coat,
  core: { youngsModulus: 16e9, poissonRatio: 0.44 },
  surface: { youngsModulus: 50e9, poissonRatio: 0.2 },
};
const edge: ContactSite = { shape: { kind: "point", radius: 0.015 }, lever: 0, coatThickness: 0.003 };
const rim: ContactSite = { shape: { kind: "line", radius: 0.04, length: 0.018 }, lever: 0, coatThickness: 0.003 };
const face: ContactSite = { shape: { kind: "flat", area: 36e-4 }, lever: 0, coatThickness: 0.003 };
const mass = 1.3;
const speed = 2;

describe("an impact of a sphere without a coat", () => {
  const modulus = contactModulus(planeStrainModulus(50e6, 0.48), planeStrainModulus(50e9, 0.2));
  const bare = { ...edge, coatThickness: null };
  const { approach, contactTime, peakForce, peakPressure } = impact(
    contactLaw(bare, { ...bodies, core: null }, new Map()),
    mass,
    speed,
  );

  it("Johnson (1985), eq. 11.23: greatest approach (15 m V^2 / 16 sqrt(R) E*)^(2/5)", () => {
    expect(approach / ((15 * mass * speed ** 2) / (16 * Math.sqrt(0.015) * modulus)) ** 0.4).toBeCloseTo(1, 6);
  });

  it("Johnson (1985), eq. 11.24: contact time 2.87 (m^2 / R E*^2 V)^(1/5)", () => {
    expect(contactTime / (mass ** 2 / (0.015 * modulus ** 2 * speed)) ** 0.2).toBeCloseTo(2.87, 2);
  });

  it("Johnson (1985), eq. 4.24: peak pressure (6 F E*^2 / pi^3 R^2)^(1/3)", () => {
    expect(peakPressure / Math.cbrt((6 * peakForce * modulus ** 2) / (Math.PI ** 3 * 0.015 ** 2))).toBeCloseTo(1, 6);
  });
});

describe("an impact on a coat", () => {
  it.each([
    ["edge", edge],
    ["rim", rim],
    ["face", face],
  ] as const)(
    "%s: the body turns where all energy is work done, and leaves with the speed that it came with",
    (_, site) => {
      const law = contactLaw(site, bodies, new Map());
      const blow = impact(law, mass, speed);
      expect(workAt(law, blow.approach)).toBeCloseTo(blow.energy, 9);
      // Independent: the equation of motion in small steps (velocity Verlet).
      let [x, v, t] = [0, speed, 0];
      let [deepest, mostForce] = [0, 0];
      const dt = blow.contactTime / 20_000;
      while (x >= 0) {
        const force = x > 0 ? forceAt(law, x) : 0;
        const half = v - (force / mass) * (dt / 2);
        x += half * dt;
        const next = x > 0 ? forceAt(law, x) : 0;
        v = half - (next / mass) * (dt / 2);
        t += dt;
        deepest = Math.max(deepest, x);
        mostForce = Math.max(mostForce, next);
      }
      expect(v / -speed).toBeCloseTo(1, 3);
      expect(deepest / blow.approach).toBeCloseTo(1, 4);
      expect(mostForce / blow.peakForce).toBeCloseTo(1, 3);
      expect(t / blow.contactTime).toBeCloseTo(1, 2);
    },
  );

  it("a thinner coat gives a harder blow, a softer one a softer blow", () => {
    const force = (thickness: number, youngsModulus: number) =>
      impact(
        contactLaw({ ...edge, coatThickness: thickness }, { ...bodies, coat: { ...coat, youngsModulus } }, new Map()),
        mass,
        speed,
      ).peakForce;
    expect(force(0.002, 50e6)).toBeGreaterThan(force(0.003, 50e6));
    expect(force(0.003, 25e6)).toBeLessThan(force(0.003, 50e6));
  });

  it("flat on, a spring of stiffness M A / b takes sqrt(k m) v (a rigid tile; Johnson (1985), section 5.8)", () => {
    const rigid = { ...bodies, surface: { youngsModulus: 1e16, poissonRatio: 0.2 } };
    const { peakForce, contactTime } = impact(contactLaw(face, rigid, new Map()), mass, speed);
    const M = (0.52 * 50e6) / (1.48 * 0.04);
    const k = (M * 36e-4) / 0.003;
    expect(peakForce / (Math.sqrt(k * mass) * speed)).toBeCloseTo(1, 4);
    expect(contactTime / (Math.PI * Math.sqrt(mass / k))).toBeCloseTo(1, 3);
  });
});

describe("what hits", () => {
  it("a uniform rod that is hit at its end feels a quarter of its mass (closed form, I = m L^2 / 12)", () => {
    expect(impactMass(2, 0.5, (2 * 1) / 12)).toBeCloseTo(0.5, 12);
  });

  it("falls 1 m to 4.43 m/s, and sinks at first as it would fall with its added mass, at last at its terminal speed", () => {
    expect(fallSpeed(1, 9.80665)).toBeCloseTo(4.4287, 4);
    const [weight, total, area, rho] = [11, 1.4, 0.002, 1000];
    expect(sinkSpeed(1e-5, weight, total, area, rho) / Math.sqrt((2 * weight * 1e-5) / total)).toBeCloseTo(1, 4);
    expect(sinkSpeed(100, weight, total, area, rho)).toBeCloseTo(Math.sqrt((2 * weight) / (rho * area)), 9);
  });
});
