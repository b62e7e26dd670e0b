import { describe, expect, it } from "vitest";
import { readCase } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { flowCondition, speedOf } from "../../shared/engine/section/stream";
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

/** The streams of a case at its first wall and turbulence. */
function streamsOf({ speeds, walls, turbulenceIntensities, trips }: Case) {
  return speeds.map((speed) => ({ ...speed, ...walls[0], turbulenceIntensity: turbulenceIntensities[0], trips }));
}

describe("flowCondition(stream, referenceWidth) of a case's streams", () => {
  it("by speed has Re = U D / nu", () => {
    const streams = streamsOf(caseOf({ fluid: oil, speedsMetresPerSecond: [4, 2], turbulencePercents: [5] }));
    expect(streams.map((stream) => speedOf(stream, 0.05))).toEqual([2, 4]);
    expect(flowCondition(streams[0], 0.05).reynolds).toBeCloseTo(1e5, 6);
    expect(flowCondition(streams[1], 0.05).turbulenceIntensity).toBe(0.05);
  });

  it("by Reynolds number has the speed of the fluid, or none without a fluid", () => {
    const changes = { speedsMetresPerSecond: undefined, reynoldsNumbers: [1e5] };
    expect(speedOf(streamsOf(caseOf({ ...changes, fluid: oil }))[0], 0.05)).toBeCloseTo(2, 12);
    expect(speedOf(streamsOf(caseOf({ ...changes, fluid: undefined }))[0], 0.05)).toBe(null);
  });

  it("takes roughness and trips in metres to the reference width", () => {
    const [stream] = streamsOf(
      caseOf({
        sandGrainRoughnessRatios: undefined,
        sandGrainRoughnessMetres: [1e-4],
        trips: [
          { side: "upper", arcMetres: 0.01, heightMetres: 0.0005 },
          { side: "lower", arcRatio: 0.3, heightRatio: 0.002 },
        ],
      }),
    );
    const condition = flowCondition(stream, 0.05);
    expect(condition.sandGrainRoughnessRatio).toBeCloseTo(2e-3, 15);
    expect(condition.trips).toEqual([
      { side: "upper", arcRatio: expect.closeTo(0.2, 12), heightRatio: 0.01 },
      { side: "lower", arcRatio: 0.3, heightRatio: 0.002 },
    ]);
  });

  it("is its own condition where it is one already", () => {
    const condition = { reynolds: 1e5, sandGrainRoughnessRatio: 1e-4, turbulenceIntensity: 0.01 };
    expect(flowCondition(condition, 0.05)).toEqual(condition);
  });
});
