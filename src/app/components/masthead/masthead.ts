import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { ShownPart } from "../../engine/shownPart";
import { openDialog, pageState, viewNames, viewTexts } from "../../store/pageState";
import { preferences, type ThemeChoice } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { controlStyles } from "../../style/sharedStyles";
import { mastheadStyles } from "./masthead.styles";

/** Name, views, title of what is worked on and the page-wide actions. Sends `print-report` when a person asks for the report. */
@customElement("ww-masthead")
export class Masthead extends LitElement {
  static override styles = [controlStyles, mastheadStyles];

  private readonly shown = new ShownPart(this);
  private readonly view = new StoreController(this, pageState, (value) => value.view);
  private readonly theme = new StoreController(this, preferences, (value) => value.theme);

  protected override render() {
    const { part } = this.shown;
    const { title, canUndo, canRedo } = part?.look() ?? { title: "", canUndo: false, canRedo: false };
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
            html`<button type="button" aria-current=${view === this.view.value ? "page" : "false"} @click=${() => pageState.patch({ view })}>${viewTexts[view]}</button>`,
        )}
      </nav>
      <p class="title">${title}</p>
      <div class="actions" role="toolbar" aria-label="Page">
        <button type="button" ?disabled=${!canUndo} @click=${() => part?.undo()}>Undo</button>
        <button type="button" ?disabled=${!canRedo} @click=${() => part?.redo()}>Redo</button>
        <button type="button" @click=${() => openDialog("cases")}>Cases</button>
        <button type="button" ?disabled=${part === null} @click=${() => this.dispatchEvent(new CustomEvent("print-report"))}>Print report</button>
        <button type="button" @click=${() => openDialog("glossary")}>Glossary</button>
        <button type="button" @click=${() => openDialog("guide")}>Guide</button>
        <select aria-label="Theme" @change=${(event: Event) =>
          preferences.patch({ theme: (event.target as HTMLSelectElement).value as ThemeChoice })}>
          ${(["system", "light", "dark"] as const).map(
            (choice) => html`<option value=${choice} ?selected=${choice === this.theme.value}>${choice} theme</option>`,
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
