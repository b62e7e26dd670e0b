import { describe, expect, it } from "vitest";
import { readCaseDocument } from "../../shared/case/readCase";
import { costBlock } from "../../shared/jobs/cost/costBlock";
import type { CostJob } from "../../shared/jobs/cost/costJob";
import type { CostResult } from "../../shared/jobs/cost/costResult";
import { costParts, materialCost, totalOf, unitCost } from "../../shared/jobs/cost/unitCost";
import type { UncertainRange } from "../../shared/statistics/uncertainRange";
import { caseWith } from "../case/caseDocuments";
import { coatedPuck, puckResult, soFar } from "../durability/puckResults";

const tools = [{ price: 300, life: 50 }];

describe("the cost of one accepted puck", () => {
  const making = { material: 8, labour: 4, setup: 60, tools, accepted: 0.8 };

  it("is that of a worked account of a batch of 100: 125 made, 3 tools", () => {
    // By hand: 125 x 12 = 1500 for material and labour, 60 for setting up, 3 x 300 for tools; 2460 / 100.
    const cost = unitCost(making, 100);
    expect(totalOf(cost)).toBeCloseTo(24.6, 12);
    expect([cost.material, cost.labour, cost.scrap, cost.setup, cost.tooling]).toEqual([8, 4, 3, 0.6, 9]);
  });

  it("falls to material, labour and rejects, and the tools' wear, over large batches", () => {
    expect(totalOf(unitCost(making, 1e6))).toBeCloseTo(12 / 0.8 + 300 / 50 / 0.8, 3);
  });

  it("of a single puck carries one whole tool", () => {
    expect(unitCost({ ...making, accepted: 1 }, 1).tooling).toBe(300);
  });

  it("of material goes by Ashby (2011), eq. 18.1: m price / (1 - waste)", () => {
    expect(materialCost(1.2, 5, 0.25)).toBeCloseTo(8, 12);
  });
});

const known = (value: number): UncertainRange => ({ from: value, to: value, spacing: "linear" });
const job: CostJob = {
  currency: "EUR",
  source: "invented",
  materials: [
    { material: "lead", perKilogram: known(4), waste: known(0) },
    { material: "polyurethane", perKilogram: { from: 10, to: 20, spacing: "linear" }, waste: known(0.2) },
  ],
  parts: [{ name: "label", pucks: ["Special"], perPuck: known(0.5) }],
  steps: [
    { name: "casting", pucks: null, hoursPerPuck: known(0.25), setupHours: known(2), ratePerHour: known(40) },
    { name: "graining", pucks: ["Special"], hoursPerPuck: known(0.05), setupHours: known(0), ratePerHour: known(40) },
  ],
  tools: [{ name: "mould", pucks: null, price: known(200), life: 100 }],
  accepted: known(0.9),
  batchSizes: [10, 100],
  draws: 1000,
  seed: 2,
  puckCount: 2,
};

