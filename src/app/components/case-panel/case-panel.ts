import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { largestCaseBytes } from "../../../../shared/document/limits";
import type { Problem } from "../../../../shared/result";
import { cancelCase, runCaseFile } from "../../engine/caseRunning";
import { openCase } from "../../engine/openCase";
import { demoCases, loadDemoCase } from "../../files/demoCases";
import { caseRun } from "../../store/caseRun";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { casePanelStyles } from "./case-panel.styles";

/** Opens a case file, runs it in the worker, and shows how far it is. */
@customElement("ww-case-panel")
export class CasePanel extends LitElement {
  static override styles = [controlStyles, panelStyles, casePanelStyles];

  private readonly run = new StoreController(this, caseRun, (value) => value);
  @state() private problems: readonly Problem[] = [];

  private async open(fileName: string, text: Promise<string>): Promise<void> {
    try {
      this.problems = await openCase(fileName, await text);
    } catch {
      this.problems = [{ code: "load", message: `${fileName} could not be loaded.` }];
    }
  }

  private chooseDemo(event: Event): void {
    const fileName = (event.target as HTMLSelectElement).value;
    if (fileName !== "") void this.open(fileName, loadDemoCase(fileName));
  }

  private chooseFile(event: Event): void {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    if (file.size > largestCaseBytes) {
      const message = `${file.name} has ${file.size} bytes; a case file must have at most ${largestCaseBytes}.`;
      this.problems = [{ code: "size", message }];
    } else {
      void this.open(file.name, file.text());
    }
  }

  protected override render() {
    const run = this.run.value;
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
            <input class="unseen" type="file" accept=".json,application/json" @change=${this.chooseFile} />
            <span>Open a case file ...</span>
          </label>
          ${
            run.status === "running"
              ? html`<button type="button" class="cancel" @click=${cancelCase}>Cancel</button>`
              : run.text !== ""
                ? html`<button type="button" class="is-main run" @click=${() => runCaseFile(run.fileName, run.title, run.text)}>${run.status === "idle" ? "Run the case" : "Run again"}</button>`
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
        ${
          problems.length > 0
            ? html`<ul class="error" role="alert">${problems.slice(0, 8).map((problem) => html`<li>${problem.message}</li>`)}
              ${problems.length > 8 ? html`<li>and ${problems.length - 8} more</li>` : nothing}</ul>`
            : nothing
        }
      </div>
    </section>`;
  }

  private statusText(): string {
    const { status, done, total, label, rows, results } = this.run.value;
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
