import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Meridian, polyline } from "../../shared/jobs/puck/body/meridian";
import { revolve, sectionArea, sweptSurface } from "../../shared/jobs/puck/body/solidFigures";
import { trigonometricMoment } from "../../shared/jobs/puck/body/trigonometricMoment";

/** Relative closeness to 1e-12, with the numbers in the message. */
function expectClose(value: number, expected: number, tolerance = 1e-12) {
  expect(Math.abs(value - expected), `${value} should be ${expected}`).toBeLessThanOrEqual(
    tolerance * Math.max(Math.abs(expected), 1e-300),
  );
}

const half = Math.PI / 2;

describe("revolve(meridian) against handbook solids (Young & Budynas 2002, Roark's Formulas, tables A.1; Beyer, CRC Standard Mathematical Tables)", () => {
  it("cylinder: V = pi R^2 h, axis m R^2 / 2, diameter m (3 R^2 + h^2) / 12, to 1e-12", () => {
    const [R, h] = [0.04, 0.03];
    const solid = revolve(
      polyline([
        [0, -h / 2],
        [R, -h / 2],
        [R, h / 2],
        [0, h / 2],
      ]),
    );
    const V = Math.PI * R * R * h;
    expectClose(solid.volume, V);
    expectClose(solid.inertiaAxis, (V * R * R) / 2);
    expectClose(solid.inertiaDiameter, (V * (3 * R * R + h * h)) / 12);
    expect(Math.abs(solid.axialMoment)).toBeLessThan(1e-20);
  });

  it("sphere: V = 4/3 pi R^3, both inertias 2/5 m R^2, surface 4 pi R^2, section pi R^2, to 1e-12", () => {
    const R = 0.35;
    const sphere: Meridian = [{ kind: "arc", centreR: 0, centreZ: 0, radius: R, phi1: -half, phi2: half }];
    const solid = revolve(sphere);
    const V = (4 / 3) * Math.PI * R ** 3;
    expectClose(solid.volume, V);
    expectClose(solid.inertiaAxis, 0.4 * V * R * R);
    expectClose(solid.inertiaDiameter, 0.4 * V * R * R);
    expectClose(sweptSurface(sphere), 4 * Math.PI * R * R);
    expectClose(sectionArea(sphere), Math.PI * R * R);
  });

  it("cone on its base: V = pi R^2 h / 3, centroid h / 4, axis 3/10 m R^2, diameter at the base m (3 R^2 / 20 + h^2 / 10)", () => {
    const [R, h] = [1.3, 0.7];
    const solid = revolve(
      polyline([
        [0, 0],
        [R, 0],
        [0, h],
      ]),
    );
    const V = (Math.PI * R * R * h) / 3;
    expectClose(solid.volume, V);
    expectClose(solid.axialMoment, (V * h) / 4);
    expectClose(solid.inertiaAxis, 0.3 * V * R * R);
    expectClose(solid.inertiaDiameter, V * ((3 * R * R) / 20 + (h * h) / 10));
  });

  it("torus: V = 2 pi^2 R r^2, surface 4 pi^2 R r (Pappus), axis m (R^2 + 3/4 r^2), diameter m (4 R^2 + 5 r^2) / 8", () => {
    const [R, r] = [2, 0.5];
    const torus: Meridian = [{ kind: "arc", centreR: R, centreZ: 0, radius: r, phi1: 0, phi2: 2 * Math.PI }];
    const solid = revolve(torus);
    const V = 2 * Math.PI ** 2 * R * r * r;
    expectClose(solid.volume, V);
    expectClose(sweptSurface(torus), 4 * Math.PI ** 2 * R * r);
    expectClose(solid.inertiaAxis, V * (R * R + 0.75 * r * r));
    expectClose(solid.inertiaDiameter, (V * (4 * R * R + 5 * r * r)) / 8);
  });

  it("torus-edged disc: V = pi t (a^2 + pi a t / 4 + t^2 / 6) with a the flat radius, by Pappus for the half-round rim", () => {
    const [a, t] = [0.025, 0.03];
    const r = t / 2;
    const disc: Meridian = [
      ...polyline([
        [0, -r],
        [a, -r],
      ]),
      { kind: "arc", centreR: a, centreZ: 0, radius: r, phi1: -half, phi2: half },
      ...polyline([
        [a, r],
        [0, r],
      ]),
    ];
    // Half disc of area pi r^2 / 2 with its centroid 4 r / (3 pi) beyond a.
    const rim = 2 * Math.PI * (a + (4 * r) / (3 * Math.PI)) * ((Math.PI * r * r) / 2);
    expectClose(revolve(disc).volume, Math.PI * a * a * t + rim);
    expectClose(revolve(disc).volume, Math.PI * t * (a * a + (Math.PI * a * t) / 4 + (t * t) / 6));
    expectClose(sweptSurface(disc), 2 * Math.PI * a * a + 2 * Math.PI * (a + (2 * r) / Math.PI) * Math.PI * r);
  });
});

describe("revolve(meridian) for any triangle", () => {
  it("Pappus: the volume is 2 pi times the centroid's radius times the area, to 1e-9", () => {
    const number = fc.double({ min: 0.1, max: 10, noNaN: true });
    fc.assert(
      fc.property(number, number, number, number, number, number, (r1, z1, r2, z2, r3, z3) => {
        const area = ((r2 - r1) * (z3 - z1) - (r3 - r1) * (z2 - z1)) / 2;
        const solid = revolve(
          polyline([
            [r1, z1],
            [r2, z2],
            [r3, z3],
            [r1, z1],
          ]),
        );
        const pappus = 2 * Math.PI * ((r1 + r2 + r3) / 3) * area;
        expect(Math.abs(solid.volume - pappus)).toBeLessThan(1e-9 * (1 + Math.abs(pappus)));
      }),
    );
  });
});

describe("trigonometricMoment(m, n, phi1, phi2)", () => {
  it("agrees with the composite Gauss rule of Abramowitz & Stegun (1964), table 25.4, five points, to 1e-13", () => {
    const nodes = [0, 0.5384693101056831, -0.5384693101056831, 0.906179845938664, -0.906179845938664];
    const weights = [
      0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891,
    ];
    for (let m = 0; m <= 5; m++) {
      for (let n = 0; n <= 4; n++) {
        const [from, to, parts] = [-0.4, 2.3, 200];
        const step = (to - from) / parts;
        let sum = 0;
        for (let i = 0; i < parts; i++) {
          nodes.forEach((node, j) => {
            const phi = from + (i + 0.5 + node / 2) * step;
            sum += (weights[j] * step * Math.cos(phi) ** m * Math.sin(phi) ** n) / 2;
          });
        }
        expect(Math.abs(trigonometricMoment(m, n, from, to) - sum), `m ${m}, n ${n}`).toBeLessThan(1e-13);
      }
    }
  });
});
