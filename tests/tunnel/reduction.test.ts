import { describe, expect, it } from "vitest";
import { dryAir } from "../../shared/engine/fluid/dryAir";
import { planDefaults } from "../../shared/jobs/tunnel/planWishes";
import type { ReducedPoint, ReductionSetting } from "../../shared/jobs/tunnel/reducedTest";
import { prepareReduction } from "../../shared/jobs/tunnel/reduceRuns";
import { planRuns } from "../../shared/jobs/tunnel/runPlan";
import { type RunReading, readRunTable } from "../../shared/jobs/tunnel/runTable";
import type { StatedUncertainties } from "../../shared/jobs/tunnel/statedUncertainties";
import type { TunnelCase } from "../../shared/jobs/tunnel/tunnelCase";
import { modelReference } from "../../shared/jobs/tunnel/tunnelShape";
import { type RandomDraws, randomDraws } from "../../shared/statistics/randomDraws";
import { type InventedTest, inventRunTable } from "../../src/demo/inventedTest";
import { circleModel, facilityOf, roomAir, value } from "./tunnelSamples";

const model = circleModel();
const reference = modelReference(model);
const air = value(dryAir(20, 101325));
const facility = { ...facilityOf(air), testSectionHeight: 0.8 };
const blockageRatio = 0.1;
const theCase: Pick<TunnelCase, "model" | "reference" | "facility"> = { model, reference, facility };

const setting: ReductionSetting = {
  shape: model.shape,
  reference,
  fluidSpec: roomAir,
  balance: facility.balance,
  blockageRatio: 0,
  correction: "none",
  stated: {},
  correlations: [],
  repeatability: "perPoint",
  coverage: 0.95,
  samples: 0,
  seed: 1,
};

function reduce(readings: readonly RunReading[], change: Partial<ReductionSetting> = {}): ReducedPoint[] {
  const prepared = value(prepareReduction(readings, { ...setting, ...change }));
  return prepared.points.map((point) => value(prepared.reduce(point)));
}

const blank = {
  direction: "rising" as const,
  aimSpeed: null,
  time: null,
  speed: null,
  dynamicPressure: null,
  temperature: 20,
  staticPressure: 101325,
  humidity: null,
};

/** Rows of a test without noise: [kind, time, dynamic pressure, force]. */
function rows(...list: (readonly ["zero" | "tare" | "model", number, number, number])[]): RunReading[] {
  return list.map(([kind, time, q, force], i) => ({ ...blank, row: i + 2, kind, time, dynamicPressure: q, force }));
}

