import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { FluidSpec } from "../../../../shared/engine/fluid/fluidSpec";
import {
  measuredColumnKeys,
  measuredColumnQuantities,
  measuredColumnWords,
} from "../../../../shared/jobs/evidence/measuredColumns";
import type { DataTable } from "../../../../shared/tables/dataTable";
import type { DesignChoice } from "../../compare/designChoices";
import { draftTable, emptyDraft, type ImportDraft, readDraft, withTable } from "../../compare/importDraft";
import { chosenTable } from "../../files/chosenTable";
import { mappedColumns } from "../../tunnel/tableEdits";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { kindOptions } from "../compare-setup/kindOptions";
import { faultList } from "../fault-list/faultList";
import { columnRows } from "../tunnel-table/columnRows";

const measuredTable = {
  columnKeys: measuredColumnKeys,
  columnWords: measuredColumnWords,
  quantities: measuredColumnQuantities,
};

/** Imports a table of measured points: columns and units are asked for, problems named by row and column. Sends `compare-draft`, `compare-add`. */
@customElement("ww-compare-import")
export class CompareImport extends LightElement {
  @property({ attribute: false }) draft: ImportDraft = emptyDraft;
  /** What a measurement may be of, at least one. */
  @property({ attribute: false }) choices: readonly DesignChoice[] = [];
  /** For a column of speeds. */
  @property({ attribute: false }) fluid: FluidSpec = { kind: "freshWater", temperatureCelsius: 20 };
  @state() private fileProblem = "";
  @state() private added = "";

  private async chooseFile(event: Event): Promise<void> {
    const chosen = await chosenTable(event);
    if (chosen === null) return;
    this.added = "";
    this.fileProblem = chosen.ok ? "" : chosen.problem.message;
    if (chosen.ok) emit(this, "compare-draft", withTable(this.draft, chosen.value.text, chosen.value.fileName));
  }

  private change(change: Partial<ImportDraft>): void {
    emit(this, "compare-draft", { ...this.draft, ...change });
  }

  private map(key: string, column: string, unit?: string): void {
    this.change({ mapping: mappedColumns(this.draft.mapping, key, column, unit) });
  }

  protected override render() {
    const { draft, choices } = this;
    const table = draftTable(draft);
    const choice = choices.find(({ key }) => key === draft.section) ?? choices[0];
    const reading = readDraft(draft, choice.thing, this.fluid);
    return html`<section class="view-section compare-section" aria-labelledby="compare-import-heading">
      <h2 id="compare-import-heading">Import a table</h2>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${this.chooseFile} /><span>Choose a CSV file ...</span></label>
      </div>
      <label>Or paste its rows, the first one naming the columns
        <textarea id="compare-table" rows="4" spellcheck="false" .value=${draft.text} @input=${(event: Event) => {
          this.added = "";
          emit(this, "compare-draft", withTable(draft, (event.target as HTMLTextAreaElement).value, null));
        }}></textarea>
      </label>
      ${this.fileProblem === "" ? nothing : html`<p class="error" role="alert">${this.fileProblem}</p>`}
      ${table === null ? nothing : this.renderMapping(table)}
      ${
        draft.text.trim() === ""
          ? nothing
          : html`<div class="row"><label for="import-name">Name</label>
              <input id="import-name" type="text" maxlength="100" .value=${draft.name} @input=${(event: Event) => this.change({ name: (event.target as HTMLInputElement).value })} /></div>
            <div class="row"><label for="import-source">Source: who, when, where</label>
              <input id="import-source" type="text" maxlength="500" .value=${draft.source} @input=${(event: Event) => this.change({ source: (event.target as HTMLInputElement).value })} /></div>
            <div class="row"><label for="import-kind">Kind</label>
              <select id="import-kind" @change=${(event: Event) => this.change({ kind: (event.target as HTMLSelectElement).value as typeof draft.kind })}>${kindOptions(draft.kind)}</select></div>
            <div class="row"><label for="import-section">What was measured</label>
              <select id="import-section" @change=${(event: Event) => this.change({ section: (event.target as HTMLSelectElement).value })}>
                ${choices.map(({ key, label }) => html`<option value=${key} ?selected=${key === choice.key}>${label}</option>`)}
              </select></div>
            <div role="status" class="reading">${
              reading.ok
                ? html`<p>${reading.pointCount} ${reading.pointCount === 1 ? "point" : "points"} read.</p>${reading.skipped.map((one) => html`<p class="hint">${one}</p>`)}`
                : faultList(reading.messages)
            }</div>
            <div class="line">
              <button type="button" class="is-main" ?disabled=${!reading.ok} @click=${() => {
                if (!reading.ok) return;
                emit(this, "compare-add", reading.set);
                this.added = `Added: ${reading.set.name}. State its stream and set-up below.`;
                emit(this, "compare-draft", emptyDraft);
              }}>Add these points</button>
            </div>`
      }
      ${this.added === "" ? nothing : html`<p class="hint" role="status">${this.added}</p>`}
    </section>`;
  }

  private renderMapping(table: DataTable) {
    const { mapping, decimalMark } = this.draft;
    return html`<h3>Which column holds what</h3>
      ${columnRows({
        id: "import",
        kind: measuredTable,
        table,
        columns: mapping,
        decimalMark,
        onColumn: (key, column, unit) => this.map(key, column, unit),
        onMark: (mark) => this.change({ decimalMark: mark }),
      })}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-import": CompareImport;
  }
}
