import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import "../tunnel-table/tunnel-table";

/** The readings of the balance, as a table. */
@customElement("ww-tunnel-data")
export class TunnelData extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-data-heading">
      <h2 id="tunnel-data-heading">Data</h2>
      <ww-tunnel-table of="runs"></ww-tunnel-table>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-data": TunnelData;
  }
}
