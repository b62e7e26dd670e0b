import { chooseCaseFile } from "../../cases/chooseCaseFile";
import { emit } from "../../view/emit";
import { problemList } from "../fault-list/faultList";
import "../../puck/puckEvents";
import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import { demoCases, loadDemoCase } from "../../files/demoCases";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { casePanelStyles } from "../case-panel/case-panel.styles";

/** Opens and saves the pucks of this view as a case file, the one that the command line runs. Sends `puck-change`, `puck-save`, `case-file`. */
@customElement("ww-puck-case")
export class PuckCaseElement extends LitElement {
  static override styles = [controlStyles, panelStyles, casePanelStyles];

  @property() caseTitle = "";
  /** Why the file that was chosen last could not be opened. */
  @property({ attribute: false }) problems: readonly Problem[] = [];

  protected override render() {
    const demos = demoCases.filter(({ fileName }) => fileName.includes("candidates"));
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Puck case</h2></div>
      <div class="stack">
        <div class="row">
          <label for="title">Title</label>
          <input id="title" type="text" maxlength="200" .value=${this.caseTitle} @change=${(event: Event) => {
            const title = (event.target as HTMLInputElement).value.trim();
            if (title !== "") emit(this, "puck-change", { title });
          }} />
        </div>
        <div class="buttons">
          ${demos.map(({ fileName, label }) => html`<button type="button" @click=${() => emit(this, "case-file", { fileName, text: loadDemoCase(fileName) })}>${label}</button>`)}
          <label class="file">
            <input class="unseen" type="file" accept=".json,application/json" @change=${chooseCaseFile} />
            <span>Open a case file ...</span>
          </label>
          <button type="button" @click=${() => emit(this, "puck-save")}>Save as a file</button>
        </div>
        <p class="hint">Your pucks are kept in this browser; the file also runs on the command line.</p>
        ${problemList(this.problems)}
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-case": PuckCaseElement;
  }
}
