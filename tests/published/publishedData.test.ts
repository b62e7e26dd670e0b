import { describe, expect, it } from "vitest";
import { gaussIntegral } from "../../shared/numerics/gaussLegendre";
import { conditionText } from "../accuracy/quantityText";
import { calibratedGroups, splitForBands, splitForConstants } from "../accuracy/sourceSplit";
import { roughCriticalReynolds } from "./achenbach-1977";
import { allSources } from "./allSources";
import { codeCylinderDrag } from "./en-1991-1-4";
import { similarLayers } from "./falkner-skan-1931";
import { headCheckValues } from "./head-1958";
import { freeStreamPressure, hiemenzPressure, hiemenzSpeedRatio } from "./hiemenz-1911";
import { howarthStations } from "./howarth-1938";
import { kronauerStreets } from "./kronauer-1964";
import { ludwiegTillmannCheckValues } from "./ludwieg-tillmann-1949";
import { millsHangFriction } from "./mills-hang-1983";
import { norbergStrouhal } from "./norberg";
import { wakeSourceCircles } from "./parkinson-jandali-1970";
import { roughPlate } from "./prandtl-schlichting-1934";
import { experimentOf, scatterHalfWidth } from "./publishedValue";
import { schultzGrunowFriction, schultzGrunowPlate } from "./schultz-grunow-1940";
import { sineStations } from "./terrill-1960";
import { abuGhannamShawCheckValues, mackCheckValues, michelCheckValues } from "./transition-criteria";

describe("every published value", () => {
  it("belongs to a source with its own name and a citation that gives a year or an edition", () => {
    expect(new Set(allSources.map(({ name }) => name)).size).toBe(allSources.length);
    for (const { name, citation, values } of allSources) {
      expect(values.length, name).toBeGreaterThan(0);
      expect(citation, name).toMatch(/(19|20)\d\d|R12-08/);
    }
  });

  it("is finite, with a finite scatter above 0, a grade and how it was obtained", () => {
    for (const { name, values } of allSources) {
      for (const value of values) {
        const text = `${name}: ${value.quantity.kind}, ${conditionText(value.quantity)}`;
        expect(Number.isFinite(value.value), text).toBe(true);
        expect(scatterHalfWidth(value), text).toBeGreaterThan(value.value === 0 ? -1 : 0);
        expect(Number.isFinite(scatterHalfWidth(value)), text).toBe(true);
        expect(["A", "B", "C"], text).toContain(value.grade);
        expect(value.howObtained, text).toMatch(/^(public copy|from memory, (high|medium|low) confidence|computed )/);
      }
    }
  });

  it("that is remembered with low confidence is never a gate", () => {
    for (const { name, values } of allSources) {
      for (const { howObtained, grade } of values) {
        if (howObtained === "from memory, low confidence") expect(grade, name).toBe("C");
      }
    }
  });

  it("stands once in its source and group", () => {
    for (const { name, values } of allSources) {
      const keys = values.map(({ group, quantity }) => `${group} ${JSON.stringify(quantity)}`);
      expect(new Set(keys).size, name).toBe(keys.length);
    }
  });

  it("that is shown only says why, and every splitter plate, simulation and second reading is", () => {
    for (const { name, values } of allSources) {
      for (const { shownOnly } of values) if (shownOnly !== undefined) expect(shownOnly, name).not.toBe("");
    }
    const shown = (name: string) => allSources.find((source) => source.name === name)!.values.map((v) => v.shownOnly);
    for (const name of ["Rodriguez et al. 2015", "Wieselsberger 1921"]) expect(shown(name)).not.toContain(undefined);
  });
});

