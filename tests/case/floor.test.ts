import { describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { caseToDesign } from "../../shared/case/caseToDesign";
import { readCase } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { resultCsv } from "../../shared/case/resultCsv";
import { resultTable } from "../../shared/case/resultTable";
import { caseWith } from "./caseDocuments";

const profile = {
  family: "roundedRectangle",
  lengthMetres: 0.08,
  heightMetres: 0.03,
  edgeRadiusMetres: 0.008,
};
const common = {
  panelCount: 100,
  branches: "rising",
  speedsMetresPerSecond: undefined,
  fluid: undefined,
  reynoldsNumbers: [6e4],
};

function reading(changes: Record<string, unknown>) {
  return readCase(JSON.stringify(caseWith({ ...common, ...changes })), "test.json");
}

function caseOf(changes: Record<string, unknown>): Case {
  const read = reading(changes);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

describe("floorGapMetres of a section", () => {
  it("is swept like a dimension: on the floor, above it and far above it", () => {
    const results = runCase(caseOf({ sections: [{ ...profile, floorGapMetres: [0, 0.003, 30] }, profile] }));
    const [lying, near, far, open] = results.results;
    expect(results.results.map(({ floorGapMetres }) => floorGapMetres)).toEqual([0, 0.003, 30, null]);
    expect(lying.sweepKey).toBe("floorGapMetres");
    for (const row of results.results) expect(row.converged).toBe(true);
    // The floor quietens the wake: less base suction than in open water.
    expect(near.basePressureCoefficient).toBeGreaterThan((open.basePressureCoefficient ?? Number.NaN) + 0.03);
    expect(far.dragCoefficient).toBeCloseTo(open.dragCoefficient ?? Number.NaN, 3);
    // Nothing is said of what does not exist beneath it.
    expect([lying.separationAngleLowerDegrees, lying.separationStateLower, lying.liftCoefficient]).toEqual([
      null,
      null,
      null,
    ]);
    expect(near.liftCoefficient).not.toBeNull();
  });

  it("marks the results as outside what was checked and says why, in every output", () => {
    const results = runCase(caseOf({ sections: [{ ...profile, name: "on the floor", floorGapMetres: 0 }] }));
    expect(results.results[0].applicability).toBe("outside: do not rely on it");
    expect(results.cautions.join(" ")).toContain("mirror image");
    expect(results.cautions.join(" ")).toContain("outside, do not rely on it");
    expect(resultTable(results)).toContain("floor gap 0 mm");
    expect(resultCsv(results).split("\r\n")[0]).toContain("incidenceDegrees,floorGapMetres,reynolds");
    const open = runCase(caseOf({ sections: [profile] }));
    expect(open.cautions.join(" ")).not.toContain("mirror image");
    expect(resultTable(open)).not.toContain("floor gap");
  });

  it("is taken into the page's designs instead of being dropped", () => {
    const gapOfDesign = (section: object) => {
      const design = caseToDesign(JSON.stringify(caseWith({ ...common, sections: [section] })), "test.json");
      return design.ok ? design.value.floorGap : design.problems[0].message;
    };
    expect(gapOfDesign({ ...profile, floorGapMetres: 0.01 })).toBe(0.01);
    expect(gapOfDesign(profile)).toBe(null);
  });

  it("is refused below 0, and between 0 and 2 % of the height, with what to write instead", () => {
    const negative = reading({ sections: [{ ...profile, floorGapMetres: -0.001 }] });
    expect(negative.ok ? "" : negative.problem.message).toMatch(
      /floorGapMetres.* is -0.001; it must be a number from 0/,
    );
    const narrow = reading({ sections: [{ ...profile, floorGapMetres: 0.0004 }] });
    expect(narrow.ok ? "" : narrow.problem.message).toMatch(/0.0004 m under .* at least 0.02 of it, here 0.000600 m/);
    expect(reading({ sections: [{ ...profile, floorGapMetres: 0.0006 }] }).ok).toBe(true);
  });
});
