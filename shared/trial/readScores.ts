import { cellNumber, type DecimalMark, decimalMarkOf } from "../tunnel/cellNumber";
import { columnIndex } from "../tunnel/columnMapping";
import { type DataTable, isMissing, rowNumber, type TableProblem } from "../tunnel/dataTable";
import type { TrialPlan } from "./trialPlan";
import type { TrialScore, TrialSetup } from "./trialSetup";

/** Columns of the long form: one row per score. */
export const longColumns = ["player", "activity", "repeat", "position", "code", "score", "comment"] as const;

export interface ScoreReading {
  /** What could be read; rows with a fault are left out here and named in the problems. */
  readonly scores: readonly TrialScore[];
  readonly problems: readonly TableProblem[];
}

/**
 * Scores from a table, in the long form (a row per score: player, activity, code, score, and if wanted repeat, position
 * and comment) or the wide one (a row per session: player, activity, if wanted repeat, and a column for every code).
 * Pucks go by code or by name. A position that is not given is the planned one.
 * @param decimalMark null to tell it from the cells
 */
export function readScores(
  table: DataTable,
  setup: TrialSetup,
  plan: TrialPlan,
  decimalMark: DecimalMark | null = null,
): ScoreReading {
  const isLong = columnIndex(table, "score") >= 0;
  const pucks = isLong ? [] : setup.pucks.flatMap((puck, i) => puckColumn(table, puck, i));
  const needed = isLong ? ["player", "code", "score"] : ["player"];
  if (setup.activities.length > 1) needed.splice(1, 0, "activity");
  const problems: TableProblem[] = needed.flatMap((name) =>
    columnIndex(table, name) >= 0 ? [] : [missingColumn(table, name)],
  );
  if (!isLong && pucks.length === 0) {
    const codes = setup.pucks.map(({ code }) => code).join(", ");
    const message = `there is neither a column score nor a column for any code (${codes}); the columns are ${table.columns.join(", ")}`;
    problems.push({ row: null, column: null, message });
  }
  if (problems.length > 0) return { scores: [], problems };
  const known = new Set<string>([...longColumns]);
  for (const [i, column] of table.columns.entries()) {
    const isKnown = known.has(column.trim().toLowerCase()) || pucks.some((puck) => puck.column === i);
    const isFilled = table.rows.some((row) => !isMissing(row[i]));
    if (!isKnown && isFilled) {
      const words = isLong ? `the columns read are ${longColumns.join(", ")}` : "it is no code of this trial";
      problems.push({ row: null, column, message: `the column is not known; ${words}` });
    }
  }
  const numeric = isLong ? [columnIndex(table, "score")] : pucks.map(({ column }) => column);
  const found = decimalMark ?? decimalMarkOf(table, numeric);
  const reader = new RowReader(table, setup, plan, found ?? "point", problems);
  table.rows.forEach((row, i) => {
    if (row.every(isMissing)) return;
    if (isLong) reader.longRow(i);
    else reader.wideRow(i, pucks);
  });
  return { scores: reader.scores, problems };
}

interface PuckColumn {
  readonly puck: number;
  readonly column: number;
}

function puckColumn(table: DataTable, puck: TrialSetup["pucks"][number], i: number): PuckColumn[] {
  const places = [columnIndex(table, puck.code), columnIndex(table, puck.name)];
  const column = places.find((place) => place >= 0);
  return column === undefined ? [] : [{ puck: i, column }];
}

function missingColumn(table: DataTable, name: string): TableProblem {
  return {
    row: null,
    column: name,
    message: `there is no column "${name}"; the columns are ${table.columns.join(", ")}`,
  };
}

class RowReader {
  readonly scores: TrialScore[] = [];
  readonly #rowOfScore = new Map<string, number>();
  readonly #positions = new Map<string, number>();

  constructor(
    readonly table: DataTable,
    readonly setup: TrialSetup,
    readonly plan: TrialPlan,
    readonly mark: DecimalMark,
    readonly problems: TableProblem[],
  ) {}