describe("the split of the published values", () => {
  it.each([
    ["constants", splitForConstants(allSources)],
    ["bands", splitForBands(allSources)],
  ])("for the %s keeps the values of an experiment together", (_, parts) => {
    const seen = new Map<string, string>();
    for (const source of allSources.filter(({ nature }) => nature !== "design code")) {
      for (const value of source.values) {
        const part = parts.get(value);
        if (part === undefined) continue;
        expect(seen.get(experimentOf(source)) ?? part, source.name).toBe(part);
        seen.set(experimentOf(source), part);
      }
    }
    expect(new Set(seen.values())).toEqual(new Set(["fit", "held out"]));
  });

  it("lets no design code and nothing that is only shown fit a constant, and leaves something of every calibrated group to both halves but of rounded rectangles, which go back to one experiment", () => {
    const parts = splitForConstants(allSources);
    for (const { name, nature, values } of allSources) {
      for (const value of values) {
        if (nature === "design code" || value.shownOnly !== undefined) expect(parts.get(value), name).not.toBe("fit");
      }
    }
    for (const group of calibratedGroups) {
      const own = [...parts].filter(([value]) => value.group === group).map(([, part]) => part);
      expect(own, group).toContain("fit");
      if (group !== "rounded rectangles over corner radius") expect(own, group).toContain("held out");
    }
  });
});

