import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { emit } from "../../view/emit";

/** A group of inputs, folded to one line that says what they are set to. Sends `desk-group`. */
@customElement("ww-desk-group")
export class DeskGroup extends LitElement {
  static override styles = css`
    :host {
      display: block;
      border-bottom: 1px solid var(--rule);
    }
    button {
      all: unset;
      box-sizing: border-box;
      display: flex;
      width: 100%;
      gap: 8px;
      align-items: baseline;
      min-height: 30px;
      line-height: 30px;
      cursor: pointer;
      font-size: 13px;
      white-space: nowrap;
      overflow: hidden;
    }
    b {
      font-weight: 700;
    }
    .now {
      color: var(--ink-soft);
      font-size: 12px;
      overflow: hidden;
      text-overflow: ellipsis;
      flex: 1;
    }
    .fold {
      width: 8px;
      height: 8px;
      border-right: 1.5px solid var(--ink-soft);
      border-bottom: 1.5px solid var(--ink-soft);
      transform: rotate(-45deg);
      flex: none;
      margin-right: 4px;
    }
    button[aria-expanded="true"] .fold {
      transform: rotate(45deg);
    }
    button:focus-visible {
      outline: 3px solid var(--focus);
      outline-offset: -2px;
    }
    .inside {
      padding: 0 0 8px;
    }
    .inside[hidden] {
      display: none;
    }
    @media (max-width: 899px) {
      button {
        min-height: 44px;
        line-height: 44px;
      }
    }
  `;

  @property() key = "";
  @property() label = "";
  /** What is set, in a few words. */
  @property() now = "";
  @property({ type: Boolean }) open = false;

  protected override render() {
    return html`<button type="button" aria-expanded=${this.open} @click=${() => emit(this, "desk-group", this.key)}>
        <b>${this.label}</b><span class="now">${this.now}</span><span class="fold" aria-hidden="true"></span>
      </button>
      <div class="inside" ?hidden=${!this.open}><slot></slot></div>`;
  }
}

declare global {
  interface PageEvents {
    /** Key of the group that is opened or folded. */
    "desk-group": string;
  }
  interface HTMLElementTagNameMap {
    "ww-desk-group": DeskGroup;
  }
}