function run(
  changes: Partial<CostJob> = {},
  pucks = [puckResult(coatedPuck), puckResult({ ...coatedPuck, name: "Special" })],
): CostResult {
  const steps = costBlock.steps({ ...job, ...changes }, soFar({ pucks }));
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

describe("the cost of pucks", () => {
  it("takes masses from the pucks and prices from the case: an account by hand", () => {
    const { figures } = puckResult(coatedPuck);
    const coat = figures.massKilograms - figures.coreMassKilograms;
    const each = figures.coreMassKilograms * 4 + (coat * 15) / 0.8 + 10;
    const tools = 200 * 2; // 112 are made for 100
    const byHand = each / 0.9 + (2 * 40 + tools) / 100;
    const [plain, special] = run().pucks;
    expect(plain.batches[1].unitCost.expected).toBeCloseTo(byHand, 1);
    expect(special.batches[1].unitCost.expected - plain.batches[1].unitCost.expected).toBeCloseTo(2.5 / 0.9, 9);
  });

  it("has shares that add up to 100 % and a band as wide as the price of the coat", () => {
    const [plain] = run().pucks;
    const { figures } = puckResult(coatedPuck);
    for (const { sharesPercent, unitCost: unit } of plain.batches) {
      expect(costParts.reduce((sum, part) => sum + sharesPercent[part], 0)).toBeCloseTo(100, 9);
      const coat = figures.massKilograms - figures.coreMassKilograms;
      expect(unit.high - unit.low).toBeCloseTo((0.9 * 10 * coat) / 0.8 / 0.9, 1);
    }
    expect(plain.batches[0].unitCost.expected).toBeGreaterThan(plain.batches[1].unitCost.expected);
  });

  it("takes scrap from the making of the pucks: 600 of 800 accepted", () => {
    const made = { samples: 800, inside: 600, share: 0.75, low: 0.72, high: 0.78 };
    const judged = { ...puckResult(coatedPuck), rules: { made } } as unknown as ReturnType<typeof puckResult>;
    const [puck] = run({ accepted: null, puckCount: 1 }, [judged]).pucks;
    expect(puck.acceptedFrom).toBe("the pucks' making");
    expect(puck.acceptedPercent!.expected).toBeCloseTo(75, 0);
    // Normal band of a share: 1.645 sqrt(p (1 - p) / n).
    expect(puck.acceptedPercent!.high - puck.acceptedPercent!.low).toBeCloseTo(
      200 * 1.645 * Math.sqrt((0.75 * 0.25) / 800),
      0,
    );
    const none = { ...judged, rules: { made: { ...made, inside: 0, share: 0 } } } as unknown as typeof judged;
    const [hopeless] = run({ accepted: null, puckCount: 1 }, [none]).pucks;
    expect(hopeless.problem).toMatch(/none of 800 made pucks is inside the rules/);
    expect(hopeless.batches).toEqual([]);
  });

  it("is the same for the same seed; cautions of lead stand above the table", () => {
    expect(run()).toEqual(run());
    const table = costBlock.table(run());
    expect(table.indexOf("Caution: Lead")).toBeLessThan(table.indexOf("batch"));
    expect(costBlock.csv.write(run()).trim().split("\r\n")).toHaveLength(5);
  });
});

const block = {
  currency: "EUR",
  source: "invented",
  materials: [
    { material: "lead", pricePerKilogram: 4 },
    { material: "polyurethane", pricePerKilogram: 15 },
  ],
  steps: [{ name: "casting", minutesPerPuck: 10, ratePerHour: 40 }],
  batchSizes: [10],
};

const spoilt: readonly (readonly [string, unknown, string, RegExp])[] = [
  [
    "a price below 0",
    { ...block, materials: [{ material: "lead", pricePerKilogram: -1 }] },
    "cost.materials[0].pricePerKilogram",
    /is -1; it must be a number from 0 to 1000000000/,
  ],
  [
    "no price for a material",
    { ...block, materials: [block.materials[0]] },
    "cost.materials",
    /"polyurethane" has no price/,
  ],
  [
    "waste of all",
    { ...block, materials: [{ ...block.materials[0], wastePercent: 100 }, block.materials[1]] },
    "cost.materials[0].wastePercent",
    /is 100; it must be a number from 0 to 95 %/,
  ],
  [
    "an unknown puck",
    { ...block, steps: [{ ...block.steps[0], pucks: ["Nobody"] }] },
    "cost.steps[0].pucks[0]",
    /no puck is called "Nobody"/,
  ],
  [
    "a step twice",
    { ...block, steps: [block.steps[0], block.steps[0]] },
    "cost.steps[1].name",
    /"casting" stands twice/,
  ],
  [
    "a batch of none",
    { ...block, batchSizes: [0] },
    "cost.batchSizes[0]",
    /is 0; it must be a whole number from 1 to 1000000/,
  ],
  [
    "nothing accepted",
    { ...block, acceptedPercent: 0 },
    "cost.acceptedPercent",
    /is 0; it must be a number above 0 and at most 100 %/,
  ],
  ["no currency", { ...block, currency: undefined }, "cost.currency", /is missing; it must be text/],
];

describe("a cost block", () => {
  it.each(spoilt)("with %s is refused by key and range", (_, cost, field, message) => {
    const shares = { upright: 20, flat: 60, faceOn: 20 };
    const base = caseWith({
      sections: undefined,
      sandGrainRoughnessRatios: undefined,
      sandGrainRoughnessMetres: [1e-5],
    });
    const puck = { baselines: [{ puck: coatedPuck }], play: { orientationShares: shares } };
    const reading = readCaseDocument({ ...base, puck, cost }, "invented.json");
    if (reading.ok) throw new Error("it was taken");
    const found = reading.problems.find((one) => one.field === field);
    expect(found?.message ?? JSON.stringify(reading.problems)).toMatch(message);
  });
});
