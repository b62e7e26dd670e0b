import { describe, expect, it } from "vitest";
import type { PublishedSource, PublishedValue } from "../published/publishedValue";
import type { PublishedStream, Quantity } from "../published/quantity";
import { rectangle, roughStream, sectionStream, smoothStream } from "../published/streams";
import { quantityKey } from "./before";
import { compareTunnels, tunnelPoints } from "./otherTunnels";
import { rankedPairs, rankingFigures } from "./rankedPairs";
import { isInCrisis, sectionDrags } from "./sectionDrags";

/** A source of point values of drag, invented. */
function source(name: string, points: readonly [PublishedStream, number, number][]): PublishedSource {
  return {
    name,
    nature: "measurement",
    citation: "invented, 2000",
    values: points.map(
      ([stream, reynolds, value]): PublishedValue => ({
        group: "smooth cylinder",
        quantity: { kind: "dragCoefficient", ...stream, reynolds },
        value,
        scatter: { relative: 0.05 },
        grade: "B",
        howObtained: "public copy",
      }),
    ),
  };
}

describe("rankedPairs(drags)", () => {
  const square = sectionStream(rectangle(1));
  const long = sectionStream(rectangle(2));
  const rounded = sectionStream(rectangle(1, 0.2));
  const invented = source("a", [
    [square, 1e5, 2],
    [long, 1e5, 1.6],
    [rounded, 1e5, 1.2],
    [square, 2e5, 1],
    [rounded, 2e5, 1.05],
  ]);

  it("pairs what was measured at one Reynolds number more than 10 % apart, and names what differs", () => {
    const pairs = rankedPairs(sectionDrags([invented], () => 1));
    expect(pairs.map(({ differs }) => differs)).toEqual(["length/height", "corner radius", "several"]);
  });

  it("tells roughness from shape, and pairs no two sources", () => {
    const smooth = smoothStream();
    const rough = roughStream(1e-3);
    const pairs = rankedPairs(
      sectionDrags(
        [
          source("a", [
            [smooth, 1e6, 0.4],
            [rough, 1e6, 0.9],
            [square, 1e6, 2],
          ]),
          source("b", [[smooth, 1e6, 0.2]]),
        ],
        () => 1,
      ),
    );
    expect(pairs.map(({ differs }) => differs)).toEqual(["roughness", "shape", "several"]);
  });

  it("counts the order that the engine gets right, and the root mean square of ln(ratio / published ratio)", () => {
    const answers = new Map<Quantity, number>(
      invented.values.map(({ quantity }, i) => [quantity, [2.2, 1.1, 1.5, 1, 1][i]]),
    );
    const [all] = rankingFigures(rankedPairs(sectionDrags([invented], (quantity) => answers.get(quantity) ?? null)));
    // 2.2 over 1.1 against 2 over 1.6, 2.2 over 1.5 against 2 over 1.2, and 1.1 over 1.5 against 1.6 over 1.2.
    const errors = [Math.log(1.6), Math.log(0.88), Math.log(0.55)];
    expect(all).toMatchObject({ pairs: 3, right: 2 });
    expect(all.rmsRatioError).toBeCloseTo(Math.hypot(...errors) / Math.sqrt(3), 12);
  });

  it("takes a pair without an answer as not right", () => {
    const pairs = rankedPairs(sectionDrags([invented], () => null));
    expect(pairs.every(({ right, ratioError }) => !right && ratioError === null)).toBe(true);
  });
});

describe("compareTunnels(points, answerOf)", () => {
  const reynolds = [2e4, 3e4, 4e4, 6e4, 8e4, 1e5];
  const tunnel = (name: string, factor: number) =>
    source(
      name,
      reynolds.map((each) => [smoothStream(), each, factor * 1.2]),
    );

  it("finds the offset between two tunnels and that of the engine from each", () => {
    const offset = 0.1;
    const points = tunnelPoints([tunnel("a", 1), tunnel("b", Math.exp(offset))]);
    const [below, next] = compareTunnels(points, () => 1.2);
    expect(below).toMatchObject({ tunnels: 2, points: 12 });
    expect(below.otherTunnels).toBeCloseTo(offset, 12);
    // The engine agrees with a and is off b by the offset.
    expect(below.engine).toBeCloseTo(offset / Math.SQRT2, 12);
    expect(next).toMatchObject({ tunnels: 0, otherTunnels: null, engine: null });
  });

  it("leaves out experiments of few points, and points that no other tunnel covers", () => {
    const few = source("few", [[smoothStream(), 5e4, 1]]);
    expect(new Set(tunnelPoints([tunnel("a", 1), few]).map(({ experiment }) => experiment))).toEqual(new Set(["a"]));
    expect(compareTunnels(tunnelPoints([tunnel("a", 1)]), () => 1.2)[0].points).toBe(0);
  });
});

describe("sectionDrags(sources, answerOf)", () => {
  it("leaves out what is only shown, and bounds that lie to one side", () => {
    const { values, ...rest } = source("a", [[smoothStream(), 1e5, 1.2]]);
    const [value] = values;
    const shown: PublishedValue = { ...value, shownOnly: "a second reading" };
    const bound: PublishedValue = { ...value, scatter: { relativeBelow: 0.5, relativeAbove: 0 } };
    expect(sectionDrags([{ ...rest, values: [value, shown, bound] }], () => 1)).toHaveLength(1);
  });

  it("knows the crisis of circles alone", () => {
    const at = (stream: PublishedStream, reynolds: number) =>
      isInCrisis(sectionDrags([source("a", [[stream, reynolds, 0.7]])], () => 1)[0]);
    expect(at(smoothStream(), 3e5)).toBe(true);
    expect(at(smoothStream(), 1e5)).toBe(false);
    expect(at(sectionStream(rectangle(1)), 3e5)).toBe(false);
  });
});

describe("quantityKey(quantity)", () => {
  it("tells quantities apart by every number in them", () => {
    const stream = smoothStream();
    const keys = [1e5, 1.0001e5].map((each) => quantityKey({ kind: "dragCoefficient", ...stream, reynolds: each }));
    expect(new Set(keys).size).toBe(2);
    expect(quantityKey({ kind: "strouhal", ...stream, reynolds: 1e5 })).not.toBe(keys[0]);
  });
});
