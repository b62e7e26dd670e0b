import { emit } from "../../view/emit";
import "../../cases/caseEvents";
import "../../section/sectionEvents";
import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { controlStyles } from "../../style/sharedStyles";
import { guideStyles } from "./guide.styles";

/** Three steps on the demo case. Each step's button asks for it. Sends `guide-step`, `section-pin`, `close-dialog`. */
@customElement("ww-guide")
export class Guide extends LitElement {
  static override styles = [controlStyles, guideStyles];

  protected override render() {
    return html`<ol>
        <li>
          <b>Start from the demo.</b>
          <p>A candidate puck of the invented Harbour League in pool water, seen from the side: 80 x 30 mm with a rounded edge.</p>
          <button type="button" @click=${() => emit(this, "guide-step", "demo")}>Open the demo</button>
        </li>
        <li>
          <b>Pin it, then drag the edge.</b>
          <p>Pin keeps the design for comparison. Then take hold of the round handle inside the front edge, or focus it and press the arrow keys, and watch separation, pressure and drag follow.</p>
          <button type="button" @click=${() => emit(this, "section-pin")}>Pin this design</button>
          <button type="button" @click=${() => emit(this, "guide-step", "round")}>Or try a fully round edge</button>
        </li>
        <li>
          <b>Read the difference, and its limits.</b>
          <p>The table under the key figures says what changed. Coefficients hold for an endless section on the reference width; a short body has less drag, and a screening result is no proof of anything.</p>
          <button type="button" class="is-main" @click=${() => emit(this, "close-dialog")}>To the workbench</button>
        </li>
      </ol>
      <p class="hint">The glossary explains every symbol; each mark i names a step of the method and its source.</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-guide": Guide;
  }
}
