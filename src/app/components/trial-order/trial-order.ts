import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { TrialResult } from "../../../../shared/jobs/trial/trialResult";
import { puckLabel } from "../../trial/puckLabel";
import { LightElement } from "../../view/lightElement";

/** What the order did to the scores, and how far the players agree. */
@customElement("ww-trial-order")
export class TrialOrder extends LightElement {
  @property({ attribute: false }) result: TrialResult | null = null;

  protected override render() {
    const { result } = this;
    if (result === null || result.scores === null) return nothing;
    return html`<section class="view-section trial-section" aria-labelledby="trial-order-heading">
      <h2 id="trial-order-heading">Order and players</h2>
      ${
        result.orderEffects.length === 0
          ? html`<p>Too few scores to tell an effect of the order from the pucks themselves.</p>`
          : html`<ul class="said">${result.orderEffects.map((one) => html`<li>${one.sentence}</li>`)}</ul>`
      }
      <div class="beside">
        ${result.orderEffects.length === 0 ? nothing : this.renderEffects(result)}
        ${this.renderPlayers(result)}
      </div>
    </section>`;
  }

  private renderEffects(result: TrialResult) {
    return html`<div class="part"><h3>Effects of the order</h3>
      <div class="scroll" tabindex="0" role="region" aria-label="Effects of the order"><table class="is-wide">
      <thead><tr><th scope="col">when</th><th scope="col">effect on the score, points</th></tr></thead>
      <tbody>${result.orderEffects.map(({ effect, levels, effects }) =>
        levels.map(
          (level, i) =>
            html`<tr><th scope="row">${effect === "position" ? `place ${level}` : `after ${puckLabel(result, level)}`}</th><td>${effects[i] < 0 ? "−" : "+"}${Math.abs(effects[i]).toFixed(2)}</td></tr>`,
        ),
      )}</tbody></table></div></div>`;
  }

  private renderPlayers({ judges }: TrialResult) {
    const isRepeated = judges.some(({ agreementWithSelf }) => agreementWithSelf !== null);
    const rho = (value: number | null) => (value === null ? "–" : value.toFixed(2).replace("-", "−"));
    return html`<div class="part"><h3>Agreement of the players</h3>
      <p class="hint">Rank correlation with the mean of all others${isRepeated ? ", and of each player's first and second scores" : ""}. A low one is another taste or other play, no fault.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Agreement of the players"><table class="is-wide judges">
        <thead><tr><th scope="col">player</th><th scope="col">with the others</th>${isRepeated ? html`<th scope="col">with themselves</th>` : nothing}</tr></thead>
        <tbody>${judges.map(
          ({ name, agreementWithOthers, agreementWithSelf }) =>
            html`<tr><th scope="row">${name}</th><td>${rho(agreementWithOthers)}</td>${isRepeated ? html`<td>${rho(agreementWithSelf)}</td>` : nothing}</tr>`,
        )}</tbody></table></div></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-order": TrialOrder;
  }
}
