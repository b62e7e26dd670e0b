import { html, nothing } from "lit";
import type { DecimalMark } from "../../../../shared/tables/cellNumber";
import { columnIndex } from "../../../../shared/tables/columnMapping";
import { unitsOf } from "../../../../shared/tables/columnUnits";
import type { DataTable } from "../../../../shared/tables/dataTable";
import type { TableColumns, TableKind } from "../../tunnel/tableKinds";

/** What is asked of a table's columns, and who hears the answers. */
export interface ColumnQuestion {
  /** Begins the ids of the fields. */
  readonly id: string;
  readonly kind: Pick<TableKind, "columnKeys" | "columnWords" | "quantities">;
  readonly table: DataTable;
  readonly columns: TableColumns;
  /** null: told from the cells. */
  readonly decimalMark: DecimalMark | null;
  /** An empty column is none. */
  readonly onColumn: (key: string, column: string, unit?: string) => void;
  readonly onMark: (mark: DecimalMark | null) => void;
}

/** A row for every key of a kind of table: its column and unit; then the decimal mark of all of them. */
export function columnRows(question: ColumnQuestion) {
  const { id, kind, decimalMark, onMark } = question;
  return html`${kind.columnKeys.map((key) => columnRow(question, key))}
    <div class="row"><label for="${id}-mark">Decimal mark</label>
      <select id="${id}-mark" @change=${(event: Event) => {
        const { value } = event.target as HTMLSelectElement;
        onMark(value === "point" || value === "comma" ? value : null);
      }}>
        <option value="" .selected=${decimalMark === null}>told from the cells</option>
        <option value="point" .selected=${decimalMark === "point"}>point</option>
        <option value="comma" .selected=${decimalMark === "comma"}>comma</option>
      </select></div>`;
}

function columnRow({ id, kind, table, columns, onColumn }: ColumnQuestion, key: string) {
  const mapped = columns[key];
  const ownColumn = table.columns[columnIndex(table, key)];
  const column = mapped?.column ?? ownColumn ?? "";
  const quantity = kind.quantities[key];
  const units = quantity === null ? [] : unitsOf(quantity);
  const words = kind.columnWords[key];
  // A column of the key's own name is always found, so that "no column" would not be true.
  return html`<div class="row"><label for="${id}-map-${key}">${words}</label>
    <span class="pair">
      <select id="${id}-map-${key}" @change=${(event: Event) => onColumn(key, (event.target as HTMLSelectElement).value)}>
        ${ownColumn === undefined ? html`<option value="" .selected=${column === ""}>no column</option>` : nothing}
        ${table.columns.map((name) => html`<option value=${name} .selected=${name === column}>${name}</option>`)}
      </select>
      ${
        column !== "" && units.length > 1
          ? html`<select aria-label="Unit of: ${words}" @change=${(event: Event) => onColumn(key, column, (event.target as HTMLSelectElement).value)}>
            ${units.map((unit) => html`<option value=${unit} .selected=${unit === (mapped?.unit ?? units[0])}>${unit}</option>`)}
          </select>`
          : nothing
      }
    </span></div>`;
}
