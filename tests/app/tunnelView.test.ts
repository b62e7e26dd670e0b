import { resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { demoDesign } from "../../shared/case/design";
import type { TunnelResult } from "../../shared/jobs/tunnel/tunnelResult";
import { asScatter } from "../../src/app/plots/scatterTrace";
import { darkPalette, lightPalette } from "../../src/app/style/palette";
import { budgetFigure } from "../../src/app/tunnel/budgetFigure";
import { leftOutOfTunnel } from "../../src/app/tunnel/leftOutOfTunnel";
import { offeredSet } from "../../src/app/tunnel/offeredSet";
import { tapFigure, wakeFigure } from "../../src/app/tunnel/surveyFigures";
import { readTunnelCase, tunnelCaseText } from "../../src/app/tunnel/tunnelCaseText";
import { tunnelDragFigure } from "../../src/app/tunnel/tunnelDragFigure";
import { enterField, facilityFields, fieldText, fullScaleFields, modelFields } from "../../src/app/tunnel/tunnelFields";
import { startTunnel, type TunnelInputs } from "../../src/app/tunnel/tunnelInputs";
import { openCaseFile } from "../../src/cli/openCaseFile";

let result: TunnelResult;
let inputs: TunnelInputs;

beforeAll(() => {
  const name = "harbour-tunnel-section.json";
  const opened = openCaseFile(resolve(import.meta.dirname, "../../cases", name), name);
  if (!opened.ok) throw new Error(opened.problem.message);
  result = runCase(opened.value.theCase).tunnel!;
  const reading = readTunnelCase(JSON.stringify(opened.value.document));
  if (!reading.ok) throw new Error(reading.problems[0].message);
  inputs = reading.value;
});

describe("tunnel figures", () => {
  it("drag: prediction with its band, both directions measured with their bars, other corrections, every number in the table", () => {
    const figure = tunnelDragFigure(result, lightPalette);
    const names = figure.data.map((trace) => asScatter(trace).name ?? "");
    for (const part of [
      "prediction, band",
      "predicted in the tunnel's turbulence",
      "no correction",
      "Maskell (1963)",
      "measured, speed falling (Allen",
    ]) {
      expect(names.some((name) => name.includes(part))).toBe(true);
    }
    expect(figure.caption).toContain("frontal width x span");
    expect(figure.table.rows).toHaveLength(20);
    expect(figure.table.rows.every((row) => row.length === figure.table.columns.length)).toBe(true);
    expect(tunnelDragFigure({ ...result, reduction: null }, darkPalette).table.rows).toEqual([]);
  });

  it("budget: what is stacked adds up to 100 % at every speed", () => {
    const { data, table } = budgetFigure(result.reduction!.points, "rising", lightPalette);
    for (let i = 0; i < table.rows.length; i++) {
      const sum = data.reduce((total, trace) => total + (asScatter(trace).y?.[i] ?? 0), 0);
      expect(sum).toBeCloseTo(100, 6);
    }
  });

  it("wake and taps: pressures over the dynamic pressure, taps with their residuals", () => {
    const traverse = {
      position: Float64Array.of(-0.1, 0, 0.1),
      totalPressure: Float64Array.of(50, 25, 50),
      staticPressure: null,
      dynamicPressure: 50,
    };
    expect(wakeFigure(traverse, lightPalette).table.rows[1]).toEqual([0, 0.5, null]);
    const taps = tapFigure(result.pressureTaps!, lightPalette);
    expect(taps.table.rows).toHaveLength(36);
    expect(taps.data).toHaveLength(2);
  });
});

describe("enterField(block, field, text)", () => {
  const { block } = startTunnel;
  const [scale, roughness] = modelFields;
  const [speeds] = fullScaleFields;
  const noise = facilityFields.find(({ path }) => path.at(-1) === "noiseNewtons")!;

  it("takes decimal commas, units of the field and lists, and shows them again", () => {
    const rough = enterField(block, roughness, "12,5");
    expect(rough.ok && rough.block.model.sandGrainRoughnessMetres).toBeCloseTo(1.25e-5, 12);
    expect(rough.ok && fieldText(rough.block, roughness)).toBe("12.5");
    const list = enterField(block, speeds, "1; 2,5 4");
    expect(list.ok && list.block.fullScale.speedsMetresPerSecond).toEqual([1, 2.5, 4]);
  });

  it("an empty field takes an optional key away, also one that is not there yet", () => {
    const none = enterField(block, noise, " ");
    expect(none.ok && none.block.facility.balance.noiseNewtons).toBeUndefined();
    const some = enterField(block, noise, "0.02");
    expect(some.ok && some.block.facility.balance.noiseNewtons).toBe(0.02);
  });

  it.each([
    [roughness, "x", 'is "x"; it must be a number'],
    [scale, "0", "model.scale is 0; it must be a number from 0.01 to 100"],
    [speeds, "", "it must be numbers set apart by semicolons"],
    [speeds, "1; -2", "it must be a number above 0"],
  ])("refuses %#", (field, text, message) => {
    const entry = enterField(block, field, text);
    expect(entry.ok ? "accepted" : entry.message).toContain(message);
  });
});

describe("leftOutOfTunnel(design)", () => {
  it("names floor, incidence and trips that a tunnel test has not, and nothing for a plain section", () => {
    expect(leftOutOfTunnel(demoDesign)).toBeNull();
    const trip = { side: "upper" as const, arc: 0.01, height: 1e-4 };
    const sentence = leftOutOfTunnel({ floorGap: 0.0125, incidence: Math.PI / 36, trips: [trip, trip] });
    expect(sentence).toContain("the floor 12.5 mm below it, its incidence of 5°, its 2 trips.");
    expect(leftOutOfTunnel({ ...demoDesign, floorGap: 0 })).toContain("the floor it lies on.");
  });
});

describe("a tunnel case of the page", () => {
  it("comes back from its own text, and says what is wrong with another", () => {
    const reading = readTunnelCase(tunnelCaseText(inputs));
    expect(reading.ok && reading.value).toEqual(inputs);
    const refused = readTunnelCase('{"tunnel": {"model": 3}}');
    expect(refused.ok ? [] : refused.problems.map(({ field }) => field)).toContain("tunnel.model");
  });

  it("offers a section's points for comparison, corrected as reported, and a puck's as the whole puck in its attitude", () => {
    const set = offeredSet(inputs, result);
    expect(set).toMatchObject({ kind: "tunnelTest", blockageCorrected: true, turbulencePercent: 0.3 });
    expect(set?.points).toHaveLength(20);
    const puck = offeredSet({ ...inputs, block: { ...inputs.block, model: startTunnel.block.model } }, result);
    expect(puck).toMatchObject({ attitude: "edgeOn", puck: { diameterMetres: 0.08, thicknessMetres: 0.03 } });
    expect(puck).not.toHaveProperty("section");
    expect(offeredSet(inputs, { ...result, reduction: null })).toBeNull();
  });
});
