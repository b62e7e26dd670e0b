import { css, html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { galleryExamples } from "../../gallery/galleryExamples";
import { viewTexts } from "../../store/viewNames";
import { controlStyles } from "../../style/sharedStyles";
import { emit } from "../../view/emit";
import { galleryPictures } from "./pictures";

/** Worked examples with pictures; one click opens one in its view. Sends `gallery-open` and `open-dialog`. */
@customElement("ww-gallery")
export class Gallery extends LitElement {
  static override styles = [
    controlStyles,
    css`
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr));
        gap: 14px;
      }
      button.example {
        display: grid;
        gap: 4px;
        width: 100%;
        height: 100%;
        align-content: start;
        text-align: left;
        padding: 8px 10px 10px;
      }
      svg {
        width: 100%;
        height: 90px;
        background: var(--water);
        border-radius: 2px 8px 2px 2px;
      }
      .view {
        font-size: 11px;
        color: var(--ink-soft);
      }
      b {
        font-size: 14px;
      }
      .words {
        font-size: 12.5px;
        line-height: 1.35;
      }
    `,
  ];

  protected override render() {
    return html`<ul>
      <li><button type="button" class="example" @click=${() => emit(this, "open-dialog", "tour")}>
        <svg viewBox="0 0 160 90" preserveAspectRatio="xMidYMid meet" aria-hidden="true">${galleryPictures.cylinder()}</svg>
        <span class="view">Tour</span><b>The drag curve in six stops</b>
        <span class="words">What the flow does on each part of the curve, with published points.</span>
      </button></li>
      ${galleryExamples.map(
        ({
          fileName,
          view,
          title,
          words,
          picture,
        }) => html`<li><button type="button" class="example" data-example=${fileName} @click=${() => emit(this, "gallery-open", fileName)}>
          <svg viewBox="0 0 160 90" preserveAspectRatio="xMidYMid meet" aria-hidden="true">${galleryPictures[picture]()}</svg>
          <span class="view">${viewTexts[view]}</span><b>${title}</b>
          <span class="words">${words}</span>
        </button></li>`,
      )}
    </ul>`;
  }
}

declare global {
  interface PageEvents {
    /** File name of the example to open. */
    "gallery-open": string;
  }
  interface HTMLElementTagNameMap {
    "ww-gallery": Gallery;
  }
}
