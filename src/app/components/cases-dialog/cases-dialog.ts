import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import { openCase } from "../../engine/openCase";
import { caseToSave, rememberOpened, viewsToSave } from "../../engine/savedCase";
import { presentScreenHash } from "../../engine/screenContent";
import { loadedParts } from "../../engine/viewRegistry";
import { saveFile } from "../../files/saveFile";
import { recentCases, removeSavedCase, type StoredCase, saveCase, savedCases } from "../../files/storage";
import { closeDialog, pageState, type ViewName, viewNames, viewTexts } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { controlStyles } from "../../style/sharedStyles";
import { casesDialogStyles } from "./cases-dialog.styles";

/** Saves the views' work in the browser or as a file, makes a link of the screen, and opens what was saved before. */
@customElement("ww-cases-dialog")
export class CasesDialog extends LitElement {
  static override styles = [controlStyles, casesDialogStyles];

  /** True while the dialog around it is open: the lists are read anew. */
  @property({ type: Boolean }) open = false;

  @state() private saved: readonly StoredCase[] = [];
  @state() private recent: readonly StoredCase[] = [];
  @state() private link = "";
  @state() private said = "";
  @state() private problems: readonly Problem[] = [];
  @state() private views: readonly ViewName[] = [];
  private readonly shown = new StoreController(this, pageState, (value) => value.view);
  private readonly parts = new StoreController(this, loadedParts, (value) => value);

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has("open") && this.open) {
      this.link = "";
      this.said = "";
      this.problems = [];
      this.views = viewsToSave();
      void this.readLists();
    }
  }

  private async readLists(): Promise<void> {
    [this.saved, this.recent] = await Promise.all([savedCases(), recentCases()]);
  }

  private async save(): Promise<void> {
    const stored = caseToSave(this.views);
    const isKept = await saveCase(stored);
    this.said = isKept ? `Saved in this browser as ${stored.fileName}.` : "Not saved.";
    if (isKept) rememberOpened(stored.fileName, stored.text);
    await this.readLists();
  }

  private download(): void {
    const { fileName, text } = caseToSave(this.views);
    saveFile(fileName, "application/json", text);
    rememberOpened(fileName, text);
    this.said = `${fileName} was handed to the browser as a download.`;
  }

  /** The shown view is always saved; the order is that of the buttons. */
  private choose(view: ViewName, isChosen: boolean): void {
    this.views = viewNames.filter((one) => (one === view ? isChosen : this.views.includes(one)));
  }

  private async makeLink(): Promise<void> {
    const hash = await presentScreenHash();
    if (!hash.ok) {
      this.said = hash.problem.message;
      return;
    }
    this.link = `${location.origin}${location.pathname}${hash.value}`;
    history.replaceState(null, "", hash.value);
    try {
      await navigator.clipboard.writeText(this.link);
      this.said = "The link is in the clipboard and in the address bar.";
    } catch {
      this.said = "The link is in the address bar and below.";
    }
  }

  private async reopen(stored: StoredCase): Promise<void> {
    this.problems = await openCase(stored.fileName, stored.text);
    if (this.problems.length > 0) return;
    closeDialog();
  }

  private async forget(stored: StoredCase): Promise<void> {
    await removeSavedCase(stored.fileName);
    await this.readLists();
  }

  protected override render() {
    const part = this.parts.value[this.shown.value];
    return html`<div class="stack">
      <div>
        <label for="title">Title</label>
        <div class="line">
          <input id="title" type="text" maxlength="200" .value=${part?.look().title ?? ""} @change=${(event: Event) => {
            const title = (event.target as HTMLInputElement).value.trim();
            if (title !== "") part?.rename(title);
          }} />
        </div>
        ${this.renderViews()}
        <div class="line">
          <button type="button" class="is-main" @click=${this.save}>Save in this browser</button>
          <button type="button" @click=${this.download}>Download case file</button>
          <button type="button" @click=${this.makeLink}>Make a link</button>
        </div>
        ${this.link ? html`<div class="line"><input type="text" readonly aria-label="Link to this screen" .value=${this.link} /></div>` : nothing}
        <p role="status" class="hint">${this.said}</p>
        <p class="hint">The case file runs on the command line as it is: npm run case -- FILE</p>
        ${this.problems.length > 0 ? html`<p class="error" role="alert">${this.problems[0].message}</p>` : nothing}
      </div>
      ${this.renderList("Saved in this browser", this.saved, true)} ${this.renderList("Opened lately", this.recent, false)}
    </div>`;
  }

  /** What the file is to hold, once there is a choice. */
  private renderViews() {
    const shown = this.shown.value;
    const offered = viewNames.filter((view) => this.parts.value[view] !== undefined || this.views.includes(view));
    if (offered.length < 2) return nothing;
    return html`<fieldset>
      <legend>Views in the case</legend>
      ${offered.map(
        (view) => html`<label class="choice">
          <input type="checkbox" .checked=${this.views.includes(view)} ?disabled=${view === shown}
            @change=${(event: Event) => this.choose(view, (event.target as HTMLInputElement).checked)} />
          ${viewTexts[view]}
        </label>`,
      )}
    </fieldset>`;
  }

  private renderList(heading: string, cases: readonly StoredCase[], removable: boolean) {
    return html`<div>
      <h3>${heading}</h3>
      ${
        cases.length === 0
          ? html`<p class="hint">None yet.</p>`
          : html`<ul>
            ${cases.map(
              (stored) => html`<li>
                <span>${stored.title}<small>${stored.fileName}, ${new Date(stored.at).toLocaleString()}</small></span>
                <span class="line">
                  <button type="button" @click=${() => this.reopen(stored)}>Open<span class="unseen"> ${stored.title}</span></button>
                  ${removable ? html`<button type="button" @click=${() => this.forget(stored)}>Remove<span class="unseen"> ${stored.title}</span></button>` : nothing}
                </span>
              </li>`,
            )}
          </ul>`
      }
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-cases-dialog": CasesDialog;
  }
}
