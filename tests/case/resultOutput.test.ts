import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { csvColumns, resultCsv } from "../../shared/case/resultCsv";
import { resultTable } from "../../shared/case/resultTable";
import { nothingFound, rowOf, sampleResults, sampleRow } from "./sampleResults";

describe("resultCsv(results)", () => {
  it("has a column for every key of a row", () => {
    expect(csvColumns).toEqual(expect.arrayContaining(Object.keys(sampleRow())));
    expect(new Set(csvColumns).size).toBe(csvColumns.length);
  });

  it("reads back as the rows, null as an empty field", () => {
    const rows = [sampleRow(), rowOf(nothingFound, "falling")];
    const parsed = Papa.parse<Record<string, unknown>>(resultCsv(sampleResults(rows)), {
      header: true,
      dynamicTyping: true,
      skipEmptyLines: true,
    });
    expect(parsed.errors).toEqual([]);
    expect(parsed.data).toHaveLength(2);
    for (const [i, row] of rows.entries()) expect(parsed.data[i]).toMatchObject(row);
  });

  it("quotes commas, quotation marks and line breaks, and disarms formulas", () => {
    const csv = resultCsv(sampleResults([sampleRow({ name: '=1+1, "a"\nb' })]));
    const parsed = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
    expect(parsed.data[0].section).toBe(`'=1+1, "a"\nb`);
  });

  it("keeps negative numbers numbers", () => {
    expect(resultCsv(sampleResults([sampleRow()]))).toContain(",-1.19,-1.31,");
  });
});

describe("resultTable(results)", () => {
  it("names the reference area, the caution and the program, and starts a group for every roughness and turbulence", () => {
    const table = resultTable(
      sampleResults([sampleRow(), sampleRow({ reynolds: 2e5 }), sampleRow({ turbulenceIntensity: 0.05 })]),
    );
    expect(table).toContain("frontal width x span");
    expect(table).toContain("Caution: Screening estimates.");
    expect(table).toContain("circle 80 mm | D 80 mm | incidence 0° | ks/D 1.00e-4 | Tu 0.1 %");
    expect(table.match(/^circle 80 mm \|/gm)).toHaveLength(2);
    expect(table).toContain("3 results, all converged. Wakewright 0.1.0");
  });

  it("aligns its columns and leaves out those without a value", () => {
    const lines = resultTable(sampleResults([sampleRow(), sampleRow({ reynolds: 2.5e6, speed: 26.7 })])).split("\n");
    const start = lines.findIndex((line) => line.includes("branch"));
    const [title, unit, first, second] = lines.slice(start, start + 4);
    expect(title).not.toContain("Cd band");
    const end = title.indexOf("Cd pres") + "Cd pres".length;
    expect(first.slice(0, end)).toMatch(/1\.200$/);
    expect(second.slice(0, end)).toMatch(/1\.200$/);
    expect(unit).toMatch(/m\/s.*deg.*Hz.*N\/m/);
    expect(second).toMatch(/^2\.500e6 +26\.7/);
  });

  it("marks what did not converge and says why", () => {
    const table = resultTable(sampleResults([sampleRow(), rowOf(nothingFound, "falling")]));
    expect(table).toMatch(/falling +- .*NOT CONVERGED: no separation point was found between 60 and 150 degrees/);
    expect(table).toContain("2 results, 1 did not converge (marked)");
  });

  it("shows a band where there is one", () => {
    const row = {
      ...sampleRow(),
      dragCoefficientLow: 1.1,
      dragCoefficientHigh: 1.3,
      applicability: "between checked shapes" as const,
      applicabilityReason: "Only ellipses were checked.",
    };
    const table = resultTable(sampleResults([row, row]));
    expect(table).toMatch(/1\.10-1\.30.*between checked shapes/);
    expect(table.match(/^Between checked shapes\. Only ellipses were checked\.$/gm)).toHaveLength(1);
  });

  it("never prints a negative zero", () => {
    expect(resultTable(sampleResults([sampleRow({}, { liftCoefficient: -1e-9 })]))).not.toContain("-0.000");
  });
});
