import { describe, expect, it } from "vitest";
import { guessMeasuredMapping } from "../../shared/jobs/evidence/measuredColumns";
import { readMeasuredTable } from "../../shared/jobs/evidence/readMeasuredTable";
import { readRunTable } from "../../shared/jobs/tunnel/runTable";
import { readTapTable } from "../../shared/jobs/tunnel/tapTable";
import { columnHead } from "../../shared/tables/columnHead";
import { fromUnit } from "../../shared/tables/columnUnits";
import { readCsvTable } from "../../shared/tables/csvTable";
import type { DataTable } from "../../shared/tables/dataTable";
import { guessedColumns } from "../../src/app/tunnel/guessedColumns";
import { tableKinds } from "../../src/app/tunnel/tableKinds";

function table(text: string): DataTable {
  const read = readCsvTable(text);
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

describe("readCsvTable(text) of tables from elsewhere", () => {
  it("a row of units under the heads goes into them, and rows keep the numbers of the file", () => {
    expect(table("v,F,T\n(m/s),[N],degC\n3,1.5,20\n")).toEqual({
      columns: ["v (m/s)", "F (N)", "T (degC)"],
      rows: [["3", "1.5", "20"]],
      headerRow: 2,
    });
    expect(table("v,F\n3,1.5\n").columns).toEqual(["v", "F"]);
  });

  it("columns that spaces set apart are read, with heads of several words in quotes or behind two spaces", () => {
    const rows = [
      ["0", "1.00"],
      ["10.5", "-0.98"],
    ];
    for (const head of ['"tap angle"   Cp', "tap angle   Cp", "  angle Cp "]) {
      expect(table(`${head}\n  0      1.00\n 10.5   -0.98\n`).rows).toEqual(rows);
    }
    expect(table('"tap angle"   Cp\n0 1\n').columns).toEqual(["tap angle", "Cp"]);
  });

  it("more than 100 columns are read", () => {
    const heads = Array.from({ length: 150 }, (_, i) => `c${i}`).join(",");
    expect(table(`${heads}\n${heads.replaceAll("c", "")}\n`).columns).toHaveLength(150);
  });
});

describe("columnHead(head)", () => {
  it("takes names and units apart", () => {
    const heads = [
      "theta_deg",
      "P_Pa",
      "Fd (N)",
      "v [km/h]",
      "v m/s",
      "dp (in H2O)",
      "p, cmH2O",
      "Cd",
      "T_degC",
      "drag force",
      "U_inf",
    ];
    expect(heads.map((head) => columnHead(head)).map(({ name, unit }) => [name, unit])).toEqual([
      ["theta", "°"],
      ["P", "Pa"],
      ["Fd", "N"],
      ["v", "km/h"],
      ["v", "m/s"],
      ["dp", "inH2O"],
      ["p", "cmH2O"],
      ["Cd", null],
      ["T", "°C"],
      ["drag force", null],
      ["U_inf", null],
    ]);
  });

  it("heights of water are the weight of water of 1000 kg/m3 at standard gravity (3rd CGPM, 1901)", () => {
    expect(fromUnit("pressure", "cmH2O")?.(1)).toBeCloseTo(98.0665, 10);
    // NIST SP 811 (2008), app. B.8: inch of water, conventional, 249.0889 Pa.
    expect(fromUnit("pressure", "inH2O")?.(1)).toBeCloseTo(249.0889, 4);
  });

  it("columns by such names are found with their units", () => {
    const found = guessedColumns(tableKinds.pressureTaps, table("theta_deg,P_Pa,Pref_Pa\n0,1,2\n"));
    expect(found).toMatchObject({
      angleDegrees: { column: "theta_deg" },
      pressurePascals: { column: "P_Pa" },
      referencePressurePascals: { column: "Pref_Pa" },
    });
    expect(guessedColumns(tableKinds.runs, table("U (km/h),Fd (N),alpha_deg\n1,2,0\n"))).toMatchObject({
      speedMetresPerSecond: { column: "U (km/h)", unit: "km/h" },
      forceNewtons: { column: "Fd (N)" },
      incidenceDegrees: { column: "alpha_deg" },
    });
    expect(guessMeasuredMapping(["Re", "Cd", "alpha (deg)", "U (km/h)"])).toMatchObject({
      incidenceDegrees: { column: "alpha (deg)" },
      speedMetresPerSecond: { column: "U (km/h)", unit: "km/h" },
    });
  });
});

describe("rows that cannot be used", () => {
  it("109 taps in another unit become one sentence with their count, not 109 problems", () => {
    const rows = Array.from({ length: 109 }, (_, i) => `${i},${i < 5 ? 0.5 : 400 + i}`).join("\n");
    const { taps, problems, notes } = readTapTable(
      table(`angleDegrees,pressureCoefficient\n${rows}\n`),
      {},
      null,
      null,
    );
    expect([taps.length, problems.length]).toEqual([5, 0]);
    expect(notes).toEqual([
      "Rows 7, 8, 9, 10, 11, 12, 13, 14 and 96 more passed over (104 rows): a pressure coefficient out of range; it must be from -20 to 1.5.",
    ]);
    const words = Array.from({ length: 50 }, (_, i) => `${i},word${i}`).join("\n");
    const wrong = readTapTable(table(`angleDegrees,pressureCoefficient\n${words}\n`), {}, null, null).problems;
    expect(wrong).toHaveLength(1);
    expect(wrong[0].message).toMatch(/"word0" is not a number \(the same in 49 more: rows 3, 4/);
  });

  it("samples at one place are averaged, and a reference column is taken off", () => {
    const text =
      "angleDegrees,pressurePascals,referencePressurePascals\n0,120,20\n0,100,20\n90,-60,40\n450,-80,20\n180,5,\n";
    const { taps, notes } = readTapTable(table(text), {}, null, 100);
    expect(taps.map(({ pressureCoefficient }) => pressureCoefficient)).toEqual([0.9, -1]);
    expect(notes.join(" ")).toMatch(/4 readings at 2 places/);
  });

  it("runs at another incidence are never repeats of a point", () => {
    const text = "speedMetresPerSecond,forceNewtons,incidenceDegrees\n3,1.0,0\n3,1.1,0\n3,4.0,10\n3,4.2,10\n";
    const { readings, notes } = readRunTable(table(text), {}, null);
    expect(readings.map(({ force }) => force)).toEqual([1, 1.1]);
    expect(notes.join(" ")).toMatch(/Rows 4, 5 passed over \(2 rows\): another incidence/);
    const measured = readMeasuredTable(
      table("reynoldsNumber,dragCoefficient,incidenceDegrees\n5e4,1.2,0\n5e4,1.9,15\n"),
      {
        mapping: {},
        decimalMark: null,
        reynoldsPerSpeed: null,
        scale: { reynolds: 1, drag: 1 },
      },
    );
    expect(measured).toMatchObject({ ok: true, points: [{ dragCoefficient: 1.2 }] });
  });
});
