import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dryAir } from "../../shared/engine/fluid/dryAir";
import type { PlanSettings } from "../../shared/jobs/tunnel/plannedTest";
import { plannedRepeats } from "../../shared/jobs/tunnel/planRepeats";
import { speedsAboutCrises } from "../../shared/jobs/tunnel/planSpeeds";
import { planDefaults } from "../../shared/jobs/tunnel/planWishes";
import type { PredictedDrag } from "../../shared/jobs/tunnel/predictedDrag";
import { planRuns } from "../../shared/jobs/tunnel/runPlan";
import { runSheetCsv } from "../../shared/jobs/tunnel/runSheetCsv";
import { runSheetHtml } from "../../shared/jobs/tunnel/runSheetHtml";
import { readRunTable } from "../../shared/jobs/tunnel/runTable";
import { modelReference } from "../../shared/jobs/tunnel/tunnelShape";
import { readCsvTable } from "../../shared/tables/csvTable";
import { circleModel, facilityOf, value } from "./tunnelSamples";

const facility = facilityOf(value(dryAir(20, 101325)));
const reference = modelReference(circleModel());
const settings: PlanSettings = { ...planDefaults, slowestSpeed: 20, fastestSpeed: 60, speedCount: 8 };
const perSpeed = reference.length / facility.fluid.kinematicViscosity;
const prediction: PredictedDrag = {
  turbulencePercent: 1,
  points: [1e4, 1e6].map((reynolds) => ({
    reynolds,
    direction: "rising" as const,
    dragCoefficient: { low: 0.9, expected: 1, high: 1.1 },
    regime: null,
  })),
  crises: [{ of: "circle", rising: 35 * perSpeed, falling: 32 * perSpeed, factor: 1.2 }],
  notes: [],
};
const plan = (change: Partial<PlanSettings> = {}) =>
  planRuns({ ...settings, ...change }, facility, reference, prediction);

describe("plannedRepeats(scatter, halfWidth, confidence, most)", () => {
  it("Student (1908), table of t: 4 repeats at scatter 1 reach 1.591 (3.182 / 2), 5 reach 1.242 (2.776 / sqrt 5), 0.1 %", () => {
    expect(plannedRepeats(1, 1.592, 0.95, 50).repeats).toBe(4);
    expect(plannedRepeats(1, 1.59, 0.95, 50)).toMatchObject({ repeats: 5, isReached: true });
    expect(plannedRepeats(1, 1.59, 0.95, 50).halfWidth).toBeCloseTo(1.2416, 3);
  });

  it("stops at the most allowed and says that it is not enough", () => {
    expect(plannedRepeats(1, 0.01, 0.95, 6)).toMatchObject({ repeats: 6, isReached: false });
  });
});

describe("speedsAboutCrises(slowest, fastest, count, crises, reynoldsPerSpeed)", () => {
  it("begins and ends at the range, rises, and is closest about the crisis", () => {
    const speeds = speedsAboutCrises(20, 60, 12, prediction.crises, perSpeed);
    expect([speeds[0], speeds.at(-1)]).toEqual([20, 60]);
    const ratios = speeds.slice(1).map((speed, i) => speed / speeds[i]);
    const near = ratios.filter((_, i) => speeds[i] > 29 && speeds[i + 1] < 40);
    expect(near.length).toBeGreaterThan(2);
    expect(Math.max(...near)).toBeLessThan(ratios[0] ** 0.5 * 1.02);
  });

  it("has equal ratios without a crisis, to the rounding of three digits", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 30 }), fc.double({ min: 1.5, max: 20, noNaN: true }), (count, range) => {
        const speeds = speedsAboutCrises(10, 10 * range, count, [], perSpeed);
        const step = range ** (1 / (count - 1));
        if (speeds.length < count) return;
        for (let i = 1; i < count; i++) expect(Math.abs(speeds[i] / speeds[i - 1] / step - 1)).toBeLessThan(0.012);
      }),
    );
  });
});

