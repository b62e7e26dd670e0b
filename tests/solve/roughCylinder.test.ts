import { describe, expect, it } from "vitest";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { prepared, quietCondition } from "./sections";

const circle = prepared({ family: "circle", diameter: 1 }, 200);

/** Cd of the rising branch. */
function drag(reynolds: number, roughness: number): number {
  const { states, rising } = solveCondition(circle, quietCondition(reynolds, roughness));
  return states[rising ?? Number.NaN].dragCoefficient;
}

const roughnesses = [1e-5, 3e-5, 1e-4, 3e-4, 1e-3, 3e-3, 4.5e-3, 1e-2];

describe("rough cylinder", () => {
  for (const Re of [3.2e6, 4e6, 5e6, 7e6, 1e7]) {
    it(`Re ${Re}, fully turbulent: the smooth wall has the lowest drag and every roughness only adds to it (common practice, no source)`, () => {
      const drags = roughnesses.map((ks) => drag(Re, ks));
      for (let i = 1; i < drags.length; i++) expect(drags[i]).toBeGreaterThan(drags[i - 1]);
      expect(drag(Re, 0)).toBeLessThan(drags[0]);
    });
  }

  it("roughness brings the crisis forward: critical Re within 35 % of 6000 (ks/D)^-1/2 for ks/D 1e-3 to 9e-3 (Achenbach 1977, from memory)", () => {
    for (const ks of [1e-3, 3e-3, 9e-3]) {
      const law = 6000 / Math.sqrt(ks);
      const reynolds = Array.from({ length: 41 }, (_, i) => (law / 3) * 9 ** (i / 40));
      const curve = traceDragCurve(
        circle,
        reynolds.map((Re) => quietCondition(Re, ks)),
      );
      const drags = curve.map(({ states, rising }) => states[rising ?? Number.NaN].dragCoefficient);
      const lowest = drags.indexOf(Math.min(...drags));
      expect(Math.abs(reynolds[lowest] / law - 1)).toBeLessThan(0.35);
    }
  });

  it("rougher walls separate sooner at Re 5e6, from above 110 degrees when polished", () => {
    const angles = roughnesses.map(
      (ks) => (solveCondition(circle, quietCondition(5e6, ks)).states[0].lower.separationAngle * 180) / Math.PI,
    );
    expect(angles[0]).toBeGreaterThan(110);
    for (let i = 1; i < angles.length; i++) expect(angles[i]).toBeLessThan(angles[i - 1]);
  });
});