describe("prepareReduction(readings, setting)", () => {
  it("F / (q S) without zeros and support, Re from the fluid of the row, exact", () => {
    const [point] = reduce(rows(["model", 0, 500, 16]));
    expect(point.dragCoefficient).toBeCloseTo(16 / (500 * 0.08 * 0.4), 12);
    const speed = Math.sqrt(1000 / air.density);
    expect(point.reynolds / ((speed * 0.08) / air.kinematicViscosity)).toBeCloseTo(1, 12);
  });

  it("takes out a zero that drifts in a straight line along time, exact", () => {
    const drift = (time: number) => 0.3 + 0.02 * time;
    const list = rows(
      ["zero", 0, 0, drift(0)],
      ["model", 7, 500, 16 + drift(7)],
      ["model", 31, 800, 25.6 + drift(31)],
      ["zero", 40, 0, drift(40)],
    );
    for (const point of reduce(list)) expect(point.dragCoefficient).toBeCloseTo(1, 12);
  });

  it("takes the drift along the order of the rows where times are missing", () => {
    const list = rows(["zero", 0, 0, 0], ["model", 0, 500, 17], ["model", 0, 800, 27.6], ["zero", 0, 0, 3]);
    const found = reduce(list.map((row) => ({ ...row, time: null })));
    for (const point of found) expect(point.dragCoefficient).toBeCloseTo(1, 12);
  });

  it("keeps the first and last zero beyond them", () => {
    const list = rows(["model", 0, 500, 17], ["zero", 5, 0, 1], ["zero", 6, 0, 2], ["model", 9, 800, 27.6]);
    for (const point of reduce(list)) expect(point.dragCoefficient).toBeCloseTo(1, 12);
  });

  it("takes out the support by its drag area between the speeds at which it was measured, exact for a straight line", () => {
    const support = (q: number) => q * (1e-3 + 2e-6 * q);
    const list = rows(
      ["tare", 0, 200, support(200)],
      ["tare", 1, 800, support(800)],
      ["model", 2, 500, 16 + support(500)],
    );
    const [point] = reduce(list);
    expect(point.dragCoefficient).toBeCloseTo(1, 12);
    expect(point.netForceNewtons).toBeCloseTo(16, 10);
  });

  it("keeps both directions of speed apart and gathers repeats of one aim", () => {
    const at = (direction: "rising" | "falling", aimSpeed: number, force: number, row: number): RunReading => ({
      ...blank,
      row,
      kind: "model",
      direction,
      aimSpeed,
      dynamicPressure: 500,
      force,
    });
    const found = reduce([
      at("rising", 29, 16, 2),
      at("falling", 29, 8, 3),
      at("rising", 29, 16.4, 4),
      at("rising", 35, 16, 5),
    ]);
    expect(found.map(({ direction, repeats, rows: own }) => [direction, repeats, own])).toEqual([
      ["rising", 2, [2, 4]],
      ["rising", 1, [5]],
      ["falling", 1, [3]],
    ]);
    expect(found[0].dragCoefficient).toBeCloseTo(16.2 / 16, 12);
  });

  it("JCGM 100:2008, 4.2.3: the scatter of n repeats counts as s / sqrt(n) with n - 1 degrees of freedom, exact", () => {
    const balance = { ...facility.balance, resolution: 1e-12, noise: null };
    const forces = [15.8, 16, 16.1, 16.5];
    const list = rows(...forces.map((force, i) => ["model", i, 500, force] as const));
    const [point] = reduce(list, { balance });
    const mean = forces.reduce((sum, force) => sum + force, 0) / 4;
    const s = Math.sqrt(forces.reduce((sum, force) => sum + (force - mean) ** 2, 0) / 3);
    expect(point.firstOrder.combinedStandardUncertainty).toBeCloseTo(s / 2 / 16, 9);
    expect(point.firstOrder.effectiveDegreesOfFreedom).toBe(3);
  });

  it("relative parts add as squares: 1 % of q, 0.5 % of the balance, 0.3 % of the area is 1.158 % of Cd", () => {
    const one = (plusMinus: number) => ({ plusMinus, kind: "standard" as const });
    const stated: StatedUncertainties = {
      dynamicPressurePercent: one(1),
      balanceCalibrationPercent: one(0.5),
      referenceAreaPercent: one(0.3),
    };
    const balance = { ...facility.balance, resolution: 1e-12, noise: null };
    const [point] = reduce(rows(["model", 0, 500, 16]), { stated, balance });
    const relative = point.firstOrder.combinedStandardUncertainty / point.dragCoefficient;
    expect(relative).toBeCloseTo(Math.hypot(0.01, 0.005, 0.003), 5);
    const sum = point.firstOrder.parts.reduce((total, { share }) => total + share, 0);
    expect(sum).toBeCloseTo(1, 12);
    expect(point.firstOrder.parts.find(({ key }) => key === "dynamicPressurePercent")?.share).toBeCloseTo(1 / 1.34, 3);
  });

  it("a read speed counts twice where a read dynamic pressure counts once, and density comes in with it", () => {
    const stated: StatedUncertainties = {
      speedPercent: { plusMinus: 1, kind: "standard" },
      temperatureCelsius: { plusMinus: 2.9315, kind: "standard" },
    };
    const balance = { ...facility.balance, resolution: 1e-12, noise: null };
    const list = [{ ...blank, row: 2, kind: "model" as const, speed: 30, force: 16 }];
    const [point] = reduce(list, { stated, balance });
    const part = (key: string) =>
      Math.abs(point.firstOrder.parts.find((each) => each.key === key)?.contribution ?? 0) / point.dragCoefficient;
    expect(part("speedPercent")).toBeCloseTo(0.02, 3);
    expect(part("temperatureCelsius")).toBeCloseTo(0.01, 3);
  });

  it("gives every correction that has a meaning, and the reported one among them", () => {
    const list = rows(["model", 0, 500, 16]);
    const [point] = reduce(list, { correction: "allenVincenti", blockageRatio });
    const by = Object.fromEntries(point.corrections.map(({ method, dragCoefficient }) => [method, dragCoefficient]));
    expect(by.none).toBeCloseTo(1, 12);
    expect(by.maskell).toBeCloseTo(1 / 1.096, 12);
    expect(by.allenVincenti).toBeCloseTo(1 - 0.05 - 0.025, 12);
    expect(point.dragCoefficient).toBe(by.allenVincenti);
  });

  it("says what is missing: zeros, support, stated parts, humidity", () => {
    const list = [{ ...blank, row: 2, kind: "model" as const, speed: 30, force: 16 }];
    const notes = value(prepareReduction(list, { ...setting, balance: { ...setting.balance, noise: null } }))
      .finish([])
      .notes.join(" ");
    expect(notes).toMatch(
      /No zero readings.*No runs of the support.*scatter is missing.*speedPercent.*Without humidity/,
    );
  });
});

