import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readRunTable } from "../../shared/jobs/tunnel/runTable";
import { cellNumber, decimalMarkOf } from "../../shared/tables/cellNumber";
import { fromUnit } from "../../shared/tables/columnUnits";
import { csvOfTable, readCsvTable } from "../../shared/tables/csvTable";
import { tableProblemText } from "../../shared/tables/dataTable";
import { value } from "./tunnelSamples";

const read = (csv: string, mapping = {}, leftOut: number[] = []) =>
  readRunTable(value(readCsvTable(csv)), mapping, null, leftOut);
const messages = (csv: string, mapping = {}) => read(csv, mapping).problems.map(tableProblemText);

describe("readCsvTable(text)", () => {
  it("takes commas, semicolons and tabs, byte-order marks, all line ends, quotes and remarks above the header", () => {
    const commas = value(readCsvTable('\uFEFF# invented\r\n#\r\na,b\r\n"1,5","x ""y"""\r\n\r\n3,\r\n'));
    expect(commas).toEqual({ columns: ["a", "b"], rows: [["1,5", 'x "y"'], [""], ["3", ""]], headerRow: 3 });
    expect(value(readCsvTable("a;b\n1,5;2")).separator).toBe(";");
    expect(value(readCsvTable("a\tb\r1\t2")).rows).toEqual([["1", "2"]]);
  });

  it("returns what csvOfTable wrote, for any cells", () => {
    const cell = fc.string({ maxLength: 12 }).map((text) => text.replace(/[\r\n#\0]/g, "").trim());
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const filled = rows.map(([a, b]) => [`x${a}`, b]);
        const table = value(readCsvTable(csvOfTable({ columns: ["first", "second"], rows: filled })));
        expect(table.rows).toEqual(filled);
      }),
    );
  });

  it.each([
    ["", "the table is empty"],
    ["a,a\n1,2", 'row 1: the column name "a" stands twice'],
    ["a,b\n1,2\n3,4,5", "row 3 has 3 cells and the header 2; a decimal comma in a comma-separated file must be quoted"],
    ['a,b\n1,"2\n', "a quoted cell must end with a quotation mark"],
  ])("refuses %j: %s", (csv, message) => {
    const found = readCsvTable(csv);
    expect(found.ok ? "accepted" : found.problem.message).toContain(message);
  });
});

describe("cellNumber(cell, mark)", () => {
  it.each([
    ["12.5", "point", 12.5],
    ["-1e-3", "point", -0.001],
    ["101,325.5", "point", 101325.5],
    ["101 325", "point", 101325],
    ["101\u202f325,5", "comma", 101325.5],
    ["1.234,5", "comma", 1234.5],
    ["12,5", "comma", 12.5],
    ["\u22123", "point", -3],
    ["1'200", "point", 1200],
  ] as const)("%s with a decimal %s is %f", (cell, mark, number) => {
    expect(cellNumber(cell, mark)).toEqual({ ok: true, value: number });
  });

  it.each([
    ["12,5", "point", "has a comma"],
    ["12.5", "comma", "has a point"],
    ["1,23,456", "point", "has a comma"],
    ["5 N", "point", "is not a number"],
    ["1e999", "point", "too large"],
    ["--2", "comma", "is not a number"],
  ] as const)("%s with a decimal %s is refused: %s", (cell, mark, reason) => {
    const found = cellNumber(cell, mark);
    expect(found.ok ? "accepted" : found.reason).toContain(reason);
  });

  it("reads back every number that is written with either mark", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        expect(cellNumber(String(number), "point")).toEqual({ ok: true, value: number });
        expect(cellNumber(String(number).replace(".", ","), "comma")).toEqual({ ok: true, value: number });
      }),
    );
  });
});

describe("decimalMarkOf(table)", () => {
  const mark = (cells: string[], separator?: ";") =>
    decimalMarkOf({ columns: ["a"], rows: cells.map((cell) => [cell]), ...(separator && { separator }) }, [0]);
  it("tells it from the cells, or from a semicolon, or leaves it to a person", () => {
    expect(mark(["1.5", "2"])).toBe("point");
    expect(mark(["1,5", "2"])).toBe("comma");
    expect(mark(["1.234,5"])).toBe("comma");
    expect(mark(["1,234.5"])).toBe("point");
    expect(mark(["1,234"])).toBeNull();
    expect(mark(["1,234"], ";")).toBe("comma");
    expect(mark(["0,123"])).toBe("comma");
    expect(mark(["12", "13"])).toBe("point");
  });
});

