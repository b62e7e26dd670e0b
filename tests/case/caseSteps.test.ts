import { describe, expect, it } from "vitest";
import { type CaseStep, caseSteps, runCase } from "../../shared/case/caseSteps";
import { readCase } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { caseWith } from "./caseDocuments";

function caseOf(changes: Record<string, unknown>): Case {
  const reading = readCase(JSON.stringify(caseWith(changes)), "test.json");
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.value;
}

const circle = { family: "circle", diameterMetres: 0.08 };
const byReynolds = { speedsMetresPerSecond: undefined, fluid: undefined };

describe("caseSteps(case)", () => {
  it("takes one step for every section and one for every sweep over the stream, and returns what the steps gave", () => {
    const theCase = caseOf({
      sections: [circle, { family: "ellipse", lengthMetres: 0.06, heightMetres: 0.03 }],
      panelCount: 80,
      sandGrainRoughnessRatios: [1e-4, 1e-3],
      turbulencePercents: [0.5, 1, 2],
    });
    const seen: CaseStep[] = [];
    const results = runCase(theCase, (step) => seen.push(step));
    expect(seen.map(({ done, total }) => [done, total])).toEqual(Array.from({ length: 14 }, (_, i) => [i + 1, 14]));
    expect(seen.flatMap(({ rows }) => rows)).toEqual(results.results);
    const rising = results.results.filter(({ branch }) => branch === "rising");
    expect(rising).toHaveLength(2 * 2 * 3 * 2);
    expect(rising.slice(0, 3).map((row) => [row.turbulencePercent, row.speedMetresPerSecond])).toEqual([
      [0.5, 1],
      [0.5, 2],
      [1, 1],
    ]);
  });

  it("can be left after any step", () => {
    const steps = caseSteps(caseOf({ panelCount: 80 }));
    expect(steps.next()).toMatchObject({ done: false, value: { done: 1, rows: [] } });
    expect(steps.return(undefined as never).done).toBe(true);
  });

  it("gives the same numbers whether the stream is given by speed or by Reynolds number", () => {
    const common = { sections: [circle], panelCount: 80, branches: "rising" };
    const bySpeed = runCase(caseOf({ ...common, speedsMetresPerSecond: [1, 3] })).results;
    const reynoldsNumbers = bySpeed.map(({ reynolds }) => reynolds);
    const again = runCase(caseOf({ ...common, speedsMetresPerSecond: undefined, reynoldsNumbers })).results;
    expect(again.map(({ dragCoefficient }) => dragCoefficient)).toEqual(
      bySpeed.map(({ dragCoefficient }) => dragCoefficient),
    );
    expect(again.map(({ speedMetresPerSecond }) => speedMetresPerSecond)).toEqual([
      expect.closeTo(1, 12),
      expect.closeTo(3, 12),
    ]);
  });

  it("prints the branches that are asked for", () => {
    const branchesOf = (branches: string | undefined, reynoldsNumbers: readonly number[]) =>
      runCase(caseOf({ ...byReynolds, sections: [circle], panelCount: 80, branches, reynoldsNumbers })).results;
    expect(branchesOf("both", [2e4]).map(({ branch }) => branch)).toEqual(["rising", "falling"]);
    expect(branchesOf("falling", [2e4]).map(({ branch }) => branch)).toEqual(["falling"]);
    expect(branchesOf(undefined, [2e4]).map(({ branch }) => branch)).toEqual(["rising"]);
    const reynoldsNumbers = Array.from({ length: 30 }, (_, i) => 1e5 * 10 ** (i / 29));
    const rows = branchesOf(undefined, reynoldsNumbers);
    for (const row of rows.filter(({ branch }) => branch === "falling")) {
      const rising = rows.find((other) => other.branch === "rising" && other.reynolds === row.reynolds);
      expect(rising?.dragCoefficient).not.toBe(row.dragCoefficient);
    }
  });

  it("with automatic panels is within 1 % of twice as many panels", () => {
    const sections = [{ family: "roundedRectangle", lengthMetres: 0.06, heightMetres: 0.03, edgeRadiusMetres: 0.006 }];
    const common = { ...byReynolds, sections, branches: "rising", reynoldsNumbers: [2e4] };
    const [automatic] = runCase(caseOf({ ...common, panelCount: "auto" })).results;
    const count = automatic.panelCount ?? 0;
    const [doubled] = runCase(caseOf({ ...common, panelCount: 2 * count })).results;
    expect(count).toBeGreaterThanOrEqual(100);
    const drag = automatic.dragCoefficient ?? Number.NaN;
    expect(Math.abs((doubled.dragCoefficient ?? Number.NaN) / drag - 1)).toBeLessThan(0.01);
  });

  it("survives the structured clone of a worker boundary", () => {
    const results = runCase(caseOf({ sections: [circle], panelCount: 80 }));
    expect(structuredClone(results)).toEqual(results);
    expect(JSON.parse(JSON.stringify(results))).toEqual(results);
  });

  it("scales: twice the diameter at half the speed gives the same coefficients and half the drag per span", () => {
    const scaled = (diameterMetres: number, speed: number) =>
      runCase(
        caseOf({
          sections: [{ ...circle, diameterMetres }],
          panelCount: 80,
          speedsMetresPerSecond: [speed],
          branches: "rising",
        }),
      ).results[0];
    const small = scaled(0.04, 4);
    const large = scaled(0.08, 2);
    expect(large.dragCoefficient).toBeCloseTo(small.dragCoefficient ?? Number.NaN, 9);
    expect(large.strouhal).toBeCloseTo(small.strouhal ?? Number.NaN, 9);
    expect(large.dragPerSpanNewtonsPerMetre).toBeCloseTo((small.dragPerSpanNewtonsPerMetre ?? Number.NaN) / 2, 6);
    expect(large.sheddingFrequencyHertz).toBeCloseTo((small.sheddingFrequencyHertz ?? Number.NaN) / 4, 9);
  });
});