  longRow(row: number): void {
    const session = this.#session(row);
    const code = this.#text(row, "code");
    const puck =
      code === null
        ? this.#fault(row, "code", `it is missing; it must be one of ${this.#codes()}`)
        : this.#find(
            row,
            "code",
            code,
            this.setup.pucks.map((one) => [one.code, one.name]),
            this.#codes(),
          );
    const position = this.#whole(row, "position", this.setup.pucks.length);
    const score = this.#score(row, columnIndex(this.table, "score"));
    if (session === null || puck === null || position === undefined || score === undefined) return;
    this.#add(row, "code", { ...session, puck, position, score, comment: this.#text(row, "comment") });
  }

  wideRow(row: number, pucks: readonly PuckColumn[]): void {
    const session = this.#session(row);
    const comment = this.#text(row, "comment");
    const read = pucks.map(({ puck, column }) => ({ puck, column, score: this.#score(row, column) }));
    if (session === null) return;
    for (const { puck, column, score } of read) {
      if (score === undefined) continue;
      this.#add(row, this.table.columns[column], { ...session, puck, position: null, score, comment });
    }
  }

  #add(row: number, column: string, score: TrialScore): void {
    const { player, activity, repeat, puck } = score;
    const key = [player, activity, repeat, puck].join(" ");
    const earlier = this.#rowOfScore.get(key);
    if (earlier !== undefined) {
      const { code } = this.setup.pucks[puck];
      const words = `${this.setup.players[player]} scored ${code} at ${this.setup.activities[activity].name} in row ${rowNumber(this.table, earlier)} already; keep one of them, or number a second time in a column repeat`;
      this.#fault(row, column, words);
      return;
    }
    this.#rowOfScore.set(key, row);
    if (score.position !== null) {
      const place = [player, activity, repeat, score.position].join(" ");
      const taken = this.#positions.get(place);
      if (taken !== undefined) {
        const words = `position ${score.position} of this session is in row ${rowNumber(this.table, taken)} already`;
        this.#fault(row, "position", words);
        return;
      }
      this.#positions.set(place, row);
    }
    this.scores.push({ ...score, position: score.position ?? this.#planned(score) });
  }

  #planned({ player, activity, repeat, puck }: TrialScore): number | null {
    const session = this.plan.sessions.find(
      (one) => one.player === player && one.activity === activity && one.repeat === repeat,
    );
    const place = session?.order.indexOf(puck) ?? -1;
    return place < 0 ? null : place + 1;
  }

  #session(row: number): Pick<TrialScore, "player" | "activity" | "repeat"> | null {
    const { players, activities, repeats } = this.setup;
    const name = this.#text(row, "player");
    const names = players.join(", ");
    const player =
      name === null
        ? this.#fault(row, "player", "it is missing")
        : this.#find(
            row,
            "player",
            name,
            players.map((one) => [one]),
            names,
          );
    const what = this.#text(row, "activity");
    const activityNames = activities.map((one) => one.name);
    const activity =
      what === null
        ? activities.length === 1
          ? 0
          : this.#fault(row, "activity", `it is missing; it must be one of ${activityNames.join(", ")}`)
        : this.#find(
            row,
            "activity",
            what,
            activityNames.map((one) => [one]),
            activityNames.join(", "),
          );
    const repeat = this.#whole(row, "repeat", repeats);
    if (player === null || activity === null || repeat === undefined) return null;
    return { player, activity, repeat: repeat ?? 1 };
  }

  /** undefined when the cell is wrong, null when it is missing. */
  #score(row: number, column: number): number | null | undefined {
    const cell = this.table.rows[row][column];
    if (isMissing(cell) || cell === undefined || cell === null) return null;
    const name = this.table.columns[column];
    const number = cellNumber(cell, this.mark);
    const { lowest, highest, step } = this.setup.scale;
    const rule = `a score must be ${lowest} to ${highest}${step === 1 ? "" : ` in steps of ${step}`}`;
    if (!number.ok) {
      this.#fault(row, name, `${number.reason}; ${rule}, empty when missing`);
      return undefined;
    }
    const steps = (number.value - lowest) / step;
    if (number.value < lowest || number.value > highest || Math.abs(steps - Math.round(steps)) > 1e-9) {
      this.#fault(row, name, `${number.value} is not on the scale; ${rule}, empty when missing`);
      return undefined;
    }
    return number.value;
  }

  #whole(row: number, name: string, most: number): number | null | undefined {
    const text = this.#text(row, name);
    if (text === null) return null;
    const value = Number(text);
    if (Number.isInteger(value) && value >= 1 && value <= most) return value;
    this.#fault(row, name, `"${text}" must be a whole number from 1 to ${most}`);
    return undefined;
  }

  #find(
    row: number,
    column: string,
    text: string,
    names: readonly (readonly string[])[],
    known: string,
  ): number | null {
    const plain = (one: string) => one.trim().toLowerCase();
    const place = names.findIndex((list) => list.some((name) => plain(name) === plain(text)));
    return place >= 0 ? place : this.#fault(row, column, `"${text}" is not known; it must be one of ${known}`);
  }

  #text(row: number, name: string): string | null {
    const column = columnIndex(this.table, name);
    const cell = column < 0 ? null : this.table.rows[row][column];
    return cell === undefined || cell === null || isMissing(cell) ? null : String(cell).trim();
  }

  #codes(): string {
    return this.setup.pucks.map(({ code }) => code).join(", ");
  }

  #fault(row: number, column: string, message: string): null {
    this.problems.push({ row: rowNumber(this.table, row), column, message });
    return null;
  }
}
