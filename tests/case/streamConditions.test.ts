import { describe, expect, it } from "vitest";
import { readCase } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { streamConditions } from "../../shared/case/streamConditions";
import { caseWith } from "./caseDocuments";

function caseOf(changes: Record<string, unknown>): Case {
  const reading = readCase(JSON.stringify(caseWith(changes)), "test.json");
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.value;
}

const oil = {
  kind: "userFluid",
  densityKilogramsPerCubicMetre: 900,
  kinematicViscositySquareMetresPerSecond: 1e-6,
};

describe("streamConditions(case, width, roughness, turbulence)", () => {
  it("by speed has Re = U D / nu", () => {
    const conditions = streamConditions(caseOf({ fluid: oil, speedsMetresPerSecond: [4, 2] }), 0.05, 1e-4, 5);
    expect(conditions.map(({ speed }) => speed)).toEqual([2, 4]);
    expect(conditions[0].flow.reynolds).toBeCloseTo(1e5, 6);
    expect(conditions[1].flow).toMatchObject({ sandGrainRoughnessRatio: 1e-4, turbulenceIntensity: 0.05 });
  });

  it("by Reynolds number has the speed of the fluid, or none without a fluid", () => {
    const changes = { speedsMetresPerSecond: undefined, reynoldsNumbers: [1e5] };
    expect(streamConditions(caseOf({ ...changes, fluid: oil }), 0.05, 1e-4, 5)[0].speed).toBeCloseTo(2, 12);
    expect(streamConditions(caseOf({ ...changes, fluid: undefined }), 0.05, 1e-4, 5)[0].speed).toBe(null);
  });

  it("takes roughness and trips in metres to the reference width", () => {
    const theCase = caseOf({
      sandGrainRoughnessRatios: undefined,
      sandGrainRoughnessMetres: [1e-4],
      trips: [
        { side: "upper", arcMetres: 0.01, heightMetres: 0.0005 },
        { side: "lower", arcRatio: 0.3, heightRatio: 0.002 },
      ],
    });
    const [{ flow }] = streamConditions(theCase, 0.05, 1e-4, 1);
    expect(flow.sandGrainRoughnessRatio).toBeCloseTo(2e-3, 15);
    expect(flow.trips).toEqual([
      { side: "upper", arcRatio: expect.closeTo(0.2, 12), heightRatio: 0.01 },
      { side: "lower", arcRatio: 0.3, heightRatio: 0.002 },
    ]);
  });
});
