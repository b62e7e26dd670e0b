import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import { chooseCaseFile } from "../../cases/chooseCaseFile";
import { demoCases, loadDemoCase } from "../../files/demoCases";
import { type CaseRun, noCase } from "../../section/caseRun";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { emit } from "../../view/emit";
import { problemList } from "../fault-list/faultList";
import { casePanelStyles } from "./case-panel.styles";

/** Opens a case file, runs it in the worker, and shows how far it is. Sends `case-file`, `case-refused` and `section-case`. */
@customElement("ww-case-panel")
export class CasePanel extends LitElement {
  static override styles = [controlStyles, panelStyles, casePanelStyles];

  @property({ attribute: false }) run: CaseRun = noCase;
  /** Why the file that was chosen last could not be opened. */
  @property({ attribute: false }) problems: readonly Problem[] = [];

  private chooseDemo(event: Event): void {
    const fileName = (event.target as HTMLSelectElement).value;
    if (fileName !== "") emit(this, "case-file", { fileName, text: loadDemoCase(fileName) });
  }

  protected override render() {
    const run = this.run;
    const share = run.total > 0 ? run.done / run.total : 0;
    const problems = [...this.problems, ...run.problems];
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Case</h2></div>
      <div class="stack">
        <div class="row">
          <label for="demo">Demo case</label>
          <select id="demo" @change=${this.chooseDemo}>
            <option value="">choose ...</option>
            ${demoCases.map(
              ({ fileName, label }) =>
                html`<option value=${fileName} ?selected=${fileName === run.fileName}>${label}</option>`,
            )}
          </select>
        </div>
        <div class="buttons">
          <label class="file">
            <input class="unseen" type="file" accept=".json,application/json" @change=${chooseCaseFile} />
            <span>Open a case file ...</span>
          </label>
          ${
            run.status === "running"
              ? html`<button type="button" class="cancel" @click=${() => emit(this, "section-case", "cancel")}>Cancel</button>`
              : run.text !== ""
                ? html`<button type="button" class="is-main run" @click=${() => emit(this, "section-case", "run")}>${run.status === "idle" ? "Run the case" : "Run again"}</button>`
                : nothing
          }
        </div>
        ${
          run.status === "idle"
            ? nothing
            : html`<div>
              <label class="hint" for="progress">${run.title}</label>
              <progress id="progress" max="1" .value=${run.status === "done" ? 1 : share}></progress>
              <p class="hint" role="status">${this.statusText()}</p>
            </div>`
        }
        ${problemList(problems)}
      </div>
    </section>`;
  }

  private statusText(): string {
    const { status, done, total, label, rows, results } = this.run;
    const failed = rows.filter((row) => !row.converged).length;
    switch (status) {
      case "idle":
        return "";
      case "running":
        return total > 0 ? `Step ${done} of ${total}: ${label}` : label;
      case "done":
        return `${results?.results.length ?? 0} results${failed > 0 ? `, ${failed} did not converge` : ", all converged"}.`;
      case "cancelled":
        return `Cancelled after step ${done} of ${total || "?"}; ${rows.length} results are kept.`;
      case "failed":
        return "The case could not be run.";
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-case-panel": CasePanel;
  }
}
