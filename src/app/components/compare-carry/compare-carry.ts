import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { correctionLabel, type RegimeFactor } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { noAnswer, type SetAnswer } from "../../compare/setAnswer";
import { shortNumber } from "../../plots/curveRow";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";

/** Carries the chosen set's offset to designs of the same family in the section view, always with a label. Sends `compare-carry`. */
@customElement("ww-compare-carry")
export class CompareCarry extends LightElement {
  @property({ attribute: false }) set: MeasuredSetInputs | null = null;
  /** What is known of the set. */
  @property({ attribute: false }) known: SetAnswer = noAnswer;
  /** True when the set's offset is the one that is carried. */
  @property({ attribute: false }) isCarried = false;

  protected override render() {
    const { set, isCarried } = this;
    const { answer } = this.known;
    if (set === null || answer === null) return nothing;
    const { correction, result } = answer;
    return html`<section class="view-section compare-section" aria-labelledby="compare-carry-heading">
      <h2 id="compare-carry-heading">Carry the offset</h2>
      ${
        correction === null
          ? html`<p>${result.factorsLeftOut.join(" ")}</p>`
          : html`<label><input type="checkbox" .checked=${isCarried} @change=${(event: Event) => emit(this, "compare-carry", (event.target as HTMLInputElement).checked ? set.name : null)} />
              Show it on designs of the same family in the section view, beside the engine's own result</label>
            ${this.renderFactors(result.factors)}
            ${result.factorsLeftOut.length > 0 ? html`<ul class="hint">${result.factorsLeftOut.map((reason) => html`<li>${reason}</li>`)}</ul>` : nothing}
            <ul class="hint">${correction.factors.map((factor) => html`<li>Label, ${factor.regime}: ${correctionLabel(correction, factor)}</li>`)}</ul>
            <p class="hint">Same family: the same kind of shape, length/height within a factor of 1.25, corner radius/height within 0.1, turbulence and roughness within a factor of 2; only in the regimes and Reynolds numbers that were measured. The band is never narrowed.</p>`
      }
    </section>`;
  }

  private renderFactors(factors: readonly RegimeFactor[]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Measured over predicted drag by regime">
      <table class="results">
        <thead><tr><th scope="col">Regime</th><th scope="col">Measured / predicted</th><th scope="col">Points</th><th scope="col">Re from</th><th scope="col">to</th></tr></thead>
        <tbody>${factors.map(
          ({ regime, factor, expandedUncertainty, count, from, to }) =>
            html`<tr><th scope="row">${regime}</th><td>${factor.toFixed(3)} ± ${expandedUncertainty.toFixed(3)} (k = 2)</td><td>${count}</td><td>${shortNumber(from)}</td><td>${shortNumber(to)}</td></tr>`,
        )}</tbody>
      </table>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-carry": CompareCarry;
  }
}
