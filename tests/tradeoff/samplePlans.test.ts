import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DesignSpace, Evaluation } from "../../shared/jobs/tradeoff/designSpace";
import { crowdingDistances, dominates, nondominatedLayers, paretoFront } from "../../shared/jobs/tradeoff/paretoFront";
import { openPoints, recordPoint, runProgress, startRun } from "../../shared/jobs/tradeoff/pointRun";
import { gridPoints, latinHypercube } from "../../shared/jobs/tradeoff/samplePlans";
import { unwrap } from "../puck/examplePuck";

const space: DesignSpace = {
  variables: [
    { key: "a", lowest: 0, highest: 1 },
    { key: "b", lowest: 10, highest: 20 },
  ],
  goals: [
    { key: "f", sense: "least" },
    { key: "g", sense: "most" },
  ],
};

describe("gridPoints(space, levels)", () => {
  it("meets both ends and all combinations, and the middle for one level", () => {
    expect(unwrap(gridPoints(space, [2, 3]))).toEqual([
      [0, 10],
      [0, 15],
      [0, 20],
      [1, 10],
      [1, 15],
      [1, 20],
    ]);
    expect(unwrap(gridPoints(space, [1, 1]))).toEqual([[0.5, 15]]);
  });

  it("refuses more points than can be worked through", () => {
    expect(gridPoints(space, [1000, 1000]).ok).toBe(false);
  });
});

describe("latinHypercube(space, count, seed)", () => {
  it("has exactly one point in every slice of every variable (McKay et al. 1979)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: -1000, max: 1000 }), (count, seed) => {
        const points = unwrap(latinHypercube(space, count, seed));
        space.variables.forEach(({ lowest, highest }, i) => {
          const slices = points.map((point) => Math.floor(((point[i] - lowest) / (highest - lowest)) * count));
          expect([...slices].sort((x, y) => x - y)).toEqual(Array.from({ length: count }, (_, k) => k));
        });
      }),
      { numRuns: 40 },
    );
  });
});

describe("paretoFront(evaluations, goals)", () => {
  const at = (f: number, g: number, violation = 0): Evaluation => ({
    variables: [f, g],
    goals: [f, g],
    violation,
    reason: null,
  });

  it("keeps what none beats, by each goal's sense, and nothing that is not allowed", () => {
    const all = [at(1, 5), at(2, 6), at(2, 4), at(3, 7), at(0, 9, 0.1)];
    expect(paretoFront(all, space.goals).map(({ goals }) => goals[0])).toEqual([1, 2, 3]);
  });

  it("agrees with the definition on random points: no member is beaten, every other one is", () => {
    const point = fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 8 }));
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 30 }), (pairs) => {
        const all = pairs.map(([f, g]) => at(f, g));
        const layers = nondominatedLayers(all, space.goals);
        expect(layers.flat().sort((x, y) => x - y)).toEqual(all.map((_, i) => i));
        all.forEach((member, i) => {
          const isBeaten = all.some((other) => dominates(other, member, space.goals));
          expect(layers[0].includes(i)).toBe(!isBeaten);
        });
      }),
    );
  });

  it("crowding: the ends are infinite, the middle of an even row has 2 x its share of the range", () => {
    const distances = crowdingDistances([at(0, 0), at(1, 1), at(2, 2)], 2);
    expect([...distances]).toEqual([Number.POSITIVE_INFINITY, 2, Number.POSITIVE_INFINITY]);
  });
});

describe("pointRun", () => {
  it("hands out open points, skips those at work elsewhere, and survives being written out", () => {
    let run = startRun(space, unwrap(gridPoints(space, [2, 2])));
    const done = { variables: [0, 10], goals: [1, 1], violation: 0, reason: null };
    run = recordPoint(run, 0, done);
    expect(openPoints(run, 2, new Set([1])).map(({ index }) => index)).toEqual([2, 3]);
    expect(runProgress(run)).toBe(0.25);
    expect(JSON.parse(JSON.stringify(run))).toEqual(run);
    expect(() => recordPoint(run, 4, done)).toThrow(RangeError);
  });
});
