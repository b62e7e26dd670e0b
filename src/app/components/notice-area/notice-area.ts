import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { dismiss, notices } from "../../store/notices";
import { StoreController } from "../../store/storeController";
import { controlStyles } from "../../style/sharedStyles";
import { noticeAreaStyles } from "./notice-area.styles";

/** Messages that concern the page as a whole: a restarted solver, storage that is full, a case that was opened. */
@customElement("ww-notice-area")
export class NoticeArea extends LitElement {
  static override styles = [controlStyles, noticeAreaStyles];

  private readonly shown = new StoreController(this, notices, (value) => value);

  protected override render() {
    return html`<div role="status" aria-live="polite">
      ${this.shown.value.map(
        (notice) => html`<div class="notice ${notice.kind}">
          <span>${notice.text}</span>
          <button type="button" @click=${() => dismiss(notice.id)}>Dismiss</button>
        </div>`,
      )}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-notice-area": NoticeArea;
  }
}
