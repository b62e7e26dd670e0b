import { describe, expect, it } from "vitest";
import { readCaseDocument } from "../../shared/case/readCase";
import { durabilityBlock } from "../../shared/jobs/durability/durabilityBlock";
import type { DurabilityJob } from "../../shared/jobs/durability/durabilityJob";
import type { DurabilityResult } from "../../shared/jobs/durability/durabilityResult";
import { findElastic } from "../../shared/jobs/durability/elasticMaterials";
import { caseWith } from "../case/caseDocuments";
import { unwrap } from "../puck/examplePuck";
import { coatedPuck, puckResult, soFar } from "./puckResults";

const upright = { upright: 20, flat: 60, faceOn: 20 };
const impact = { name: "drop", onto: "ceramic tile", contact: "edge", medium: "air", dropHeightMetres: 0.4 };
const wear = {
  wearCoefficientCubicMetresPerNewtonMetre: { from: 2e-13, to: 2e-12, spacing: "log" },
  slidingMetresPerHour: 800,
  leastCoverMetres: 0.0015,
  playedHours: 100,
};

function read(durability: unknown) {
  const puck = { baselines: [{ puck: coatedPuck }], play: { orientationShares: upright } };
  const base = caseWith({ sections: undefined, sandGrainRoughnessRatios: undefined, sandGrainRoughnessMetres: [1e-5] });
  return readCaseDocument({ ...base, puck, durability }, "invented.json");
}

const spoilt: readonly (readonly [string, unknown, string, RegExp])[] = [
  ["no hours", { wear: { ...wear, playedHours: undefined } }, "durability.wear.playedHours", /is missing.*above 0/],
  [
    "a wear coefficient of 0",
    { wear: { ...wear, wearCoefficientCubicMetresPerNewtonMetre: 0 } },
    "durability.wear.wearCoefficientCubicMetresPerNewtonMetre",
    /is 0; it must be a number above 0 and at most 1e-9 m3\/\(N m\)/,
  ],
  [
    "a range that falls",
    { wear: { ...wear, slidingMetresPerHour: { from: 900, to: 400 } } },
    "durability.wear.slidingMetresPerHour.to",
    /it is 400; it must be at least from, 900/,
  ],
  [
    "a log range from 0",
    { wear: { ...wear, pressNewtons: { from: 0, to: 4, spacing: "log" } } },
    "durability.wear.pressNewtons.from",
    /it is 0; it must be above 0 in a log range/,
  ],
  [
    "no least cover anywhere",
    { wear: { ...wear, leastCoverMetres: undefined } },
    "durability.wear.leastCoverMetres",
    /from 0 to 1 m/,
  ],
  [
    "a Poisson's ratio of 0.6",
    { materials: [{ name: "jelly", youngsModulusPascals: 1e6, poissonRatio: 0.6, source: "invented" }] },
    "durability.materials[0].poissonRatio",
    /is 0.6; it must be a number from 0 to 0.495/,
  ],
  [
    "neither speed nor height",
    { impacts: [{ ...impact, dropHeightMetres: undefined }] },
    "durability.impacts[0].speedMetresPerSecond",
    /exactly one of speedMetresPerSecond and dropHeightMetres/,
  ],
  [
    "a speed beyond its range",
    { impacts: [{ ...impact, dropHeightMetres: undefined, speedMetresPerSecond: 80 }] },
    "durability.impacts[0].speedMetresPerSecond",
    /is 80; it must be a number above 0 and at most 50 m\/s/,
  ],
  [
    "an unknown surface",
    { impacts: [{ ...impact, onto: "cheese" }] },
    "durability.impacts[0].onto",
    /no stiffness of "cheese" is known.*ceramic tile/,
  ],
  [
    "a tilt of the rim",
    { impacts: [{ ...impact, contact: "rim", tiltDegrees: 30 }] },
    "durability.impacts[0].tiltDegrees",
    /it needs contact "edge"/,
  ],
  [
    "an unknown key",
    { impacts: [{ ...impact, height: 1 }] },
    "durability.impacts[0].height",
    /not a known key; the keys of an impact are/,
  ],
];

describe("a durability block", () => {
  it.each(spoilt)("with %s is refused by key and range", (_, durability, field, message) => {
    const reading = read(durability);
    if (reading.ok) throw new Error("it was taken");
    const found = reading.problems.find((one) => one.field === field);
    expect(found?.message ?? JSON.stringify(reading.problems)).toMatch(message);
  });

  it("needs pucks", () => {
    const reading = readCaseDocument(caseWith({ durability: {} }), "invented.json");
    expect(reading.ok ? "" : reading.problem.message).toMatch(/durability: .*needs the keys puck and fluid/);
  });
});

const job: DurabilityJob = {
  fluid: { name: "invented", density: 997, kinematicViscosity: 1e-6, speedOfSound: null, source: "invented" } as never,
  elastic: [],
  userMaterials: [],
  impacts: [
    {
      name: "drop",
      onto: unwrap(findElastic("ceramic tile", [], "")),
      contact: "edge",
      tilt: Math.PI / 3,
      medium: "air",
      start: { kind: "drop", range: { from: 0.3, to: 0.5, spacing: "linear" } },
    },
    {
      name: "sink",
      onto: unwrap(findElastic("ceramic tile", [], "")),
      contact: "face",
      tilt: 0,
      medium: "water",
      start: { kind: "drop", range: { from: 2, to: 2, spacing: "linear" } },
    },
  ],
  wear: {
    wearCoefficient: { from: 2e-13, to: 2e-12, spacing: "log" },
    slidingPerHour: { from: 800, to: 800, spacing: "linear" },
    press: { from: 0, to: 0, spacing: "linear" },
    shares: { face: 1, rim: 0, edge: 0 },
    leastCover: 0.0015,
    playedHours: 100,
  },
  sharpEdgeRadius: { from: 0.0003, to: 0.001, spacing: "linear" },
  draws: 200,
  seed: 5,
  puckCount: 3,
};