describe("tables against their own formulas", () => {
  it("Falkner-Skan 1931: H = delta* / theta within 2e-3, and lambda = beta theta*^2", () => {
    for (const layer of similarLayers) {
      expect(layer.displacementThickness / layer.momentumThickness / layer.shapeFactor).toBeCloseTo(1, 3);
      expect(layer.gradientParameter).toBeCloseTo(layer.beta * layer.momentumThickness ** 2, 4);
      expect(layer.shearParameter).toBeCloseTo(layer.wallCurvature * layer.momentumThickness, 4);
    }
  });

  it("Howarth 1938 and Terrill 1960: H = delta* / theta within 1 %", () => {
    for (const station of [...howarthStations, ...sineStations]) {
      const ratio = station.displacementThickness / station.momentumThickness / station.shapeFactor;
      expect(Math.abs(ratio - 1)).toBeLessThan(0.01);
    }
  });

  it("Hiemenz 1911: pressures follow from the fitted speed within 0.002, speed ratio as in White (1.814, 0.271, 0.0471) within 0.3 %", () => {
    for (const [degrees, pressure] of hiemenzPressure) {
      const speed = hiemenzSpeedRatio((degrees * Math.PI) / 180);
      expect(Math.abs(1 - speed * speed - pressure)).toBeLessThan(0.002);
    }
    for (const x of [0.3, 0.7, 1.1, 1.3]) {
      expect(hiemenzSpeedRatio(x) / (1.814 * x - 0.271 * x ** 3 - 0.0471 * x ** 5)).toBeCloseTo(1, 2);
    }
  });

  it("Hiemenz 1911: the pressures up to separation at 80 degrees, constant behind it, give Cd 1.351, and 1.200 carried over to a free stream", () => {
    const separation = (80 * Math.PI) / 180;
    const confined = (angle: number) => 1 - hiemenzSpeedRatio(Math.min(angle, separation)) ** 2;
    const drag = (pressure: (angle: number) => number) =>
      gaussIntegral((angle) => pressure(angle) * Math.cos(angle), 0, separation) -
      pressure(Math.PI) * Math.sin(separation);
    expect(drag(confined)).toBeCloseTo(1.351, 3);
    expect(drag((angle) => freeStreamPressure(confined(angle)))).toBeCloseTo(1.2, 3);
  });

  it("Schultz-Grunow 1940: measured friction within 1.7 % of his formula", () => {
    for (const [reynoldsX, friction] of schultzGrunowPlate) {
      expect(Math.abs(friction / schultzGrunowFriction(reynoldsX) - 1)).toBeLessThan(0.017);
    }
  });

  it("Prandtl and Schlichting 1934: local and mean friction of the formulas, to the digits given", () => {
    for (const { lengthToRoughness, localFriction, meanFriction } of roughPlate) {
      const decades = Math.log10(lengthToRoughness);
      expect(localFriction).toBeCloseTo((2.87 + 1.58 * decades) ** -2.5, 4);
      expect(meanFriction).toBeCloseTo((1.89 + 1.62 * decades) ** -2.5, 4);
    }
  });

  it("Mills and Hang 1983: 8 to 18 % below Prandtl and Schlichting 1934 from x/ks 1e3 to 1e5", () => {
    for (const { lengthToRoughness, localFriction } of roughPlate.filter((row) => row.lengthToRoughness >= 1e3)) {
      const ratio = millsHangFriction(lengthToRoughness) / localFriction;
      expect(ratio).toBeGreaterThan(0.82);
      expect(ratio).toBeLessThan(0.92);
    }
  });

  it("Head 1958 and Ludwieg-Tillmann 1949: check values of the formulas, to the digits given", () => {
    for (const { shapeFactor: H, headShapeFactor, entrainment } of headCheckValues) {
      const H1 = H <= 1.6 ? 3.3 + 0.8234 * (H - 1.1) ** -1.287 : 3.3 + 1.5501 * (H - 0.6778) ** -3.064;
      expect(headShapeFactor).toBeCloseTo(H1, 3);
      expect(entrainment).toBeCloseTo(0.0306 * (H1 - 3) ** -0.6169, 5);
    }
    for (const { shapeFactor, momentumReynolds, skinFriction } of ludwiegTillmannCheckValues) {
      expect(skinFriction).toBeCloseTo(0.246 * 10 ** (-0.678 * shapeFactor) * momentumReynolds ** -0.268, 6);
    }
  });

  it("Kronauer 1964: each spacing ratio satisfies the condition, and the drag follows from it", () => {
    for (const { speedLag: e, spacingRatio, dragOnSpacing } of kronauerStreets) {
      const p = Math.PI * spacingRatio;
      const coth = 1 / Math.tanh(p);
      expect((1 - 2 * e) * (Math.sinh(p) * Math.cosh(p) - p)).toBeCloseTo(2 * e * coth, 2);
      const drag = 4 * spacingRatio * e * (1 - 2 * e) * coth + (4 / Math.PI) * e * e * coth * coth;
      expect(dragOnSpacing).toBeCloseTo(drag, 3);
    }
  });

  it("transition criteria: check values of Michel, Mack, and Abu-Ghannam and Shaw, to the digits given", () => {
    for (const [reynoldsX, ReTheta] of michelCheckValues) {
      expect(Math.abs(1.174 * (1 + 22400 / reynoldsX) * reynoldsX ** 0.46 - ReTheta)).toBeLessThan(1.5);
    }
    for (const [Tu, N] of mackCheckValues) expect(-8.43 - 2.4 * Math.log(Tu)).toBeCloseTo(N, 1);
    for (const [percent, ReTheta] of abuGhannamShawCheckValues) {
      expect(Math.abs(163 + Math.exp(6.91 - percent) - ReTheta)).toBeLessThan(1.5);
    }
  });

  it("Parkinson and Jandali 1970: no pressure above stagnation, and the lowest is the lowest listed", () => {
    for (const { lowestPressure, pressureAt30_45_60_70 } of wakeSourceCircles) {
      expect(Math.max(...pressureAt30_45_60_70)).toBeLessThan(1);
      expect(lowestPressure).toBeLessThanOrEqual(Math.min(...pressureAt30_45_60_70) + 1e-3);
    }
  });

  it("EN 1991-1-4, Norberg 2003, Achenbach 1977: the values listed in handbooks", () => {
    expect(codeCylinderDrag(3e6, 1e-5)).toBeCloseTo(0.6, 2);
    expect(codeCylinderDrag(1e6, 1e-3)).toBeCloseTo(0.84, 2);
    expect(codeCylinderDrag(1e7, 1e-2)).toBeCloseTo(1.07, 2);
    expect(norbergStrouhal(1e4)).toBeCloseTo(0.201, 3);
    expect(norbergStrouhal(1e5)).toBeCloseTo(0.186, 3);
    expect(roughCriticalReynolds(4.5e-3)).toBeCloseTo(8.94e4, -2);
  });
});
