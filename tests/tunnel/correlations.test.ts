import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { correlationFaults, type StatedCorrelation } from "../../shared/jobs/tunnel/correlationFaults";
import { correlationNotes, undrawableParts } from "../../shared/jobs/tunnel/correlationNotes";
import { resolveTunnel } from "../../shared/jobs/tunnel/resolveTunnel";
import type { StatedKey } from "../../shared/jobs/tunnel/statedUncertainties";
import { choleskyFactor, correlationMatrix, possibleCoefficients } from "../../shared/statistics/correlationMatrix";
import { startTunnel } from "../../src/app/tunnel/tunnelInputs";

const pair = (one: StatedKey, other: StatedKey, coefficient: number): StatedCorrelation => ({
  between: [one, other],
  coefficient,
});

/** Three parts of which two go with the third, and the coefficient of those two. */
const triangle = (coefficient: number) => [
  pair("balanceCalibrationPercent", "zeroNewtons", 0.9),
  pair("zeroNewtons", "temperatureCelsius", 0.9),
  pair("temperatureCelsius", "balanceCalibrationPercent", coefficient),
];

describe("possibleCoefficients(matrix, i, j)", () => {
  it("three variables in closed form: r12 r13 plus and minus the root of (1 - r12^2)(1 - r13^2)", () => {
    const matrix = correlationMatrix(
      ["a", "b", "c"],
      [
        { between: ["a", "b"], coefficient: 0.6 },
        { between: ["a", "c"], coefficient: -0.3 },
      ],
    );
    const [low, high] = possibleCoefficients(matrix, 1, 2)!;
    const half = Math.sqrt((1 - 0.36) * (1 - 0.09));
    expect(low).toBeCloseTo(-0.18 - half, 12);
    expect(high).toBeCloseTo(-0.18 + half, 12);
  });

  it("its ends are the last ones that have a factor, for any four variables; null where the others have none", () => {
    const coefficient = fc.double({ min: -1, max: 1, noNaN: true });
    const keys = ["a", "b", "c", "d"];
    let bounded = 0;
    fc.assert(
      fc.property(fc.array(coefficient, { minLength: 6, maxLength: 6 }), (values) => {
        const names = keys.flatMap((one, i) => keys.slice(i + 1).map((other) => [one, other] as const));
        const matrix = correlationMatrix(
          keys,
          names.map((between, i) => ({ between, coefficient: values[i] })),
        );
        const withPair = (r: number) =>
          choleskyFactor(matrix.map((row, i) => row.map((each, j) => (i !== j && i + j === 5 ? r : each))));
        const range = possibleCoefficients(matrix, 2, 3);
        if (range === null) {
          for (const r of [-1, -0.5, 0, 0.5, 1]) expect(withPair(r)).toBeNull();
          return;
        }
        const [low, high] = range;
        if (high - low < 1e-3) return;
        bounded++;
        expect(withPair((low + high) / 2)).not.toBeNull();
        expect(withPair(high - 1e-4)).not.toBeNull();
        if (high < 1 - 1e-3) expect(withPair(high + 1e-3)).toBeNull();
        if (low > -1 + 1e-3) expect(withPair(low - 1e-3)).toBeNull();
      }),
      { numRuns: 200 },
    );
    expect(bounded).toBeGreaterThan(20);
  });
});