describe("planRuns(settings, facility, reference, prediction)", () => {
  it("reads zeros before and after the support and every sweep, and comes down only after going up", () => {
    const { runs, speeds } = plan();
    expect(runs[0].kind).toBe("zero");
    expect(runs.at(-1)?.kind).toBe("zero");
    expect(runs.filter(({ kind }) => kind === "tare")).toHaveLength(2 * speeds.length);
    expect(runs.map(({ run }) => run)).toEqual(runs.map((_, i) => i + 1));
    let last = 0;
    for (const { kind, direction, aimSpeedMetresPerSecond: speed } of runs) {
      if (kind !== "model") last = 0;
      else if (direction === "rising") expect(speed).toBeGreaterThan(last);
      else expect(speed).toBeLessThanOrEqual(last);
      if (kind === "model") last = speed ?? 0;
    }
  });

  it("repeats each speed until the balance's noise allows the wanted half-width, most where the force is least", () => {
    const { speeds } = plan({ wantedHalfWidth: 0.004, mostRepeats: 40 });
    expect(speeds[0].repeats).toBeGreaterThan(speeds.at(-1)?.repeats ?? 0);
    for (const { isReached, halfWidthPercent } of speeds) {
      expect(isReached).toBe(true);
      expect(halfWidthPercent).toBeLessThanOrEqual(0.4);
    }
    const { runs } = plan({ wantedHalfWidth: 0.004, mostRepeats: 40 });
    const of = (speed: number) =>
      runs.filter(({ kind, aimSpeedMetresPerSecond: u }) => kind === "model" && u === speed).length;
    for (const { speedMetresPerSecond, repeats } of speeds) expect(of(speedMetresPerSecond)).toBe(2 * repeats);
  });

  it("randomises in blocks: every repeat holds each point once, equal seeds give equal orders, others do not", () => {
    const order = (seed: number) => plan({ order: "randomised", seed }).runs.filter(({ kind }) => kind === "model");
    expect(order(4)).toEqual(order(4));
    expect(order(4)).not.toEqual(order(5));
    const points = order(4);
    const first = points.slice(0, 16).map(({ aimSpeedMetresPerSecond: u, direction }) => `${u} ${direction}`);
    expect(new Set(first).size).toBe(16);
    expect(points.slice(0, 16).every(({ repeat }) => repeat === 1)).toBe(true);
    expect(points[0].remark).toMatch(/^from (rest|the top speed)$/);
  });

  it("says what it could not do: too much noise, no noise stated, one direction, nothing predicted", () => {
    expect(plan({ wantedHalfWidth: 1e-5 }).notes.join()).toContain("a more sensitive balance");
    expect(plan({ bothDirections: false }).notes.join()).toContain("hysteresis of the crisis will not show");
    const blind = planRuns(settings, { ...facility, balance: { ...facility.balance, noise: null } }, reference, null);
    expect(blind.notes.join()).toMatch(/Nothing was predicted.*noise is not stated/);
    expect(blind.speeds[0].repeats).toBe(3);
  });
});

describe("run sheets", () => {
  it("the CSV comes back without a mapping, every run with its kind, aim and direction", () => {
    const made = plan();
    const table = value(readCsvTable(runSheetCsv(made)));
    const force = table.columns.indexOf("forceNewtons");
    const speed = table.columns.indexOf("speedMetresPerSecond");
    const aim = table.columns.indexOf("aimSpeedMetresPerSecond");
    const rows = table.rows.map((row) =>
      row.map((cell, i) => (i === force ? "1.5" : i === speed ? (row[aim] ?? "") : cell)),
    );
    const read = readRunTable({ ...table, rows }, {}, null);
    expect(read.problems).toEqual([]);
    expect(read.notes).toEqual([]);
    expect(read.readings.map(({ kind, aimSpeed }) => [kind, aimSpeed])).toEqual(
      made.runs.map((run) => [run.kind, run.aimSpeedMetresPerSecond]),
    );
    const model = made.runs.filter(({ kind }) => kind === "model");
    expect(read.readings.filter(({ kind }) => kind === "model").map(({ direction }) => direction)).toEqual(
      model.map(({ direction }) => direction),
    );
  });

  it("left empty it is read as a table of missing values, not of errors", () => {
    const read = readRunTable(value(readCsvTable(runSheetCsv(plan()))), {}, null);
    expect(read.problems).toEqual([]);
    expect(read.readings).toEqual([]);
    expect(read.notes.join()).toContain("row 2 has no force");
  });

  it("the page has a line for every run, the cautions, and no markup out of names", () => {
    const made = plan();
    const html = runSheetHtml(made, {
      title: "<b>Test</b>",
      model: 'a "model"',
      facility: "here",
      reference: "Re on x",
    });
    expect(html.match(/<tr[ >]/g)).toHaveLength(made.runs.length + 1);
    expect(html).toContain("&lt;b&gt;Test&lt;/b&gt;");
    expect(html).not.toContain("<b>Test");
    expect(html).toContain("projectile");
  });
});