describe("fromUnit(quantity, unit)", () => {
  // By definition or NIST SP 811 (2008), appendix B.8.
  it.each([
    ["speed", "km/h", 36, 10],
    ["speed", "mph", 1, 0.44704],
    ["speed", "kn", 1, 1852 / 3600],
    ["pressure", "mbar", 1013.25, 101325],
    ["pressure", "psi", 1, 6894.757],
    ["pressure", "mmHg", 1, 133.322],
    ["pressure", "inHg", 1, 3386.389],
    ["pressure", "mmH2O", 1, 9.80665],
    ["temperature", "K", 293.15, 20],
    ["temperature", "°F", 68, 20],
    ["force", "lbf", 1, 4.448222],
    ["force", "gf", 1000, 9.80665],
    ["time", "s", 90, 1.5],
    ["humidity", "0-1", 0.5, 50],
    ["angle", "rad", Math.PI, 180],
  ] as const)("%s in %s: %f is %f", (quantity, unit, from, to) => {
    expect((fromUnit(quantity, unit)?.(from) ?? 0) / to).toBeCloseTo(1, 5);
  });

  it("does not know a unit of another quantity, or a key of every object", () => {
    expect(fromUnit("force", "Pa")).toBeUndefined();
    expect(fromUnit("force", "constructor")).toBeUndefined();
  });
});

describe("readRunTable(table, mapping, mark)", () => {
  const mapping = {
    forceNewtons: { column: "Kraft [gf]", unit: "gf" },
    speedMetresPerSecond: { column: "v", unit: "km/h" },
    temperatureCelsius: { column: "T", unit: "K" },
    kind: { column: "Art" },
  };

  it("maps columns with units and decimal commas to the keys' own units", () => {
    const { readings, problems, decimalMark } = read(
      "Art;v;T;Kraft [gf]\nzero;;293,15;1,5\nmodel;108;293,15;1000\n",
      mapping,
    );
    expect(problems).toEqual([]);
    expect(decimalMark).toBe("comma");
    expect(readings[1]).toMatchObject({ row: 3, kind: "model", speed: 30, force: 9.80665 });
    expect(readings[1].temperature).toBeCloseTo(20, 10);
  });

  it("names every wrong cell by row and column, and goes on", () => {
    const csv =
      "kind,speedMetresPerSecond,forceNewtons,direction\nmodel,30.5,abc,rising\nmodles,30,1,rising\nmodel,3000,1,rising\nmodel,30,2.5,sideways\n";
    expect(messages(csv)).toEqual([
      'row 2, column forceNewtons: "abc" is not a number',
      'row 3, column kind: "modles" is none of zero, tare and model',
      'row 5, column direction: "sideways" is none of rising and falling',
    ]);
  });

  it("counts rows as the file does, remarks above the header included", () => {
    expect(messages("# a\n# b\nspeedMetresPerSecond,forceNewtons\n30.5,x\n")[0]).toMatch(/^row 4, column forceNewtons/);
  });

  it("names a cell with the wrong decimal mark", () => {
    expect(messages('speedMetresPerSecond,forceNewtons\n30.5,1.25\n31.5,1.3\n32.5,"1,35"\n')).toEqual([
      'row 4, column forceNewtons: "1,35" has a comma, but the table\'s decimal mark is the point',
    ]);
  });

  it("asks for the decimal mark where nothing shows it, once", () => {
    expect(messages('speedMetresPerSecond,forceNewtons\n30,"1,250"\n31,"1,300"\n')).toEqual([
      expect.stringContaining("say which decimal mark it has"),
    ]);
  });

  it("asks for columns that it cannot find, with the names that are there", () => {
    const found = messages("U;F\n30;1");
    expect(found[0]).toContain("no column holds forceNewtons; the columns are U, F");
    expect(found[1]).toContain("speedMetresPerSecond or dynamicPressurePascals");
    expect(messages("U,F\n30,1", { forceNewtons: { column: "G" } })[0]).toContain(
      'there is no column "G" for forceNewtons',
    );
    expect(messages("U,F\n30,1", { forceNewtons: { column: "F", unit: "Pa" } })[0]).toContain(
      'the unit "Pa" is not one of N, mN',
    );
  });

  it("leaves out rows with missing values and rows left out on purpose, and says which", () => {
    const csv = "kind,speedMetresPerSecond,forceNewtons\nmodel,30,\nmodel,,2\nmodel,30,n/a\nmodel,30,2\nmodel,31,9\n";
    const { readings, notes, problems } = read(csv, {}, [6]);
    expect(problems).toEqual([]);
    expect(readings.map(({ row }) => row)).toEqual([5]);
    expect(notes.join(" ")).toContain("row 2 has no force; row 3 has no speed or dynamic pressure; row 4 has no force");
    expect(notes.join(" ")).toContain("Left out on purpose: row 6");
  });

  it("tells the direction from the order where no column gives it", () => {
    const { readings } = read("speedMetresPerSecond,forceNewtons\n20,1\n30,2\n40,3\n40.1,3\n30,2\n20,1\n");
    expect(readings.map(({ direction }) => direction)).toEqual([
      "rising",
      "rising",
      "rising",
      "rising",
      "falling",
      "falling",
    ]);
  });
});
