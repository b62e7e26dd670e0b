import { describe, expect, test } from "vitest";
import { surfaceField } from "../../shared/engine/whole/surfaceField";
import { toroidalFunctions } from "../../shared/engine/whole/toroidalFunctions";
import { streamPotential, wholeFlow } from "../../shared/engine/whole/wholeFlow";
import { gaussRule } from "../../shared/numerics/gaussRule";
import { roundedDisc, solved, spheroid, spheroidConstants } from "./bodies";

const { abscissae, weights } = gaussRule(40);

/** Q_{m-1/2}(chi) = integral over [0, pi] of cos(m t) / sqrt(2 chi - 2 cos t). Source: Abramowitz & Stegun, 8.8.3 and 8.13.3. */
function toroidalByQuadrature(m: number, chi: number): number {
  const cells = 400;
  let sum = 0;
  for (let cell = 0; cell < cells; cell++) {
    // Cells crowd towards t = 0, where the integrand peaks.
    const [a, b] = [Math.PI * (cell / cells) ** 3, Math.PI * ((cell + 1) / cells) ** 3];
    for (let k = 0; k < 40; k++) {
      const t = a + ((b - a) * (abscissae[k] + 1)) / 2;
      sum += (((b - a) / 2) * weights[k] * Math.cos(m * t)) / Math.sqrt(2 * (chi - 1) + 4 * Math.sin(t / 2) ** 2);
    }
  }
  return sum;
}

describe("toroidal functions", () => {
  test("agree with their integral, both sides of where the recurrence turns", () => {
    for (const excess of [1e-4, 0.019, 0.021, 0.3, 5, 400]) {
      const values = new Float64Array(17);
      toroidalFunctions(excess, 16, values);
      for (const m of [0, 1, 2, 7, 16]) {
        const exact = toroidalByQuadrature(m, 1 + excess);
        // Far rings' high harmonics vanish below what a sum of cosines can show.
        expect(Math.abs(values[m] - exact)).toBeLessThan(1e-9 * exact + 1e-14);
      }
    }
  });
});

describe("flow about spheroids: Lamb (1932), art. 114", () => {
  for (const c of [1, 0.375, 2]) {
    const { flow } = solved(spheroid(c), { edgePanels: 3 });
    const { across, along } = spheroidConstants(c);
    const { tangentR, tangentZ } = flow.panels;

    test(`half axes 1, 1, ${c}: surface speed across, along and at 30 degrees within 1e-4`, () => {
      for (const tilt of [0, Math.PI / 6, Math.PI / 2]) {
        const field = surfaceField(flow.panels, streamPotential(flow, tilt));
        // On an ellipsoid the velocity is the tangential part of a uniform one.
        const [a, b] = [(2 / (2 - across)) * Math.cos(tilt), (2 / (2 - along)) * Math.sin(tilt)];
        for (let i = 0; i < flow.panels.count; i++) {
          expect(Math.abs(field.along[1][i] - a * tangentR[i])).toBeLessThan(1e-4);
          expect(Math.abs(field.round[1][i] + a)).toBeLessThan(1e-4);
          expect(Math.abs(field.along[0][i] - b * tangentZ[i])).toBeLessThan(1e-4);
        }
      }
    });

    test(`half axes 1, 1, ${c}: added mass within 1e-5`, () => {
      expect(flow.addedMassAcross).toBeCloseTo(across / (2 - across), 5);
      expect(flow.addedMassAlong).toBeCloseTo(along / (2 - along), 5);
      expect(flow.volume).toBeCloseTo((4 / 3) * Math.PI * c, 8);
    });
  }

  test("divergence of the sphere's surface flow across the axis is -3 r cos(theta)", () => {
    // 1.5 times the tangential part of a uniform stream diverges by -2 times 1.5 of the stream's normal part.
    const { flow } = solved(spheroid(1), { edgePanels: 3 });
    const field = surfaceField(flow.panels, streamPotential(flow, 0));
    flow.panels.r.forEach((r, i) => {
      expect(field.divergence[1][i]).toBeCloseTo(-3 * r, 2);
    });
  });
});

describe("a floor", () => {
  test("sphere near a wall: added mass 1/2 (1 + 3/8 (a/h)^3) towards it, 1/2 (1 + 3/16 (a/h)^3) along it (Lamb 1932, art. 99 and 138)", () => {
    const h = 3;
    const { flow } = solved(spheroid(1), { edgePanels: 3 }, h - 1);
    const cube = (1 / h) ** 3;
    // The next terms of the series are of the sixth power, 1e-3 of these.
    expect(flow.addedMassAlong).toBeCloseTo(0.5 * (1 + (3 / 8) * cube), 3);
    expect(flow.addedMassAcross).toBeCloseTo(0.5 * (1 + (3 / 16) * cube), 3);
    expect(flow.addedMassAlong).toBeGreaterThan(0.5 + 0.5 * (3 / 8) * cube * 0.9);
  });

  test("a gap that is not above 0 is refused", () => {
    expect(() => wholeFlow(spheroid(1), undefined, 0)).toThrow("floor gap is 0 m");
  });
});

describe("a rounded disc", () => {
  test("scale: ten times the size has the same speeds", () => {
    const small = solved(roundedDisc(0.08, 0.03, 0.006)).flow;
    const large = solved(roundedDisc(0.8, 0.3, 0.06)).flow;
    const speed = (flow: typeof small) => surfaceField(flow.panels, streamPotential(flow, 0)).round[1];
    const a = speed(small);
    speed(large).forEach((value, i) => {
      expect(value).toBeCloseTo(a[i], 7);
    });
  });

  test("mirror: upper and lower half carry the same speeds", () => {
    const { flow } = solved(roundedDisc(0.08, 0.03, 0.006));
    const { round } = surfaceField(flow.panels, streamPotential(flow, 0));
    const last = flow.panels.count - 1;
    round[1].forEach((value, i) => {
      expect(value).toBeCloseTo(round[1][last - i], 7);
    });
  });

  test("twice the panels on the edges and more nodes move rim speed and added mass by less than 0.5 %", () => {
    const coarse = solved(roundedDisc(80, 30, 6)).flow;
    const fine = solved(roundedDisc(80, 30, 6), { edgePanels: 4, order: 14 }).flow;
    const rim = (flow: typeof coarse) => {
      const { round } = surfaceField(flow.panels, streamPotential(flow, 0));
      return Math.max(...round[1].map((value, i) => (flow.panels.r[i] > 39.999 ? -value : 0)));
    };
    expect(Math.abs(rim(coarse) / rim(fine) - 1)).toBeLessThan(0.005);
    expect(Math.abs(coarse.addedMassAcross / fine.addedMassAcross - 1)).toBeLessThan(0.005);
    expect(Math.abs(coarse.addedMassAlong / fine.addedMassAlong - 1)).toBeLessThan(0.005);
  });

  test("a meridian that does not meet the axis or has a gap is refused by name", () => {
    const [, edge, rim, ...rest] = roundedDisc(80, 30, 6);
    const open = wholeFlow([edge, rim, ...rest]);
    expect(open.ok ? "" : open.problem.message).toContain("off the axis");
    const torn = wholeFlow([roundedDisc(80, 30, 6)[0], rim, ...rest]);
    expect(torn.ok ? "" : torn.problem.message).toContain("they must meet");
  });
});
