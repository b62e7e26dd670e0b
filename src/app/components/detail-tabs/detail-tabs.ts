import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { emit } from "../../view/emit";

/** A part that can be opened below the desk. */
export interface DetailTab {
  readonly key: string;
  readonly label: string;
}

/** The parts below the desk, one open at a time. Sends `detail-choose` with a key, or null to close. */
@customElement("ww-detail-tabs")
export class DetailTabs extends LitElement {
  static override styles = css`
    :host {
      display: flex;
      flex-wrap: wrap;
      gap: 0 4px;
      align-items: center;
    }
    button {
      all: unset;
      box-sizing: border-box;
      display: inline-flex;
      gap: 7px;
      align-items: center;
      min-height: 28px;
      padding: 0 12px 0 2px;
      font-size: 13px;
      font-weight: 700;
      color: var(--ink-soft);
      cursor: pointer;
    }
    button::before {
      content: "";
      width: 6px;
      height: 6px;
      border-right: 1.5px solid;
      border-bottom: 1.5px solid;
      transform: rotate(-45deg);
    }
    button[aria-expanded="true"] {
      color: var(--accent);
    }
    button[aria-expanded="true"]::before {
      transform: rotate(45deg);
    }
    button:hover {
      color: var(--ink);
    }
    button:focus-visible {
      outline: 3px solid var(--focus);
    }
    .note {
      margin-left: auto;
      font-size: 12px;
      color: var(--ink-soft);
    }
    @media (max-width: 899px) {
      button {
        min-height: 44px;
      }
      .note {
        display: none;
      }
    }
    @media print {
      :host {
        display: none;
      }
    }
  `;

  @property({ attribute: false }) tabs: readonly DetailTab[] = [];
  @property() open: string | null = null;

  protected override render() {
    return html`${this.tabs.map(
      ({ key, label }) =>
        html`<button type="button" aria-expanded=${key === this.open} @click=${() => emit(this, "detail-choose", key === this.open ? null : key)}>${label}</button>`,
    )}<span class="note">one at a time, opens below</span>`;
  }
}

declare global {
  interface PageEvents {
    "detail-choose": string | null;
  }
  interface HTMLElementTagNameMap {
    "ww-detail-tabs": DetailTabs;
  }
}
