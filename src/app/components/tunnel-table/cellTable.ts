import { html, nothing } from "lit";
import { type DataTable, rowNumber, type TableProblem } from "../../../../shared/tables/dataTable";

const mostShownRows = 400;

/** A table to look at: its faults, and its rows that are left out where rows can be. */
export interface CellView {
  readonly id: string;
  readonly label: string;
  readonly table: DataTable;
  readonly problems: readonly TableProblem[];
  /** null where rows are used or taken out of the table. */
  readonly leftOut: { readonly rows: readonly number[]; readonly onChange: (rows: readonly number[]) => void } | null;
}

/** The rows as they were read, every fault beside the cell that it is in. */
export function cellTable({ id, label, table, problems, leftOut }: CellView) {
  const wrong = new Map(problems.map((one) => [`${one.row} ${one.column}`, one.message]));
  const shown = table.rows.slice(0, mostShownRows);
  return html`<div class="scroll preview" tabindex="0" role="region" aria-label=${label}>
    <table class="results" id=${id}>
      <thead><tr><th scope="col">Row</th>${leftOut === null ? nothing : html`<th scope="col">Use</th>`}${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>${shown.map((cells, i) => {
        const row = rowNumber(table, i);
        return html`<tr class=${leftOut?.rows.includes(row) === true ? "is-left-out" : ""}><th scope="row">${row}</th>
          ${leftOut === null ? nothing : html`<td>${useBox(row, leftOut)}</td>`}
          ${table.columns.map((column, j) => {
            const message = wrong.get(`${row} ${column}`);
            return message === undefined
              ? html`<td>${cells[j] ?? ""}</td>`
              : html`<td class="is-wrong">${cells[j] ?? ""}<small>${message}</small></td>`;
          })}</tr>`;
      })}</tbody>
    </table>
    ${table.rows.length > shown.length ? html`<p class="hint">The first ${shown.length} of ${table.rows.length} rows.</p>` : nothing}
  </div>`;
}

function useBox(row: number, { rows, onChange }: NonNullable<CellView["leftOut"]>) {
  return html`<input type="checkbox" aria-label="Use row ${row}" .checked=${!rows.includes(row)} @change=${(
    event: Event,
  ) => {
    const others = rows.filter((each) => each !== row);
    const isUsed = (event.target as HTMLInputElement).checked;
    onChange((isUsed ? others : [...others, row]).sort((a, b) => a - b));
  }} />`;
}