describe("synthetic tests with a known drag", () => {
  const truth = 1.05;
  const invented: InventedTest = {
    drag: { below: truth, above: truth, rising: 1e6, falling: 1e6, width: 1 },
    blockage: "allenVincenti",
    supportDragArea: 1e-3,
    noise: 0.15,
    zero: 0.4,
    zeroDrift: 0.01,
    temperature: 19,
    warming: 0.02,
    staticPressure: 100_900,
    humidity: 45,
    minutesPerRun: 2,
  };
  const stated: StatedUncertainties = {
    balanceCalibrationPercent: { plusMinus: 0.8, kind: "normal95" },
    dynamicPressurePercent: { plusMinus: 0.6, kind: "rectangular" },
    streamCalibrationPercent: { plusMinus: 0.4, kind: "standard" },
    temperatureCelsius: { plusMinus: 0.5, kind: "rectangular" },
    referenceAreaPercent: { plusMinus: 0.4, kind: "triangular" },
    supportInterferencePercent: { plusMinus: 0.5, kind: "arcsine" },
  };
  const balance = { range: 500, resolution: 0.02, noise: 0.15 };
  const prediction = {
    turbulencePercent: 1,
    points: [1e4, 1e6].map((reynolds) => ({
      reynolds,
      direction: "rising" as const,
      dragCoefficient: { low: 1, expected: 1, high: 1 },
      regime: null,
    })),
    crises: [],
    notes: [],
  };
  /** A test of one speed, repeated. */
  const planOf = (repeats: number) =>
    planRuns(
      {
        ...planDefaults,
        speeds: [30],
        slowestSpeed: 20,
        fastestSpeed: 40,
        wantedHalfWidth: 1e-6,
        mostRepeats: repeats,
        bothDirections: false,
      },
      { ...facility, balance },
      reference,
      prediction,
    );

  function trial(draws: RandomDraws, repeats: number, change: Partial<ReductionSetting>): ReducedPoint {
    const table = inventRunTable(invented, theCase as TunnelCase, planOf(repeats), stated, blockageRatio, draws);
    const { readings, problems } = readRunTable(table, {}, null);
    if (problems.length > 0) throw new Error(problems[0].message);
    const [point] = reduce(readings, {
      stated,
      balance,
      blockageRatio,
      correction: "allenVincenti",
      ...change,
    });
    return point;
  }

  /** Three standard deviations of the share of `n` trials about 95 %. */
  const tolerance = (n: number) => 3 * Math.sqrt((0.95 * 0.05) / n);

  it("the truth lies inside the first-order uncertainty of 95 % in 95 % of 600 seeded tests, binomial tolerance", () => {
    const draws = randomDraws(20261125);
    const n = 600;
    let inside = 0;
    for (let i = 0; i < n; i++) {
      const { dragCoefficient, firstOrder } = trial(draws, 3, {});
      if (Math.abs(dragCoefficient - truth) <= firstOrder.expandedUncertainty) inside++;
    }
    expect(Math.abs(inside / n - 0.95)).toBeLessThan(tolerance(n));
  });

  // With few repeats the t distributions of JCGM 101:2008, 6.4.9 make wider intervals than 95 % would need.
  it("and inside the Monte Carlo interval in 95 % of 300 with 12 repeats, binomial tolerance", () => {
    const draws = randomDraws(7);
    const n = 300;
    let inside = 0;
    for (let i = 0; i < n; i++) {
      const { monteCarlo } = trial(draws, 12, { samples: 2000, seed: i });
      if (monteCarlo !== null && truth >= monteCarlo.low && truth <= monteCarlo.high) inside++;
    }
    expect(Math.abs(inside / n - 0.95)).toBeLessThan(tolerance(n));
  });

  it("an uncertainty that leaves a part out misses the truth far more often: the check can fail", () => {
    const draws = randomDraws(20261125);
    const n = 200;
    let inside = 0;
    for (let i = 0; i < n; i++) {
      const { dragCoefficient, firstOrder } = trial(draws, 3, { stated: {} });
      if (Math.abs(dragCoefficient - truth) <= firstOrder.expandedUncertainty) inside++;
    }
    expect(inside / n).toBeLessThan(0.9);
  });
});
