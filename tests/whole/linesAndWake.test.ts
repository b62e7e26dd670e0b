import { describe, expect, test } from "vitest";
import { streamGrid } from "../../shared/engine/whole/streamGrid";
import { surfaceField } from "../../shared/engine/whole/surfaceField";
import { stagnationDirection, surfaceLines } from "../../shared/engine/whole/surfaceLines";
import { streamPotential } from "../../shared/engine/whole/wholeFlow";
import { wholeForces } from "../../shared/engine/whole/wholeForces";
import { wholeWake } from "../../shared/engine/whole/wholeWake";
import { roundedDisc, solved, spheroid } from "./bodies";

const degrees = Math.PI / 180;

describe("streamlines of the surface", () => {
  test("sphere of radius 1, closed form: q = 1.5 sin(beta), spacing grows as sin(beta), wall curvature 1, at every tilt", () => {
    const { flow, shape } = solved(spheroid(1), { edgePanels: 3 });
    for (const tilt of [0, 30 * degrees, 60 * degrees]) {
      const field = surfaceField(flow.panels, streamPotential(flow, tilt));
      const stagnation = stagnationDirection(shape, field, tilt);
      for (const line of surfaceLines(shape, field, stagnation, [0.001, 0.6, 1.2], 2.5)) {
        for (let i = 20; i < line.count; i += 40) {
          const beta = line.arc[i];
          expect(line.speed[i]).toBeCloseTo(1.5 * Math.sin(beta), 2);
          expect(line.spacing[i] / line.spacing[10]).toBeCloseTo(Math.sin(beta) / Math.sin(line.arc[10]), 1);
          expect(line.curvature[i]).toBeCloseTo(1, 3);
        }
      }
    }
  });

  test("a line stays on the surface and in the half that it started in", () => {
    const { flow, shape } = solved(roundedDisc(80, 30, 6));
    const field = surfaceField(flow.panels, streamPotential(flow, 0));
    const [line] = surfaceLines(shape, field, [-1, 0, 0], [0.5], 2.4);
    for (let i = 0; i < line.count; i++) {
      expect(line.y[i]).toBeGreaterThan(0);
      expect(Math.abs(line.z[i])).toBeLessThanOrEqual(15.01);
      expect(Math.hypot(line.x[i], line.y[i])).toBeLessThanOrEqual(40.01);
    }
  });
});

describe("wake of a whole body", () => {
  const sphere = solved([...spheroid(1)], { harmonics: 14, edgePanels: 3 });

  test("a sphere has one drag whichever way it is met, and no lift nor moment", () => {
    for (const [beta, Cpb] of [
      [82, -0.3],
      [120, -0.05],
    ]) {
      const drags = [0, 30, 90].map((tilt) => {
        const grid = streamGrid(sphere.flow, sphere.shape, tilt * degrees);
        const line = new Float64Array(61).fill(beta * degrees);
        const forces = wholeForces(wholeWake(grid, line, Math.sqrt(1 - Cpb)));
        expect(Math.abs(forces.lift)).toBeLessThan(2e-3);
        expect(Math.abs(forces.moment)).toBeLessThan(1e-3);
        return forces.pressureDrag;
      });
      for (const drag of drags) expect(Math.abs(drag / drags[2] - 1)).toBeLessThan(0.01);
    }
  });

  test("the parts of the drag add up, and suction that is cut costs drag", () => {
    const disc = solved(roundedDisc(80, 30, 2), { harmonics: 14 });
    const grid = streamGrid(disc.flow, disc.shape, 0);
    expect(grid.frontalArea).toBeCloseTo(2400 - (4 - Math.PI) * 4, -1);
    const wake = wholeWake(grid, new Float64Array(61).fill(100 * degrees), Math.sqrt(1.3));
    const kept = wholeForces(wake);
    const lost = wholeForces(wake, -0.8);
    expect(kept.forebodyDrag + kept.baseDrag).toBeCloseTo(kept.pressureDrag, 10);
    expect(lost.forebodyDrag + lost.lostSuctionDrag + lost.baseDrag).toBeCloseTo(lost.pressureDrag, 10);
    expect(lost.lostSuctionDrag).toBeGreaterThan(0.02);
  });
});
