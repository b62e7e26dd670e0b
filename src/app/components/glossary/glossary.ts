import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { closures } from "../../reference/closures";
import { flowTerms, glossary } from "../../reference/glossary";
import { controlStyles } from "../../style/sharedStyles";
import { glossaryStyles } from "./glossary.styles";

/** Every symbol, the words for states of the flow, and the sources of the method. */
@customElement("ww-glossary")
export class Glossary extends LitElement {
  static override styles = [controlStyles, glossaryStyles];

  protected override render() {
    return html`<h3>Symbols</h3>
      <dl>
        ${glossary.map(
          (entry) => html`<dt>${entry.symbol}</dt>
            <dd><b>${entry.name}</b>${entry.unit === "–" ? "" : html` <span class="unit">(${entry.unit})</span>`}: ${entry.meaning}</dd>`,
        )}
      </dl>
      <h3>Words</h3>
      <dl>${flowTerms.map((entry) => html`<dt>${entry.term}</dt><dd>${entry.meaning}</dd>`)}</dl>
      <h3>Steps of the method and their sources</h3>
      <dl>
        ${Object.values(closures).map(
          (entry) => html`<dt>${entry.name}</dt><dd>${entry.meaning} <span class="unit">${entry.source}</span></dd>`,
        )}
      </dl>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-glossary": Glossary;
  }
}
