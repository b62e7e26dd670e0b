import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { columnIndex } from "../../../../shared/tunnel/columnMapping";
import { unitsOf } from "../../../../shared/tunnel/columnUnits";
import { type DataTable, rowNumber, type TableProblem, tableProblemText } from "../../../../shared/tunnel/dataTable";
import { type RunColumnKey, runColumnKeys, runColumnWords } from "../../../../shared/tunnel/runColumns";
import { readRunTable, runColumnQuantities } from "../../../../shared/tunnel/runTable";
import { chosenTable } from "../../files/chosenTable";
import { StoreController } from "../../store/storeController";
import { type RunsBlock, runsDraft, runsText, takeRuns } from "../../tunnel/runsDraft";
import { changeBlock, tunnelBench } from "../../tunnel/tunnelBench";

const mostMessages = 12;
const mostShownRows = 400;

/** The run table: from a file or typed, its columns and units, and every fault beside the cell that it is in. */
@customElement("ww-tunnel-data")
export class TunnelData extends LitElement {
  private readonly block = new StoreController(this, tunnelBench, (value) => value.history.present.block);
  private readonly draft = new StoreController(this, runsDraft, (value) => value);
  @state() private fileProblem = "";
  /** Opened by a person, or for a column that was not found; it stays open until it is closed. */
  @state() private isMappingOpen = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async chooseFile(event: Event): Promise<void> {
    const chosen = await chosenTable(event);
    if (chosen === null) return;
    this.fileProblem = chosen.ok ? "" : chosen.problem.message;
    if (chosen.ok) takeRuns(chosen.value.text);
  }

  private change(runs: RunsBlock, change: Partial<RunsBlock>): void {
    changeBlock({ runs: { ...runs, ...change } });
  }

  private map(runs: RunsBlock, key: RunColumnKey, column: string, unit?: string): void {
    const { [key]: _old, ...rest } = runs.columns ?? {};
    this.change(runs, {
      columns: column === "" ? rest : { ...rest, [key]: unit === undefined ? { column } : { column, unit } },
    });
  }

  private leaveOut(runs: RunsBlock, row: number, isLeftOut: boolean): void {
    const others = (runs.leftOutRows ?? []).filter((each) => each !== row);
    this.change(runs, { leftOutRows: (isLeftOut ? [...others, row] : others).sort((a, b) => a - b) });
  }

  protected override render() {
    const { runs } = this.block.value;
    const table = runs === undefined || typeof runs.data === "string" ? null : runs.data;
    const draft = this.draft.value;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-data-heading">
      <h2 id="tunnel-data-heading">Data</h2>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${this.chooseFile} /><span>Choose a CSV file ...</span></label>
      </div>
      ${this.fileProblem === "" ? nothing : html`<p class="error" role="alert">${this.fileProblem}</p>`}
      ${runs !== undefined && table === null ? html`<p class="error" role="alert">The case names the table ${String(runs.data)}: open it here.</p>` : nothing}
      <label>Or type the rows, the first one naming the columns
        <textarea id="tunnel-runs" rows="6" spellcheck="false" .value=${runsText()} @change=${(event: Event) => takeRuns((event.target as HTMLTextAreaElement).value)}></textarea>
      </label>
      ${draft === null ? nothing : html`<p class="error" role="alert">This is no table yet: ${draft.message}. What was typed stays here; the results are those of the last table.</p>`}
      ${runs === undefined || table === null ? html`<p class="hint">No runs yet. A filled-in run sheet needs no column to be named; any other table is asked for its columns and units.</p>` : this.renderTable(runs, table)}
    </section>`;
  }

  private renderTable(runs: RunsBlock, table: DataTable) {
    const reading = readRunTable(table, runs.columns ?? {}, runs.decimalMark ?? null, runs.leftOutRows);
    if (reading.problems.some(({ row }) => row === null)) this.isMappingOpen = true;
    const used = reading.readings.length;
    return html`<div class="reading" role="status">
        <p>${used} of ${table.rows.length} rows are used; decimal mark: ${reading.decimalMark}.</p>
        ${reading.problems.length === 0 ? nothing : html`<ul class="error">${reading.problems.slice(0, mostMessages).map((one) => html`<li>${tableProblemText(one)}</li>`)}${reading.problems.length > mostMessages ? html`<li>and ${reading.problems.length - mostMessages} more</li>` : nothing}</ul>`}
        ${reading.notes.map((note) => html`<p class="hint">${note}</p>`)}
      </div>
      <details ?open=${this.isMappingOpen} @toggle=${(event: Event) => {
        this.isMappingOpen = (event.target as HTMLDetailsElement).open;
      }}>
        <summary>Columns and units</summary>
        ${this.renderMapping(runs, table)}
      </details>
      ${this.renderPreview(runs, table, reading.problems)}`;
  }

  private renderMapping(runs: RunsBlock, table: DataTable) {
    return html`${runColumnKeys.map((key) => {
      const mapped = runs.columns?.[key];
      const byName = mapped === undefined && columnIndex(table, key) >= 0;
      const quantity = runColumnQuantities[key];
      const units = quantity === null ? [] : unitsOf(quantity);
      const column = mapped?.column ?? (byName ? table.columns[columnIndex(table, key)] : "");
      return html`<div class="row"><label for="run-map-${key}">${runColumnWords[key]}</label>
          <span class="pair">
            <select id="run-map-${key}" @change=${(event: Event) => this.map(runs, key, (event.target as HTMLSelectElement).value)}>
              <option value="" ?selected=${column === ""}>no column</option>
              ${table.columns.map((name) => html`<option value=${name} ?selected=${name === column}>${name}</option>`)}
            </select>
            ${
              column !== "" && units.length > 1
                ? html`<select aria-label="Unit of: ${runColumnWords[key]}" @change=${(event: Event) => this.map(runs, key, column, (event.target as HTMLSelectElement).value)}>
                  ${units.map((unit) => html`<option value=${unit} ?selected=${unit === (mapped?.unit ?? units[0])}>${unit}</option>`)}
                </select>`
                : nothing
            }
          </span></div>`;
    })}
      <div class="row"><label for="run-mark">Decimal mark</label>
        <select id="run-mark" @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          const { decimalMark: _old, ...rest } = runs;
          changeBlock({ runs: value === "point" || value === "comma" ? { ...rest, decimalMark: value } : rest });
        }}>
          <option value="" ?selected=${runs.decimalMark === undefined}>told from the cells</option>
          <option value="point" ?selected=${runs.decimalMark === "point"}>point</option>
          <option value="comma" ?selected=${runs.decimalMark === "comma"}>comma</option>
        </select></div>`;
  }

  private renderPreview(runs: RunsBlock, table: DataTable, problems: readonly TableProblem[]) {
    const wrong = new Map(problems.map((one) => [`${one.row} ${one.column}`, one.message]));
    const shown = table.rows.slice(0, mostShownRows);
    return html`<div class="scroll preview" tabindex="0" role="region" aria-label="Rows as read">
      <table class="results" id="runs-preview">
        <thead><tr><th scope="col">Row</th><th scope="col">Use</th>${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>${shown.map((cells, i) => {
          const row = rowNumber(table, i);
          const isLeftOut = runs.leftOutRows?.includes(row) === true;
          return html`<tr class=${isLeftOut ? "is-left-out" : ""}><th scope="row">${row}</th>
            <td><input type="checkbox" aria-label="Use row ${row}" .checked=${!isLeftOut} @change=${(event: Event) => this.leaveOut(runs, row, !(event.target as HTMLInputElement).checked)} /></td>
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
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-data": TunnelData;
  }
}