describe("correlationFaults(correlations)", () => {
  it("has nothing to say of a possible set, at its bound as well", () => {
    expect(correlationFaults([])).toEqual([]);
    expect(correlationFaults(triangle(0.62))).toEqual([]);
    expect(correlationFaults([pair("zeroNewtons", "speedPercent", -1)])).toEqual([]);
  });

  it("tells a part with itself and a pair twice by their places", () => {
    const faults = correlationFaults([
      pair("speedPercent", "speedPercent", 0.1),
      pair("speedPercent", "otherPercent", 0.1),
      pair("otherPercent", "speedPercent", 0.1),
    ]);
    expect(faults).toEqual([
      { index: 0, message: 'both parts are "Speed as read"; a correlation is between two different parts' },
      { index: 2, message: "correlation 2 is between the same parts; a pair must have one coefficient" },
    ]);
  });

  it("tells an impossible set in words, with what each coefficient could be; one that hangs on nothing is left out", () => {
    const [fault, ...more] = correlationFaults([pair("speedPercent", "otherPercent", 1), ...triangle(-0.5)]);
    expect(more).toEqual([]);
    expect(fault.index).toBeNull();
    expect(fault.message).toContain("no quantities can have the coefficients of");
    expect(fault.message).toContain(
      '"Balance: calibration factor", "Balance: zero beyond the readings taken", "Temperature"',
    );
    expect(fault.message).not.toContain("Speed");
    // 0.81 - 0.19 = 0.62; the other two: -0.45 plus and minus the root of 0.19 x 0.75.
    expect(fault.message).toContain("correlation 4 must be from 0.62 to 1");
    expect(fault.message).toContain("correlation 2 must be from -0.827 to -0.073");
  });

  it("a pair that is not listed is independent, which can be impossible as well: 0.45 plus and minus the root of 0.19 x 0.75", () => {
    const [{ message }] = correlationFaults([
      pair("speedPercent", "otherPercent", 0.9),
      pair("otherPercent", "zeroNewtons", 0.5),
    ]);
    expect(message).toContain("where pairs that are not listed are independent");
    expect(message).toContain(
      'or that of "Speed as read" with "Balance: zero beyond the readings taken" must be from 0.073 to 0.827',
    );
  });

  it("what it says a coefficient must be is taken", () => {
    fc.assert(
      fc.property(fc.double({ min: -0.95, max: 0.6, noNaN: true }), (coefficient) => {
        const [{ message }] = correlationFaults(triangle(coefficient));
        const ways = [...message.matchAll(/correlation (\d) must be from (\S+) to ([-\d.]+)/g)];
        expect(ways).toHaveLength(3);
        for (const [, number, ...ends] of ways) {
          for (const end of ends) {
            const changed = triangle(coefficient).map((each, i) =>
              i === Number(number) - 1 ? { ...each, coefficient: Number(end) } : each,
            );
            expect(correlationFaults(changed)).toEqual([]);
          }
        }
      }),
      { numRuns: 50 },
    );
  });
});

describe("resolveTunnel(block) with correlations", () => {
  it("refuses what correlationFaults finds, under the key of the case", () => {
    const block = (correlations: StatedCorrelation[]) => ({
      ...startTunnel.block,
      uncertainty: {
        correlations: correlations.map(({ between, coefficient }) => ({
          between: [...between] as [StatedKey, StatedKey],
          coefficient,
        })),
      },
    });
    expect(resolveTunnel(block(triangle(0.8))).ok).toBe(true);
    const refused = resolveTunnel(block(triangle(-0.5)));
    expect(refused.ok ? [] : refused.problems.map(({ field }) => field)).toEqual(["tunnel.uncertainty.correlations"]);
    const twice = resolveTunnel(block([...triangle(0.8), pair("zeroNewtons", "temperatureCelsius", 0)]));
    expect(twice.ok ? "" : twice.problems[0].message).toMatch(
      /^tunnel\.uncertainty\.correlations\[3\]: correlation 2 /,
    );
  });
});

describe("correlationNotes(correlations, stated, samples, inputKeys)", () => {
  const stated = {
    speedPercent: { plusMinus: 1, kind: "standard" },
    zeroNewtons: { plusMinus: 1, kind: "normal95" },
    temperatureCelsius: { plusMinus: 1, kind: "standard", degreesOfFreedom: 5 },
    otherPercent: { plusMinus: 1, kind: "rectangular" },
  } as const;
  const messages = (list: StatedCorrelation[], samples = 0, keys: string[] | null = null) =>
    correlationNotes(list, stated, samples, keys === null ? null : new Set(keys)).map(({ message }) => message);

  it("tells what counts for nothing, and no more", () => {
    expect(messages([pair("speedPercent", "zeroNewtons", 0.5)], 1000)).toEqual([]);
    expect(messages([pair("speedPercent", "blockagePercent", 0.5)])).toEqual([
      '"Blockage correction" is taken as exact, so that this correlation counts for nothing',
    ]);
    expect(messages([pair("speedPercent", "zeroNewtons", 0.5)], 0, ["zeroNewtons"])).toEqual([
      '"Speed as read" is no part of the budget of these runs, so that this correlation counts for nothing',
    ]);
    expect(messages([pair("speedPercent", "blockagePercent", 0)], 1000)).toEqual([]);
  });

  it("says that parts that are not normal have no Monte Carlo together", () => {
    const list = [pair("otherPercent", "temperatureCelsius", 0.5), pair("speedPercent", "zeroNewtons", 0.5)];
    expect(undrawableParts(list, stated)).toEqual(["temperatureCelsius", "otherPercent"]);
    expect(messages(list, 1000)).toEqual([
      expect.stringContaining('no Monte Carlo for "Temperature", "Anything else"'),
    ]);
    expect(messages(list, 0)).toEqual([]);
  });

  it("counts a half-width of few degrees of freedom among those: JCGM 101:2008, 6.4.9 draws it from a t distribution", () => {
    const ofFew = { ...stated, zeroNewtons: { plusMinus: 1, kind: "normal95", degreesOfFreedom: 5 } } as const;
    expect(undrawableParts([pair("speedPercent", "zeroNewtons", 0.5)], ofFew)).toEqual(["zeroNewtons"]);
  });
});
