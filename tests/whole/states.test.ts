import { describe, expect, test } from "vitest";
import type { ConditionedBody } from "../../shared/engine/whole/conditionedFlow";
import type { WholeStream } from "../../shared/engine/whole/conditionFlow";
import { conditionWhole, type WholeFlows, wholeFlows } from "../../shared/engine/whole/wholeDrag";
import { dragOfDraw, wholeDragDraws } from "../../shared/engine/whole/wholeDraws";
import { WHOLE_ERROR_NAMES, type WholeErrorDraws } from "../../shared/engine/whole/wholeErrors";
import { dragParts, standardDraws, wholeStates } from "../../shared/engine/whole/wholeStates";
import { mean, standardDeviation } from "../../shared/statistics/sample";
import { roundedDisc, spheroid } from "./bodies";

const degrees = Math.PI / 180;
const plain = (reynolds: number, turbulenceIntensity = 0.01): WholeStream => ({
  reynolds,
  turbulenceIntensity,
  rimRoughnessRatio: 0,
  faceRoughnessRatio: 0,
  facePattern: null,
});

function flowsOf(...shape: Parameters<typeof wholeFlows>): WholeFlows {
  const flows = wholeFlows(...shape);
  if (!flows.ok) throw new Error(flows.problem.message);
  return flows.value;
}

const draws = Object.fromEntries(
  WHOLE_ERROR_NAMES.map((name) => [name, Float64Array.from(standardDraws, (draw) => draw[name])]),
) as unknown as WholeErrorDraws;

const puck = flowsOf(roundedDisc(0.08, 0.03, 0.006));
const sharper = flowsOf(roundedDisc(0.08, 0.03, 0.004));
const sphere = flowsOf(spheroid(1));

describe("states of a body", () => {
  test("sphere: 0.47 to 0.51 below its crisis lies in the band, 0.07 to 0.12 behind it (Achenbach 1972, from memory)", () => {
    const below = wholeStates(conditionWhole(sphere, 0, [plain(1e5, 0.0045)])).dragCoefficient;
    expect(below.low).toBeLessThan(0.49);
    expect(below.high).toBeGreaterThan(0.49);
    const behind = wholeStates(conditionWhole(sphere, 0, [plain(6e5, 0.0045)])).dragCoefficient;
    expect(behind.low).toBeLessThan(0.095);
    expect(behind.high).toBeGreaterThan(0.095);
  });

  test("the states' drags and shares make up the expected drag, and the parts each state's own", () => {
    for (const tilt of [0, 40 * degrees, 90 * degrees]) {
      const { states, dragCoefficient } = wholeStates(conditionWhole(puck, tilt, [plain(2e5)]));
      const shares = states.reduce((sum, { share }) => sum + share, 0);
      expect(shares).toBeGreaterThan(0.97);
      expect(shares).toBeLessThan(1 + 1e-9);
      const weighted = states.reduce((sum, state) => sum + state.share * state.dragCoefficient.expected, 0) / shares;
      expect(Math.abs(weighted / dragCoefficient.expected - 1)).toBeLessThan(0.02);
      for (const { parts, dragCoefficient: own } of states) {
        const sum = dragParts.reduce((total, part) => total + parts[part].expected, 0);
        expect(sum).toBeCloseTo(own.expected, 8);
        expect(own.low).toBeLessThanOrEqual(own.expected);
        expect(own.expected).toBeLessThanOrEqual(own.high);
      }
    }
  });

  test("the faster the stream, the likelier the rim has turned; turbulence and roughness bring it forward", () => {
    const turned = (stream: WholeStream) =>
      wholeStates(conditionWhole(puck, 0, [stream]))
        .states.filter(({ rimState }) => rimState === "turned")
        .reduce((sum, { share }) => sum + share, 0);
    const shares = [1e5, 1.8e5, 2.2e5, 4e5].map((reynolds) => turned(plain(reynolds)));
    expect(shares[0]).toBeLessThan(0.05);
    expect(shares[3]).toBeGreaterThan(0.95);
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeGreaterThanOrEqual(shares[i - 1]);
    const crisis = (stream: WholeStream) => conditionWhole(puck, 0, [stream]).crisisReynolds;
    expect(crisis(plain(1e5, 0.05))).toBeLessThan(crisis(plain(1e5, 0.001)));
    expect(crisis({ ...plain(1e5), rimRoughnessRatio: 2e-3 })).toBeLessThan(crisis(plain(1e5)));
  });

  test("a rim that would leave beyond 124 degrees is called not settled", () => {
    const { states } = wholeStates(conditionWhole(puck, 0, [plain(6e5)]));
    for (const { rimState, settled, rimSeparation } of states) {
      expect(settled).toBe(rimState === "laminar");
      expect(rimSeparation).toBeLessThanOrEqual(124.01 * degrees);
    }
  });

  test("ten times the size at the same Reynolds number, and the body upside down, have the same drag", () => {
    const large = flowsOf(roundedDisc(0.8, 0.3, 0.06));
    const drag = (flows: WholeFlows) => wholeStates(conditionWhole(flows, 0, [plain(1.5e5)])).dragCoefficient.expected;
    expect(drag(large)).toBeCloseTo(drag(puck), 5);
  });

  test("a bad tilt is refused with its range", () => {
    expect(() => conditionWhole(puck, 2, [plain(1e5)])).toThrow("it must be 0 to pi/2");
  });
});

describe("draws of what is not known", () => {
  const area = (body: ConditionedBody) => wholeDragDraws(body, draws);
  const body = conditionWhole(puck, 0, [plain(1e5)]);
  const other = conditionWhole(sharper, 0, [plain(1e5)]);

  test("their mean is the expected drag", () => {
    const { dragCoefficient, frontalArea } = wholeStates(body);
    expect(mean(area(body)) / frontalArea).toBeCloseTo(dragCoefficient.expected, 8);
  });

  test("what two like bodies share cancels: the difference is known far better than either", () => {
    const [a, b] = [area(body), area(other)];
    const difference = Float64Array.from(a, (value, i) => Math.log(b[i] / value));
    expect(standardDeviation(difference)).toBeLessThan(0.3 * standardDeviation(a.map(Math.log)));
  });

  test("more suction at the base is more drag, by about as much", () => {
    const none = Object.fromEntries(WHOLE_ERROR_NAMES.map((name) => [name, 0])) as (typeof standardDraws)[number];
    const more = dragOfDraw(body, { ...none, wideBasePressure: 1 }) - dragOfDraw(body, none);
    expect(more).toBeGreaterThan(0.02);
    expect(more).toBeLessThan(0.05);
  });

  test("draws of unequal number are refused with both numbers", () => {
    expect(() => wholeDragDraws(body, { ...draws, tilt: new Float64Array(3) })).toThrow("tilt has 3 draws");
  });
});
