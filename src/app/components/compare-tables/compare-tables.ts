import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { SetResult } from "../../../../shared/jobs/evidence/comparisonResult";
import { settingsText } from "../../../../shared/jobs/evidence/comparisonTable";
import type { RegimeBias } from "../../../../shared/jobs/evidence/regimeBias";
import { LightElement } from "../../view/lightElement";

/** The outcome in one sentence, what it was computed with, and bias and scatter by regime. */
@customElement("ww-compare-tables")
export class CompareTables extends LightElement {
  @property({ attribute: false }) result: SetResult | null = null;

  protected override render() {
    const { result } = this;
    if (result === null) return nothing;
    return html`<section class="view-section compare-section" aria-labelledby="compare-tables-heading">
      <h2 id="compare-tables-heading">How far apart</h2>
      <p class="verdict ${result.exceedingCount > 0 ? "is-apart" : ""}">${result.verdict}</p>
      ${result.problem === null ? nothing : html`<p class="error" role="alert">${result.problem}</p>`}
      <p class="hint">Source: ${result.source}. Predicted at ${settingsText(result)}.</p>
      ${result.note === null ? nothing : html`<p class="hint">${result.note}</p>`}
      ${result.remarks.length > 0 ? html`<ul class="hint">${result.remarks.map((remark) => html`<li>${remark}</li>`)}</ul>` : nothing}
      ${result.biases.length > 0 ? this.renderBiases(result.biases) : nothing}
    </section>`;
  }

  private renderBiases(biases: readonly RegimeBias[]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Bias by regime">
        <table class="results" id="bias-table">
          <thead><tr><th scope="col">Regime of the prediction</th><th scope="col">Points</th><th scope="col">Bias</th><th scope="col">95 % of the bias</th><th scope="col">Scatter</th></tr></thead>
          <tbody>${biases.map(
            ({ regime, count, bias, low, high, scatter }) =>
              html`<tr><th scope="row">${regime}</th><td>${count}</td><td>${percent(bias)}</td><td>${low === null || high === null ? "–" : `${percent(low)} to ${percent(high)}`}</td><td>${scatter === null ? "–" : `${(100 * scatter).toFixed(1)} %`}</td></tr>`,
          )}</tbody>
        </table>
      </div>
      <p class="hint">Bias: mean of (measured - predicted) / predicted, its interval by Student's t; scatter: standard deviation of the same.</p>`;
  }
}

function percent(share: number): string {
  const text = (100 * share).toFixed(1);
  return `${Number(text) > 0 ? "+" : ""}${Number(text) === 0 ? text.replace("-", "") : text} %`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-tables": CompareTables;
  }
}
