import { describe, expect, test } from "vitest";
import { separationRoughnessFigure } from "../../src/app/plots/separationRoughnessFigure";
import { readSectionScreen } from "../../src/app/section/readSectionScreen";
import { firstTools } from "../../src/app/section/sectionTools";
import { lightPalette } from "../../src/app/style/palette";

const screen = {
  design: "{}",
  pins: ["{}"],
  positionMeasure: "arc",
  pattern: { kind: "dimples", depth: 0.0002, width: 0.003, pitch: 0.004 },
  layerChoice: "all",
} as const;

const read = (change: object) => readSectionScreen(JSON.stringify({ ...screen, ...change }));

describe("readSectionScreen", () => {
  test("design, pins, pattern and layer choice come back as they were", () => {
    expect(read({})).toEqual(screen);
  });

  test("a screen from before there were tools has them as at first", () => {
    expect(read({ pattern: undefined, layerChoice: undefined })).toEqual({ ...screen, ...firstTools });
  });

  test.each([
    ["a pattern of another kind", { pattern: { ...screen.pattern, kind: "spikes" } }],
    ["a pattern with a huge depth", { pattern: { ...screen.pattern, depth: 1e9 } }],
    ["a pattern with text for a length", { pattern: { ...screen.pattern, pitch: "1" } }],
    ["a pattern that is null", { pattern: null }],
  ])("%s is replaced by the first one", (_, change) => {
    expect(read(change)).toEqual({ ...screen, pattern: firstTools.pattern });
  });

  test("a layer choice that is none, or a name of every object, is replaced", () => {
    for (const layerChoice of ["toString", 3, null])
      expect(read({ layerChoice })?.layerChoice).toBe("momentumThickness");
  });

  test.each([
    ["no JSON", "hello"],
    ["null", "null"],
    ["too many pins", JSON.stringify({ ...screen, pins: Array.from({ length: 13 }, () => "{}") })],
    ["pins that are no text", JSON.stringify({ ...screen, pins: [{}] })],
    ["no design", JSON.stringify({ ...screen, design: undefined })],
  ])("%s is no screen", (_, text) => {
    expect(readSectionScreen(text)).toBeNull();
  });
});

test("the plot of separation against roughness says that it has no bands", () => {
  expect(separationRoughnessFigure([], lightPalette).caption).toContain("have no bands");
});
