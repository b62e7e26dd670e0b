import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { closures } from "../../reference/closures";
import { infoMarkStyles } from "./info-mark.styles";

/** A small mark that opens what a step of the method does and where it was published. */
@customElement("ww-info-mark")
export class InfoMark extends LitElement {
  static override styles = infoMarkStyles;

  /** Key of the list of closures. */
  @property() topic: keyof typeof closures = "wake";

  protected override render() {
    const { name, meaning, source } = closures[this.topic];
    return html`<button type="button" popovertarget="text" aria-label=${`About: ${name}`}>i</button>
      <div id="text" popover>
        <h4>${name}</h4>
        <p>${meaning}</p>
        <p class="source">${source}</p>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-info-mark": InfoMark;
  }
}
