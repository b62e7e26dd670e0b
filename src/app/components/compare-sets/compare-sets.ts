import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { kindWords } from "../../../../shared/jobs/evidence/comparisonTable";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { publishedCurves, publishedSet } from "../../compare/publishedSets";
import { answerOf, type SetAnswers } from "../../compare/setAnswer";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";

/** The measurement sets: which there are, which is looked at, and where more can be had. Sends `compare-select`, `-remove`, `-add`, `-demo`. */
@customElement("ww-compare-sets")
export class CompareSets extends LightElement {
  @property({ attribute: false }) sets: readonly MeasuredSetInputs[] = [];
  @property({ attribute: false }) selected: MeasuredSetInputs | null = null;
  @property({ attribute: false }) answers: SetAnswers = new Map();
  /** A reduced test that the tunnel view offers; null without one. */
  @property({ attribute: false }) offer: MeasuredSetInputs | null = null;
  /** Why the demo could not be opened; empty when it could. */
  @property() problem = "";

  private state(set: MeasuredSetInputs): string {
    const { answer, problems } = answerOf(this.answers, set);
    if (problems.length > 0) return "cannot be compared";
    if (answer === null) return "being compared ...";
    const { comparedCount, exceedingCount } = answer.result;
    if (comparedCount === 0) return "nothing could be compared";
    return exceedingCount === 0
      ? "agrees inside both bands"
      : `${exceedingCount} of ${comparedCount} points beyond both bands`;
  }

  protected override render() {
    const { sets, selected, offer } = this;
    return html`<section class="view-section compare-section" aria-labelledby="compare-sets-heading">
      <h2 id="compare-sets-heading">Measurements</h2>
      ${
        sets.length === 0
          ? html`<p class="hint">No measurement yet: import a table, or take a published curve.</p>`
          : html`<ul class="sets">
            ${sets.map(
              (set) => html`<li>
                <button type="button" aria-pressed=${set === selected} @click=${() => emit(this, "compare-select", set.name)}>
                  ${set.name}<small>${kindWords[set.kind]}; ${this.state(set)}</small>
                </button>
                <button type="button" class="is-quiet" @click=${() => emit(this, "compare-remove", set)}>Remove<span class="unseen"> ${set.name}</span></button>
              </li>`,
            )}
          </ul>`
      }
      <div class="line">
        ${
          offer === null
            ? nothing
            : html`<button type="button" @click=${() => emit(this, "compare-add", offer)}>Take from the tunnel view: ${offer.name}</button>`
        }
        ${publishedCurves.map((curve) => html`<button type="button" @click=${() => emit(this, "compare-add", publishedSet(curve))}>Add ${curve.name}</button>`)}
        <button type="button" @click=${() => emit(this, "compare-demo")}>Harbour League demonstration (invented data)</button>
      </div>
      ${this.problem === "" ? nothing : html`<p class="error" role="alert">${this.problem}</p>`}
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-sets": CompareSets;
  }
}
