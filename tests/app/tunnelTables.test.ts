import { beforeEach, describe, expect, it } from "vitest";
import { csvOfTable, readCsvTable } from "../../shared/tables/csvTable";
import { tableProblemText } from "../../shared/tables/dataTable";
import { guessedColumns } from "../../src/app/tunnel/guessedColumns";
import { changeTable, tableDrafts, takeAway, takeTable } from "../../src/app/tunnel/tableDraft";
import { mappedColumns, tableText as textOf } from "../../src/app/tunnel/tableEdits";
import { type TableKey, tableKinds } from "../../src/app/tunnel/tableKinds";
import { changeBlock, tunnelBench } from "../../src/app/tunnel/tunnelBench";
import { readTunnelCase, tunnelCaseText } from "../../src/app/tunnel/tunnelCaseText";
import { startTunnel } from "../../src/app/tunnel/tunnelInputs";

beforeEach(() => {
  tableDrafts.value = {};
  tunnelBench.show({ ...startTunnel });
});

/** The present text of a table, as its field shows it. */
function tableText(key: TableKey): string {
  return textOf(tunnelBench.present.block, tableDrafts.value, key);
}

function mapColumn(key: TableKey, columnKey: string, column: string, unit?: string): void {
  changeTable(key, { columns: mappedColumns(tunnelBench.present.block[key]?.columns, columnKey, column, unit) });
}

/** The present table of a kind as its reader sees it. */
function look(key: TableKey) {
  const { block } = tunnelBench.present;
  const data = block[key]?.data;
  if (data === undefined || typeof data === "string") throw new Error(`no table of ${key}`);
  return tableKinds[key].read(block, data);
}

describe("takeTable(key, text)", () => {
  it.each([
    ["runs", "speedMetresPerSecond;forceNewtons\n30;1,5\n", ["speedMetresPerSecond", "forceNewtons"]],
    ["wakeSurvey", "positionMetres;totalPressurePascals\n0,1;50,5\n", ["positionMetres", "totalPressurePascals"]],
    ["pressureTaps", "angleDegrees;pressureCoefficient\n30;0,5\n", ["angleDegrees", "pressureCoefficient"]],
  ] as const)("%s: keeps what is no table as it was typed, and the last table in the work", (key, csv, columns) => {
    takeTable(key, csv);
    expect(tableText(key).replace(/\r/g, "")).toBe(csv);
    takeTable(key, "a,a\n1");
    expect(tableDrafts.value[key]?.message).toContain("stands twice");
    expect(tableText(key)).toBe("a,a\n1");
    expect(tunnelBench.present.block[key]?.data).toMatchObject({ columns });
    takeTable(key, "");
    expect(tunnelBench.present.block[key]).toBeUndefined();
    expect(tableText(key)).toBe("");
    tunnelBench.undo();
    expect(tableText(key).replace(/\r/g, "")).toBe(csv);
    tunnelBench.redo();
    expect(tunnelBench.present.block[key]).toBeUndefined();
  });

  it("one table's draft is not another's", () => {
    takeTable("wakeSurvey", "a,a\n1");
    expect(tableText("pressureTaps")).toBe("");
    expect(tableText("runs")).toBe("");
  });

  it("the same columns keep their mapping, others are guessed anew, and what no table says stays", () => {
    takeTable("wakeSurvey", "Ort [mm];H\n1;2,5\n");
    expect(tunnelBench.present.block.wakeSurvey).toMatchObject({
      dynamicPressurePascals: 100,
      columns: { totalPressurePascals: { column: "H" } },
    });
    mapColumn("wakeSurvey", "positionMetres", "Ort [mm]", "mm");
    changeTable("wakeSurvey", { decimalMark: "comma" });
    takeTable("wakeSurvey", "Ort [mm];H\n3;4,5\n");
    expect(tunnelBench.present.block.wakeSurvey).toMatchObject({
      decimalMark: "comma",
      columns: { positionMetres: { column: "Ort [mm]", unit: "mm" } },
    });
    changeBlock({ wakeSurvey: { ...tunnelBench.present.block.wakeSurvey!, dynamicPressurePascals: 77 } });
    takeTable("wakeSurvey", "y [mm],pt [hPa]\n1,2\n");
    expect(tunnelBench.present.block.wakeSurvey).toEqual({
      dynamicPressurePascals: 77,
      columns: {
        positionMetres: { column: "y [mm]", unit: "mm" },
        totalPressurePascals: { column: "pt [hPa]", unit: "hPa" },
      },
      data: { columns: ["y [mm]", "pt [hPa]"], rows: [["1", "2"]] },
    });
  });

  it("takeAway takes table and draft", () => {
    takeTable("pressureTaps", "angleDegrees,pressureCoefficient\n30,0.5\n");
    takeTable("pressureTaps", "a,a");
    takeAway("pressureTaps");
    expect(tableText("pressureTaps")).toBe("");
    expect(tunnelBench.present.block.pressureTaps).toBeUndefined();
  });
});