const grooved = {
  ...coatedPuck,
  name: "Grooved",
  face: {
    kind: "radialGrooves" as const,
    side: "both" as const,
    number: 12,
    widthMetres: 0.002,
    depthMetres: 0.0006,
    innerRadiusMetres: 0.008,
    outerRadiusMetres: 0.03,
  },
};
const thin = {
  ...coatedPuck,
  name: "Thin coat",
  core: { kind: "underCoat" as const, material: "lead", coatThicknessMetres: 0.002 },
};

function run(seed = job.seed): DurabilityResult {
  const pucks = [coatedPuck, grooved, thin].map((puck) => ({
    ...puckResult(puck),
    drag: puckResult(puck).drag.filter(({ orientation }) => orientation === "faceOn"),
  }));
  const steps = durabilityBlock.steps({ ...job, seed }, soFar({ pucks }));
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

describe("the durability of pucks", () => {
  const result = run();
  const [whole, patterned, thinly] = result.pucks;

  it("gives the speed of a fall (closed form) and its energy with the mass that turns taken off", () => {
    const { speedMetresPerSecond: speed, energyJoules, movingMassKilograms } = whole.impacts[0];
    expect(speed!.expected).toBeCloseTo(Math.sqrt(2 * 9.80665 * 0.4), 1);
    expect(movingMassKilograms!.expected).toBeLessThan(puckResult(coatedPuck).figures.massKilograms);
    expect(energyJoules!.expected / (0.5 * movingMassKilograms!.expected * speed!.expected ** 2)).toBeCloseTo(1, 1);
  });

  it("gives a harder blow with a thinner coat, in common draws", () => {
    expect(thinly.impacts[0].peakForceNewtons!.expected).toBeGreaterThan(whole.impacts[0].peakForceNewtons!.expected);
  });

  it("lets no puck sink faster than its terminal speed in the least drag", () => {
    const { figures } = puckResult(coatedPuck);
    const terminal = Math.sqrt((2 * figures.weightInFluidNewtons) / (997 * 0.7e-3));
    expect(whole.impacts[1].speedMetresPerSecond!.high).toBeLessThan(terminal);
  });

  it("wears by Archard's law: thickness per hour = k p s / 2 on each of two faces; a pattern raises it by the area it takes", () => {
    const { figures } = puckResult(coatedPuck);
    const pressure = figures.weightInFluidNewtons / figures.floorContactAreaSquareMetres;
    expect(whole.wear!.contactPressurePascals.expected).toBeCloseTo(pressure, 6);
    // The mean of a log-uniform coefficient is (to - from) / ln(to / from).
    const k = 1.8e-12 / Math.log(10);
    expect(whole.wear!.faceMetresPerHour.expected / ((k * pressure * 800) / 2)).toBeCloseTo(1, 1);
    const [a, b] = [patterned, whole].map(({ wear: own }) => own!.contactAreaSquareMetres);
    expect(a).toBeLessThan(b);
    expect(patterned.wear!.contactPressurePascals.expected).toBeGreaterThan(pressure);
  });

  it("reaches the least cover after (3 - 1.5 mm) / thickness per hour, sooner under a thinner coat", () => {
    const { faceMetresPerHour: rate, hoursToLeastCover: hours } = whole.wear!;
    expect(hours!.low * rate.high).toBeCloseTo(0.0015, 5);
    expect(thinly.wear!.hoursToLeastCover!.expected).toBeLessThan(hours!.expected);
  });

  it("feeds the worn shape back: what is lost is coat, 1120 kg/m3 times the volume worn off both faces", () => {
    const { worn, faceMetresPerHour: rate } = whole.wear!;
    const { figures } = puckResult(coatedPuck);
    expect(worn!.thicknessMetres.expected).toBeCloseTo(0.03 - 2 * 100 * rate.expected, 9);
    expect(worn!.diameterMetres.expected).toBeCloseTo(0.08, 12);
    expect(worn!.edgeRadiusMetres.expected).toBeLessThan(0.006);
    const lost = figures.massKilograms - worn!.massKilograms.expected;
    const flat = Math.PI * 0.034 ** 2 * 2 * 100 * rate.expected * 1120;
    expect(lost / flat).toBeGreaterThan(1);
    expect(lost / flat).toBeLessThan(1.1);
  });

  it("is the same for the same seed and close for another", () => {
    expect(run()).toEqual(result);
    const other = run(6).pucks[0].impacts[0].peakForceNewtons!.expected;
    expect(Math.abs(other / whole.impacts[0].peakForceNewtons!.expected - 1)).toBeLessThan(0.1);
  });

  it("writes cautions above all figures, and every band as a line of CSV", () => {
    const table = durabilityBlock.table(result);
    expect(table.indexOf("Caution: Impacts: local codes and licensed practice come first")).toBeLessThan(
      table.indexOf("IMPACT:"),
    );
    const lines = durabilityBlock.csv.write(result).trim().split("\r\n");
    expect(lines[0]).toBe("puck,part,figure,low,expected,high,contact,onto,medium,problem");
    expect(lines.filter((line) => line.startsWith("Grooved,wear,hoursToLeastCover,")).length).toBe(1);
  });
});
