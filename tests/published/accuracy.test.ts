import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { CHECKED_ERRORS } from "../../shared/engine/trust/checkedErrors";
import { checkedLevel } from "../../shared/engine/trust/errorData";
import { type AccuracyTable, accuracyTable } from "../accuracy/accuracyTable";
import { bandsFile } from "../accuracy/bandsFile";
import { errorsFile } from "../accuracy/errorsFile";
import { accuracyReport } from "../accuracy/report";
import { allSources } from "./allSources";
import { knownMisses } from "./knownMisses";

let table: AccuracyTable;

beforeAll(() => {
  table = accuracyTable(allSources);
}, 300_000);

const label = (row: { source: string; quantity: string; condition: string }) =>
  `${row.source} | ${row.quantity} | ${row.condition}`;

describe("grade A values", () => {
  it("that are counted lie within the scatter of their source, but for the known misses", () => {
    const counted = table.rows.filter(({ grade, shownOnly }) => grade === "A" && shownOnly === null);
    const missed = counted.filter(({ insideScatter }) => insideScatter !== true).map(label);
    const known = new Set(knownMisses.flatMap(({ values }) => values));
    expect(missed.filter((miss) => !known.has(miss))).toEqual([]);
  });

  it("on the list of known misses are still missed: one that is met belongs behind the gate", () => {
    const met = new Set(table.rows.filter((row) => row.insideScatter === true).map(label));
    const all = new Set(table.rows.map(label));
    for (const { values } of knownMisses) {
      expect(values.filter((value) => met.has(value) || !all.has(value))).toEqual([]);
    }
  });
});

describe("README.md of the published values", () => {
  it("is what `npm run accuracy` writes now", () => {
    expect(readFileSync(new URL("README.md", import.meta.url), "utf8")).toBe(accuracyReport(table));
  });
});

describe("the stated 90 % bands", () => {
  it("are in shared/engine/trust/checkedBands.ts as `npm run accuracy` writes them now", () => {
    const file = new URL("../../shared/engine/trust/checkedBands.ts", import.meta.url);
    expect(readFileSync(file, "utf8")).toBe(bandsFile(table.bands));
  });

  it("cover at least 80 % of the drag coefficients of experiments held out", () => {
    const all = table.coverage.find(({ group, half }) => group === "all" && half === "held out")!;
    expect(all.count).toBeGreaterThan(60);
    expect(all.covered / all.count).toBeGreaterThanOrEqual(0.8);
  });

  it("stand beside every drag coefficient of a section that is in one regime, and beside nothing else", () => {
    for (const row of table.rows) {
      const isDrag = ["dragCoefficient", "meanDragCoefficient", "lowestDragCoefficient"].includes(row.quantity);
      expect(row.band !== null, label(row)).toBe(isDrag && row.regime !== null);
    }
  });
});

describe("the errors that the error model is conditioned on", () => {
  it("are in shared/engine/trust/checkedErrors.ts as `npm run accuracy` writes them now", () => {
    const file = new URL("../../shared/engine/trust/checkedErrors.ts", import.meta.url);
    const { fittedOn, parameters } = CHECKED_ERRORS;
    expect(readFileSync(file, "utf8")).toBe(errorsFile(fittedOn, parameters, table.levelData));
  });

  it("come back from the file's lines to the digits that are written", () => {
    const { data } = checkedLevel(CHECKED_ERRORS);
    expect(data).toHaveLength(table.levelData.length);
    data.forEach((datum, i) => {
      const { point, error, source } = table.levelData[i];
      expect(datum.source).toBe(source);
      expect(datum.point.regime).toBe(point.regime);
      expect(Math.abs(datum.error - error)).toBeLessThan(1e-4);
      expect(Math.abs(datum.point.logReynolds - point.logReynolds)).toBeLessThan(1e-4);
    });
  });

  it("cover 85 to 95 % of what experiments left out measured, and score at least 15 % better than half-widths", () => {
    const all = table.trust.bands.find(({ name }) => name === "all")!;
    expect(all.covered / all.count).toBeGreaterThanOrEqual(0.85);
    expect(all.covered / all.count).toBeLessThanOrEqual(0.95);
    expect(all.score / all.bandsScore).toBeLessThanOrEqual(0.85);
  });

  it("give probabilities of which 95 % of those from 0.9 on are right", () => {
    expect(table.trust.decidedRight / table.trust.decided).toBeGreaterThanOrEqual(0.95);
  });
});

describe("accuracyTable(sources)", () => {
  it("never invents an answer: a value without one has no error, and says why", () => {
    for (const row of table.rows) {
      expect(row.error === null).toBe(row.predicted === null);
      expect(row.insideScatter === null).toBe(row.predicted === null);
      if (row.predicted === null) expect(row.note, label(row)).toBeTruthy();
      else expect(Number.isFinite(row.predicted), label(row)).toBe(true);
    }
  });

  it("counts every value that is not only shown in exactly one summary", () => {
    const counted = table.rows.filter(({ shownOnly }) => shownOnly === null);
    expect(table.summaries.reduce((sum, { count }) => sum + count, 0)).toBe(counted.length);
    expect(table.figures.counted).toBe(counted.length);
  });
});
