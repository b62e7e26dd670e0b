import { html, LitElement, type PropertyValues } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controlStyles } from "../../style/sharedStyles";
import { dialogStyles } from "./dialog.styles";

/** A modal dialog with a heading and a close button around its slot. Sends `close` when a person closes it. */
@customElement("ww-dialog")
export class DialogElement extends LitElement {
  static override styles = [controlStyles, dialogStyles];

  @property() heading = "";
  @property({ type: Boolean }) open = false;
  /** True for what needs the whole window. */
  @property({ type: Boolean }) wide = false;

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has("open")) return;
    const dialog = this.renderRoot.querySelector("dialog")!;
    if (this.open && !dialog.open) dialog.showModal();
    if (!this.open && dialog.open) dialog.close();
  }

  private closed(): void {
    if (this.open) this.dispatchEvent(new CustomEvent("close"));
  }

  protected override render() {
    return html`<dialog class=${this.wide ? "is-wide" : ""} aria-labelledby="heading" @close=${this.closed}>
      <div class="head">
        <h2 id="heading">${this.heading}</h2>
        <button type="button" @click=${() => this.renderRoot.querySelector("dialog")!.close()}>Close</button>
      </div>
      <div class="content" tabindex="-1"><slot></slot></div>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-dialog": DialogElement;
  }
}
