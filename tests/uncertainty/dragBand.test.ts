import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { FlowCondition } from "../../shared/engine/condition";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { ConditionOutcome } from "../../shared/engine/solution";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { checkedFamilies, regimes } from "../../shared/engine/trust/bandTable";
import { CHECKED_BANDS } from "../../shared/engine/trust/checkedBands";
import { crisisFactor, dragBand } from "../../shared/engine/trust/dragBand";
import { judgeOutcome } from "../../shared/engine/trust/judgeOutcome";
import { type DragState, statesNearby } from "../../shared/engine/trust/nearbyStates";
import { circle, described, rectangle, sampleTable } from "./sampleTable";

const quiet: FlowCondition = { reynolds: 2e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.001 };
const subcritical: DragState = { regime: "subcritical", dragCoefficient: 1.2 };
const supercritical: DragState = { regime: "supercritical", dragCoefficient: 0.2 };

describe("dragBand(section, state, condition, nearby, table)", () => {
  it("is the half-width of the section's family and regime about the drag coefficient", () => {
    const band = dragBand(circle, subcritical, quiet, [subcritical], sampleTable);
    expect(band.low).toBeCloseTo(1.08, 12);
    expect(band.high).toBeCloseTo(1.32, 12);
    expect(band).toMatchObject({ spansCrisis: false, applicability: "inside the checked range", reason: null });
    expect(dragBand(rectangle(1, 0.2), subcritical, quiet, [], sampleTable).high).toBeCloseTo(1.44, 12);
  });

  it("has an absolute half-width below Cd 0.3 and never reaches below 0", () => {
    const band = dragBand(circle, supercritical, quiet, [], sampleTable);
    expect(band.low).toBeCloseTo(0.2 - 0.06, 12);
    expect(band.high).toBeCloseTo(0.2 + 0.06, 12);
    expect(dragBand(circle, { ...supercritical, dragCoefficient: 0.01 }, quiet, [], sampleTable).low).toBe(0);
  });

  it("near a crisis runs from the lower state's low to the upper state's high, whichever is reported", () => {
    for (const state of [subcritical, supercritical]) {
      const band = dragBand(circle, state, quiet, [subcritical, supercritical], sampleTable);
      expect(band.low).toBeCloseTo(0.14, 12);
      expect(band.high).toBeCloseTo(1.32, 12);
      expect(band.spansCrisis).toBe(true);
    }
  });

  it("takes the rough circle's half-width where roughness was checked on circles only, if that is the wider", () => {
    const rough = { ...quiet, sandGrainRoughnessRatio: 1e-3 };
    expect(dragBand(rectangle(1, 0.2), subcritical, rough, [], sampleTable).high).toBeCloseTo(1.5, 12);
    expect(dragBand(rectangle(1, 0.01), subcritical, rough, [], sampleTable).high).toBeCloseTo(1.56, 12);
  });

  it("outside takes the widest half-width there is", () => {
    const band = dragBand(circle, subcritical, { ...quiet, reynolds: 3e7 }, [], sampleTable);
    expect(band.high).toBeCloseTo(1.8, 12);
    expect(band.reason).not.toBe(null);
  });

  it("always holds the drag coefficient, and only grows with more states nearby", () => {
    const state = fc.record({
      regime: fc.constantFrom(...regimes),
      dragCoefficient: fc.double({ min: 0.01, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(state, fc.array(state, { maxLength: 4 }), (own, nearby) => {
        const alone = dragBand(circle, own, quiet, [], sampleTable);
        const band = dragBand(circle, own, quiet, nearby, sampleTable);
        expect(alone.low < own.dragCoefficient && own.dragCoefficient < alone.high).toBe(true);
        expect(band.low <= alone.low && band.high >= alone.high).toBe(true);
      }),
    );
  });
});

describe("crisisFactor(section, condition, table)", () => {
  it("is wider in a turbulent stream and wider still for other sections", () => {
    expect(crisisFactor(circle, quiet, sampleTable)).toBe(1.25);
    expect(crisisFactor(circle, { ...quiet, turbulenceIntensity: 0.03 }, sampleTable)).toBe(1.5);
    expect(crisisFactor(described({ family: "ellipse", length: 2, height: 1 }), quiet, sampleTable)).toBe(2);
  });
});

describe("CHECKED_BANDS", () => {
  it("has half-widths from 5 % to 150 %, those without published values the widest of their regime", () => {
    for (const regime of regimes) {
      const widths = checkedFamilies.map((family) => CHECKED_BANDS.halfWidths[family][regime]);
      for (const width of widths) {
        expect(width).toBeGreaterThanOrEqual(0.05);
        expect(width).toBeLessThanOrEqual(1.5);
      }
      expect(CHECKED_BANDS.halfWidths.other[regime]).toBe(Math.max(...widths));
    }
    for (const factor of Object.values(CHECKED_BANDS.crisisReynoldsFactor)) expect(factor).toBeGreaterThanOrEqual(1.25);
  });
});

describe("a smooth circle through its drag crisis", () => {
  let section: PreparedSection;
  let conditions: FlowCondition[];
  let outcomes: ConditionOutcome[];
  /** Highest Reynolds number of the curve with a subcritical state on the rising branch. */
  let last: number;

  beforeAll(() => {
    const contour = buildContour({ family: "circle", diameter: 1 });
    if (!contour.ok) throw new Error(contour.problem.message);
    const nodes = gradeNodes(contour.value, 120);
    if (!nodes.ok) throw new Error(nodes.problem.message);
    const prepared = prepareSection(nodes.value, 0);
    if (!prepared.ok) throw new Error(prepared.problem.message);
    section = prepared.value;
    conditions = Array.from({ length: 13 }, (_, i) => ({ ...quiet, reynolds: 1e5 * 10 ** (i / 12) }));
    outcomes = traceDragCurve(section, conditions);
    last = outcomes.findLastIndex(({ states, rising }) => rising !== null && states[rising].regime === "subcritical");
  });

  it("statesNearby(...) finds both regimes within the factor of the jump and one regime far below it", () => {
    expect(last).toBeGreaterThan(0);
    expect(last).toBeLessThan(conditions.length - 1);
    const regimesAt = (i: number, factor: number) =>
      new Set(statesNearby(section, conditions, outcomes, i, factor).map(({ regime }) => regime));
    expect(regimesAt(last, 1.25).size).toBeGreaterThan(1);
    expect(regimesAt(0, 1.25)).toEqual(new Set(["subcritical"]));
  });

  it("statesNearby(...) of a condition alone finds the regimes that the curve around it shows", () => {
    for (const i of [0, last, conditions.length - 1]) {
      const regimesOf = (states: readonly DragState[]) => [...new Set(states.map(({ regime }) => regime))].sort();
      const alone = statesNearby(section, [conditions[i]], [outcomes[i]], 0, 1.25);
      expect(regimesOf(alone)).toEqual(regimesOf(statesNearby(section, conditions, outcomes, i, 1.25)));
    }
  });

  it("statesNearby(...) refuses a factor below 1", () => {
    expect(() => statesNearby(section, conditions, outcomes, 0, 0.9)).toThrow(/factor is 0.9/);
  });

  it("judgeOutcome(...) gives every state an expected drag in its band and a wider band of a measurement, and spans both states at the jump", () => {
    const bands = outcomes.map((_, i) => judgeOutcome(section, conditions, outcomes, i).bands);
    outcomes.forEach(({ states }, i) => {
      expect(bands[i]).toHaveLength(states.length);
      for (const { low, expected, high, measurementLow, measurementHigh } of bands[i]) {
        expect(low).toBeLessThan(expected);
        expect(expected).toBeLessThan(high);
        expect(measurementLow).toBeLessThan(low);
        expect(measurementHigh).toBeGreaterThan(high);
      }
    });
    expect(bands[0][0]).toMatchObject({ spansCrisis: false, applicability: "inside the checked range" });
    expect(bands[last][0]).toMatchObject({ spansCrisis: true });
    expect(bands[last][0].low).toBeLessThan(0.4);
    expect(bands[last][0].high).toBeGreaterThan(1.1);
  });

  it("judgeOutcome(...) puts the crisis of a condition alone where the curve has it, within 10 %, and is past it as often within 0.15", () => {
    const ofCurve = judgeOutcome(section, conditions, outcomes, last).bands[0];
    const alone = judgeOutcome(section, [conditions[last]], [outcomes[last]], 0).bands[0];
    expect(Math.abs(Math.log(alone.crisisReynolds!.mid / ofCurve.crisisReynolds!.mid))).toBeLessThan(0.1);
    expect(Math.abs(alone.pastCrisisShare - ofCurve.pastCrisisShare)).toBeLessThan(0.15);
    const { low, mid, high } = ofCurve.crisisReynolds!;
    expect([low < mid, mid < high]).toEqual([true, true]);
    expect(judgeOutcome(section, conditions, outcomes, 0).bands[0]).toMatchObject({
      pastCrisisShare: 0,
      crisisReynolds: null,
    });
  });

  it("judgeOutcome(...) refuses outcomes of other conditions", () => {
    expect(() => judgeOutcome(section, conditions.slice(1), outcomes, 0)).toThrow(/13 outcomes and 12 conditions/);
  });
});
