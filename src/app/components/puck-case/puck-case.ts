import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { largestCaseBytes } from "../../../../shared/document/limits";
import type { Problem } from "../../../../shared/result";
import { openCase } from "../../engine/openCase";
import { caseToSave, rememberOpened, viewsToSave } from "../../engine/savedCase";
import { demoCases, loadDemoCase } from "../../files/demoCases";
import { saveFile } from "../../files/saveFile";
import { changePuck, puckBench } from "../../puck/puckBench";
import { hasPuckBlock } from "../../puck/puckCaseText";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { casePanelStyles } from "../case-panel/case-panel.styles";

/** Opens and saves the pucks of this view as a case file, the one that the command line runs. */
@customElement("ww-puck-case")
export class PuckCaseElement extends LitElement {
  static override styles = [controlStyles, panelStyles, casePanelStyles];

  private readonly caseTitle = new StoreController(this, puckBench, (value) => value.history.present.title);
  @state() private problems: readonly Problem[] = [];

  private async open(fileName: string, loading: Promise<string>): Promise<void> {
    try {
      const text = await loading;
      this.problems = hasPuckBlock(text)
        ? await openCase(fileName, text)
        : [{ code: "no-puck", message: `${fileName} has no pucks: a case for this view needs the key puck.` }];
    } catch {
      this.problems = [{ code: "load", message: `${fileName} could not be loaded.` }];
    }
  }

  private chooseFile(event: Event): void {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (file === undefined) return;
    if (file.size > largestCaseBytes) {
      const message = `${file.name} has ${file.size} bytes; a case file must have at most ${largestCaseBytes}.`;
      this.problems = [{ code: "size", message }];
    } else {
      void this.open(file.name, file.text());
    }
  }

  private save(): void {
    const { fileName, text } = caseToSave(viewsToSave());
    saveFile(fileName, "application/json", text);
    rememberOpened(fileName, text);
  }

  protected override render() {
    const demos = demoCases.filter(({ fileName }) => fileName.includes("candidates"));
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Puck case</h2></div>
      <div class="stack">
        <div class="row">
          <label for="title">Title</label>
          <input id="title" type="text" maxlength="200" .value=${this.caseTitle.value} @change=${(event: Event) => {
            const title = (event.target as HTMLInputElement).value.trim();
            if (title !== "") changePuck({ title });
          }} />
        </div>
        <div class="buttons">
          ${demos.map(({ fileName, label }) => html`<button type="button" @click=${() => this.open(fileName, loadDemoCase(fileName))}>${label}</button>`)}
          <label class="file">
            <input class="unseen" type="file" accept=".json,application/json" @change=${this.chooseFile} />
            <span>Open a case file ...</span>
          </label>
          <button type="button" @click=${this.save}>Save as a file</button>
        </div>
        <p class="hint">Your pucks are kept in this browser; the file also runs on the command line.</p>
        ${
          this.problems.length > 0
            ? html`<ul class="error" role="alert">${this.problems.slice(0, 8).map(({ message }) => html`<li>${message}</li>`)}
              ${this.problems.length > 8 ? html`<li>and ${this.problems.length - 8} more</li>` : nothing}</ul>`
            : nothing
        }
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-case": PuckCaseElement;
  }
}