describe("mapColumn(key, columnKey, column, unit)", () => {
  it("asks for columns that are not found, then reads them in their unit, faults by row and column", () => {
    takeTable("pressureTaps", "Nr;Winkel;Wert\nA;0;1,0\nB;0,5;x\nC;1;9,9\n");
    expect(look("pressureTaps").problems.map(tableProblemText)).toEqual([
      "no column holds angleDegrees, or xMetres and yMetres; the columns are Nr, Winkel, Wert: say which one it is",
      "no column holds pressureCoefficient or pressurePascals; the columns are Nr, Winkel, Wert: say which one it is",
    ]);
    mapColumn("pressureTaps", "angleDegrees", "Winkel", "rad");
    mapColumn("pressureTaps", "pressureCoefficient", "Wert");
    const { used, decimalMark, problems } = look("pressureTaps");
    expect([used, decimalMark]).toEqual([1, "comma"]);
    expect(problems.map(tableProblemText)).toEqual(['row 3, column Wert: "x" is not a number']);
    mapColumn("pressureTaps", "angleDegrees", "");
    expect(tunnelBench.present.block.pressureTaps?.columns).toEqual({ pressureCoefficient: { column: "Wert" } });
  });

  it("a mapped survey comes back from its case text whole", () => {
    takeTable("wakeSurvey", "y [mm];pt\n-5;1,5\n5;2,5\n");
    const reading = readTunnelCase(tunnelCaseText(tunnelBench.present));
    expect(reading.ok && reading.value).toEqual(tunnelBench.present);
    expect(look("wakeSurvey")).toMatchObject({ used: 2, decimalMark: "comma", problems: [] });
  });
});

describe("guessedColumns(kind, table)", () => {
  it("guesses columns by common words and their units, and none that stands under its own name", () => {
    const table = { columns: ["Speed [km/h]", "Drag (N)", "Temp", "kind"], rows: [] };
    expect(guessedColumns(tableKinds.runs, table)).toEqual({
      speedMetresPerSecond: { column: "Speed [km/h]", unit: "km/h" },
      forceNewtons: { column: "Drag (N)", unit: "N" },
      temperatureCelsius: { column: "Temp" },
    });
  });

  it("surveys: pressures by their letters, and each column once", () => {
    expect(guessedColumns(tableKinds.wakeSurvey, { columns: ["p [Pa]", "Z (cm)", "p0"], rows: [] })).toEqual({
      positionMetres: { column: "Z (cm)", unit: "cm" },
      totalPressurePascals: { column: "p0" },
      staticPressurePascals: { column: "p [Pa]", unit: "Pa" },
    });
    expect(guessedColumns(tableKinds.pressureTaps, { columns: ["hole", "theta [rad]", "Cp"], rows: [] })).toEqual({
      tap: { column: "hole" },
      angleDegrees: { column: "theta [rad]", unit: "rad" },
      pressureCoefficient: { column: "Cp" },
    });
  });
});

describe("the text of a table", () => {
  it("reads back as the table, semicolons and decimal commas kept", () => {
    const table = { columns: ["a", "b"], rows: [["1,5", "x;y"]], separator: ";" as const };
    const read = readCsvTable(csvOfTable(table));
    expect(read.ok && read.value).toEqual(table);
  });
});
