import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Notice } from "../../store/notice";
import { controlStyles } from "../../style/sharedStyles";
import { emit } from "../../view/emit";
import { noticeAreaStyles } from "./notice-area.styles";

/** Messages that concern the page as a whole: a restarted solver, storage that is full, a case that was opened. Sends `notice-dismiss`. */
@customElement("ww-notice-area")
export class NoticeArea extends LitElement {
  static override styles = [controlStyles, noticeAreaStyles];

  @property({ attribute: false }) notices: readonly Notice[] = [];

  protected override render() {
    return html`<div role="status" aria-live="polite">
      ${this.notices.map(
        (notice) => html`<div class="notice ${notice.kind}">
          <span>${notice.text}</span>
          <button type="button" @click=${() => emit(this, "notice-dismiss", notice.id)}>Dismiss</button>
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
