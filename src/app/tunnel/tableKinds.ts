import { runColumnKeys, runColumnWords } from "../../../shared/jobs/tunnel/runColumns";
import { readRunTable, runColumnQuantities } from "../../../shared/jobs/tunnel/runTable";
import { tapColumnKeys, tapColumnQuantities, tapColumnWords } from "../../../shared/jobs/tunnel/tapColumns";
import { readTapTable } from "../../../shared/jobs/tunnel/tapTable";
import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import { wakeColumnKeys, wakeColumnQuantities, wakeColumnWords } from "../../../shared/jobs/tunnel/wakeColumns";
import { readWakeTable } from "../../../shared/jobs/tunnel/wakeTable";
import type { DecimalMark } from "../../../shared/tables/cellNumber";
import type { ColumnQuantity } from "../../../shared/tables/columnUnits";
import type { DataTable, TableProblem } from "../../../shared/tables/dataTable";

/** Keys of the tunnel block that hold a table. */
export type TableKey = "runs" | "wakeSurvey" | "pressureTaps";

/** Which column holds what, and in which unit, by the keys of a kind of table. */
export type TableColumns = Readonly<
  Record<string, { readonly column: string; readonly unit?: string | undefined } | undefined>
>;

/** What every table of the block has, whatever its kind. */
export interface TablePart {
  /** The rows, or the path of a file that a page cannot open by itself. */
  readonly data: DataTable | string;
  readonly columns?: TableColumns | undefined;
  readonly decimalMark?: DecimalMark | undefined;
  /** Rows, counted as in the file, that are not to be used; of run tables only. */
  readonly leftOutRows?: readonly number[] | undefined;
  /** Whether the other half has the same pressures; of pressure taps only. */
  readonly isMirrored?: boolean | undefined;
}

/** A table as its reader sees it. */
export interface TableLook {
  /** Rows that are used. */
  readonly used: number;
  readonly problems: readonly TableProblem[];
  readonly notes: readonly string[];
  readonly decimalMark: DecimalMark;
}

/** How the page asks for one kind of table. */
export interface TableKind {
  /** For people, as the beginning of a line. */
  readonly label: string;
  readonly columnKeys: readonly string[];
  readonly columnWords: Readonly<Record<string, string>>;
  /** null: text. */
  readonly quantities: Readonly<Record<string, ColumnQuantity | null>>;
  /** Words that columns go by, besides the keys themselves; common practice. */
  readonly commonNames: Readonly<Record<string, RegExp | undefined>>;
  /** What the block needs with a first table and no file says, until a person does; in the keys' units. */
  readonly start: Readonly<Record<string, number>>;
  /** Shown while there is no table. */
  readonly emptyHint: string;
  /** True when rows can be left out one by one. */
  readonly canLeaveOut: boolean;
  read(block: TunnelBlockDocument, table: DataTable): TableLook;
}

const askedFor = "any other table is asked for its columns and units";

export const tableKinds: Readonly<Record<TableKey, TableKind>> = {
  runs: {
    label: "Run table",
    columnKeys: runColumnKeys,
    columnWords: runColumnWords,
    quantities: runColumnQuantities,
    commonNames: {
      kind: /^(kind|type|what)\b/i,
      direction: /^(direction|sweep)\b/i,
      timeMinutes: /^(time|t)\b/i,
      speedMetresPerSecond: /^(speed|velocity|u|v)\b/i,
      dynamicPressurePascals: /^(q|dynamic ?pressure|pdyn)\b/i,
      temperatureCelsius: /^(temp\w*|t)\b/i,
      staticPressurePascals: /^(p|pstat|static ?pressure|baro\w*)\b/i,
      relativeHumidityPercent: /^(rh|humidity)\b/i,
      incidenceDegrees: /^(alpha|aoa|incidence|angle of (attack|incidence))\b/i,
      forceNewtons: /^(force|drag|fx|fd|f)\b/i,
    },
    start: {},
    emptyHint: `No runs yet. A filled-in run sheet needs no column to be named; ${askedFor}.`,
    canLeaveOut: true,
    read: ({ runs }, table) => {
      const read = readRunTable(table, runs?.columns ?? {}, runs?.decimalMark ?? null, runs?.leftOutRows);
      return { ...read, used: read.readings.length };
    },
  },
  wakeSurvey: {
    label: "Wake traverse",
    columnKeys: wakeColumnKeys,
    columnWords: wakeColumnWords,
    quantities: wakeColumnQuantities,
    commonNames: {
      positionMetres: /^(pos\w*|y|z)\b/i,
      totalPressurePascals: /^(total\w*|pt|ptot|p0|h)\b/i,
      staticPressurePascals: /^(static\w*|ps|pstat|p)\b/i,
    },
    start: { dynamicPressurePascals: 100 },
    emptyHint: `No traverse yet. Columns ${wakeColumnKeys.join(", ")} need not be named; ${askedFor}.`,
    canLeaveOut: false,
    read: ({ wakeSurvey }, table) => {
      const read = readWakeTable(table, wakeSurvey?.columns ?? {}, wakeSurvey?.decimalMark ?? null);
      return { ...read, notes: [], used: read.traverse.position.length };
    },
  },
  pressureTaps: {
    label: "Pressure taps",
    columnKeys: tapColumnKeys,
    columnWords: tapColumnWords,
    quantities: tapColumnQuantities,
    commonNames: {
      tap: /^(tap|hole|port|name)\b/i,
      angleDegrees: /^(angle|theta|phi)\b/i,
      xMetres: /^x\b/i,
      yMetres: /^y\b/i,
      pressurePascals: /^(p|pressure|dp)\b/i,
      referencePressurePascals: /^(p?ref\w*|reference\w*( pressure)?)\b/i,
      pressureCoefficient: /^(cp|coefficient)\b/i,
    },
    start: { reynoldsNumber: 1e5 },
    emptyHint: `No taps yet. Columns tap, angleDegrees (or xMetres and yMetres) and pressureCoefficient (or pressurePascals) need not be named; ${askedFor}.`,
    canLeaveOut: false,
    read: ({ pressureTaps: part }, table) => {
      const read = readTapTable(
        table,
        part?.columns ?? {},
        part?.decimalMark ?? null,
        part?.dynamicPressurePascals ?? null,
      );
      return { ...read, used: read.taps.length };
    },
  },
};
