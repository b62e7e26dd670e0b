import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readCaseDocument } from "../../shared/case/readCase";
import { choiceBlock } from "../../shared/jobs/choice/choiceBlock";
import type { ChoiceCriterion, ChoiceJob } from "../../shared/jobs/choice/choiceJob";
import type { ChoiceResult } from "../../shared/jobs/choice/choiceResult";
import { dominates } from "../../shared/jobs/choice/choiceSteps";
import { criterionCatalogue } from "../../shared/jobs/choice/criteria";
import { criterionReader } from "../../shared/jobs/choice/criterionDraws";
import { madeFigureDraws } from "../../shared/jobs/choice/madeFigures";
import { puckDragDraws } from "../../shared/jobs/choice/puckDragDraws";
import { dragAreaBands } from "../../shared/jobs/durability/public";
import type { PuckResult } from "../../shared/jobs/puck/public";
import { drawnBand } from "../../shared/statistics/drawnBand";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { coatedPuck, puckResult, soFar } from "../durability/puckResults";

const named = (name: string, drag: number) => puckResult({ ...coatedPuck, name }, drag);
const making: ChoiceJob["making"] = {
  tolerances: {},
  sizes: "uniform",
  fluidDensity: 997,
  kinematicViscosity: 1e-6,
  userMaterials: [],
  shares: { upright: 0.2, flat: 0.6, faceOn: 0.2 },
};

function criterion(key: ChoiceCriterion["key"], changes: Partial<ChoiceCriterion> = {}): ChoiceCriterion {
  const { label, sense, scale } = criterionCatalogue[key];
  return {
    key,
    name: label,
    sense: sense ?? "most",
    target: null,
    worst: null,
    best: null,
    scale,
    swing: null,
    speed: 1,
    batchSize: 10,
    impact: "",
    ...changes,
  };
}

const job: ChoiceJob = {
  candidates: ["Low drag", "Heavy"],
  criteria: [criterion("dragInPlay"), criterion("mass")],
  draws: 2000,
  seed: 3,
  cost: null,
  durability: null,
  trial: null,
  making,
};

/** The same shape; one has less drag, the other a thinner coat and so more lead. */
const lowDrag = named("Low drag", 6);
const heavy = puckResult(
  { ...coatedPuck, name: "Heavy", core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.0025 } },
  12,
);

