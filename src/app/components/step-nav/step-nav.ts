import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { emit } from "../../view/emit";

/** A step of a view's work. */
export interface Step {
  readonly key: string;
  readonly label: string;
  /** How far it is, in a word or two; empty for nothing to say. */
  readonly note?: string;
}

/** The steps of a view across its top; the last one shows all of them at once. Sends `step-choose`. */
@customElement("ww-step-nav")
export class StepNav extends LitElement {
  static override styles = css`
    :host {
      display: flex;
      gap: 4px 18px;
      align-items: center;
      min-height: 37px;
      padding: 0 20px;
      border-bottom: 1px solid var(--rule);
      font-size: 13px;
    }
    nav {
      display: flex;
      gap: 2px 16px;
      overflow-x: auto;
      scrollbar-width: none;
      flex: none;
      max-width: 100%;
    }
    button {
      all: unset;
      box-sizing: border-box;
      white-space: nowrap;
      cursor: pointer;
      color: var(--ink-soft);
      min-height: 37px;
      line-height: 35px;
      border-bottom: 2px solid transparent;
    }
    button b {
      font-weight: 700;
      margin-left: 4px;
    }
    button[aria-current="step"] {
      color: var(--ink);
      border-bottom-color: var(--accent);
    }
    button:focus-visible {
      outline: 3px solid var(--focus);
      outline-offset: -3px;
    }
    ::slotted(*) {
      margin-left: auto !important;
      min-width: 0;
      overflow: hidden;
      text-overflow: ellipsis;
      white-space: nowrap;
      font-size: 12px;
      color: var(--ink-soft);
    }
    @media (max-width: 899px) {
      :host {
        padding: 0 14px;
        flex-wrap: wrap;
      }
      button {
        min-height: 44px;
        line-height: 42px;
      }
    }
    @media print {
      :host {
        display: none;
      }
    }
  `;

  @property({ attribute: false }) steps: readonly Step[] = [];
  @property() step = "";
  /** What the steps are of, for readers of the screen. */
  @property() label = "Steps";

  protected override render() {
    return html`<nav aria-label=${this.label}>${this.steps.map(
      ({ key, label, note = "" }, i) =>
        html`<button type="button" aria-current=${key === this.step ? "step" : "false"} @click=${() => emit(this, "step-choose", key)}>${key === "all" ? "" : `${i + 1} `}<b>${label}</b>${note === "" ? "" : ` ${note}`}</button>`,
    )}</nav><slot></slot>`;
  }
}

declare global {
  interface PageEvents {
    /** Key of the step to show. */
    "step-choose": string;
  }
  interface HTMLElementTagNameMap {
    "ww-step-nav": StepNav;
  }
}
