import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CHECKED_BANDS } from "../../shared/engine/trust/checkedBands";
import { bandsFile } from "../accuracy/bandsFile";
import { bandError, leftOutQuantile } from "../accuracy/fitBands";

const errors = (source: string, ...values: number[]) => values.map((error) => ({ source, error }));

describe("leftOutQuantile(errors)", () => {
  it("of one source is the least that nine in ten do not exceed", () => {
    expect(leftOutQuantile(errors("a", 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1))).toBe(0.9);
    expect(leftOutQuantile(errors("a", 0.3, 0.1, 0.2))).toBe(0.3);
  });

  it("of several is the largest that is left without one: a good source with many values cannot hide a poor one", () => {
    const many = errors("good", ...Array.from({ length: 60 }, () => 0.01));
    expect(leftOutQuantile([...many, ...errors("poor", 0.2, 0.3)])).toBe(0.3);
  });
});

describe("bandError(published, predicted)", () => {
  it("is a fraction of the prediction, absolute over 0.3 when that is small", () => {
    expect(bandError(1.1, 1)).toBeCloseTo(0.1, 12);
    expect(bandError(0.2, 0.1)).toBeCloseTo(1 / 3, 12);
  });
});

describe("bandsFile(table)", () => {
  it("writes the file in use from the table in it", () => {
    const file = new URL("../../shared/engine/trust/checkedBands.ts", import.meta.url);
    expect(readFileSync(file, "utf8")).toBe(bandsFile(CHECKED_BANDS));
  });
});