function run(changes: Partial<ChoiceJob> = {}, pucks: readonly PuckResult[] = [lowDrag, heavy]): ChoiceResult {
  const steps = choiceBlock.steps({ ...job, ...changes }, soFar({ pucks }));
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

describe("the joint draws of drag", () => {
  const draw = (pucks: readonly PuckResult[]) => {
    const found = puckDragDraws(pucks, 4000, 1e-6, randomDraws(2))("upright", 1);
    if (typeof found === "string") throw new Error(found);
    return found;
  };

  it("keep each puck's own band: 5 and 95 % of the draws are its ends", () => {
    const [band] = dragAreaBands(lowDrag, "upright", 1);
    const drawn = drawnBand(draw([lowDrag, heavy])[0]);
    expect(drawn.low / band.low).toBeCloseTo(1, 1);
    expect(drawn.high / band.high).toBeCloseTo(1, 1);
  });

  it("share the errors of like pucks: of twins one is never less than the other; unlike ones differ more", () => {
    const [a, b] = draw([named("One", 10), named("Two", 10)]);
    expect(Math.max(...a.map((area, k) => Math.abs(area / b[k] - 1)))).toBeLessThan(1e-6);
    const round = puckResult(
      {
        ...coatedPuck,
        name: "Round",
        thicknessMetres: 0.012,
        edge: { kind: "radius", edgeRadiusMetres: 0.006 },
        core: { kind: "none" },
      },
      10,
    );
    const [c, d] = draw([named("One", 10), round]);
    expect(Math.max(...c.map((area, k) => Math.abs(area / d[k] - 1)))).toBeGreaterThan(0.1);
  });

  it("say which puck has no drag", () => {
    const found = puckDragDraws([lowDrag, { ...heavy, drag: [] }], 500, 1e-6, randomDraws(2))("flat", 1);
    expect(found).toBe("the drag of Heavy is not known");
  });
});

describe("figures as they are made", () => {
  it("spread by the slope times the tolerance: mass of a solid disc, 2 dD / D (closed form)", () => {
    const disc = puckResult({
      ...coatedPuck,
      edge: { kind: "radius", edgeRadiusMetres: 0.0001 },
      core: { kind: "none" },
    });
    const draws = madeFigureDraws(
      disc,
      "massKilograms",
      { ...making, tolerances: { diameterMetres: 0.0004 } },
      4000,
      randomDraws(1),
    );
    const { low, high } = drawnBand(draws);
    // 90 % of an even spread of +-2 x 0.4 / 80.
    expect((high - low) / disc.figures.massKilograms).toBeCloseTo(0.9 * 2 * 2 * (0.0004 / 0.08), 3);
  });
});

describe("a choice", () => {
  it("goes with the weights where it should: drag alone, mass alone", () => {
    const swings = (drag: number, mass: number) =>
      run({
        criteria: [
          criterion("dragInPlay", { swing: { from: drag, to: drag, spacing: "linear" } }),
          criterion("mass", { swing: { from: mass, to: mass, spacing: "linear" } }),
        ],
      });
    expect(swings(100, 0).candidates[0]).toMatchObject({ name: "Low drag", probabilityFirst: expect.closeTo(1, 2) });
    expect(swings(0, 100).candidates[0]).toMatchObject({ name: "Heavy", probabilityFirst: expect.closeTo(1, 2) });
  });

  it("under any weights gives each its half: each is best in one of two criteria, by the whole swing", () => {
    const result = run();
    for (const { probabilityFirst } of result.candidates) expect(Math.abs(probabilityFirst - 0.5)).toBeLessThan(0.05);
    expect(result.sentence).toMatch(/^The choice is open/);
    const own = result.candidates.find(({ name }) => name === "Heavy")!;
    expect(own.winningWeights![1].expected).toBeGreaterThan(0.6);
    expect(own.criteria.map(({ criterion: name, unit }) => [name, unit])).toEqual([
      ["drag area over the attitudes of play", "m2"],
      ["mass", "kg"],
    ]);
  });

  it("names the dominated and never puts it first", () => {
    const worse = { ...lowDrag, name: "Worse", drag: named("Worse", 20).drag };
    const result = run({ candidates: ["Low drag", "Worse"], criteria: [criterion("dragUpright")] }, [lowDrag, worse]);
    expect(result.candidates.map(({ name, probabilityFirst }) => [name, probabilityFirst])).toEqual([
      ["Low drag", 1],
      ["Worse", 0],
    ]);
    expect(result.candidates[1].dominatedBy).toEqual([{ name: "Low drag", probability: 1 }]);
    expect(result.candidates[1].winningWeights).toBeNull();
    expect(dominates([Float64Array.of(1)], [Float64Array.of(1)])).toBe(false);
  });

  it("has ranks that add up, for every candidate and every rank", () => {
    const { candidates } = run();
    for (const { rankProbabilities } of candidates) expect(rankProbabilities.reduce((a, b) => a + b)).toBeCloseTo(1, 9);
    expect(candidates.reduce((sum, { rankProbabilities }) => sum + rankProbabilities[0], 0)).toBeCloseTo(1, 9);
  });

  it("is the same for the same seed, and says why there is none", () => {
    expect(run()).toEqual(run());
    const none = run({}, [lowDrag, { ...heavy, drag: [] }]);
    expect(none.problem).toMatch(/the drag of Heavy is not known/);
    expect(choiceBlock.isComplete(none)).toBe(false);
    expect(choiceBlock.table(none)).toContain("There is no choice");
  });

  it("puts cautions above the table and a line of CSV for every candidate and criterion", () => {
    const result = run();
    const table = choiceBlock.table(result);
    expect(table.indexOf("Caution: A choice by these figures")).toBeLessThan(table.indexOf("candidate"));
    expect(choiceBlock.csv.write(result).trim().split("\r\n")).toHaveLength(1 + 4);
  });
});

const shares = { upright: 20, flat: 60, faceOn: 20 };
const block = {
  criteria: [
    { criterion: "dragInPlay", swing: 100 },
    { criterion: "mass", sense: "near", target: 1.2, swing: { from: 20, to: 40 } },
  ],
};

function read(choice: unknown) {
  return readCaseDocument(
    {
      wakewrightCase: 1,
      title: "Invented",
      fluid: { kind: "freshWater", temperatureCelsius: 27 },
      speedsMetresPerSecond: [1, 2],
      sandGrainRoughnessMetres: [1e-5],
      turbulencePercents: [1],
      puck: {
        baselines: [{ puck: coatedPuck }],
        candidates: [{ puck: { ...coatedPuck, name: "Other" } }],
        play: { orientationShares: shares },
      },
      choice,
    },
    "invented.json",
  );
}

const [drag, mass] = block.criteria;
const spoilt: readonly (readonly [string, unknown, string, RegExp])[] = [
  ["no criteria", { criteria: [] }, "choice.criteria", /must be a list of 1 to 12 criteria/],
  [
    "an unknown criterion",
    { criteria: [{ criterion: "beauty" }] },
    "choice.criteria[0].criterion",
    /"beauty"; it must be one of dragInPlay/,
  ],
  [
    "a swing beyond 100",
    { criteria: [{ ...drag, swing: 120 }] },
    "choice.criteria[0].swing",
    /is 120; it must be a number from 0 to 100/,
  ],
  [
    "a swing for one only",
    { criteria: [drag, { ...mass, swing: undefined }] },
    "choice.criteria[1].swing",
    /for every criterion or for none, from 0 to 100/,
  ],
  [
    "swings of nothing",
    {
      criteria: [
        { ...drag, swing: 0 },
        { ...mass, swing: 0 },
      ],
    },
    "choice.criteria[0].swing",
    /must not all be 0/,
  ],
  ["no sense of mass", { criteria: [{ criterion: "mass" }] }, "choice.criteria[0].sense", /least, most or near/],
  [
    "near without a target",
    { criteria: [{ criterion: "mass", sense: "near" }] },
    "choice.criteria[0].target",
    /goes with sense "near"/,
  ],
  [
    "worst that is best",
    { criteria: [{ ...drag, worst: 1, best: 1 }] },
    "choice.criteria[0].best",
    /is 1; it must differ from worst/,
  ],
  [
    "liking without a trial",
    { criteria: [{ criterion: "liking" }] },
    "choice.criteria[0]",
    /needs a trial with scores/,
  ],
  ["cost without prices", { criteria: [{ criterion: "cost" }] }, "choice.criteria[0]", /needs the key cost/],
  [
    "durability without wear",
    { criteria: [{ criterion: "durability" }] },
    "choice.criteria[0]",
    /needs durability.wear/,
  ],
  [
    "floor care without impacts",
    { criteria: [{ criterion: "floorCare" }] },
    "choice.criteria[0]",
    /needs durability.impacts/,
  ],
  [
    "an unknown candidate",
    { ...block, candidates: ["Other", "Nobody"] },
    "choice.candidates[1]",
    /no puck is called "Nobody"/,
  ],
  ["a criterion twice", { criteria: [drag, drag] }, "choice.criteria[1].name", /stands twice/],
  ["too few draws", { ...block, draws: 10 }, "choice.draws", /is 10; it must be a whole number from 500 to 50000/],
];

describe("a choice block", () => {
  it("is read", () => {
    const reading = read(block);
    expect(reading.ok ? reading.value.choice?.candidates : reading.problem.message).toEqual([coatedPuck.name, "Other"]);
  });

  it.each(spoilt)("with %s is refused by key and range", (_, choice, field, message) => {
    const reading = read(choice);
    if (reading.ok) throw new Error("it was taken");
    const found = reading.problems.find((one) => one.field === field);
    expect(found?.message ?? JSON.stringify(reading.problems)).toMatch(message);
  });
});

/**
 * The demonstration, with drags that are made up here so that nothing is solved: relations that follow from the case's
 * own invented numbers.
 */
describe("the demonstration's choice", () => {
  const document = JSON.parse(readFileSync(new URL("../../cases/harbour-choice.json", import.meta.url), "utf8"));
  document.puck.rules = JSON.parse(
    readFileSync(new URL("../../cases/harbour-league.rules.json", import.meta.url), "utf8"),
  );
  const drags: Readonly<Record<string, number>> = {
    "Harbour baseline": 12,
    "Pebble, round edge": 9,
    "Breakwater, wide and thin": 11.5,
    "Barnacle, rough rim": 14,
  };

  const reading = readCaseDocument(document, "harbour-choice.json");
  if (!reading.ok) throw new Error(reading.problem.message);
  const { puck, choice } = reading.value;
  const pucks = puck!.pucks.map(({ spec }) => puckResult(spec, drags[spec.name]));

  /** The order of the candidates when one criterion is all that counts. */
  function orderBy(key: ChoiceCriterion["key"]): string[] {
    const criteria = choice!.criteria.filter((one) => one.key === key);
    const steps = choiceBlock.steps({ ...choice!, criteria, draws: 500 }, soFar({ pucks }));
    let step = steps.next();
    while (step.done !== true) step = steps.next();
    return step.value.candidates.map(({ name }) => name);
  }

  it("changes with the weights where it should: the round edge for drag and liking, not for cost and floor care", () => {
    // Least drag here, most liked in the trial of the case; but dearer tools, a round rim that presses harder, less coat.
    expect(orderBy("dragInPlay")[0]).toBe("Pebble, round edge");
    expect(orderBy("liking")[0]).toBe("Pebble, round edge");
    expect(orderBy("cost")[0]).not.toBe("Pebble, round edge");
    expect(orderBy("floorCare").at(-1)).toBe("Pebble, round edge");
    // The grained rim takes one more step and is else made like the baseline: dearer.
    const cost = orderBy("cost");
    expect(cost.indexOf("Barnacle, rough rim")).toBeGreaterThan(cost.indexOf("Harbour baseline"));
  });

  it("is labelled as invented, and says that local codes come first", () => {
    expect(document.title).toMatch(/invented/);
    expect(document.note).toMatch(/Invented: .*local rules, which come first/s);
    expect(document.cost.source).toMatch(/invented/);
  });
});

describe("criteria", () => {
  it("are read in common draws: liking of a resampled panel is that of one panel for all", () => {
    const read = criterionReader({ ...job, trial: null }, [lowDrag, heavy]);
    expect(read(criterion("liking"))).toMatch(/no scores in the trial/);
    expect(read(criterion("cost"))).toBe("the case has no cost");
    expect(read(criterion("durability"))).toBe("the case has no wear");
  });
});
