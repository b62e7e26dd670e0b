import { describe, expect, it } from "vitest";
import { edgeOnDrag } from "../../shared/jobs/puck/drag/edgeOnDrag";
import { endRelief, endReliefCaution } from "../../shared/jobs/puck/drag/endRelief";
import { type SectionDragCurve, tabulatedSectionDrag } from "../../shared/jobs/puck/drag/sectionDrag";
import { unwrap } from "./examplePuck";

const level =
  (Cd: number): SectionDragCurve =>
  () => ({ low: 0.9 * Cd, expected: Cd, high: 1.1 * Cd, regime: "subcritical" });
const nu = 0.855e-6;

describe("endRelief(lengthOverWidth, regime)", () => {
  // White, Fluid Mechanics, table 7.3 (from memory); Aeronautical Engineer's Data Book, fig. 5.13b.
  it.each([
    [1, 0.64 / 1.2, 0.63 / 1.2],
    [2, 0.68 / 1.2, 0.68 / 1.2],
    [5, 0.74 / 1.2, 0.74 / 1.2],
    [10, 0.82 / 1.2, 0.82 / 1.2],
  ])(
    "below the crisis at length/diameter %d its band holds White's and the Data Book's ratio",
    (ratio, white, book) => {
      const relief = endRelief(ratio, "subcritical");
      for (const published of [white, book]) {
        expect(relief.low).toBeLessThanOrEqual(published + 1e-12);
        expect(relief.high).toBeGreaterThanOrEqual(published - 1e-12);
        expect(Math.abs(relief.expected / published - 1)).toBeLessThan(0.1);
      }
    },
  );

  it("is weaker above the crisis than below it, for any length", () => {
    for (const ratio of [0.2, 0.375, 1, 2, 5, 20, 80]) {
      expect(endRelief(ratio, "supercritical").expected).toBeGreaterThan(endRelief(ratio, "subcritical").expected);
    }
  });

  it("keeps low <= expected <= high and falls as the body gets shorter", () => {
    for (const regime of ["subcritical", "critical", "supercritical"] as const) {
      let last = 0;
      for (let ratio = 0.05; ratio < 200; ratio *= 1.3) {
        const relief = endRelief(ratio, regime);
        expect(relief.low).toBeLessThanOrEqual(relief.expected);
        expect(relief.expected).toBeLessThanOrEqual(relief.high);
        expect(relief.expected).toBeGreaterThanOrEqual(last - 1e-12);
        last = relief.expected;
      }
    }
  });
});

