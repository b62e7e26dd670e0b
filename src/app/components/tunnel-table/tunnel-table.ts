import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type DataTable, tableProblemText } from "../../../../shared/tables/dataTable";
import { chosenTable } from "../../files/chosenTable";
import { StoreController } from "../../store/storeController";
import {
  changeTable,
  mapColumn,
  tableDrafts,
  tablePart,
  tableText,
  takeAway,
  takeTable,
} from "../../tunnel/tableDraft";
import { type TableKey, type TableLook, type TablePart, tableKinds } from "../../tunnel/tableKinds";
import { tunnelBench } from "../../tunnel/tunnelBench";
import { faultList } from "../fault-list/faultList";
import { cellTable } from "./cellTable";
import { columnRows } from "./columnRows";

/** One table of the tunnel block: from a file or typed, its columns and units, and every fault beside its cell. */
@customElement("ww-tunnel-table")
export class TunnelTable extends LitElement {
  @property() of: TableKey = "runs";
  private readonly block = new StoreController(this, tunnelBench, (value) => value.history.present.block);
  private readonly drafts = new StoreController(this, tableDrafts, (value) => value);
  @state() private fileProblem = "";
  /** Opened by a person, for a column that was not found, or for a guess to confirm; open until it is closed. */
  @state() private isMappingOpen = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async chooseFile(event: Event): Promise<void> {
    const chosen = await chosenTable(event);
    if (chosen === null) return;
    this.fileProblem = chosen.ok ? "" : chosen.problem.message;
    if (chosen.ok) this.take(chosen.value.text);
  }

  private take(text: string): void {
    takeTable(this.of, text);
    const { columns } = tablePart(tunnelBench.value.history.present.block, this.of) ?? {};
    if (Object.keys(columns ?? {}).length > 0) this.isMappingOpen = true;
  }

  protected override render() {
    const kind = tableKinds[this.of];
    const part = tablePart(this.block.value, this.of);
    const draft = this.drafts.value[this.of];
    const name = kind.label.toLowerCase();
    return html`<div class="table-input" role="group" aria-label=${kind.label}>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${this.chooseFile} /><span>Choose a CSV file: ${name} ...</span></label>
        ${part === undefined && draft === undefined ? nothing : html`<button type="button" class="is-quiet" @click=${() => takeAway(this.of)}>Take away: ${name}</button>`}
      </div>
      ${this.fileProblem === "" ? nothing : html`<p class="error" role="alert">${this.fileProblem}</p>`}
      ${typeof part?.data === "string" ? html`<p class="error" role="alert">The case names the table ${part.data}: open it here.</p>` : nothing}
      <label>Or type the rows, the first one naming the columns
        <textarea id="tunnel-${this.of}" rows="6" spellcheck="false" .value=${tableText(this.of)} @change=${(event: Event) => this.take((event.target as HTMLTextAreaElement).value)}></textarea>
      </label>
      ${draft === undefined ? nothing : html`<p class="error" role="alert">This is no table yet: ${draft.message}. What was typed stays here${part === undefined ? "" : "; the results are those of the last table"}.</p>`}
      ${part === undefined || typeof part.data === "string" ? html`<p class="hint">${kind.emptyHint}</p>` : this.renderTable(part, part.data)}
    </div>`;
  }

  private renderTable(part: TablePart, table: DataTable) {
    const kind = tableKinds[this.of];
    const look = kind.read(this.block.value, table);
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
          onColumn: (key, column, unit) => mapColumn(this.of, key, column, unit),
          onMark: (mark) => changeTable(this.of, { decimalMark: mark ?? undefined }),
        })}
      </details>
      ${cellTable({
        id: `${this.of}-preview`,
        label: `${kind.label}: rows as read`,
        table,
        problems: look.problems,
        leftOut: kind.canLeaveOut
          ? { rows: part.leftOutRows ?? [], onChange: (leftOutRows) => changeTable(this.of, { leftOutRows }) }
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
