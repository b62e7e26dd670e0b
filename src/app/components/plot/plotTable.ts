import { html, nothing } from "lit";
import type { PlotFigure } from "../../plots/plotFigure";

const mostTableRows = 500;

/** A figure's numbers as a table that can be scrolled and read out. */
export function plotTable({ title, table }: PlotFigure) {
  const shown = table.rows.slice(0, mostTableRows);
  return html`<div class="table-scroll" tabindex="0" role="region" aria-label="Numbers of ${title}">
    <table>
      <thead><tr>${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>${shown.map((row) => html`<tr>${row.map((cell) => html`<td>${cellText(cell)}</td>`)}</tr>`)}</tbody>
    </table>
    ${
      table.rows.length > shown.length
        ? html`<p>The first ${shown.length} of ${table.rows.length} rows; the CSV file has all.</p>`
        : nothing
    }
  </div>`;
}

function cellText(cell: string | number | null): string {
  if (cell === null) return "–";
  return typeof cell === "number" ? String(Number(cell.toPrecision(5))) : cell;
}
