import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { causeCaution } from "../../../../shared/jobs/evidence/causeSteps";
import { causeSentence, causeValueText } from "../../../../shared/jobs/evidence/causeText";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { noAnswer, type SetAnswer } from "../../compare/setAnswer";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";

/** Settings that would explain the chosen set's disagreement: searched on demand, ranked, each to be laid over the plot. Sends `compare-search`, `compare-stop`, `compare-cause`. */
@customElement("ww-compare-causes")
export class CompareCauses extends LightElement {
  @property({ attribute: false }) set: MeasuredSetInputs | null = null;
  /** What is known of the set. */
  @property({ attribute: false }) known: SetAnswer = noAnswer;

  protected override render() {
    const { set, known } = this;
    if (set === null || known.answer === null) return nothing;
    const isApart = known.answer.result.exceedingCount > 0;
    return html`<section class="view-section compare-section" aria-labelledby="compare-causes-heading">
      <h2 id="compare-causes-heading">Likely causes</h2>
      ${isApart ? nothing : html`<p>No point lies beyond both bands: there is nothing to explain. Settings that would fit better can still be looked for.</p>`}
      <p class="hint">Turbulence, roughness, end relief and blockage, as far as the prediction depends on them, are varied one at a time and the design is solved again.</p>
      ${this.renderSearch(set, known, isApart)}
    </section>`;
  }

  private renderSearch(set: MeasuredSetInputs, { search, shown }: SetAnswer, isApart: boolean) {
    if (search.status === "pending") {
      const { total = 1, done = 0, label = "solving the design" } = search.step ?? {};
      return html`<div class="line"><progress max=${total} value=${done} aria-label="Search for causes"></progress>
          <button type="button" @click=${() => emit(this, "compare-stop")}>Cancel</button></div>
        <p class="hint" role="status">${label}</p>`;
    }
    const causes = search.status === "complete" ? (search.last?.result ?? []) : null;
    const isDone = causes !== null;
    return html`<div class="line"><button type="button" class=${isDone || !isApart ? "" : "is-main"} @click=${() => emit(this, "compare-search", set)}>${isDone ? "Look again" : isApart ? "Look for causes" : "Look for a better fit"}</button></div>
      <p class="hint" role="status">${search.status === "error" ? search.problems[0].message : nothing}</p>
      ${
        causes === null
          ? nothing
          : html`<p class="caution">${causeCaution}</p>
          <ol class="causes">${causes.map(
            (cause) => html`<li data-cause=${cause.key}>
              <span>${causeSentence(cause)}</span>
              ${
                cause.explainedShare === 0
                  ? nothing
                  : html`<button type="button" aria-pressed=${shown?.cause === cause} @click=${() => emit(this, "compare-cause", { set, cause: shown?.cause === cause ? null : cause })}>Show ${causeValueText(cause.key, cause.value)}</button>`
              }
            </li>`,
          )}</ol>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-causes": CompareCauses;
  }
}
