import { emit } from "../../view/emit";
import "../../cases/caseEvents";
import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type ViewName, viewNames, viewTexts } from "../../store/viewNames";
import { controlStyles } from "../../style/sharedStyles";
import type { ViewLook } from "../../view/viewPart";
import { mastheadStyles } from "./masthead.styles";

/**
 * Name, views, title of what is worked on and the page-wide actions. Sends `view-choose`, `view-step`, `open-dialog`,
 * `print-report` and `theme-choose`.
 */
@customElement("ww-masthead")
export class Masthead extends LitElement {
  static override styles = [controlStyles, mastheadStyles];

  /** Title of what is worked on, and which steps of its history there are; null until the view is loaded. */
  @property({ attribute: false }) look: ViewLook | null = null;
  /** The view that is shown. */
  @property() view: ViewName = "section";
  @property() theme: PageEvents["theme-choose"] = "system";

  protected override render() {
    const { title, canUndo, canRedo } = this.look ?? { title: "", canUndo: false, canRedo: false };
    return html`<header class="bar">
      <h1 class="brand">
        <svg viewBox="0 0 48 40" aria-hidden="true">
          <path d="M1 12C12 12 13 4 22 4S35 12 47 7M1 28C12 28 13 36 22 36S35 28 47 33" fill="none" stroke="var(--accent)" stroke-width="4" stroke-linecap="round" />
          <rect x="13" y="12.5" width="18" height="15" rx="5" fill="var(--ember)" />
        </svg>
        Wakewright
      </h1>
      <nav class="views" aria-label="Views">
        ${viewNames.map(
          (view) =>
            html`<button type="button" aria-current=${view === this.view ? "page" : "false"} @click=${() => emit(this, "view-choose", view)}>${viewTexts[view]}</button>`,
        )}
      </nav>
      <p class="title">${title}</p>
      <div class="actions" role="toolbar" aria-label="Page">
        <button type="button" ?disabled=${!canUndo} @click=${() => emit(this, "view-step", "undo")}>Undo</button>
        <button type="button" ?disabled=${!canRedo} @click=${() => emit(this, "view-step", "redo")}>Redo</button>
        <button type="button" @click=${() => emit(this, "open-dialog", "gallery")}>Examples</button>
        <button type="button" @click=${() => emit(this, "open-dialog", "tour")}>Tour</button>
        <button type="button" @click=${() => emit(this, "open-dialog", "cases")}>Cases</button>
        <button type="button" ?disabled=${this.look === null} @click=${() => emit(this, "print-report")}>Print report</button>
        <button type="button" @click=${() => emit(this, "open-dialog", "glossary")}>Glossary</button>
        <button type="button" @click=${() => emit(this, "open-dialog", "guide")}>Guide</button>
        <select aria-label="Theme" @change=${(event: Event) =>
          emit(this, "theme-choose", (event.target as HTMLSelectElement).value as PageEvents["theme-choose"])}>
          ${(["system", "light", "dark"] as const).map(
            (choice) => html`<option value=${choice} ?selected=${choice === this.theme}>${choice} theme</option>`,
          )}
        </select>
      </div>
    </header>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-masthead": Masthead;
  }
}
