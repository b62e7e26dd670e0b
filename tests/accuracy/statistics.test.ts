import { describe, expect, it } from "vitest";
import type { PublishedSource } from "../published/publishedValue";
import { smoothStream } from "../published/streams";
import { type AccuracyRow, accuracyRow } from "./accuracyRow";
import { disagreements } from "./disagreement";
import { leaveOneSourceOut } from "./leaveOneSourceOut";
import { notPredicted, predicted } from "./prediction";
import { compact } from "./quantityText";
import { summarise } from "./summary";

/** A source of drag coefficients of 1.0 at rising Reynolds numbers. */
function source(name: string, count: number): PublishedSource {
  return {
    name,
    nature: "measurement",
    citation: "invented for this test, 2000",
    values: Array.from({ length: count }, (_, i) => ({
      group: "smooth cylinder",
      quantity: { kind: "dragCoefficient", ...smoothStream(), reynolds: 1e5 * 2 ** i },
      value: 1,
      scatter: { absolute: 0.05 },
      grade: "B",
      howObtained: "public copy",
    })),
  };
}

function rowsOf(from: PublishedSource, predictions: readonly (number | null)[]): AccuracyRow[] {
  return from.values.map((value, i) => {
    const answer = predictions[i];
    return accuracyRow(
      from,
      value,
      null,
      answer === null ? notPredicted("no state") : predicted(answer, "subcritical"),
    );
  });
}

describe("accuracyRow(source, value, half, prediction)", () => {
  it("gives the error as a fraction of a drag coefficient, and whether it is inside the scatter", () => {
    const [inside, outside, missing] = rowsOf(source("a", 3), [1.04, 1.1, null]);
    expect(inside.error).toBeCloseTo(0.04, 12);
    expect(inside.insideScatter).toBe(true);
    expect(outside.insideScatter).toBe(false);
    expect([missing.error, missing.insideScatter, missing.note]).toEqual([null, null, "no state"]);
  });

  it("gives the error of a pressure coefficient in its own unit", () => {
    const [value] = source("a", 1).values;
    const pressure = {
      ...value,
      value: -1.2,
      quantity: { kind: "basePressureCoefficient" as const, ...smoothStream(), reynolds: 1e5 },
    };
    expect(accuracyRow(source("a", 1), pressure, null, predicted(-1.1)).error).toBeCloseTo(0.1, 12);
  });
});

describe("summarise(rows)", () => {
  it("has mean, RMS and signed worst error of the answers, and counts values without one apart", () => {
    const rows = rowsOf(source("a", 3), [1.1, 0.7, 1.2]);
    const [all] = summarise(rows);
    expect(all.count).toBe(3);
    expect(all.meanError).toBeCloseTo(0, 12);
    expect(all.rmsError).toBeCloseTo(Math.sqrt((0.01 + 0.09 + 0.04) / 3), 12);
    expect(all.worstError).toBeCloseTo(-0.3, 12);
    expect(summarise(rowsOf(source("a", 1), [null]))[0]).toMatchObject({ count: 1, missing: 1, rmsError: null });
  });
});

describe("leaveOneSourceOut(rows)", () => {
  it("judges each source by the errors of the others", () => {
    const rows = [...rowsOf(source("a", 2), [1.1, 0.9]), ...rowsOf(source("b", 2), [1.5, 1.1])];
    const [band] = leaveOneSourceOut(rows);
    // a against RMS of b (0.36): both inside; b against RMS of a (0.1, band 0.16): one inside.
    expect(band).toMatchObject({ sources: 2, count: 4, coverage: 0.75 });
    expect(band.largestRmsWithoutOne).toBeCloseTo(Math.sqrt(0.13), 12);
  });

  it("says nothing about a regime that one source alone covers", () => {
    expect(leaveOneSourceOut(rowsOf(source("a", 3), [1, 1, 1]))).toEqual([]);
  });
});

describe("disagreements(sources, predictionOf)", () => {
  it("spans the band of the sources at one condition and places the engine in it", () => {
    const a = source("a", 1);
    const b = { ...source("b", 1), values: source("b", 1).values.map((value) => ({ ...value, value: 1.3 })) };
    const [band] = disagreements([a, b], () => predicted(1.2));
    expect(band).toMatchObject({ lowest: 0.95, highest: 1.35, inside: true, sources: ["a", "b"] });
    expect(disagreements([a, b], () => predicted(1.4))[0].inside).toBe(false);
    expect(disagreements([a], () => predicted(1.2))).toEqual([]);
  });
});

describe("compact(value, digits)", () => {
  it("keeps the digits and drops trailing zeros", () => {
    expect([0, 1.2345, 0.00123, 35000, 1e7, 123456].map((value) => compact(value))).toEqual([
      "0",
      "1.23",
      "1.23e-3",
      "3.5e4",
      "1e7",
      "1.23e5",
    ]);
    expect(compact(0.24989, 4)).toBe("0.2499");
  });
});