describe("edgeOnDrag(shape, sections, speed, viscosity)", () => {
  const sections = { plan: level(1.2), profile: [{ chordRatio: 1, drag: level(0.7) }] };
  const shape = { diameter: 0.08, thickness: 0.03, frontalArea: 0.0024 };

  it("a cylinder as long as wide has the measured 0.64 (White, table 7.3, from memory), within the band and 8 %", () => {
    const drag = unwrap(edgeOnDrag({ diameter: 0.05, thickness: 0.05, frontalArea: 0.0025 }, sections, 1, nu));
    expect(drag.planShare).toBe(1);
    expect(Math.abs(drag.dragCoefficient.expected / 0.64 - 1)).toBeLessThan(0.08);
    expect(drag.dragCoefficient.low).toBeLessThan(0.64);
    expect(drag.dragCoefficient.high).toBeGreaterThan(0.64);
  });

  it("names its area and says in plain words that short bodies are an extrapolation", () => {
    const drag = unwrap(edgeOnDrag(shape, sections, 2, nu));
    expect(drag.referenceAreaName).toBe("frontal area edge-on");
    expect(drag.notes).toContain(endReliefCaution);
    expect(drag.dragArea.expected).toBeCloseTo(drag.dragCoefficient.expected * 0.0024, 15);
    expect(drag.dragCoefficient.low).toBeLessThan(Math.min(drag.planEstimate.expected, drag.profileEstimate.expected));
    expect(drag.dragCoefficient.high).toBeGreaterThan(
      Math.max(drag.planEstimate.expected, drag.profileEstimate.expected),
    );
  });

  it("equal strips integrate to their own coefficient, and a chord-proportional one to pi/4 of it", () => {
    const even = unwrap(edgeOnDrag(shape, sections, 2, nu));
    expect(even.profileEstimate.expected).toBeCloseTo(0.7 * endRelief(8 / 3, "subcritical").expected, 12);
    const proportional = [
      { chordRatio: 1e-9, drag: level(1e-9) },
      { chordRatio: 1, drag: level(1) },
    ];
    const graded = unwrap(edgeOnDrag(shape, { ...sections, profile: proportional }, 2, nu));
    expect(graded.profileEstimate.expected).toBeCloseTo((Math.PI / 4) * endRelief(8 / 3, "subcritical").expected, 6);
  });

  it("asks each section at its own Reynolds number: diameter for the plan, thickness for the profile", () => {
    const seen: number[] = [];
    const spy: SectionDragCurve = (Re) => {
      seen.push(Re);
      return { low: 1, expected: 1, high: 1, regime: null };
    };
    unwrap(edgeOnDrag(shape, { plan: spy, profile: [{ chordRatio: 1, drag: spy }] }, 2, nu));
    expect(seen[0]).toBeCloseTo((2 * 0.08) / nu, 6);
    expect(seen[1]).toBeCloseTo((2 * 0.03) / nu, 6);
  });

  it("standing on the floor it is half of a body twice as long: the plan has less end relief", () => {
    const open = unwrap(edgeOnDrag(shape, sections, 2, nu));
    const floor = unwrap(edgeOnDrag(shape, sections, 2, nu, { kind: "floor", gap: 0 }));
    expect(floor.planEstimate.expected).toBeCloseTo(1.2 * endRelief(0.75, "subcritical").expected, 12);
    expect(floor.planEstimate.expected).toBeGreaterThan(open.planEstimate.expected);
    expect(floor.notes.join(" ")).toContain("outside, do not rely on it");
    expect(open.notes.join(" ")).not.toContain("floor");
  });

  it("half a thickness above the floor the plan has the end relief of open water, in between less", () => {
    const open = unwrap(edgeOnDrag(shape, sections, 2, nu));
    const plan = (gap: number) =>
      unwrap(edgeOnDrag(shape, sections, 2, nu, { kind: "floor", gap })).planEstimate.expected;
    expect(plan(0.015)).toBeCloseTo(open.planEstimate.expected, 12);
    expect(plan(0.0075)).toBeCloseTo(1.2 * endRelief(0.375 * 1.5, "subcritical").expected, 12);
    expect(plan(0)).toBeGreaterThan(plan(0.0075));
  });

  it("each end of a band that holds two states has the end relief of its own state's regime", () => {
    const two: SectionDragCurve = () => ({
      low: 0.3,
      expected: 1.2,
      high: 1.2,
      regime: "subcritical",
      lowRegime: "supercritical",
    });
    const drag = unwrap(edgeOnDrag(shape, { ...sections, plan: two }, 2, nu));
    expect(drag.planEstimate.low).toBeCloseTo(0.3 * endRelief(0.375, "supercritical").low, 12);
    expect(drag.planEstimate.expected).toBeCloseTo(1.2 * endRelief(0.375, "subcritical").expected, 12);
  });

  it("refuses a speed of 0 and chords that do not rise", () => {
    expect(edgeOnDrag(shape, sections, 0, nu).ok).toBe(false);
    const bad = [sections.profile[0], sections.profile[0]];
    expect(edgeOnDrag(shape, { ...sections, profile: bad }, 1, nu).ok).toBe(false);
  });
});

describe("tabulatedSectionDrag(points)", () => {
  const point = (reynolds: number, expected: number) => ({
    reynolds,
    low: expected,
    expected,
    high: expected,
    regime: null,
  });

  it("meets its points, is linear in log Re between them and level beyond", () => {
    const curve = tabulatedSectionDrag([point(1e5, 1.2), point(1e6, 0.3)]);
    expect(curve(1e5).expected).toBe(1.2);
    expect(curve(Math.sqrt(1e11)).expected).toBeCloseTo(0.75, 12);
    expect(curve(1e3).expected).toBe(1.2);
    expect(curve(1e8).expected).toBe(0.3);
  });

  it("throws when the Reynolds numbers do not rise", () => {
    expect(() => tabulatedSectionDrag([point(1e5, 1), point(1e5, 1)])).toThrow(RangeError);
    expect(() => tabulatedSectionDrag([])).toThrow(RangeError);
  });
});
