import { describe, expect, it } from "vitest";
import type { FlowCondition } from "../../shared/engine/condition";
import { judgeApplicability } from "../../shared/engine/trust/applicability";
import { CHECKED_BANDS } from "../../shared/engine/trust/checkedBands";
import { shapeFamily } from "../../shared/engine/trust/shapeFamily";
import { circle, described, rectangle, sampleTable } from "./sampleTable";

const quiet: FlowCondition = { reynolds: 2e5, sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.001 };
const judge = (section: Parameters<typeof judgeApplicability>[0], change: Partial<FlowCondition> = {}) =>
  judgeApplicability(section, { ...quiet, ...change }, sampleTable);

describe("shapeFamily(section, condition)", () => {
  it("tells smooth from rough circles and sharp from rounded rectangles", () => {
    expect(shapeFamily(circle, quiet)).toBe("smooth circle");
    expect(shapeFamily(circle, { ...quiet, sandGrainRoughnessRatio: 1e-3 })).toBe("rough circle");
    expect(shapeFamily(rectangle(2, 0.02), quiet)).toBe("sharp rectangle");
    expect(shapeFamily(rectangle(2, 0.1), quiet)).toBe("rounded rectangle");
  });
});

describe("judgeApplicability(section, condition, table): inside the checked range", () => {
  it("is a circle in any checked stream, and a shape of the table in a quiet one, without a reason", () => {
    for (const judged of [
      judge(circle),
      judge(circle, { sandGrainRoughnessRatio: 3e-3, reynolds: 1e6 }),
      judge(circle, { turbulenceIntensity: 0.05 }),
      judge(circle, { turbulenceIntensity: 0 }),
      judge(circle, { sandGrainRoughnessRatio: 0 }),
      judge(rectangle(1, 0.2)),
      judge(rectangle(1.05, 0.22)),
      judge(described({ family: "ellipse", length: 2, height: 1 })),
    ]) {
      expect(judged).toMatchObject({ applicability: "inside the checked range", reason: null });
    }
  });
});

describe("judgeApplicability(section, condition, table): between checked shapes", () => {
  const between = (judged: ReturnType<typeof judge>, reason: RegExp) => {
    expect(judged.applicability).toBe("between checked shapes");
    expect(judged.reason).toMatch(reason);
  };

  it("is a shape surrounded by those of the table", () => {
    between(judge(rectangle(8 / 3, 0.2)), /corner radius lie between those of the checked rectangles/);
    between(judge(described({ family: "ellipse", length: 3, height: 1 })), /between those of the checked ellipses/);
    between(
      judge(described({ family: "superellipse", length: 2, height: 1, exponent: 3 })),
      /between an ellipse and a rectangle/,
    );
  });

  it("is a checked shape with a roughness, turbulence or low Re that only circles were checked at", () => {
    between(
      judge(rectangle(1, 0.2), { sandGrainRoughnessRatio: 1e-3 }),
      /rougher than ks\/D 1e-5 were checked on circles/,
    );
    expect(judge(rectangle(1, 0.2), { sandGrainRoughnessRatio: 1e-3 }).roughnessUnchecked).toBe(true);
    between(judge(rectangle(1, 0.2), { turbulenceIntensity: 0.02 }), /Turbulence above 0.1 % was checked on circles/);
    between(
      judge(rectangle(1, 0.2), { reynolds: 3e4 }),
      /Re below 1e5 was checked on circles, not on rounded rectangles/,
    );
  });
});

describe("judgeApplicability(section, condition, table): outside", () => {
  const outside = (judged: ReturnType<typeof judge>, reason: RegExp) => {
    expect(judged.applicability).toBe("outside: do not rely on it");
    expect(judged.reason).toMatch(reason);
    expect(judged.reason).toMatch(/^[^.].*\.$/);
  };

  it("says which range of the stream was left", () => {
    outside(judge(circle, { reynolds: 5e3 }), /Re lies below 1e4, the lowest checked/);
    outside(judge(circle, { reynolds: 2e7 }), /Re lies above 1e7, the highest checked on smooth circles/);
    outside(
      judge(rectangle(1, 0.2), { reynolds: 5e6 }),
      /Re lies above 2e6, the highest checked on rounded rectangles/,
    );
    outside(judge(circle, { sandGrainRoughnessRatio: 0.03 }), /ks\/D lies above 0.01, the roughest wall checked/);
    outside(judge(circle, { sandGrainRoughnessRatio: 0, reynolds: 5e6 }), /ks\/D lies below 1e-5, the smoothest wall/);
    outside(judge(circle, { turbulenceIntensity: 0.15 }), /turbulence lies above 9 %/);
    outside(judge(circle, { trips: [{ side: "upper", arcRatio: 0.4, heightRatio: 0.01 }] }), /Trips were not checked/);
  });

  it("says which range of shapes was left", () => {
    outside(
      judge(described({ family: "ellipse", length: 6, height: 1 })),
      /Length\/height lies above 4, the most checked on ellipses/,
    );
    outside(judge(rectangle(8 / 3, 0.5)), /corners are rounder than those of any checked rectangle/);
    outside(
      judge(described({ family: "roundedRectangle", length: 2, height: 1, edgeRadius: 0.2 }, 0.1)),
      /inclined to the stream were not checked/,
    );
    outside(judge({ ...circle, nearFloor: true }), /near a floor were not checked/);
    outside(
      judge(described({ family: "roundedTriangle", length: 1, height: 1, cornerRadius: 0.05, apex: "forward" })),
      /not lie between an ellipse and a rectangle/,
    );
  });
});

describe("the checked ranges in use", () => {
  it("call the cylinder of every textbook inside: Re 1e5 and 5e6, ks/D 1e-5, Tu 0.1 %", () => {
    for (const reynolds of [1e5, 5e6]) {
      expect(judgeApplicability(circle, { ...quiet, reynolds }, CHECKED_BANDS).applicability).toBe(
        "inside the checked range",
      );
    }
  });

  it("call a sharp square at Re 1e5 inside, a puck's profile 80 x 30 mm with rounded edges between, Re 1e8 outside", () => {
    const at = (section: Parameters<typeof judgeApplicability>[0], reynolds: number) =>
      judgeApplicability(section, { ...quiet, reynolds }, CHECKED_BANDS).applicability;
    expect(at(rectangle(1, 0.01), 1e5)).toBe("inside the checked range");
    expect(at(rectangle(8 / 3, 0.2), 1.5e5)).toBe("between checked shapes");
    expect(at(circle, 1e8)).toBe("outside: do not rely on it");
  });
});
