import { html, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import { type DataTable, tableProblemText } from "../../../../shared/tables/dataTable";
import { chosenTable } from "../../files/chosenTable";
import { mappedColumns, type TableDrafts, tableText } from "../../tunnel/tableEdits";
import { type TableKey, type TableLook, type TablePart, tableKinds } from "../../tunnel/tableKinds";
import { startTunnel } from "../../tunnel/tunnelInputs";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { faultList } from "../fault-list/faultList";
import { cellTable } from "./cellTable";
import { columnRows } from "./columnRows";

/** One table of the tunnel block: from a file or typed, its columns and units, and every fault beside its cell. Sends `tunnel-table-text` and `tunnel-table-change`. */
@customElement("ww-tunnel-table")
export class TunnelTable extends LightElement {
  @property() of: TableKey = "runs";
  @property({ attribute: false }) block: TunnelBlockDocument = startTunnel.block;
  @property({ attribute: false }) drafts: TableDrafts = {};
  @state() private fileProblem = "";
  /** Opened by a person, for a column that was not found, or for a guess to confirm; open until it is closed. */
  @state() private isMappingOpen = false;
  /** True from taking a text until its table is here. */
  private isTaking = false;

  private async chooseFile(event: Event): Promise<void> {
    const chosen = await chosenTable(event);
    if (chosen === null) return;
    this.fileProblem = chosen.ok ? "" : chosen.problem.message;
    if (chosen.ok) this.take(chosen.value.text);
  }

  private take(text: string): void {
    this.isTaking = true;
    emit(this, "tunnel-table-text", { of: this.of, text });
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.isTaking || !changed.has("block")) return;
    this.isTaking = false;
    if (Object.keys(this.block[this.of]?.columns ?? {}).length > 0) this.isMappingOpen = true;
  }

  private change(change: Partial<TablePart>): void {
    emit(this, "tunnel-table-change", { of: this.of, change });
  }

  protected override render() {
    const kind = tableKinds[this.of];
    const part: TablePart | undefined = this.block[this.of];
    const draft = this.drafts[this.of];
    const name = kind.label.toLowerCase();
    return html`<div class="table-input" role="group" aria-label=${kind.label}>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${this.chooseFile} /><span>Choose a CSV file: ${name} ...</span></label>
        ${part === undefined && draft === undefined ? nothing : html`<button type="button" class="is-quiet" @click=${() => emit(this, "tunnel-table-text", { of: this.of, text: "" })}>Take away: ${name}</button>`}
      </div>
      ${this.fileProblem === "" ? nothing : html`<p class="error" role="alert">${this.fileProblem}</p>`}
      ${typeof part?.data === "string" ? html`<p class="error" role="alert">The case names the table ${part.data}: open it here.</p>` : nothing}
      <label>Or type the rows, the first one naming the columns
        <textarea id="tunnel-${this.of}" rows="6" spellcheck="false" .value=${tableText(this.block, this.drafts, this.of)} @change=${(event: Event) => this.take((event.target as HTMLTextAreaElement).value)}></textarea>
      </label>
      ${draft === undefined ? nothing : html`<p class="error" role="alert">This is no table yet: ${draft.message}. What was typed stays here${part === undefined ? "" : "; the results are those of the last table"}.</p>`}
      ${part === undefined || typeof part.data === "string" ? html`<p class="hint">${kind.emptyHint}</p>` : this.renderTable(part, part.data)}
    </div>`;
  }

  private renderTable(part: TablePart, table: DataTable) {
    const kind = tableKinds[this.of];
    const look = kind.read(this.block, table);
    const isAsked = this.isMappingOpen || look.problems.some(({ row }) => row === null);
    return html`${this.renderLook(look, table)}
      <details ?open=${isAsked} @toggle=${(event: Event) => {
        this.isMappingOpen = (event.target as HTMLDetailsElement).open;
      }}>
        <summary>Columns and units</summary>
        ${columnRows({
          id: this.of,
          kind,
          table,
          columns: part.columns ?? {},
          decimalMark: part.decimalMark ?? null,
          onColumn: (key, column, unit) => this.change({ columns: mappedColumns(part.columns, key, column, unit) }),
          onMark: (mark) => this.change({ decimalMark: mark ?? undefined }),
        })}
      </details>
      ${cellTable({
        id: `${this.of}-preview`,
        label: `${kind.label}: rows as read`,
        table,
        problems: look.problems,
        leftOut: kind.canLeaveOut
          ? { rows: part.leftOutRows ?? [], onChange: (leftOutRows) => this.change({ leftOutRows }) }
          : null,
      })}`;
  }

  private renderLook({ used, problems, notes, decimalMark }: TableLook, table: DataTable) {
    return html`<div class="reading" role="status">
      <p>${used} of ${table.rows.length} rows are used; decimal mark: ${decimalMark}.</p>
      ${faultList(problems.map(tableProblemText))}
      ${notes.map((note) => html`<p class="hint">${note}</p>`)}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-table": TunnelTable;
  }
}
