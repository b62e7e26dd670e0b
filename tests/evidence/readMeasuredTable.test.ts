import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { guessMeasuredMapping } from "../../shared/jobs/evidence/measuredColumns";
import { type MeasuredTableChoices, readMeasuredTable } from "../../shared/jobs/evidence/readMeasuredTable";
import { referenceScale } from "../../shared/jobs/evidence/reference";
import { readCsvTable } from "../../shared/tables/csvTable";
import { tableProblemText } from "../../shared/tables/dataTable";

const plain = { decimalMark: null, reynoldsPerSpeed: null, scale: { reynolds: 1, drag: 1 } };

function read(text: string, choices: Partial<MeasuredTableChoices> = {}) {
  const table = readCsvTable(text);
  if (!table.ok) throw new Error(table.problem.message);
  const mapping = choices.mapping ?? guessMeasuredMapping(table.value.columns);
  const reading = readMeasuredTable(table.value, { ...plain, ...choices, mapping });
  return reading.ok
    ? { ...reading, messages: [] }
    : { points: [], skipped: [], messages: reading.problems.map(tableProblemText) };
}

describe("readMeasuredTable(table, choices)", () => {
  it("reads a table with a byte-order mark, semicolons, decimal commas, percentages and missing values", () => {
    const text = "\uFEFFRe;Cd;expandedUncertaintyPercent;St;sweep\r\n100000;1,21;4;0,19;up\r\n2e5;1,18;;n/a;down\r\n";
    const { points, messages } = read(text);
    expect(messages).toEqual([]);
    expect(points).toHaveLength(2);
    expect(points[0]).toMatchObject({ reynolds: 1e5, dragCoefficient: 1.21, strouhal: 0.19, direction: "rising" });
    expect(points[0].standardUncertainty).toBeCloseTo((0.04 * 1.21) / 2, 12);
    expect(points[1]).toMatchObject({ standardUncertainty: null, strouhal: null, direction: "falling" });
  });

  it("makes Reynolds numbers of speeds, in any unit", () => {
    const mapping = {
      speedMetresPerSecond: { column: "v", unit: "km/h" },
      dragCoefficient: { column: "Cd" },
    };
    expect(read("v,Cd\n3.6,1.2\n", { mapping, reynoldsPerSpeed: 94_000 }).points[0].reynolds).toBeCloseTo(94_000, 6);
    expect(read("v,Cd\n3.6,1.2\n", { mapping }).messages).toEqual([
      "column v: speeds need a fluid, or a column of Reynolds numbers in their place",
    ]);
  });

  it("puts coefficients on plan area and Reynolds numbers on the length onto the width", () => {
    const scale = referenceScale("plan", "alongStream", 2.5);
    const { points } = read("Re,Cd,standardUncertainty\n250000,0.4,0.01\n", { scale });
    expect(points[0].reynolds).toBeCloseTo(1e5, 6);
    expect(points[0].dragCoefficient).toBeCloseTo(1, 12);
    expect(points[0].standardUncertainty).toBeCloseTo(0.025, 12);
  });

  it("names row and column of everything that is wrong", () => {
    const { messages } = read("# tunnel 3\nRe,Cd,direction\n1e5,abc,up\n50,1.2,up\n1e5,-1,sideways\n");
    expect(messages).toEqual([
      'row 3, column Cd: "abc" is not a number',
      'row 5, column direction: "sideways" is no direction; it must be rising or falling',
    ]);
  });

  it("passes over and names rows without a coefficient, and refuses a table with none", () => {
    const { points, skipped } = read("Re,Cd\n1e5,1.2\n2e5,\n\n3e5,-\n");
    expect(points).toHaveLength(1);
    expect(skipped).toEqual(["Rows 3, 5 passed over (2 rows): no drag coefficient."]);
    expect(read("Re,Cd\n1e5,\n").messages).toEqual([
      "no row has both a Reynolds number (or speed) and a drag coefficient that can be used. Row 2 passed over: no drag coefficient.",
    ]);
  });

  it("says which column is not chosen, and which are there", () => {
    expect(read("number,drag force\n1,2\n").messages).toEqual([
      "no column holds the Reynolds number or the speed; the columns are number, drag force",
      "no column holds the drag coefficient; the columns are number, drag force",
    ]);
  });

  it("reads back any points that were written, in both decimal marks", () => {
    const point = fc.tuple(
      fc.integer({ min: 1000, max: 1e8 }),
      fc.double({ min: 0.01, max: 3, noNaN: true }),
      fc.constantFrom("point" as const, "comma" as const),
    );
    fc.assert(
      fc.property(point, ([reynolds, drag, decimalMark]) => {
        const shown = decimalMark === "comma" ? String(drag).replace(".", ",") : String(drag);
        const { points } = read(`Re;Cd\n${reynolds};${shown}\n`, { decimalMark });
        expect(points[0]).toMatchObject({ reynolds, dragCoefficient: drag });
      }),
    );
  });
});

describe("guessMeasuredMapping(columns)", () => {
  it("knows common headings and the unit behind them, each quantity once", () => {
    expect(guessMeasuredMapping(["U (km/h)", "Re", "Cd", "Cx", "Cp,b", "remark"])).toEqual({
      speedMetresPerSecond: { column: "U (km/h)", unit: "km/h" },
      reynoldsNumber: { column: "Re" },
      dragCoefficient: { column: "Cd" },
      basePressureCoefficient: { column: "Cp,b" },
    });
  });
});
