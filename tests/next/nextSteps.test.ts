import { beforeAll, describe, expect, it } from "vitest";
import { oneJobSteps } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import { nextBlock } from "../../shared/jobs/next/nextBlock";
import { nextCsv } from "../../shared/jobs/next/nextCsv";
import type { NextResult } from "../../shared/jobs/next/nextResult";
import { nextTable } from "../../shared/jobs/next/nextTable";

const round = { family: "circle", name: "Round", diameterMetres: 0.08 };
const box = { family: "roundedRectangle", name: "Box", lengthMetres: 0.08, heightMetres: 0.08, edgeRadiusMetres: 0.02 };
const towing = (designs: readonly string[], more: object = {}) => ({
  kind: "towing",
  designs,
  speedMetresPerSecond: 1,
  standardUncertaintyPercent: 2,
  ...more,
});

function read(next: object, changes: object = {}) {
  return readCaseDocument(
    {
      wakewrightCase: 1,
      title: "Two invented sections",
      sections: [round, box],
      panelCount: 80,
      fluid: { kind: "freshWater", temperatureCelsius: 20 },
      speedsMetresPerSecond: [1],
      sandGrainRoughnessRatios: [0.00001],
      turbulencePercents: [0.1],
      branches: "rising",
      compare: { baseline: "Round" },
      next,
      ...changes,
    },
    "invented.json",
  );
}

function run(next: object, changes: object = {}): { result: NextResult; labels: string[] } {
  const reading = read(next, changes);
  if (!reading.ok) throw new Error(reading.problem.message);
  const labels: string[] = [];
  const steps = oneJobSteps(reading.value, nextBlock);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { result: step.value, labels };
    expect(step.value.done).toBeLessThanOrEqual(step.value.total);
    labels.push(step.value.label);
  }
}

const message = (next: object, changes: object = {}) => {
  const reading = read(next, changes);
  return reading.ok ? "" : reading.problem.message;
};

const measurements = [
  towing(["Box", "Round"], { name: "both" }),
  towing(["Box"], { name: "one" }),
  towing(["Box"], { name: "dull", standardUncertaintyPercent: 90 }),
  towing(["Box", "Round"], { name: "dear", cost: 10 }),
  {
    kind: "tunnel",
    name: "air",
    designs: ["Box", "Round"],
    speedMetresPerSecond: 15,
    standardUncertaintyPercent: 2,
    turbulencePercent: 0.1,
    fluid: { kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 },
  },
];
const worth = ({ measurements: all }: NextResult, name: string) => all.find((own) => own.name === name)!;

let result: NextResult;
let labels: string[];
beforeAll(() => {
  ({ result, labels } = run({ measurements, simulations: 200 }));
}, 60_000);

describe("what to test next", () => {
  it("lists every measurement by the fall of the expected regret per cost", () => {
    const falls = result.measurements.map(({ regretFallPerCost }) => regretFallPerCost!);
    expect([...falls].sort((a, b) => b - a)).toEqual(falls);
    expect(result.measurements).toHaveLength(5);
    expect(result.problem).toBeNull();
    expect(labels.at(-1)).toBe("simulated air");
  });

  it("gives both in one tank more than one alone, whose tank may be off, and a dull one next to nothing", () => {
    const [both, one, dull] = ["both", "one", "dull"].map((name) => worth(result, name));
    expect(both.decides[0].probability).toBeGreaterThan(one.decides[0].probability);
    expect(dull.regretFallPercent!).toBeLessThan(0.2 * both.regretFallPercent! + 0.01);
    for (const { regretFallPercent } of [both, one, dull]) {
      expect(regretFallPercent!).toBeGreaterThanOrEqual(0);
      expect(regretFallPercent!).toBeLessThanOrEqual(result.regretPercent!);
    }
  });

  it("divides by the cost", () => {
    const dear = worth(result, "dear");
    expect(dear.regretFallPerCost! * 10).toBeCloseTo(dear.regretFallPercent!, 12);
    // The same run by another name meets other simulated outcomes.
    expect(dear.regretFallPercent! / worth(result, "both").regretFallPercent!).toBeCloseTo(1, 0);
  });

  it("judges a run in air at the Reynolds number of the water as one in the water, within the chance of the simulation", () => {
    const [air, both] = [worth(result, "air"), worth(result, "both")];
    expect(Math.abs(air.decides[0].probability - both.decides[0].probability)).toBeLessThan(0.15);
    expect(air.problem).toBeNull();
  });

  it("says it in sentences, a table and CSV", () => {
    expect(worth(result, "both").sentence).toMatch(/^both decides Box against Round in \d+ of 100 cases and lowers/);
    expect(nextTable(result)).toMatch(/Without a further measurement: choose (Round|Box)/);
    expect(nextTable(result)).toMatch(/8000 draws, 200 simulated outcomes of each measurement, seed 1/);
    const lines = nextCsv(result).trim().split("\r\n");
    expect(lines).toHaveLength(6);
    expect(lines[0]).toContain("first,second,decidesProbability");
  });

  it("has a list of its own where the case gives none, the turbulence among them where it is not known", () => {
    const unknown = { turbulencePercent: { from: 0.1, to: 6 }, samples: 4 };
    const { result: own } = run({ simulations: 60 }, { compare: { baseline: "Round", unknown } });
    expect(own.measurements.map(({ kind }) => kind).sort()).toEqual(["towing", "turbulence"]);
    expect(own.condition!.turbulencePercent).toBeNull();
    expect(own.condition!.unknown).toEqual(["turbulencePercent"]);
    expect(own.measurements.every(({ regretFallPercent }) => regretFallPercent! >= 0)).toBe(true);
  });

  it("repeats itself for one seed", () => {
    const short = { measurements: measurements.slice(1, 2), simulations: 50 };
    expect(run(short).result).toEqual(run(short).result);
  });

  it.each([
    [[towing(["Square"])], /next.measurements\[0\].designs\[0\] is "Square"; it must be one of Round, Box/],
    [[{ kind: "turbulence", standardUncertaintyPercent: 1 }], /which the case knows/],
    [[towing(["Box"], { reynoldsNumber: 1e5 })], /exactly one of them/],
    [[towing(["Box"], { attitude: "flat" })], /attitude is for pucks/],
    [[towing(["Box"], { standardUncertaintyPercent: 0 })], /standardUncertaintyPercent.*above 0 and at most 100 %/],
    [[towing(["Box"], { cost: -1 })], /cost is -1; it must be a number above 0/],
  ])("refuses %j", (wrong, reason) => {
    expect(message({ measurements: wrong })).toMatch(reason);
  });

  it("needs a comparison, and a speed of the case", () => {
    expect(message({}, { compare: undefined })).toMatch(/next needs a comparison/);
    expect(message({ speedMetresPerSecond: 3 })).toMatch(/it must be a speed of the case, one of 1/);
  });
});
