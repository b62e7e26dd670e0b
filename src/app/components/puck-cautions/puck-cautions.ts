import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Material } from "../../../../shared/jobs/puck/body/materials";
import { puckCautions } from "../../../../shared/jobs/puck/body/playCautions";
import type { PuckSpec } from "../../../../shared/jobs/puck/body/puckSpec";
import { demoPuck } from "../../puck/demoPuck";

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

  @property({ attribute: false }) spec: PuckSpec = demoPuck.candidate.spec;
  @property({ attribute: false }) materials: readonly Material[] = [];

  protected override render() {
    return html`<section aria-labelledby="heading">
      <h2 id="heading">Cautions</h2>
      <ul>${puckCautions(this.spec, this.materials).map((caution) => html`<li>${caution}</li>`)}</ul>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-cautions": PuckCautions;
  }
}
