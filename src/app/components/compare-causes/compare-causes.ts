import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import { causeCaution } from "../../../../shared/jobs/evidence/causeSteps";
import { causeSentence, causeValueText } from "../../../../shared/jobs/evidence/causeText";
import { answerOf, compareBench, type SetAnswer, selectedSet } from "../../compare/compareBench";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { cancelSearch, searchCauses, showCause } from "../../compare/comparing";
import { StoreController } from "../../store/storeController";

/** Settings that would explain the chosen set's disagreement: searched on demand, ranked, each to be laid over the plot. */
@customElement("ww-compare-causes")
export class CompareCauses extends LitElement {
  private readonly bench = new StoreController(this, compareBench, (value) => value);

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const set = selectedSet(this.bench.value);
    const known = answerOf(this.bench.value, set);
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
    if (search?.status === "running") {
      return html`<div class="line"><progress max=${search.total} value=${search.done} aria-label="Search for causes"></progress>
          <button type="button" @click=${cancelSearch}>Cancel</button></div>
        <p class="hint" role="status">${search.label}</p>`;
    }
    const isDone = search?.status === "done";
    return html`<div class="line"><button type="button" class=${isDone || !isApart ? "" : "is-main"} @click=${() => searchCauses(set)}>${isDone ? "Look again" : isApart ? "Look for causes" : "Look for a better fit"}</button></div>
      <p class="hint" role="status">${search === null || isDone ? nothing : search.message}</p>
      ${
        search?.status !== "done"
          ? nothing
          : html`<p class="caution">${causeCaution}</p>
          <ol class="causes">${search.causes.map(
            (cause) => html`<li data-cause=${cause.key}>
              <span>${causeSentence(cause)}</span>
              ${
                cause.explainedShare === 0
                  ? nothing
                  : html`<button type="button" aria-pressed=${shown?.cause === cause} @click=${() => showCause(set, shown?.cause === cause ? null : cause)}>Show ${causeValueText(cause.key, cause.value)}</button>`
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
