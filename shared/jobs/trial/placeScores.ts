import { quotedText, shownNames } from "../../document/shownText";
import { columnIndex } from "../../tables/columnMapping";
import { type DataTable, isMissing, rowNumber, type TableProblem } from "../../tables/dataTable";
import type { TrialPlan } from "./trialPlan";
import type { TrialScore, TrialSetup } from "./trialSetup";

/** Columns of the long form: one row per score. */
export const longColumns = ["player", "activity", "repeat", "position", "code", "score", "comment"] as const;

/** A score's place in the trial, and what was typed there. */
export interface PlacedScore extends Omit<TrialScore, "score"> {
  readonly typed: string | number | null;
  /** Index of the table's row, and name of the column that the score stands in. */
  readonly row: number;
  readonly column: string;
}

export interface PlacedScores {
  readonly placed: readonly PlacedScore[];
  /** Rows that have no place; what is typed in the cells is not looked at. */
  readonly problems: readonly TableProblem[];
}

/** Finds the place of every score of a table, without reading the scores themselves; see readScores. */
export function placeScores(table: DataTable, setup: TrialSetup, plan: TrialPlan): PlacedScores {
  const isLong = columnIndex(table, "score") >= 0;
  const pucks = isLong ? [] : setup.pucks.flatMap((puck, i) => puckColumn(table, puck, i));
  const needed = isLong ? ["player", "code", "score"] : ["player"];
  if (setup.activities.length > 1) needed.splice(1, 0, "activity");
  const problems: TableProblem[] = needed.flatMap((name) =>
    columnIndex(table, name) >= 0 ? [] : [missingColumn(table, name)],
  );
  if (!isLong && pucks.length === 0) {
    const codes = setup.pucks.map(({ code }) => code).join(", ");
    const message = `there is neither a column score nor a column for any code (${codes}); the columns are ${shownNames(table.columns)}`;
    problems.push({ row: null, column: null, message });
  }
  if (problems.length > 0) return { placed: [], problems };
  const known = new Set<string>(longColumns);
  for (const [i, column] of table.columns.entries()) {
    const isKnown = known.has(column.trim().toLowerCase()) || pucks.some((puck) => puck.column === i);
    const isFilled = table.rows.some((row) => !isMissing(row[i]));
    if (!isKnown && isFilled) {
      const words = isLong ? `the columns read are ${longColumns.join(", ")}` : "it is no code of this trial";
      problems.push({ row: null, column, message: `the column is not known; ${words}` });
    }
  }
  const reader = new RowReader(table, setup, plan, problems);
  table.rows.forEach((row, i) => {
    if (row.every(isMissing)) return;
    if (isLong) reader.longRow(i);
    else reader.wideRow(i, pucks);
  });
  return { placed: reader.placed, problems };
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
    message: `there is no column "${name}"; the columns are ${shownNames(table.columns)}`,
  };
}

class RowReader {
  readonly placed: PlacedScore[] = [];
  readonly #rowOfScore = new Map<string, number>();
  readonly #positions = new Map<string, number>();

  constructor(
    readonly table: DataTable,
    readonly setup: TrialSetup,
    readonly plan: TrialPlan,
    readonly problems: TableProblem[],
  ) {}

  longRow(row: number): void {
    const session = this.#session(row);
    const code = this.#text(row, "code");
    const names = this.setup.pucks.map((one) => [one.code, one.name]);
    const puck =
      code === null
        ? this.#fault(row, "code", `it is missing; it must be one of ${this.#codes()}`)
        : this.#find(row, "code", code, names, this.#codes());
    const position = this.#whole(row, "position", this.setup.pucks.length);
    if (session === null || puck === null || position === undefined) return;
    const column = columnIndex(this.table, "score");
    this.#add(row, column, "code", { ...session, puck, position, comment: this.#text(row, "comment") });
  }

  wideRow(row: number, pucks: readonly PuckColumn[]): void {
    const session = this.#session(row);
    const comment = this.#text(row, "comment");
    if (session === null) return;
    for (const { puck, column } of pucks) {
      this.#add(row, column, this.table.columns[column], { ...session, puck, position: null, comment });
    }
  }

  #add(row: number, column: number, blamed: string, place: Omit<TrialScore, "score">): void {
    const { player, activity, repeat, puck } = place;
    const key = [player, activity, repeat, puck].join(" ");
    const earlier = this.#rowOfScore.get(key);
    if (earlier !== undefined) {
      const { code } = this.setup.pucks[puck];
      const words = `${this.setup.players[player]} scored ${code} at ${this.setup.activities[activity].name} in row ${rowNumber(this.table, earlier)} already; keep one of them, or number a second time in a column repeat`;
      this.#fault(row, blamed, words);
      return;
    }
    this.#rowOfScore.set(key, row);
    if (place.position !== null) {
      const session = [player, activity, repeat, place.position].join(" ");
      const taken = this.#positions.get(session);
      if (taken !== undefined) {
        const words = `position ${place.position} of this session is in row ${rowNumber(this.table, taken)} already`;
        this.#fault(row, "position", words);
        return;
      }
      this.#positions.set(session, row);
    }
    this.placed.push({
      ...place,
      position: place.position ?? this.#planned(place),
      typed: this.table.rows[row][column] ?? null,
      row,
      column: this.table.columns[column],
    });
  }

  #planned({ player, activity, repeat, puck }: Omit<TrialScore, "score">): number | null {
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
  #whole(row: number, name: string, most: number): number | null | undefined {
    const text = this.#text(row, name);
    if (text === null) return null;
    const value = Number(text);
    if (Number.isInteger(value) && value >= 1 && value <= most) return value;
    this.#fault(row, name, `${quotedText(text)} must be a whole number from 1 to ${most}`);
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
    return place >= 0
      ? place
      : this.#fault(row, column, `${quotedText(text)} is not known; it must be one of ${known}`);
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
