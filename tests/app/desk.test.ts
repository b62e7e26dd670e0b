import { expect, test } from "vitest";
import { demoDesign } from "../../shared/case/design";
import { velocityProfile } from "../../src/app/drawing/velocityProfile";
import { decadeTicks, evenTicks, powerText, scaleOf } from "../../src/app/scene/axes";
import { markOutlines } from "../../src/app/scene/marks";
import { hatchLines } from "../../src/app/scene/paintScene";
import { sceneSvg } from "../../src/app/scene/sceneSvg";
import { answerWords } from "../../src/app/section/answerWords";
import { crisisMargin, crisisZones, noZones } from "../../src/app/section/crisisZone";
import { sketchReynolds } from "../../src/app/section/curveRanges";
import { ribbonRange, ribbonValues, touchedInput } from "../../src/app/section/ribbonRange";
import { shareWords } from "../../src/app/section/sharesInWords";
import { sweepInputs } from "../../src/app/section/sweepInputs";

test("a scale and its inverse undo each other, and a logarithmic one halves a decade at its geometric mean", () => {
  const scale = scaleOf(1e4, 1e6, 40, 440, true);
  expect(scale.at(1e5)).toBeCloseTo(240, 9);
  expect(scale.valueAt(scale.at(3.3e4))).toBeCloseTo(3.3e4, 6);
});

test("ticks are round and stay between their ends", () => {
  expect(evenTicks(0, 1.05, 5)).toEqual([0, 0.5, 1]);
  expect(decadeTicks(2e4, 6e5)).toEqual([2e4, 5e4, 1e5, 2e5, 5e5]);
  expect([1e5, 2e5].map(powerText)).toEqual(["1e5", "2e5"]);
});

test("the SVG of a scene escapes words and closes what it opens", () => {
  const text = sceneSvg({
    width: 20,
    height: 10,
    shapes: [
      { kind: "text", x: 1, y: 2, text: "<b>&", fill: "#000000" },
      { kind: "hatch", area: [0, 0, 20, 0, 20, 10, 0, 10], stroke: "#000000" },
      { kind: "mark", mark: "diamond", x: 5, y: 5, size: 3, fill: "#ff0000" },
    ],
  });
  expect(text).toContain("&lt;b&gt;&amp;");
  expect(text.match(/<clipPath/g)?.length).toBe(text.match(/<\/clipPath>/g)?.length);
  expect(text).not.toContain("NaN");
});

test("hatch strokes stand still while the area moves: they lie on lines of a fixed grid", () => {
  for (const left of [0, 2.3, 5.9]) {
    for (const [x, y] of hatchLines([left, 0, left + 30, 0, left + 30, 20, left, 20])) {
      expect(((x + y) % 7) / 7).toBeCloseTo(0, 9);
    }
  }
});

test("every mark is about as large as the others", () => {
  for (const outline of Object.values(markOutlines)) {
    const largest = Array.from(outline).reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    expect(largest).toBeGreaterThan(0.85);
    expect(largest).toBeLessThan(1.25);
  }
});

// Schlichting (1979), Boundary-Layer Theory (from memory): Pohlhausen's plate has H = 2.55 and delta/theta = 315/37; the
// seventh-power law has H = 9/7 and theta/delta = 7/72.
test("velocity profiles: Pohlhausen's plate at H 2.554, the seventh-power law at H 9/7", () => {
  const plate = velocityProfile(0.3 / (37 / 315), false);
  expect(plate.heights.at(-1)).toBeCloseTo(315 / 37, 3);
  const half = velocityProfile(0.3 / (37 / 315), false).speeds[6];
  expect(half).toBeCloseTo(2 * 0.5 - 2 * 0.5 ** 3 + 0.5 ** 4, 6);
  const turbulent = velocityProfile(9 / 7, true);
  expect(turbulent.heights.at(-1)).toBeCloseTo(72 / 7, 9);
  expect(turbulent.speeds[6]).toBeCloseTo(0.5 ** (1 / 7), 9);
});

const row = (speed: number, low: number | null, branch: "rising" | "falling" = "rising") => ({
  branch,
  speedMetresPerSecond: speed,
  crisisSpeedLowMetresPerSecond: low,
  crisisSpeedMidMetresPerSecond: low === null ? null : 1.5 * low,
  crisisSpeedHighMetresPerSecond: low === null ? null : 2 * low,
});

