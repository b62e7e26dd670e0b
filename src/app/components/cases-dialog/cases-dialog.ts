import { emit } from "../../view/emit";
import "../../cases/caseEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import type { StoredCase } from "../../files/storedCase";
import { type ViewName, viewTexts } from "../../store/viewNames";
import { controlStyles } from "../../style/sharedStyles";
import { casesDialogStyles } from "./cases-dialog.styles";

/**
 * Saves the views' work in the browser or as a file, makes a link of the screen, and opens what was saved before. Sends
 * `cases-rename`, `cases-choose`, `cases-save`, `cases-reopen` and `cases-forget`.
 */
@customElement("ww-cases-dialog")
export class CasesDialog extends LitElement {
  static override styles = [controlStyles, casesDialogStyles];

  /** Title of what is worked on. */
  @property() caseTitle = "";
  /** The view that is shown: it is always saved. */
  @property() shown: ViewName = "section";
  /** Views that can be in the case, in the order of the buttons, and those that are chosen. */
  @property({ attribute: false }) offered: readonly ViewName[] = [];
  @property({ attribute: false }) chosen: readonly ViewName[] = [];
  @property({ attribute: false }) saved: readonly StoredCase[] = [];
  @property({ attribute: false }) recent: readonly StoredCase[] = [];
  /** Why the lists are not whole; empty when they are. */
  @property() unread = "";
  /** A link to the screen; empty before one is made. */
  @property() link = "";
  /** What became of the last request. */
  @property() said = "";
  /** Why a case could not be opened. */
  @property({ attribute: false }) problems: readonly Problem[] = [];

  protected override render() {
    return html`<div class="stack">
      <div>
        <label for="title">Title</label>
        <div class="line">
          <input id="title" type="text" maxlength="200" .value=${this.caseTitle} @change=${(event: Event) => {
            const title = (event.target as HTMLInputElement).value.trim();
            if (title !== "") emit(this, "cases-rename", title);
          }} />
        </div>
        ${this.renderViews()}
        <div class="line">
          <button type="button" class="is-main" @click=${() => emit(this, "cases-save", "browser")}>Save in this browser</button>
          <button type="button" @click=${() => emit(this, "cases-save", "file")}>Download case file</button>
          <button type="button" @click=${() => emit(this, "cases-save", "link")}>Make a link</button>
        </div>
        ${this.link ? html`<div class="line"><input type="text" readonly aria-label="Link to this screen" .value=${this.link} /></div>` : nothing}
        <p role="status" class="hint">${this.said}</p>
        <p class="hint">The case file runs on the command line as it is: npm run case -- FILE</p>
        ${this.problems.length > 0 ? html`<p class="error" role="alert">${this.problems[0].message}</p>` : nothing}
      </div>
      ${this.unread ? html`<p class="error" role="alert">${this.unread}</p>` : nothing}
      ${this.renderList("Saved in this browser", this.saved, true)} ${this.renderList("Opened lately", this.recent, false)}
    </div>`;
  }

  /** What the file is to hold, once there is a choice. */
  private renderViews() {
    const { shown, offered } = this;
    if (offered.length < 2) return nothing;
    return html`<fieldset>
      <legend>Views in the case</legend>
      ${offered.map(
        (view) => html`<label class="choice">
          <input type="checkbox" .checked=${this.chosen.includes(view)} ?disabled=${view === shown}
            @change=${(event: Event) => emit(this, "cases-choose", { view, isChosen: (event.target as HTMLInputElement).checked })} />
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
          ? html`<p class="hint">${this.unread ? "None that could be read." : "None yet."}</p>`
          : html`<ul>
            ${cases.map(
              (stored) => html`<li>
                <span>${stored.title}<small>${stored.fileName}, ${new Date(stored.at).toLocaleString()}</small></span>
                <span class="line">
                  <button type="button" @click=${() => emit(this, "cases-reopen", stored)}>Open<span class="unseen"> ${stored.title}</span></button>
                  ${removable ? html`<button type="button" @click=${() => emit(this, "cases-forget", stored)}>Remove<span class="unseen"> ${stored.title}</span></button>` : nothing}
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
