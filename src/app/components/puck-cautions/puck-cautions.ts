import { css, html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { puckCautions } from "../../../../shared/jobs/puck/playCautions";
import { puckBench } from "../../puck/puckBench";
import { StoreController } from "../../store/storeController";

/** What to keep in mind with this very puck: the thrown weight, then what its materials ask for. */
@customElement("ww-puck-cautions")
export class PuckCautions extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    section {
      background: var(--sheet);
      border: 1px solid var(--rule);
      border-left: 6px solid var(--ember);
      border-radius: 3px 14px 3px 3px;
      padding: 0.7rem 0.9rem;
    }
    h2 {
      margin: 0 0 0.3rem;
      font-size: 1.08rem;
    }
    ul {
      margin: 0;
      padding-left: 1.1rem;
      font-size: 0.88rem;
      display: grid;
      gap: 0.25rem;
    }
  `;

  private readonly spec = new StoreController(this, puckBench, (value) => value.history.present.candidate.spec);
  private readonly materials = new StoreController(this, puckBench, (value) => value.history.present.userMaterials);

  protected override render() {
    return html`<section aria-labelledby="heading">
      <h2 id="heading">Cautions</h2>
      <ul>${puckCautions(this.spec.value, this.materials.value).map((caution) => html`<li>${caution}</li>`)}</ul>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-cautions": PuckCautions;
  }
}