test("the crisis of a curve is the one told by the row next to it", () => {
  const zones = crisisZones([row(0.5, null), row(2, 1.9), row(3, 2), row(9, 1)]);
  expect(zones).toEqual({ rising: { low: 2, mid: 3, high: 4 }, falling: null });
  expect(crisisMargin(5, zones.rising!)).toEqual({ kind: "past", by: 1 });
  expect(crisisMargin(1.5, zones.rising!)).toEqual({ kind: "short", by: 0.5 });
  expect(crisisMargin(3, zones.rising!)).toEqual({ kind: "inside" });
});

const point = {
  speed: 3.5,
  reynolds: 1.23e5,
  expected: 0.39,
  low: 0.24,
  high: 0.77,
  pastCrisisShare: 0.7,
  applicability: "between checked shapes",
  reason: null,
} as const;

test("the answer says how much, how sure, how far from the crisis and what next", () => {
  const plain = (of: ReturnType<typeof answerWords>) => of.sentence.map(({ text }) => text).join("");
  const zones = { rising: { low: 2.2, mid: 3, high: 4.3 }, falling: null };
  const answer = answerWords(point, zones, true, {});
  expect(plain(answer)).toBe(
    "Expected Cd 0.39, in 9 of 10 cases 0.24 to 0.77. In 7 of 10 cases past its drag crisis; the crisis lies at 2.2 to 4.3 m/s, you are at 3.5.",
  );
  expect(answer.next.map(({ text }) => text).join("")).toBe("Past it in 19 of 20 from 4.3 m/s");
  expect(plain(answerWords({ ...point, low: 0.1, high: 0.9 }, zones, true, {}))).toContain(
    "known within a factor of 3 only",
  );
  expect(plain(answerWords({ ...point, pastCrisisShare: 0 }, noZones, true, {}))).toContain("No drag crisis");
  expect(plain(answerWords({ ...point, pastCrisisShare: 0.2 }, zones, true, { speed: "km/h" }))).toContain(
    "In 8 of 10 cases still before its drag crisis; the crisis lies at 7.9 to 15 km/h, you are at 12.6.",
  );
});

test("shares are told as people count", () => {
  expect([0.7, 0.95, 0.98, 0.999, 0.05, 0.5].map(shareWords)).toEqual([
    "7 of 10",
    "19 of 20",
    "98 of 100",
    "199 of 200",
    "1 of 20",
    "5 of 10",
  ]);
});

test("a ribbon holds the design, ends where the shape does, and follows the input that was touched", () => {
  const inputs = sweepInputs(demoDesign);
  for (const input of inputs) {
    const { from, to } = ribbonRange(input, demoDesign);
    expect(input.of(demoDesign)).toBeGreaterThanOrEqual(from);
    expect(input.of(demoDesign)).toBeLessThanOrEqual(to);
  }
  const radius = inputs.find(({ key }) => key === "edgeRadius")!;
  // Half of the height of 30 mm is the largest edge radius.
  expect(ribbonRange(radius, demoDesign).to).toBeCloseTo(0.015, 12);
  expect(ribbonValues({ from: 1e-6, to: 1e-4, isLogarithmic: true }, 3)[1]).toBeCloseTo(1e-5, 12);
  expect(touchedInput(demoDesign, { ...demoDesign, speed: 2 }, inputs)).toBe("speed");
  expect(touchedInput(demoDesign, { ...demoDesign, speed: 2, incidence: 0.1 }, inputs)).toBeNull();
});

test("a sketch rises and stands closer about the crisis of the last curve", () => {
  const rows = [
    { branch: "rising", regime: "subcritical", reynolds: 9e4 },
    { branch: "rising", regime: "supercritical", reynolds: 1.1e5 },
  ] as never;
  const stations = sketchReynolds({ overReynolds: rows });
  expect(stations).toEqual([...stations].sort((a, b) => a - b));
  expect(stations.filter((one) => one > 8e4 && one < 1.3e5).length).toBeGreaterThanOrEqual(5);
  expect(sketchReynolds(null).length).toBeLessThan(stations.length);
});
