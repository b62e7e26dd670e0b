import { beforeAll, describe, expect, it } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { runCase } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import type { Comparison } from "../../shared/jobs/compare/comparison";
import { entryWith, puckCaseDocument, puckEntry, readGood } from "../puck/puckDocuments";

const candidates = [entryWith("Twin"), entryWith("Half as wide", { diameterMetres: 0.06 })];

function run(compare?: object): CaseResults {
  return runCase(readGood(puckCaseDocument({ candidates }, { speedsMetresPerSecond: [1, 2], compare })));
}

const message = (compare: object) => {
  const reading = readCaseDocument(puckCaseDocument({ candidates }, { compare }), "case.json");
  return reading.ok ? "" : reading.problem.message;
};

let results: CaseResults;
beforeAll(() => {
  results = run();
}, 120_000);

const of = (name: string, attitude: string, speed: number | null = null): Comparison =>
  results.comparisons!.find(
    ({ first, condition }) =>
      first === name && condition.attitude === attitude && condition.speedMetresPerSecond === speed,
  )!;

describe("pucks with a baseline", () => {
  it("are compared without being asked for it, in each attitude and speed and over all of play", () => {
    const places = results.comparisons!.filter(({ first }) => first === "Twin").map(({ condition }) => condition);
    expect(places.map(({ attitude, speedMetresPerSecond: speed }) => `${attitude} ${speed}`)).toEqual([
      "play null",
      ...[1, 2].flatMap((speed) => ["upright", "flat", "faceOn"].map((attitude) => `${attitude} ${speed}`)),
    ]);
    expect(
      results.comparisons!.every(
        ({ second, problem }) => second === (puckEntry.puck as { name: string }).name && problem === null,
      ),
    ).toBe(true);
  });

  it("that are twins have every error in common: no change in any draw", () => {
    for (const attitude of ["upright", "flat", "faceOn"]) {
      const { changePercent, probabilityLess, decided } = of("Twin", attitude, 1);
      expect(Math.abs(changePercent!.low)).toBeLessThan(1e-9);
      expect(Math.abs(changePercent!.high)).toBeLessThan(1e-9);
      expect([probabilityLess, decided]).toEqual([0.5, "not decided"]);
    }
  });

  it("face-on: drag is in proportion to the face but for the thicker body, and less is decided", () => {
    // Kritzinger (2004): sharp cylinders of length/diameter 0.375 and 0.5 have nearly one drag coefficient.
    const { changePercent, decided } = of("Half as wide", "faceOn", 2);
    expect(Math.abs(changePercent!.expected - 100 * ((0.06 / 0.08) ** 2 - 1))).toBeLessThan(15);
    expect(decided).toBe("less");
  });

  it("are ranked, and what is true of every attitude is true over all of play", () => {
    const { ranking, decided } = of("Half as wide", "play");
    expect(decided).toBe("less");
    expect(ranking!.find(({ name }) => name === "Half as wide")!.probabilityBest).toBeGreaterThan(0.9);
    expect(ranking!.reduce((sum, { probabilityBest }) => sum + probabilityBest, 0)).toBeCloseTo(1, 12);
  });

  it("refuse what is not known where it cannot be, with the key and the range", () => {
    expect(message({ baseline: "Nobody" })).toMatch(/compare.baseline is "Nobody".*the names are/);
    expect(message({ unknown: { speedMetresPerSecond: { from: 1, to: 9 } } })).toMatch(
      /compare.unknown.speedMetresPerSecond.*within the speeds of the case, 1 to 2 m\/s/,
    );
    expect(message({ unknown: { turbulencePercent: { from: 5, to: 1 } } })).toMatch(
      /compare.unknown.turbulencePercent.to.*above "from", 5/,
    );
    expect(message({ unknown: { turbulencePercent: { from: 1, to: 90 } } })).toMatch(/from 0 to 20 %/);
    expect(message({ unknown: { incidenceDegrees: { from: 0, to: 5 } } })).toMatch(/incidenceDegrees is for sections/);
  });
});
