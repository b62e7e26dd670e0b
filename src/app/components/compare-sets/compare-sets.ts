import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { kindWords } from "../../../../shared/jobs/evidence/comparisonTable";
import { addSet, answerOf, compareBench, removeSet, selectedSet } from "../../compare/compareBench";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { openDemoComparison } from "../../compare/compareKeeping";
import { publishedCurves, publishedSet } from "../../compare/publishedSets";
import { tunnelOffer } from "../../compare/tunnelOffer";
import { StoreController } from "../../store/storeController";

/** The measurement sets: which there are, which is looked at, and where more can be had. */
@customElement("ww-compare-sets")
export class CompareSets extends LitElement {
  private readonly bench = new StoreController(this, compareBench, (value) => value);
  private readonly offer = new StoreController(this, tunnelOffer, (value) => value);
  @state() private problem = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async openDemo(): Promise<void> {
    try {
      this.problem = (await openDemoComparison())[0]?.message ?? "";
    } catch {
      this.problem = "The demonstration could not be loaded.";
    }
  }

  private state(set: MeasuredSetInputs): string {
    const { answer, problems } = answerOf(this.bench.value, set);
    if (problems.length > 0) return "cannot be compared";
    if (answer === null) return "being compared ...";
    const { comparedCount, exceedingCount } = answer.result;
    if (comparedCount === 0) return "nothing could be compared";
    return exceedingCount === 0
      ? "agrees inside both bands"
      : `${exceedingCount} of ${comparedCount} points beyond both bands`;
  }

  protected override render() {
    const { sets } = this.bench.value.history.present;
    const selected = selectedSet(this.bench.value);
    const offer = this.offer.value;
    return html`<section class="view-section compare-section" aria-labelledby="compare-sets-heading">
      <h2 id="compare-sets-heading">Measurements</h2>
      ${
        sets.length === 0
          ? html`<p class="hint">No measurement yet: import a table, or take a published curve.</p>`
          : html`<ul class="sets">
            ${sets.map(
              (set) => html`<li>
                <button type="button" aria-pressed=${set === selected} @click=${() => compareBench.patch({ selected: set.name })}>
                  ${set.name}<small>${kindWords[set.kind]}; ${this.state(set)}</small>
                </button>
                <button type="button" class="is-quiet" @click=${() => removeSet(set)}>Remove<span class="unseen"> ${set.name}</span></button>
              </li>`,
            )}
          </ul>`
      }
      <div class="line">
        ${
          offer === null
            ? nothing
            : html`<button type="button" @click=${() => addSet(offer)}>Take from the tunnel view: ${offer.name}</button>`
        }
        ${publishedCurves.map((curve) => html`<button type="button" @click=${() => addSet(publishedSet(curve))}>Add ${curve.name}</button>`)}
        <button type="button" @click=${this.openDemo}>Harbour League demonstration (invented data)</button>
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
